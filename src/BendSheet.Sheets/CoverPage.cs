using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Elements;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets;

/// <summary>
/// The cover of a file with several lines: all of them with their lengths and a box to tick, then what is said of the set as a whole.
/// </summary>
internal static class CoverPage
{
    /// <summary>The pages of a cover.</summary>
    /// <param name="cover">What it says.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of the type area.</param>
    /// <param name="height">Of the type area.</param>
    public static IReadOnlyList<IReadOnlyList<(Block Block, double Top)>> Pages(
        CoverContent cover, TextMeasure measure, double width, double height) => PageFlow.Spread(
        [
            .. Head(cover, measure, width),
            Block.Space(3),
            .. cover.SectionsAbove.SelectMany(section => Section(section, measure, width)),
            .. CoverTable.Of(cover, measure, width),
            Block.Space(3),
            .. cover.Sections.SelectMany(section => Section(section, measure, width)),
        ],
        _ => height);

    private static IEnumerable<Block> Head(CoverContent cover, TextMeasure measure, double width)
    {
        var title = CoverWords.Title(cover);
        var style = TextStyle.Title.Fitting(measure.Printable(title), width);
        return
        [
            .. Paragraph.Of(title, style, measure, width).Select(line => line with { Role = Role.Title }),
            .. Paragraph.Of(cover.Summary, TextStyle.Cell, measure, width),
        ];
    }

    private static IEnumerable<Block> Section(CoverSection section, TextMeasure measure, double width)
    {
        // A tube's material may be any length of words.
        var heading = measure.Wrap(section.Heading, TextStyle.Heading, width);
        var head = Paragraph.Heading(heading[0]);
        yield return head;
        foreach (var line in heading.Skip(1).SelectMany(text => Paragraph.Of(text, TextStyle.Heading, measure, width)))
        {
            yield return line with { KeepWithNext = true };
        }

        foreach (var block in CoverRows.Of(section, measure, width))
        {
            yield return block with { Repeated = head };
        }

        if (section.Remark.Length > 0)
        {
            foreach (var block in Paragraph.Of(section.Remark, TextStyle.Body, measure, width))
            {
                yield return block;
            }
        }

        yield return Block.Space(2);
    }
}
