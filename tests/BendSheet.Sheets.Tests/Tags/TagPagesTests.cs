using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Files.Reading;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;
using BendSheet.Sheets.Tags;

namespace BendSheet.Sheets.Tests.Tags;

/// <summary>Tags drawn on a page that only remembers.</summary>
public class TagPagesTests
{
    private const string Letters = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_.()äéøŁЖ□  ";

    private static Length BrakeTube => Length.FromInches(3.0 / 16);

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Every_line_has_one_tag_made_and_rough_ones_too(Paper paper)
    {
        var sheet = Typed(SixtyLines());
        Assert.Equal(60, sheet.Tags.Length);
        var texts = Drawn(sheet, paper).SelectMany(page => page.Things).Select(thing => thing.Text).OfType<string>().ToList();
        Assert.All(Enumerable.Range(0, 60), i => Assert.Equal(2, Times(FormattableString.Invariant($"line {i:00}"))));
        Assert.Equal(2 * 58, texts.Count(text => text.StartsWith("sheet ", StringComparison.Ordinal)));
        Assert.Equal(2 * 2, Times(TagWords.NoSheet));

        int Times(string words) => texts.Count(text => string.Equals(text, words, StringComparison.Ordinal));
    }

    [Fact]
    public void A_tag_says_where_the_line_runs_its_length_and_the_number_of_its_sheet()
    {
        var yaml = Printed.WorkedExample;
        var sheet = Printed.Contents(yaml)[0];
        var tag = Assert.Single(Typed(yaml).Tags);
        Assert.Equal(("front-left", "A: master cylinder", "B: hose bracket"), (tag.Name, tag.EndA, tag.EndB));
        Assert.Equal(($"cut {sheet.CutLength.Main}", sheet.CutLength.Other), (tag.Length, tag.LengthOther));
        Assert.Equal($"sheet {sheet.Fingerprint}", tag.Sheet);
    }

