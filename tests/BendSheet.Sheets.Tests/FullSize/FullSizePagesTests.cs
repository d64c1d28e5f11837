using BendSheet.Core.Sheet;
using BendSheet.Sheets.FullSize;

namespace BendSheet.Sheets.Tests.FullSize;

public class FullSizePagesTests
{
    private const double PointsPerMm = 72 / 25.4;
    private const double MarginMm = 10;

    /// <summary>A page must not take more, so that a set can be sent by mail.</summary>
    private const int MostBytesPerPage = 60 * 1024;

    public static TheoryData<string, Paper> Demanding()
    {
        var cases = PrintedSheetsTests.Demanding();
        foreach (var paper in new[] { Paper.A4, Paper.Letter })
        {
            // Bends in a row with hardly any straight between them, and all at nearly the same reading.
            cases.Add(
                Printed.Head.Replace("lines:", "clips: {every: 30}\nlines:", StringComparison.Ordinal)
                    + "  crowded:\n    from: {fitting: an3}\n    to: {fitting: an3, trim: 5}\n    rows:\n"
                    + string.Concat(
                        Enumerable.Range(0, 40).Select(
                            i => FormattableString.Invariant(
                                $"      - {{straight: {(i == 0 ? 60 : 8)}, rotate: {(i == 0 ? 0 : 1)}, bend: {10 + (i % 2)}}}\n")))
                    + "      - {straight: 80}\n",
                paper);
            cases.Add(
                "units: mm\ntube: {od: 28}\nbender: {radius: 90}\nlines:\n  thick:\n    - {straight: 400, bend: 90}\n    - {straight: "
                    + "300, rotate: 90, bend: 30}\n    - {straight: 400}\n", paper);
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Demanding))]
    public void No_text_leaves_the_type_area(string yaml, Paper paper) => Assert.All(OnPaper.Pages(yaml, FullSizePages.All, paper), page =>
    {
        // The blanks at the ends of texts are for those who have the page read out, and print nothing.
        Assert.All(page.Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value)), letter =>
        {
            var box = letter.BoundingBox;
            Assert.InRange(box.Left / PointsPerMm, MarginMm - 0.3, (page.Width / PointsPerMm) - MarginMm + 0.3);
            Assert.InRange(box.Right / PointsPerMm, MarginMm - 0.3, (page.Width / PointsPerMm) - MarginMm + 0.3);
            Assert.InRange(box.Bottom / PointsPerMm, MarginMm - 1.5, (page.Height / PointsPerMm) - MarginMm + 0.3);
            Assert.InRange(box.Top / PointsPerMm, MarginMm - 1.5, (page.Height / PointsPerMm) - MarginMm + 0.3);
            Assert.True(letter.PointSize > 7.99, $"{letter.Value} in {letter.PointSize} pt");
        });
    });

    [Theory]
    [MemberData(nameof(Demanding))]
    public void No_text_is_printed_over_another(string yaml, Paper paper) => Assert.All(
        OnPaper.Pages(yaml, FullSizePages.All, paper),
        page => Assert.Empty(Printed.Overlaps([.. page.Letters.Where(letter => letter.BoundingBox.Area > 0)])));

    [Theory]
    [MemberData(nameof(Demanding))]
    public void No_line_leaves_the_margins(string yaml, Paper paper) =>
        Assert.All(OnPaper.Pages(yaml, FullSizePages.All, paper), page => Assert.All(page.Paths, path =>
    {
        if (path.GetBoundingRectangle() is { } box)
        {
            Assert.InRange(box.Left / PointsPerMm, MarginMm - 0.1, (page.Width / PointsPerMm) - MarginMm + 0.1);
            Assert.InRange(box.Right / PointsPerMm, MarginMm - 0.1, (page.Width / PointsPerMm) - MarginMm + 0.1);
            Assert.InRange(box.Bottom / PointsPerMm, MarginMm - 0.1, (page.Height / PointsPerMm) - MarginMm + 0.1);
            Assert.InRange(box.Top / PointsPerMm, MarginMm - 0.1, (page.Height / PointsPerMm) - MarginMm + 0.1);
        }
    }));

    [Theory]
    [MemberData(nameof(Demanding))]
    public void A_page_takes_little_room(string yaml, Paper paper)
    {
        var printed = Printed.Sheets(yaml, paper, FullSizePages.All);
        Assert.InRange(printed.Pdf.Length / printed.Pages, 1, MostBytesPerPage);
    }

    [Fact]
    public void They_come_behind_the_lines_own_sheet_and_are_counted_with_it()
    {
        var pages = Printed.Pages(Printed.Sheets(Printed.WorkedExample, fullSize: FullSizePages.All));
        var texts = pages.Select(page => Printed.Text([page])).ToList();
        var fingerprint = Printed.Contents(Printed.WorkedExample)[0].Fingerprint;
        Assert.Equal(4, texts.Count);
        Assert.StartsWith("Full-sizestrip–front-left", texts[1], StringComparison.Ordinal);
        Assert.StartsWith("Full-sizeanglegauges–front-left", texts[2], StringComparison.Ordinal);
        Assert.StartsWith("Full-sizerotationdial–front-left", texts[3], StringComparison.Ordinal);
        Assert.All(
            texts.Select((text, i) => (text, i)),
            page => Assert.EndsWith(
                FormattableString.Invariant($"sheet{fingerprint}front-leftpage{page.i + 1}of4"), page.text, StringComparison.Ordinal));
    }

    [Fact]
    public void Each_part_has_an_entry_of_the_outline_below_its_line()
    {
        var printed = Printed.Sheets(Printed.WorkedExample, fullSize: FullSizePages.All);
        using var document = UglyToad.PdfPig.PdfDocument.Open(printed.Pdf.ToArray());
        Assert.True(document.TryGetBookmarks(out var outline));
        var line = Assert.Single(outline.Roots);
        Assert.Equal("front-left", line.Title);
        Assert.Equal(
            ["Full-size strip", "Full-size angle gauges", "Full-size rotation dial"], line.Children
                .Select(child => child.Title), StringComparer.Ordinal);
    }

    [Fact]
    public void Without_being_asked_for_they_are_not_there() =>
        Assert.Equal(
            Printed.Sheets(Printed.WorkedExample).Pdf.ToArray(), Printed.Sheets(Printed.WorkedExample, fullSize: FullSizePages.None).Pdf
                .ToArray());

    [Theory]
    [InlineData(FullSizePages.Strips, 1)]
    [InlineData(FullSizePages.Gauges, 0)]
    [InlineData(FullSizePages.Dial, 0)]
    public void A_straight_tube_has_nothing_to_hold_against_a_gauge(FullSizePages wanted, int pages) =>
        Assert.Equal(pages, OnPaper.Pages(Printed.Head + "  straight tube:\n    - {straight: 200}\n", wanted).Count);

    [Fact]
    public void A_tube_that_the_paper_does_not_hold_is_said_in_words()
    {
        const string Thick =
            "units: mm\ntube: {od: 200}\nbender: {radius: 900}\nlines:\n  thick:\n    - {straight: 4000, bend: 90}\n    - {straight: "
                + "4000}\n";
        var text = Printed.Text(OnPaper.Pages(Thick, FullSizePages.All));
        Assert.Contains("Thestraighttubedoesnotfitonthispaperatfullsize", text, StringComparison.Ordinal);
        Assert.Contains("Thetubeistoothickforadialonthispaper", text, StringComparison.Ordinal);
        Assert.Contains("doesnotfitonthispaper:fromtangentpoint", text, StringComparison.Ordinal);
        var far = Printed.Text(
            OnPaper.Pages(Printed.Head + "  long:\n    - {straight: 45000, bend: 10}\n    - {straight: 45000}\n", FullSizePages.Strips));
        Assert.Contains("wouldtakemorethan200tiles", far, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_input_gives_the_same_bytes() => Assert.Equal(
        Printed.Sheets(Printed.ManyBends(12), fullSize: FullSizePages.All).Pdf.ToArray(),
        Printed.Sheets(Printed.ManyBends(12), fullSize: FullSizePages.All).Pdf.ToArray());
}
