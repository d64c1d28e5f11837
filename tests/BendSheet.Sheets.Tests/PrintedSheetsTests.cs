using BendSheet.Core.Sheet;

namespace BendSheet.Sheets.Tests;

public class PrintedSheetsTests
{
    private const double PointsPerMm = 72 / 25.4;
    private const double MarginMm = 10;

    [Theory]
    [InlineData(Paper.A4, 210, 297)]
    [InlineData(Paper.Letter, 215.9, 279.4)]
    public void Every_page_is_exactly_of_its_paper(Paper paper, double widthMm, double heightMm) =>
        Assert.All(Printed.Pages(Printed.Sheets(Printed.ManyBends(20), paper)), page =>
        {
            Assert.Equal(widthMm, page.Width / PointsPerMm, 3);
            Assert.Equal(heightMm, page.Height / PointsPerMm, 3);
        });

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void All_that_the_content_says_is_on_the_page(Paper paper)
    {
        var content = Printed.Contents(Printed.WorkedExample)[0];
        var text = Printed.Text(Printed.Pages(Printed.Sheets([content], paper)));
        string[] said =
        [
            content.Line, content.Project, content.Ends, content.Tube, content.Bender, content.CutLength.Main, content.CutLength.Other,
            content.DevelopedLength.Main, content.Fingerprint, content.DatumName, content.Envelope, Cautions.Rounded, Cautions.Rotation,
            .. content.ReadFirst, .. content.Order, .. Cautions.All,
            .. content.Checks.Select(check => $"{check.Name}: {check.Figure}"),
            .. content.Rows.SelectMany(row => new[]
            {
                FormattableString.Invariant($"{row.Number}"),
                row.Mark,
                row.MarkOther,
                row.LineClock,
                row.LineFigure,
                row.Held,
                row.Rotate,
                row.Dial,
                row.Pull, row.Bend, row.StraightAfter, row.Swing, row.Remark,
            }),
        ];
        Assert.All(said, words => Assert.Contains(Printed.WithoutBlanks(words), text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void A_row_of_the_table_reads_from_left_to_right(Paper paper)
    {
        var text = Printed.Text(Printed.Pages(Printed.Sheets(Printed.WorkedExample, paper)));

        // Bend 2 of the worked example: start 176.0569 from the cut end, 175.5569 from the flare face.
        Assert.Contains("2175.5629/32in10:30315°30°A→30°182.0220mm45°cw90°", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Clips_stand_in_words_on_the_page_and_as_triangles_at_their_places_below_the_straight_tube()
    {
        var content = Printed.Contents(
            Printed.WorkedExample.Replace("lines:", "clips: {every: 200, from-ends: 60, hole: 5.5}\nlines:", StringComparison.Ordinal))[0];
        var pages = Printed.Pages(Printed.Sheets([content]));
        var page = pages[0];
        Assert.Equal(2, content.Clips.Length);
        Assert.All(content.Clips, words => Assert.Contains(Printed.WithoutBlanks(words), Printed.Text(pages), StringComparison.Ordinal));

        // The type area less the room for the letters at both ends is the whole tube. A triangle's two slanting sides begin at its tip.
        const double EndRoom = 7;
        var width = (page.Width / PointsPerMm) - (2 * (MarginMm + EndRoom));
        var starts = page.Paths.SelectMany(path => path).SelectMany(path => path.Commands).OfType<UglyToad.PdfPig.Core.PdfSubpath.Line>()
            .Where(line => Math.Abs(Math.Abs(line.To.X - line.From.X) - (0.9 * PointsPerMm)) < 0.01
            && Math.Abs(line.From.Y - line.To.Y - (1.44 * PointsPerMm)) < 0.01)
            .Select(line => line.From.X / PointsPerMm).Order().ToList();
        var places = content.Strip.Clips.Select(place => MarginMm + EndRoom + (place / content.Strip.Length * width)).ToList();
        Assert.Equal(2 * places.Count, starts.Count);
        Assert.All(places.SelectMany(place => new[] { place, place }).Zip(starts), pair => Assert.Equal(pair.First, pair.Second, 0.01));
    }

    public static TheoryData<string, Paper> Demanding()
    {
        var longWord = new string('W', 90);
        string[] files =
        [
            Printed.WorkedExample,
            Printed.ManyBends(12),
            Printed.ManyBends(60),
            Printed.Head + "  straight tube:\n    - {straight: 300}\n",
            Printed.Head + "  nine metres:\n    - {straight: 4500, bend: 90}\n    - {straight: 4500}\n",
            Printed.Head + "  forty millimetres:\n    - {straight: 20, bend: 20}\n    - {straight: 20}\n",
            Printed.Head.Replace("units: mm", "units: in", StringComparison.Ordinal)
                .Replace("Finch", longWord + longWord, StringComparison.Ordinal).Replace("0.5", "1/64", StringComparison.Ordinal)
                .Replace("17", "3/4", StringComparison.Ordinal).Replace("9}", "3/8}", StringComparison.Ordinal)
                .Replace("35", "1 1/2", StringComparison.Ordinal)
                + $"  {longWord}:\n    from: {{at: {longWord}{longWord}, fitting: an3}}\n    rows:\n      - {{straight: 1177 31/128, "
                + $"bend: 90, note: {longWord} {longWord}}}\n      - {{straight: 13 1/7}}\n",
            Printed.Head + "  Ελληνικά Кириллица:\n    - {straight: 200, bend: 60, note: \""
                + string.Concat(Enumerable.Repeat("a note that goes on ", 60)) + "\"}\n    - {straight: 200}\n",
        ];
        var cases = new TheoryData<string, Paper>();
        foreach (var file in files)
        {
            cases.Add(file, Paper.A4);
            cases.Add(file, Paper.Letter);
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Demanding))]
    public void No_text_leaves_the_type_area(string yaml, Paper paper) =>
        Assert.All(
            Printed.Pages(Printed.Sheets(yaml, paper)),
            page => Assert.All(page.Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value)), letter =>
        {
            var box = letter.BoundingBox;
            Assert.InRange(box.Left / PointsPerMm, MarginMm - 0.3, (page.Width / PointsPerMm) - MarginMm + 0.3);
            Assert.InRange(box.Right / PointsPerMm, MarginMm - 0.3, (page.Width / PointsPerMm) - MarginMm + 0.3);
            Assert.InRange(box.Bottom / PointsPerMm, MarginMm - 1.5, (page.Height / PointsPerMm) - MarginMm + 0.3);
            Assert.InRange(box.Top / PointsPerMm, MarginMm - 1.5, (page.Height / PointsPerMm) - MarginMm + 0.3);
        }));

    /// <summary>Where the columns behind the table end in the middle of a long paragraph.</summary>
    [Theory]
    [InlineData(165, Paper.Letter)]
    [InlineData(176, Paper.A4)]
    [InlineData(216, Paper.A4)]
    [InlineData(292, Paper.A4)]
    public void However_many_bends_nothing_runs_into_the_foot(int bends, Paper paper)
    {
        const double FootMm = 14.5;
        var rows = Enumerable.Range(0, bends)
            .Select(i => FormattableString.Invariant($"    - {{straight: 100, rotate: {i * 37 % 180}, bend: {20 + (i % 50)}}}\n"));
        Assert.All(
            Printed.Pages(Printed.Sheets(Printed.Head + "  many:\n" + string.Concat(rows) + "    - {straight: 80}\n", paper)),
            page => Assert.Equal(
                $"many page {page.Number} of",
                string.Join(
                    ' ', page.GetWords().Where(word => word.BoundingBox.Bottom / PointsPerMm < FootMm).Select(word => word.Text).Skip(2)
                        .SkipLast(1)),
                StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Demanding))]
    public void No_text_is_printed_over_another(string yaml, Paper paper)
    {
        var pages = Printed.Pages(Printed.Sheets(yaml, paper));
        Assert.All(pages, page => Assert.Empty(Printed.Overlaps([.. page.Letters.Where(letter => letter.BoundingBox.Area > 0)])));
    }

    [Theory]
    [MemberData(nameof(Demanding))]
    public void No_line_of_a_table_runs_off_the_paper(string yaml, Paper paper) =>
        Assert.All(Printed.Pages(Printed.Sheets(yaml, paper)), page => Assert.All(page.Paths, path =>
        {
            var box = path.GetBoundingRectangle();
            if (box is { } inside)
            {
                Assert.InRange(inside.Left, 0, page.Width);
                Assert.InRange(inside.Right, 0, page.Width);
                Assert.InRange(inside.Bottom, 0, page.Height);
                Assert.InRange(inside.Top, 0, page.Height);
            }
        }));

    [Fact]
    public void A_table_longer_than_a_page_goes_on_under_its_heading()
    {
        var pages = Printed.Pages(Printed.Sheets(Printed.ManyBends(60)));
        var texts = pages.Select(page => Printed.Text([page])).ToList();
        var rows = Printed.Contents(Printed.ManyBends(60))[0].Rows;
        foreach (var row in rows)
        {
            var cells = Printed.WithoutBlanks($"{row.Number}{row.Mark}{row.MarkOther}{row.LineClock}{row.LineFigure}{row.Pull}{row.Held}");
            var page = Assert.Single(texts, text => text.Contains(cells, StringComparison.Ordinal));
            Assert.Contains("mark,mm", page, StringComparison.Ordinal);
        }

        Assert.All(texts.Skip(1), text => Assert.StartsWith("many,continued", text, StringComparison.Ordinal));
    }

    [Fact]
    public void Each_line_begins_a_page_of_its_own_and_an_entry_of_the_outline()
    {
        var printed = Printed.Sheets(Printed.WorkedExample + "\n  second:\n    - {straight: 100, bend: 20}\n    - {straight: 100}\n");
        using var document = UglyToad.PdfPig.PdfDocument.Open(printed.Pdf.ToArray());
        Assert.Equal(2, printed.Job.Lines.Length);
        Assert.Equal(printed.Pages, document.NumberOfPages);
        Assert.True(document.TryGetBookmarks(out var outline));
        Assert.Equal(["front-left", "second"], outline.GetNodes().Select(node => node.Title), StringComparer.Ordinal);
        Assert.Equal("Finch", document.Information.Title);
        Assert.Null(document.Information.Author);
    }

    [Theory]
    [InlineData(3, Paper.A4)]
    [InlineData(3, Paper.Letter)]
    [InlineData(4, Paper.A4)]
    [InlineData(4, Paper.Letter)]
    [InlineData(5, Paper.A4)]
    public void A_line_of_a_few_bends_with_a_fitting_at_both_ends_keeps_to_one_page(int bends, Paper paper)
    {
        var yaml = Printed.FewBends(bends);
        var printed = Printed.Sheets(yaml, paper);
        Assert.Equal(1, printed.Pages);
        var page = Assert.Single(Printed.Pages(printed));
        var text = Printed.Text([page]);
        Assert.All(Cautions.All, caution => Assert.Contains(Printed.WithoutBlanks(caution), text, StringComparison.Ordinal));
        Assert.Empty(Printed.Overlaps([.. page.Letters.Where(letter => letter.BoundingBox.Area > 0)]));

        // In the picture from which the piece is bent no two bends share a number: each stands on the strip, in the table, and in that view
        // at least.
        var numbers = page.GetWords().Where(word => word.Letters[0].PointSize < 9).Select(word => word.Text).ToList();
        Assert.All(Enumerable.Range(1, bends), bend => Assert.True(
            numbers.Count(number => string.Equals(number, FormattableString.Invariant($"{bend}"), StringComparison.Ordinal)) >= 2,
            $"bend {bend}"));
    }

    private const string LongWithClips = """
        project: Finch
        units: mm
        tube: {od: 3/16 in, wall: 0.028 in, material: copper-nickel}
        bender: {radius: 9/16 in, tests: [{pull: 93, got: 90}, {pull: 47.5, got: 45}]}
        fittings:
          an3: {flare: single 37, takes: 0.5, slide-on: [{nut: 17}, {sleeve: 9}], straight: 35}
        wanted: {miss: 1 m, askew: 90}
        tolerance: {straight: 1, bend: 1.5, rotate: 3}
        clips: {every: 300, from-ends: 60, hole: 5}
        lines:
          rear:
            from: {at: master cylinder, fitting: an3}
            to: {at: bracket, fitting: an3, trim: 25}
            rows:
              - {straight: 125, bend: 60}
              - {straight: 150, rotate: 120 ccw, bend: 75}
              - {straight: 1770, rotate: 90 cw, bend: 25, note: over the differential}
              - {straight: 95, rotate: 180, bend: 25}
              - {straight: 165}
        """;

    /// <summary>Run on, they give the shape the room that it needs to be read.</summary>
    [Fact]
    public void Cautions_are_a_list_where_the_shape_has_room_enough_besides()
    {
        Assert.Equal(Cautions.All.Count, Listed(Printed.FewBends(1)));
        Assert.Equal(0, Listed(Printed.FewBends(5)));

        static int Listed(string yaml) => EveryPageTests.Recorded(new(Printed.Contents(yaml), Paper.A4)).SelectMany(one => one.Page.Things)
            .Count(thing => thing.Role == Sheets.Drawing.Role.ListItem
                && Cautions.All.Any(caution => caution.StartsWith(thing.Text!, StringComparison.Ordinal)));
    }

    /// <summary>On one page of A4 its flat views would be 6 mm long, at 1 : 300.</summary>
    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void A_long_line_of_four_bends_tests_and_clips_fills_two_pages(Paper paper) => FillsTwoPages(LongWithClips, paper);

    [Theory]
    [InlineData(6, Paper.A4)]
    [InlineData(6, Paper.Letter)]
    [InlineData(8, Paper.A4)]
    [InlineData(8, Paper.Letter)]
    public void More_bends_than_one_page_holds_fill_two(int bends, Paper paper) => FillsTwoPages(
        Printed.FewBends(5).Replace("      - {straight: 80}\n", string.Concat(Enumerable.Range(6, bends - 5).Select(
            bend => FormattableString.Invariant($"      - {{straight: {100 + (10 * bend)}, rotate: {35 * bend} cw, bend: 50}}\n")))
            + "      - {straight: 80}\n", StringComparison.Ordinal),
        paper);

    /// <summary>Only the last page may be as empty as its checks are few.</summary>
    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void No_page_of_a_line_of_many_bends_is_half_blank_but_the_last(Paper paper) => Assert.All(Enumerable.Range(9, 25), bends =>
        Assert.All(Printed.Pages(Printed.Sheets(Printed.ManyBends(bends), paper)).SkipLast(1), AssertHalfFull));

    /// <summary>The table and the order of work on the first page, the shape and the checks on the second; neither is half blank.</summary>
    private static void FillsTwoPages(string yaml, Paper paper)
    {
        var content = Printed.Contents(yaml)[0];
        var pages = Printed.Pages(Printed.Sheets(yaml, paper));
        Assert.Equal(2, pages.Count);
        var texts = pages.Select(page => Printed.Text([page])).ToList();
        Assert.All(content.Order, step => Assert.Contains(Printed.WithoutBlanks(step), texts[0], StringComparison.Ordinal));
        var cautions = texts[0].Contains(Printed.WithoutBlanks(Cautions.All[0]), StringComparison.Ordinal) ? texts[0] : texts[1];
        Assert.All(Cautions.All, caution => Assert.Contains(Printed.WithoutBlanks(caution), cautions, StringComparison.Ordinal));
        Assert.All(pages, AssertHalfFull);
    }

    private static void AssertHalfFull(UglyToad.PdfPig.Content.Page page)
    {
        const double FootMm = 15;
        var lowest = page.Letters.Where(letter => letter.BoundingBox.Bottom / PointsPerMm > FootMm)
            .Min(letter => letter.BoundingBox.Bottom / PointsPerMm);
        Assert.InRange(lowest / (page.Height / PointsPerMm), 0, 0.4);
    }

    [Fact]
    public void A_line_and_its_mirror_image_are_drawn_to_one_scale_however_much_else_there_is_on_their_sheets()
    {
        var names = string.Concat(Enumerable.Repeat("a bracket with a long name ", 12));
        var yaml = Printed.FewBends(3) + $"  other: {{mirror: few, from: {{at: {names}}}, to: {{at: {names}}}}}\n";
        var scales = Printed.Pages(Printed.Sheets(yaml)).Select(page => Printed.Text([page]))
            .Where(text => text.Contains("scale1:", StringComparison.Ordinal))
            .Select(text => text[text.IndexOf("scale1:", StringComparison.Ordinal)..][..12]).ToList();
        Assert.Equal(2, scales.Count);
        Assert.Equal(scales[0], scales[1], StringComparer.Ordinal);

        // Alone, the one with less on its sheet is drawn larger.
        var alone = Printed.Text(Printed.Pages(Printed.Sheets(Printed.FewBends(3))));
        Assert.DoesNotContain(scales[0], alone, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_input_gives_the_same_bytes_also_when_printed_at_the_same_time()
    {
        var once = Printed.Sheets(Printed.WorkedExample).Pdf.ToArray();
        Assert.All(
            Enumerable.Range(0, 8).AsParallel().Select(_ => Printed.Sheets(Printed.WorkedExample).Pdf.ToArray()).ToList(),
            again => Assert.Equal(once, again));
    }

    [Fact]
    public void A_sign_that_the_font_lacks_is_reported_and_stood_in_for()
    {
        var printed = Printed.Sheets(Printed.WorkedExample.Replace("mind the column", "mind the 管", StringComparison.Ordinal));
        Assert.Equal(["管 (U+7BA1)"], printed.MissingCharacters, StringComparer.Ordinal);
        Assert.Contains("mindthe□", Printed.Text(Printed.Pages(printed)), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Demanding))]
    public void Only_the_tools_own_typefaces_are_used_and_nothing_is_smaller_than_eight_points(string yaml, Paper paper) =>
        Assert.All(Printed.Pages(Printed.Sheets(yaml, paper)), page => Assert.All(page.Letters, letter =>
        {
            Assert.Contains("+In", letter.FontName, StringComparison.Ordinal);
            Assert.True(letter.PointSize > 7.99, $"{letter.Value} in {letter.PointSize} pt");
        }));

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Every_mark_in_the_table_is_fourteen_points(Paper paper)
    {
        var yaml = Printed.ManyBends(60);
        var words = Printed.Pages(Printed.Sheets(yaml, paper)).SelectMany(page => page.GetWords()).ToList();
        Assert.All(Printed.Contents(yaml)[0].Rows, row => Assert.Contains(words, word =>
            string.Equals(word.Text, row.Mark, StringComparison.Ordinal) && Math.Abs(word.Letters[0].PointSize - 14) < 0.01));
    }
}
