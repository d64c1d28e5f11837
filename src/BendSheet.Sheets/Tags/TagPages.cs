using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Tags;

/// <summary>Tags to wrap round finished lines, as many on a page as fit.</summary>
internal static class TagPages
{
    /// <summary>Between tags, to cut.</summary>
    private const double Gap = 4;

    /// <summary>Half a tag is at least this wide where two stand side by side.</summary>
    private const double LeastHalf = 30;

    /// <summary>A tag that would be higher takes the width of two.</summary>
    private const double MostHeight = 45;

    /// <summary>The pages.</summary>
    /// <param name="sheet">What they say.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of the type area.</param>
    /// <param name="height">Of the type area.</param>
    public static IReadOnlyList<IReadOnlyList<(Block Block, double Top)>> Pages(
        TagSheet sheet, TextMeasure measure, double width, double height) => PageFlow.Spread(
        [
            .. Paragraph.Of(TagWords.Head(sheet), TextStyle.Title.Fitting(measure.Printable(TagWords.Head(sheet)), width), measure, width)
                .Select(line => line with { Role = Role.Title }),
            .. TagWords.HowTo.SelectMany(text => Paragraph.Of(text, TextStyle.Body, measure, width)),
            Block.Space(3),
            .. Rows([.. sheet.Tags.Select(tag => Drawing(tag, measure, width))], width).Select(Row),
        ],
        _ => height);

    /// <summary>Half the width of the page, or all of it for what does not fit there.</summary>
    private static TagDrawing Drawing(TagContent tag, TextMeasure measure, double width)
    {
        var half = TagDrawing.Of(tag, measure, (width - Gap) / 2);
        return half.Half >= LeastHalf && half.Height <= MostHeight ? half : TagDrawing.Of(tag, measure, width);
    }

    private static IEnumerable<List<TagDrawing>> Rows(List<TagDrawing> tags, double width)
    {
        List<TagDrawing> row = [];
        foreach (var tag in tags)
        {
            if (row.Count > 0 && row.Sum(other => other.Width + Gap) + tag.Width > width + 1e-6)
            {
                yield return row;
                row = [];
            }

            row.Add(tag);
        }

        if (row.Count > 0)
        {
            yield return row;
        }
    }

    private static Block Row(List<TagDrawing> tags)
    {
        var height = tags.Max(tag => tag.Height);
        return new(height + Gap, (canvas, top) =>
        {
            foreach (var tag in tags)
            {
                tag.Draw(canvas, top, height);
                canvas = canvas.MovedRight(tag.Width + Gap);
            }
        })
        {
            Role = Role.Figure,
            Alternative = string.Join(' ', tags.Select(tag => TagWords.Alternative(tag.Tag))),
        };
    }
}
