using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;
using BendSheet.Sheets.Pdf;

namespace BendSheet.Sheets.Elements;

/// <summary>The cautions of every sheet, in two columns: they are short, and they must not push the line on to a second page.</summary>
internal static class CautionList
{
    private const double Gutter = 5;

    /// <summary>All of them as one block with its heading.</summary>
    public static IEnumerable<Block> Of(TextMeasure measure, double width)
    {
        var columnWidth = (width - Gutter) / 2;
        var cautions = Cautions.All.Select(caution => Paragraph.Remark("!", caution, TextStyle.Small, measure, columnWidth).ToList()).ToList();
        var half = cautions.Sum(Height) / 2;
        var first = new List<Block>();
        var second = new List<Block>();
        foreach (var caution in cautions)
        {
            (second.Count == 0 && Height(first) + (Height(caution) / 2) <= half ? first : second).AddRange(caution);
        }

        yield return Paragraph.Heading("Cautions");
        yield return new(Math.Max(Height(first), Height(second)), (canvas, top) =>
        {
            Stack(canvas, first, top);
            Stack(canvas.MovedRight(columnWidth + Gutter), second, top);
        })
        {
            Role = Role.Nothing,
        };
    }

    private static double Height(IEnumerable<Block> blocks) => blocks.Sum(block => block.Height);

    private static void Stack(Canvas canvas, List<Block> blocks, double top)
    {
        foreach (var block in blocks)
        {
            block.DrawOn(canvas, top);
            top += block.Height;
        }
    }
}
