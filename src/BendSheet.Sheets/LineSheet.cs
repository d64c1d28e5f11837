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
    private const double LeastViews = 37;
    private const double MostViews = 110;

    /// <summary>On a sheet of several pages the views fill up a page from here on; with less room they begin the next one.</summary>
    private const double LeastViewsOfSeveralPages = 75;

    /// <summary>The pages of a sheet.</summary>
    /// <param name="sheet">What it says.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of the type area.</param>
    /// <param name="height">Of the type area.</param>
    public static IReadOnlyList<IReadOnlyList<(Block Block, double Top)>> Pages(
        SheetContent sheet, TextMeasure measure, double width, double height)
    {
        Block[] before =
        [
            .. Title.Of(sheet, measure, width),
            .. ReadFirst(sheet, measure, width),
            .. StripDrawing.Of(sheet, measure, width),
            .. Clips(sheet, measure, width),
            .. BendTable.Of(sheet, measure, width),
        ];
        var after = new TwoColumns(
            [
                column =>
                [
                    Paragraph.Heading(SheetWords.Order, column),
                    .. sheet.Order.SelectMany(step => Paragraph.Step(step, measure, column)),
                ],
                column => CheckList.Of(sheet, measure, column),
                column => CautionList.Of(measure, column),
            ],
            width);
        var continued = Title.Continued(sheet, measure, width);
        double HeightOf(int page) => page == 0 ? height : height - continued.Height;
        var left = Left(before);
        var forAll = left - after.Height >= LeastViews ? after.Height : after.LeastHeight;
        Block[] upper = [.. before, .. Views(new(sheet, measure), width, left, left - forAll)];
        var lower = after.Blocks(Left(upper), HeightOf(1));
        return [.. PageFlow.Spread([.. upper, .. lower], HeightOf).Select((blocks, page) => page == 0 ? blocks : Under(continued, blocks))];

        // Of the last page, when blocks have been spread over pages.
        double Left(IReadOnlyList<Block> blocks)
        {
            var pages = PageFlow.Spread(blocks, HeightOf);
            var (last, top) = pages[^1][^1];
            return HeightOf(pages.Count - 1) - top - last.Height;
        }
    }

    /// <summary>
    /// In what the rest leaves of the page, as long as bends need not share numbers for it in the picture from which the piece is bent; or
    /// else on the rest of the page that they come to lie on, or much of a page of their own.
    /// </summary>
    private static IReadOnlyList<Block> Views(ShapeViews views, double width, double leftOfPage, double leftOfOne)
    {
        var spread = leftOfPage >= LeastViewsOfSeveralPages ? Math.Min(leftOfPage, MostViews) : MostViews;
        var onOne = Math.Min(leftOfOne, MostViews);
        if (onOne < LeastViews)
        {
            return views.At(width, spread).Blocks;
        }

        var (blocks, labels) = views.At(width, onOne);
        return onOne < spread && !views.NumbersAllBends(labels) && views.At(width, spread) is var larger && larger.Labels > labels
            ? larger.Blocks : blocks;
    }

    private static IEnumerable<Block> ReadFirst(SheetContent sheet, TextMeasure measure, double width) => sheet.ReadFirst.IsEmpty
        ? []
        :
        [
            Paragraph.Heading(SheetWords.ReadFirst),
            .. sheet.ReadFirst.SelectMany(remark => Paragraph.Remark("!", remark, TextStyle.Body, measure, width)),
        ];

    /// <summary>They are marked together with the bends.</summary>
    private static IEnumerable<Block> Clips(SheetContent sheet, TextMeasure measure, double width) =>
        sheet.Clips.IsEmpty ? [] : Paragraph.Of(SheetWords.Clips(sheet), TextStyle.Body, measure, width);

    private static IReadOnlyList<(Block Block, double Top)> Under(Block head, IReadOnlyList<(Block Block, double Top)> blocks) =>
        [(head, 0), .. blocks.Select(placed => (placed.Block, placed.Top + head.Height))];
}
