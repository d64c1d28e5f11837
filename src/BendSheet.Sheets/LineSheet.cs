using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Elements;
using BendSheet.Sheets.Layout;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets;

/// <summary>The parts of one line's sheet, in reading order. One page wherever it fits.</summary>
internal static class LineSheet
{
    /// <summary>The views never shrink below the least to save a page, nor grow beyond what helps.</summary>
    private const double LeastViews = 40;
    private const double MostViews = 110;

    /// <summary>On a sheet of several pages the views fill up a page from here on; with less room they begin the next one.</summary>
    private const double LeastViewsOfSeveralPages = 75;

    /// <summary>The pages of a sheet.</summary>
    /// <param name="sheet">What it says.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of the type area.</param>
    /// <param name="height">Of the type area.</param>
    public static IReadOnlyList<IReadOnlyList<(Block Block, double Top)>> Pages(SheetContent sheet, TextMeasure measure, double width, double height)
    {
        Block[] before =
        [
            .. Title.Of(sheet, measure, width),
            .. ReadFirst(sheet, measure, width),
            .. StripDrawing.Of(sheet, measure, width),
            .. BendTable.Of(sheet, measure, width),
        ];
        Block[] after =
        [
            Paragraph.Heading("Order of work"),
            .. sheet.Order.SelectMany(step => Paragraph.Step(step, measure, width)),
            .. CheckList.Of(sheet, measure, width),
            .. Clips(sheet, measure, width),
            .. CautionList.Of(measure, width),
        ];
        var views = ShapeViews.Of(sheet, measure, width, HeightOfViews(Left(height, before), Left(height, before, after)));
        var continued = Title.Continued(sheet, measure, width);
        return [.. PageFlow.Spread([.. before, .. views, .. after], page => page == 0 ? height : height - continued.Height)
            .Select((blocks, page) => page == 0 ? blocks : Under(continued, blocks))];
    }

    /// <summary>What the rest leaves of the one page, or else of the page that the views come to lie on, or else much of a page of their own.</summary>
    private static double HeightOfViews(double leftOfPage, double leftOfOne) =>
        Math.Min(leftOfOne >= LeastViews ? leftOfOne : leftOfPage >= LeastViewsOfSeveralPages ? leftOfPage : MostViews, MostViews);

    private static double Left(double height, params IEnumerable<IReadOnlyList<Block>> parts) => height - parts.Sum(part => part.Sum(block => block.Height));

    private static IEnumerable<Block> ReadFirst(SheetContent sheet, TextMeasure measure, double width) => sheet.ReadFirst.IsEmpty
        ? []
        : [Paragraph.Heading("Read first, with the cautions at the end of the sheet"), .. sheet.ReadFirst.SelectMany(remark => Paragraph.Remark("!", remark, TextStyle.Body, measure, width))];

    private static IEnumerable<Block> Clips(SheetContent sheet, TextMeasure measure, double width) => sheet.Clips.IsEmpty
        ? []
        : [Paragraph.Heading("Clips (triangles below the straight tube)"), .. sheet.Clips.SelectMany(text => Paragraph.Of(text, TextStyle.Body, measure, width))];

    private static IReadOnlyList<(Block Block, double Top)> Under(Block head, IReadOnlyList<(Block Block, double Top)> blocks) =>
        [(head, 0), .. blocks.Select(placed => (placed.Block, placed.Top + head.Height))];
}