    [Fact]
    public void Three_hundred_random_names_stay_inside_their_half_of_the_tag_and_lose_no_letter()
    {
        var random = new Random(8);
        foreach (var width in new[] { 93, 96, 190.0 })
        {
            for (var i = 0; i < 300; i++)
            {
                var tag = new TagContent(
                    Name(random, 90), "A: " + Name(random, 70), "B: " + Name(random, 70), "cut 454.0 mm", "17 7/8 in", "sheet f03ea5",
                    Length.FromMillimetres(2 + (random.NextDouble() * 10)));
                var measure = new TextMeasure();
                var drawing = TagDrawing.Of(tag, measure, width);
                var page = new RecordingPage();
                drawing.Draw(new(page, 0, width), 0, drawing.Height);
                var texts = page.Things.Where(thing => thing.Text is not null).ToList();
                Assert.All(texts, thing => Assert.InRange(thing.Box.Top, 1, drawing.Height - thing.Box.Height - 1));
                List<DrawnThing>[] halves =
                [
                    [.. texts.Where(thing => thing.Box.Left < drawing.Half)],
                    [.. texts.Where(thing => thing.Box.Left > width - drawing.Half)],
                ];
                Assert.All(halves[0], thing => Assert.InRange(thing.Box.Left + thing.Box.Width, 1, drawing.Half - 1));
                Assert.All(halves[1], thing => Assert.InRange(thing.Box.Left + thing.Box.Width, width - drawing.Half, width - 1));
                var said = Printed.WithoutBlanks(
                    measure.Printable(tag.Name + tag.EndA + tag.EndB + tag.Length + tag.LengthOther + tag.Sheet));
                Assert.All(halves, half => Assert.Equal(said, Printed.WithoutBlanks(string.Concat(half.Select(thing => thing.Text)))));
            }
        }
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Tags_stay_on_their_pages_however_long_the_names(Paper paper)
    {
        var random = new Random(4);
        var sheet = new TagSheet("Finch", [.. Enumerable.Range(0, 300).Select(i => new TagContent(
            Name(random, i % 10 == 0 ? 400 : 40), "A: " + Name(random, 60), "B: " + Name(random, 60), "cut 1 mm", "0 in", "sheet 0",
            Length.FromMillimetres(i % 25 == 0 ? 40 : 4.75)))]);
        var area = TypeArea.Of(Size(paper));
        var pages = Drawn(sheet, paper);
        Assert.All(pages, page => Assert.All(page.Things, thing =>
        {
            Assert.InRange(thing.Box.Left, -0.2, area.Width - thing.Box.Width + 0.2);
            Assert.InRange(thing.Box.Top, -0.2, area.Height - thing.Box.Height + 0.2);
        }));
        Assert.Equal(300, pages.Sum(page => page.Things.Count(thing => thing.Text is null && thing.Box.Width > 90)));
    }

    [Fact]
    public void What_lies_between_the_halves_reaches_once_round_the_tube()
    {
        var tag = Assert.Single(Typed(Printed.WorkedExample).Tags);
        var page = new RecordingPage();
        TagDrawing.Of(tag, new(), 93).Draw(new(page, 0, 93), 0, 30);
        var folds = page.Things.Where(thing => thing.Text is null && thing.Box.Width < 1)
            .Select(thing => thing.Box.Left + (thing.Box.Width / 2)).Order().ToList();
        Assert.Equal(2, folds.Count);
        Assert.InRange(folds[1] - folds[0], Math.PI * BrakeTube.Millimetres, (Math.PI * BrakeTube.Millimetres) + 2);
    }

    [Fact]
    public void A_short_name_is_large_and_a_long_one_never_below_nine_points()
    {
        Assert.Equal(TextStyle.TagName.CapHeight, CapHeight("rear"), 6);
        Assert.Equal((TextStyle.TagName with { Points = 9 }).CapHeight, CapHeight(string.Join(' ', Enumerable.Repeat("rear-axle", 12))), 6);

        static double CapHeight(string name)
        {
            var page = new RecordingPage();
            TagDrawing.Of(new(name, "A", "B", "cut", "cut", "sheet", BrakeTube), new(), 93).Draw(new(page, 0, 93), 0, 30);
            return page.Things.First(thing => thing.Text is not null).Box.Height;
        }
    }

    private static string Name(Random random, int most)
    {
        var name = string.Concat(Enumerable.Range(0, 1 + random.Next(most)).Select(_ => Letters[random.Next(Letters.Length)])).Trim();
        return name.Length > 0 ? name : "x";
    }

    public static string SixtyLines() => Printed.Head + string.Concat(Enumerable.Range(0, 60).Select(i => i switch
    {
        7 or 31 => FormattableString.Invariant($"  line {i:00}: {{rough: 420}}\n"),
        8 => FormattableString.Invariant($"  line {i:00}: {{made: true, rows: [{{straight: {300 + i}}}]}}\n"),
        _ => FormattableString.Invariant($"  line {i:00}: {{rows: [{{straight: {300 + i}, bend: 45}}, {{straight: 100}}]}}\n"),
    }));

    public static TagSheet Typed(string yaml)
    {
        var file = TemplateReader.Read("typed.yaml", new MemoryStream(Encoding.UTF8.GetBytes(yaml)));
        return CarPlan.Of(file, []).Tags(file.Notation);
    }

    private static PaperSize Size(Paper paper) => paper == Paper.A4 ? PaperSize.A4 : PaperSize.Letter;

    private static List<RecordingPage> Drawn(TagSheet sheet, Paper paper)
    {
        var area = TypeArea.Of(Size(paper));
        return [.. TagPages.Pages(sheet, new(), area.Width, area.Height).Select(blocks =>
        {
            var page = new RecordingPage();
            foreach (var (block, top) in blocks)
            {
                block.DrawOn(new(page, 0, area.Width), top);
            }

            return page;
        })];
    }
}
