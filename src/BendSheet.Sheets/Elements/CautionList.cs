using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Elements;

/// <summary>The cautions of every sheet.</summary>
internal static class CautionList
{
    /// <summary>All of them, with their heading.</summary>
    public static IEnumerable<Block> Of(TextMeasure measure, double width) =>
        [
            Paragraph.Heading(Cautions.Heading, width),
            .. Cautions.All.SelectMany(caution => Paragraph.Remark("!", caution, TextStyle.Body, measure, width)),
        ];
}
