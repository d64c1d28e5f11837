using BendSheet.Core.Commissioning;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Elements;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets;

/// <summary>The work after the last bend: every joint, hose and bleed screw with boxes to tick and room to write.</summary>
internal static class CommissioningPage
{
    /// <summary>The pages of it.</summary>
    /// <param name="content">What it says.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of the type area.</param>
    /// <param name="height">Of the type area.</param>
    public static IReadOnlyList<IReadOnlyList<(Block Block, double Top)>> Pages(
        CommissioningContent content, TextMeasure measure, double width, double height)
    {
        var style = TextStyle.Title.Fitting(measure.Printable(content.Heading), width);
        return PageFlow.Spread(
            [
                .. Paragraph.Of(content.Heading, style, measure, width).Select(line => line with { Role = Role.Title }),
                .. Paragraph.Of(content.Disclaimer, TextStyle.Body with { Bold = true }, measure, width),
                Block.Space(2),
                .. content.Sections.SelectMany(section => Section(section, measure, width)),
            ],
            _ => height);
    }

    private static IEnumerable<Block> Section(CommissioningSection section, TextMeasure measure, double width)
    {
        yield return Paragraph.Heading(section.Heading);
        foreach (var block in section.Remarks.SelectMany(remark => Paragraph.Of(remark, TextStyle.Body, measure, width)))
        {
            yield return block with { KeepWithNext = true };
        }

        yield return Block.Space(1) with { KeepWithNext = true };
        foreach (var block in FormTable.Of(section, measure, width))
        {
            yield return block;
        }

        yield return Block.Space(2);
    }
}
