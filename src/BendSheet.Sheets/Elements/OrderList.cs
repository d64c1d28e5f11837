using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Elements;

/// <summary>The order of work, a box to tick for each step.</summary>
internal static class OrderList
{
    private const double Gutter = 6;

    /// <summary>One below the other, across the page.</summary>
    public static IReadOnlyList<Block> Of(SheetContent sheet, TextMeasure measure, double width) =>
        [Paragraph.Heading("Order of work"), .. sheet.Order.SelectMany(step => Paragraph.Step(step, measure, width))];

    /// <summary>
    /// Down the left and then down the right column, with a rule between that nobody reads across; many steps are short and leave half of a
    /// line empty. Null where that saves nothing.
    /// </summary>
    public static IReadOnlyList<Block>? InTwoColumns(SheetContent sheet, TextMeasure measure, double width)
    {
        var column = (width - Gutter) / 2;
        var steps = sheet.Order.Select(step => Paragraph.Step(step, measure, column).ToList()).ToList();
        var onLeft = Enumerable.Range(1, steps.Count).MinBy(count => Math.Max(Height(steps.Take(count)), Height(steps.Skip(count))));
        var height = Math.Max(Height(steps.Take(onLeft)), Height(steps.Skip(onLeft)));
        var whole = Of(sheet, measure, width);
        return height >= Height([whole.Skip(1)])
            ? null
            :
            [
                Paragraph.Heading("Order of work: down the left column first, then down the right"),
                new(height, (canvas, top) =>
                {
                    Stack(canvas, steps.Take(onLeft), top);
                    canvas.Line(column + (Gutter / 2), top, column + (Gutter / 2), top + height, Canvas.Medium);
                    Stack(canvas.MovedRight(column + Gutter), steps.Skip(onLeft), top);
                }),
            ];
    }

    private static double Height(IEnumerable<IEnumerable<Block>> steps) => steps.Sum(step => step.Sum(block => block.Height));

    private static void Stack(Canvas canvas, IEnumerable<IEnumerable<Block>> steps, double top)
    {
        foreach (var block in steps.SelectMany(step => step))
        {
            block.Draw(canvas, top);
            top += block.Height;
        }
    }
}
