using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.FullSize;

/// <summary>A dial to cut out and put round the tube, with a pointer for it.</summary>
internal static class DialPages
{
    /// <summary>How it is made and used, the dial, the pointer, and every stop in words.</summary>
    public static IEnumerable<Block> Blocks(SheetContent sheet, TextMeasure measure, double width, double height)
    {
        var bar = ProvingBar.Of(sheet.Notation, measure, width);
        if (!DialDrawing.HasRoom(sheet))
        {
            return Paragraph.Of(DialWords.TooThick, TextStyle.Body, measure, width);
        }

        return
        [
            bar,
            .. DialWords.HowTo.SelectMany(text => Paragraph.Step(text, measure, width)),
            Block.Space(2),
            DialDrawing.Of(sheet, measure) with { Role = Role.Figure, Alternative = DialWords.Alternative(sheet) },
            DialDrawing.Pointer(sheet, measure) with { Role = Role.Figure, Alternative = DialWords.PointerAlternative },
            Paragraph.Heading(DialWords.StopsHeading),
            .. Paragraph.Of(DialWords.Stops(sheet), TextStyle.Body with { Tabular = true }, measure, width),
        ];
    }
}
