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
            return Paragraph.Of("The tube is too thick for a dial on this paper.", TextStyle.Body, measure, width);
        }

        var stops = string.Join("; ", sheet.DialStops.Select(stop => $"{stop.Label}: {stop.BendsInWords}")) + ".";
        return
        [
            bar,
            .. HowTo.SelectMany(text => Paragraph.Step(text, measure, width)),
            Block.Space(2),
            DialDrawing.Of(sheet, measure) with {
                Role = Role.Figure,
                Alternative = $"A dial of 360 degrees, clockwise as one looks along the tube from A towards B, with a stop at {stops}" },
            DialDrawing.Pointer(sheet, measure) with { Role = Role.Figure, Alternative = "The pointer, to be fixed beside the dial." },
            Paragraph.Heading("Stops, all of them"),
            .. Paragraph.Of(
                stops,
                TextStyle.Body with { Tabular = true },
                measure,
                width),
        ];
    }

    private static IReadOnlyList<string> HowTo { get; } =
    [
        "Glue the page on to card. Cut the dial out, cut its hole, and slit it along the dashed line from the rim to the hole.",
        "Put it round the tube on the side that is held, behind the tool, its print towards A: looking from A towards B its figures run "
            + "clockwise. "
            + "Set its 0° on the line along the tube and tape it to the tube, over the slit.",
        "Cut the pointer out and fix it to tool or bench, its tip at the rim, on the side that the tube is bent to. It stays on that "
            + "side when the tube is turned end over end.",
        "For each bend turn the tube until the arrow of the bend's boxed number stands at the pointer. If the dial is in the way, move "
            + "it along the tube, with its 0° on the line.",
    ];
}
