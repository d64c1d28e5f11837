using System.Collections.Immutable;
using System.Xml.Linq;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.FullSize;
using BendSheet.Sheets.Tests.FullSize;
using BendSheet.Sheets.Tests.Picture;
using BendSheet.Sheets.Tests.Tags;

namespace BendSheet.Sheets.Tests;

/// <summary>Every kind of page, drawn on a page that only remembers, in a PDF and as SVG: all three are drawn alike.</summary>
public class EveryPageTests
{
    public static TheoryData<string> Kinds => [.. Jobs.Keys];

    private static Dictionary<string, PrintJob> Jobs { get; } = new(StringComparer.Ordinal)
    {
        ["a line"] = new(Printed.Contents(Printed.WorkedExample), Paper.A4),
        ["a line on Letter"] = new(Printed.Contents(Printed.WorkedExample), Paper.Letter),
        ["a line of many pages"] = new(Printed.Contents(Printed.ManyBends(60)), Paper.A4),
        ["a straight tube"] = new(Printed.Contents(Printed.Head + "  straight:\n    - {straight: 300}\n"), Paper.A4),
        ["mirrored"] = new(Printed.Contents(Printed.WorkedExample), Paper.A4) { Mirrored = true },
        ["full size"] = new(Printed.Contents(Printed.FewBends(5)), Paper.A4) { FullSize = FullSizePages.All },
        ["full size on Letter, mirrored"] = new(Printed.Contents(Printed.FewBends(3)), Paper.Letter)
        {
            FullSize = FullSizePages.All,
            Mirrored = true
        },
        ["steps"] = new(Printed.WithSteps(Printed.FewBends(5)), Paper.A4),
        ["steps of many bends on Letter"] = new(Printed.WithSteps(Printed.ManyBends(12)), Paper.Letter),
        ["steps of a straight tube, mirrored"] = new(Printed.WithSteps(Printed.Head + "  straight:\n    - {straight: 300}\n"), Paper.A4)
        {
            Mirrored = true,
        },
        ["steps of a coil"] = new(Printed.WithSteps(Printed.Coiled), Paper.A4),
        ["tags"] = new([], Paper.A4) { Tags = TagPagesTests.Typed(TagPagesTests.SixtyLines()) },
        ["clip holes"] = new(Printed.Contents(ClipPagesTests.InInches), Paper.Letter) { FullSize = FullSizePages.Clips },
        ["a cover"] = new([], Paper.A4) { Cover = CoverPageTests.Cover(40, "front") },
        ["a cover of a file with mistakes"] = new([], Paper.A4)
        {
            Cover = CoverPageTests.Cover(3, "front") with { Missing = [new("bad", "mistyped, 1 error, on line 13 of the file")] },
        },
        ["a commissioning page"] = new([], Paper.A4) { Commissioning = CommissioningPageTests.Content(60, "front") },
        ["the car"] = new([], Paper.A4) { Car = RandomCar.Placed(new(1), 12) },
        ["a crowded car on Letter"] = new([], Paper.Letter) { Car = RandomCar.Placed(new(2), 40) },
        ["a cover and a diagram"] = new([], Paper.A4)
        {
            Cover = CoverPageTests.Cover(3, "rear"),
            Car = RandomCar.Network(new(3), 30),
        },
        ["a cover and sheets"] = new(Printed.Contents(Printed.WorkedExample), Paper.Letter) { Cover = CoverPageTests.Cover(3, "rear") },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_page_says_the_same_wherever_it_is_drawn(string kind)
    {
        var recorded = Recorded(Jobs[kind]);
        var pdf = Printed.Pages(Printed.Of(Jobs[kind]));
        var svg = Drawn(Jobs[kind], () => new SvgPage()).Select(one => one.Page.Elements).ToList();

        Assert.Equal(recorded.Count, pdf.Count);
        Assert.Equal(recorded.Count, svg.Count);
        for (var i = 0; i < recorded.Count; i++)
        {
            var words = Printed.WithoutBlanks(string.Concat(recorded[i].Page.Things.Select(thing => thing.Text)));
            Assert.NotEmpty(words);
            Assert.Equal(words, Printed.Text([pdf[i]]));
            Assert.Equal(
                words,
                Printed.WithoutBlanks(
                    string.Concat(XElement.Parse($"<svg>{svg[i]}</svg>").Descendants("text").Select(text => text.Value))));
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Nothing_is_drawn_off_the_paper(string kind) => Assert.All(Recorded(Jobs[kind]), one => Assert.All(one.Page.Things, thing =>
    {
        Assert.InRange(thing.Box.Left, 0, one.Size.WidthMm - thing.Box.Width);
        Assert.InRange(thing.Box.Top, 0, one.Size.HeightMm - thing.Box.Height);
    }));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Everything_that_is_drawn_means_something_or_is_decoration(string kind) => Assert.All(Recorded(Jobs[kind]), one =>
    {
        Assert.All(one.Page.Things, thing => Assert.NotNull(thing.Role));
        Assert.DoesNotContain(one.Page.Things, thing => thing is { Text: not null, Role: Role.Nothing });
        Assert.All(one.Page.Alternatives, words => Assert.False(string.IsNullOrWhiteSpace(words)));
    });

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Cautions_are_nine_points_or_larger(string kind)
    {
        var (job, pages) = (Jobs[kind], Recorded(Jobs[kind]));
        var large = Printed.WithoutBlanks(string.Concat(
            pages.SelectMany(one => one.Page.Things).Where(thing => thing.Points >= 9).Select(thing => thing.Text)));
        Assert.All(Warnings(job), words => Assert.Contains(Printed.WithoutBlanks(words), large, StringComparison.Ordinal));
    }

    /// <summary>Nobody types at the vice. Words of the file that a remark names stand in quotation marks.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Nothing_on_paper_is_typed_as_a_command(string kind) => Assert.All(Recorded(Jobs[kind]), one => Assert.All(
        one.Page.Things.Select(thing => thing.Text).Concat(one.Page.Alternatives).OfType<string>(), HasNoCommand));

    /// <summary>What takes the place of a drawing, which a small job does not show.</summary>
    [Fact]
    public void Nor_is_what_stands_there_instead_of_a_drawing() =>
        Assert.All<string>([DrillingWords.DoesNotFit, TileWords.DoesNotFit], HasNoCommand);

    private static void HasNoCommand(string words)
    {
        Assert.DoesNotContain('`', words);
        Assert.DoesNotContain("--", words, StringComparison.Ordinal);
        Assert.DoesNotContain("bendsheet", words, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>All that somebody comes to harm or spoils a tube by who overlooks it.</summary>
    private static IEnumerable<string> Warnings(PrintJob job)
    {
        var bar = job.Lines.Where(_ => job.FullSize != FullSizePages.None)
            .Select(line => FullSizeWords.ProvingBar(ProvingBar.Length, line.Notation));
        var cover = job.Cover is { } content ? content.SectionsAbove.Concat(content.Sections).Select(section => section.Remark) : [];
        return
        [
            .. job.Lines.SelectMany(line => Cautions.All.Concat(line.ReadFirst).Concat(line.Order)),
            .. job.Lines.SelectMany(line => line.Steps).SelectMany(step => new[] { step.Text, step.Note }),
            .. bar,
            .. cover,
            .. job.Commissioning is { } commissioning ? [commissioning.Disclaimer] : Array.Empty<string>(),
            .. job.Tags is null ? [] : TagWords.HowTo,
        ];
    }

    [Fact]
    public void Drawings_alone_say_what_the_sheet_says()
    {
        var drawings = LineDrawings.Of(Jobs["a line"].Lines[0]).Drawings;
        var sheet = Recorded(Jobs["a line"]).SelectMany(one => one.Page.Things).Select(thing => thing.Text).OfType<string>()
            .ToHashSet(StringComparer.Ordinal);
        foreach (var drawing in drawings)
        {
            var words = XDocument.Parse(System.Text.Encoding.UTF8.GetString(drawing.Svg.Span)).Descendants()
                .Where(element => element.Name.LocalName is "text").Select(element => element.Value).ToList();
            Assert.NotEmpty(words);
            Assert.All(words.Where(word => word.All(char.IsLetterOrDigit)), word => Assert.Contains(word, sheet));
        }
    }

    internal static List<(PaperSize Size, RecordingPage Page)> Recorded(PrintJob job) => Drawn(job, () => new RecordingPage());

    private static List<(PaperSize Size, TPage Page)> Drawn<TPage>(PrintJob job, Func<TPage> blank)
        where TPage : IPage
    {
        var press = new Press<TPage>(blank);
        PrintedSheets.Of(job, press);
        return press.Bound;
    }

    /// <summary>Draws every page on one of its own.</summary>
    private sealed class Press<TPage>(Func<TPage> blank) : IPress
        where TPage : IPage
    {
        public List<(PaperSize Size, TPage Page)> Bound { get; } = [];

        public IDrawnPart Draw(string entry, IEnumerable<PageAhead> pages, bool mirrored) => new Part([.. pages.Select(ahead =>
        {
            var page = blank();
            ahead.Draw(page);
            return (ahead.Size, page);
        })]);

        public ReadOnlyMemory<byte> Bind(IReadOnlyList<IDrawnPart> parts, string title)
        {
            Bound.AddRange(parts.Cast<Part>().SelectMany(part => part.Pages));
            return default;
        }

        private sealed record Part(ImmutableArray<(PaperSize Size, TPage Page)> Pages) : IDrawnPart
        {
            public int PageCount => Pages.Length;
        }
    }
}
