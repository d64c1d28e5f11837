using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.FullSize;

/// <summary>A page with its own size: full-size strips lie across the paper.</summary>
/// <param name="Size">Of the paper as it is read.</param>
/// <param name="Begins">The part of the sheet that begins here, for the outline; null elsewhere.</param>
/// <param name="Blocks">What is on it, each with its distance from the top of the type area.</param>
internal sealed record FullSizePage(PaperSize Size, string? Begins, IReadOnlyList<(Block Block, double Top)> Blocks)
{
    /// <summary>The pages asked for, in the order in which they are used. A straight tube has no gauges and no dial.</summary>
    /// <param name="sheet">Of the line.</param>
    /// <param name="wanted">Which.</param>
    /// <param name="upright">The paper.</param>
    /// <param name="measure">Measures texts.</param>
    public static IEnumerable<FullSizePage> Of(SheetContent sheet, FullSizePages wanted, PaperSize upright, TextMeasure measure)
    {
        var pages = Enumerable.Empty<FullSizePage>();
        if (wanted.HasFlag(FullSizePages.Strips))
        {
            pages = pages.Concat(Part(FullSizeWords.Strip, sheet, upright.Turned(), measure, StripPages.Blocks));
        }

        if (wanted.HasFlag(FullSizePages.Gauges) && !sheet.Gauges.IsEmpty)
        {
            pages = pages.Concat(Part(FullSizeWords.Gauges, sheet, upright, measure, GaugePages.Blocks));
        }

        if (wanted.HasFlag(FullSizePages.Dial) && !sheet.DialStops.IsEmpty)
        {
            pages = pages.Concat(Part(FullSizeWords.Dial, sheet, upright, measure, DialPages.Blocks));
        }

        if (wanted.HasFlag(FullSizePages.Clips))
        {
            pages = pages.Concat(sheet.DrillingStrips.SelectMany(strip => Part(
                FullSizeWords.Clips,
                sheet,
                upright.Turned(),
                measure,
                (of, texts, width, height) => ClipPages.Blocks(of, strip, texts, width, height))));
        }

        return pages;
    }

    /// <summary>A part of a sheet on pages of its own, each under its head.</summary>
    /// <param name="name">Of the part.</param>
    /// <param name="sheet">Of the line.</param>
    /// <param name="size">Of the paper as it is read.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="blocks">In the type area below the head.</param>
    public static IEnumerable<FullSizePage> Part(
        string name,
        SheetContent sheet,
        PaperSize size,
        TextMeasure measure,
        Func<SheetContent, TextMeasure, double, double, IEnumerable<Block>> blocks)
    {
        var (width, height) = TypeArea.Of(size);
        var head = Head(name, sheet, measure, width);
        var room = height - head.Height;
        return PageFlow.Spread([.. blocks(sheet, measure, width, room)], _ => room).Select((page, i) => new FullSizePage(
            size,
            i == 0 ? name : null,
            [(head, 0), .. page.Select(placed => (placed.Block, placed.Top + head.Height))]));
    }

    /// <summary>On every page, because they are taken apart.</summary>
    private static Block Head(string name, SheetContent sheet, TextMeasure measure, double width)
    {
        var style = TextStyle.Heading;
        var lines = measure.Wrap(FullSizeWords.Head(name, sheet), style, width);
        return new((lines.Count * style.LineHeight) + 2.5, (canvas, top) =>
        {
            for (var i = 0; i < lines.Count; i++)
            {
                canvas.Text(lines[i], style, 0, top + style.Ascent + (i * style.LineHeight));
            }

            var rule = top + (lines.Count * style.LineHeight) + 1;
            canvas.Line(0, rule, canvas.Width, rule, Canvas.Thin);
        });
    }
}
