using System.Collections.Immutable;
using BendSheet.Core.Commissioning;
using BendSheet.Core.Sheet;

namespace BendSheet.Sheets.Tests;

public class CommissioningPageTests
{
    private static readonly string LongWord = new('W', 100);

    public static TheoryData<int, string, Paper> Pages() => new()
    {
        { 1, "front", Paper.A4 },
        { 4, LongWord, Paper.Letter },
        { 3, string.Join(' ', Enumerable.Repeat("a port with a name that never ends", 40)), Paper.A4 },
        { 60, "front", Paper.Letter },
    };

    [Theory]
    [MemberData(nameof(Pages))]
    public void All_of_it_is_on_its_pages(int rows, string name, Paper paper)
    {
        var content = Content(rows, name);
        var text = Printed.Text(Printed.Pages(Print(content, paper)));
        string[] said =
            [content.Heading, content.Disclaimer, .. content.Sections.SelectMany(section => section.Remarks.Append(section.Heading))];
        Assert.All(said, words => Assert.Contains(Printed.WithoutBlanks(words), text, StringComparison.Ordinal));

        // A row of many lines goes on under the heading that is repeated: its words are there all the same.
        var wanted = content.Sections.SelectMany(section => section.Rows).SelectMany(row => row.Cells)
            .SelectMany(cell => cell.Words.Split(' ')).Where(word => word.Length is > 0 and < 30);
        Assert.All(wanted, word => Assert.Contains(word, text, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Nothing_leaves_the_type_area_or_lies_over_another_or_is_too_small(int rows, string name, Paper paper) =>
        AssertPages.InTypeArea(Printed.Pages(Print(Content(rows, name), paper)));

    [Theory]
    [InlineData(7)]
    [InlineData(60)]
    public void Every_row_has_a_box_for_each_thing_to_tick(int rows)
    {
        var content = Content(rows, "front");
        var drawn = EveryPageTests.Recorded(new([], Paper.A4) { Commissioning = content });
        Assert.Equal(
            content.Sections.Sum(section => section.Rows.Sum(row => row.Cells.Count(cell => cell.Kind == CellKind.Box))),
            drawn.Sum(one => one.Page.Things.Count(thing => thing.Text is null && Math.Abs(thing.Box.Width - 4) < 0.5
                && Math.Abs(thing.Box.Height - 4) < 0.5)));
    }

    /// <summary>Of two tables.</summary>
    internal static CommissioningContent Content(int rows, string name) => new(
        "Before the first drive",
        $"Before the first drive: {name}",
        "It approves nothing.",
        [
            new(
                "Every joint",
                ["Dry: looked at with a lamp.", "Another remark."],
                ["Joint", "Between", "Torque", "Tight", "Dry after first drive"],
                [
                    .. Enumerable.Range(0, rows).Select(i => Row(
                        CommissioningCell.Of(FormattableString.Invariant($"{name}.{i}")), CommissioningCell.Of($"end A of {name}"),
                        CommissioningCell.Blank, CommissioningCell.Box, CommissioningCell.Box)),
                ]),
            new(
                "Who looked",
                [],
                ["What", "Date", "Signature"],
                [
                    Row(CommissioningCell.Of("made and fitted"), CommissioningCell.Blank, CommissioningCell.Blank),
                    Row(new(CellKind.Blank, "at"), CommissioningCell.Blank, CommissioningCell.Blank),
                ]),
        ]);

    private static CommissioningRow Row(params ImmutableArray<CommissioningCell> cells) => new(cells);

    private static PrintedSheets Print(CommissioningContent content, Paper paper) =>
        Printed.Of(new PrintJob([], paper) { Commissioning = content });
}
