using BendSheet.Core.Sheet;
using UglyToad.PdfPig;

namespace BendSheet.Sheets.Tests;

public class CoverPageTests
{
    private static readonly string LongWord = new('W', 100);

    public static TheoryData<int, string, Paper> Covers() => new()
    {
        { 2, "front", Paper.A4 },
        { 5, LongWord, Paper.A4 },
        { 5, LongWord, Paper.Letter },
        { 100, "Ελληνικά Кириллица", Paper.A4 },
        { 100, "front", Paper.Letter },
    };

    [Theory]
    [MemberData(nameof(Covers))]
    public void All_that_the_cover_says_is_on_its_pages(int lines, string name, Paper paper)
    {
        var cover = Cover(lines, name);
        var text = Printed.Text(Printed.Pages(Print(cover, paper)));
        string[] said =
        [
            cover.Project, cover.Summary,
            .. cover.Lines.SelectMany(
                line => new[] { line.Name, line.Tube, line.CutLength!.Main + line.CutLength.Other + line.Fingerprint }),
            .. cover.Sections.SelectMany(section => section.Rows.Select(row => row.HowMuch + row.Other)),
            .. cover.Sections.SelectMany(section => new[] { section.Heading, section.Remark }),
        ];
        Assert.All(said, words => Assert.Contains(Printed.WithoutBlanks(words), text, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Covers))]
    public void Nothing_leaves_the_type_area_or_lies_over_another_or_is_too_small(int lines, string name, Paper paper) =>
        AssertPages.InTypeArea(Printed.Pages(Print(Cover(lines, name), paper)));

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void More_lines_than_a_page_holds_go_on_under_the_same_heading(Paper paper)
    {
        var cover = Cover(100, "line");
        var pages = Printed.Pages(Print(cover, paper)).Select(page => Printed.Text([page])).ToList();
        Assert.InRange(pages.Count, 3, 6);
        Assert.All(cover.Lines, line =>
        {
            var page = Assert.Single(
                pages, text => text.Contains(Printed.WithoutBlanks($"{line.Name}{line.EndsOnPage}"), StringComparison.Ordinal));
            Assert.Contains("madelinetubecutlengthsheet", page, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void A_line_that_is_made_is_ticked_and_another_has_an_empty_box()
    {
        var cover = Cover(2, "front");
        var none = Printed.Text(Printed.Pages(Print(cover, Paper.A4)));
        var one = Printed.Text(
            Printed.Pages(Print(cover with { Lines = [cover.Lines[0], cover.Lines[1] with { State = LineState.Made }] }, Paper.A4)));
        Assert.DoesNotContain("✓", none, StringComparison.Ordinal);
        Assert.Contains("✓" + Printed.WithoutBlanks(cover.Lines[1].Name), one, StringComparison.Ordinal);
        Assert.Single(one, letter => letter == '✓');
    }

    [Fact]
    public void The_cover_comes_before_the_sheets_in_pages_outline_and_reading_order()
    {
        var sheets = Printed.Contents(Printed.WorkedExample);
        var printed = Printed.Of(new PrintJob(sheets, Paper.A4) { Cover = Cover(2, "front"), Title = "Finch" });
        using var document = PdfDocument.Open(printed.Pdf.ToArray());
        Assert.Equal(2, document.NumberOfPages);
        Assert.True(document.TryGetBookmarks(out var outline));
        Assert.Equal(["Cover", "front-left"], outline.GetNodes().Select(node => node.Title), StringComparer.Ordinal);
        var parts = ReadOut.Of(document).Parts;
        Assert.Equal(
            ["Finch", "front-left"], parts
                .Select(part => part.Parts[0] is { Type: "H1" } name ? name.Words : string.Empty), StringComparer.Ordinal);
        var table = parts[0].Parts.First(part => part.Type is "Table");
        Assert.Equal(3, table.Parts.Count);
        Assert.All(table.Parts, row => Assert.Equal(5, row.Parts.Count));
    }

    [Fact]
    public void A_sign_that_the_font_lacks_is_reported_from_the_cover_as_well()
    {
        var printed = Print(Cover(2, "管"), Paper.A4);
        Assert.Equal(["管 (U+7BA1)"], printed.MissingCharacters, StringComparer.Ordinal);
        Assert.Contains("□", Printed.Text(Printed.Pages(printed)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_mirrored_page_has_left_and_right_exchanged_and_its_foot_says_so_the_right_way_round()
    {
        var sheets = Printed.Contents(Printed.WorkedExample);
        var plain = Assert.Single(Printed.Pages(Printed.Sheets(sheets)));
        var printed = Printed.Of(new PrintJob(sheets, Paper.A4) { Mirrored = true });
        var mirrored = Assert.Single(Printed.Pages(printed));
        const string Note = "Mirrored: copy it face down";

        var letters = mirrored.Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value)).ToList();
        var note = letters.Where(letter => letter.EndBaseLine.X > letter.StartBaseLine.X).ToList();
        Assert.Equal(Printed.WithoutBlanks(Note), string.Concat(note.Select(letter => letter.Value)));
        var others = letters.Except(note).ToList();
        var expected = plain.Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value)).ToList();
        Assert.Equal(expected.Select(letter => letter.Value), others.Select(letter => letter.Value), StringComparer.Ordinal);
        Assert.All(expected.Zip(others), pair =>
        {
            Assert.Equal(plain.Width - pair.First.StartBaseLine.X, pair.Second.StartBaseLine.X, 0.01);
            Assert.Equal(pair.First.StartBaseLine.Y, pair.Second.StartBaseLine.Y, 0.01);
        });
    }

    private static PrintedSheets Print(CoverContent cover, Paper paper) => Printed.Of(new PrintJob([], paper) { Cover = cover });

    internal static CoverContent Cover(int lines, string name) => new()
    {
        Project = "Finch",
        Summary = "Some lines.",
        Lines =
        [
            .. Enumerable.Range(0, lines).Select(i => new CoverLine(
                FormattableString.Invariant($"{name} no. {i}."),
                name,
                FormattableString.Invariant($"bracket {i}"),
                "3/16 in",
                new("454.0 mm", "17 7/8 in"),
                LineState.ToMake,
                FormattableString.Invariant($"{i:x6}"))),
        ],
        Notation = new(Imperial: false, 32),
        Tubes =
        [
            new(
                "of " + string.Join(' ', Enumerable.Repeat("a material with a long name", 8)),
                [new("all lines", new("123456.5 mm", "4860 1/2 in"))],
                [
                    new(
                        "roll",
                        new("5000.0 mm", "16 ft 5 in"),
                        [new("454.0", "454.0", "4546.0", "front"), new("908.0", "454.0", "4092.0", "rear")],
                        [new("feed", "about 420.0 mm")],
                        "3672.0 mm"),
                ],
                ["Fits what is there."]),
        ],
        Shopping = [new(10, string.Join(' ', Enumerable.Repeat("nuts for it", 30)), "M10", 12, 2, "front")],
        Remarks = ["Of the right size."],
    };
}
