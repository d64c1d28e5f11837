using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Sheet;
using BendSheet.Files.Reading;

namespace BendSheet.Cli.Tests.Guide;

/// <summary>
/// What README and the pages of the guide show is what the program says: their consoles, their lists, and their files. The switch of
/// <see cref="Rewriting"/> writes consoles, lists and files again.
/// </summary>
[Collection(FromTheRepository.Name)]
public class GuideTests : AtTheTerminal
{
    private static GuidePage Readme => GuidePage.All[0];

    public static TheoryData<string> Names => new(GuidePage.All.Select(page => page.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Each_console_shows_what_the_command_in_it_says(string name)
    {
        var page = new GuidePage(name);
        var shown = page.Text;
        var real = new StringBuilder();
        var from = 0;
        for (var at = shown.IndexOf(GuidePage.Prompt, StringComparison.Ordinal); at >= 0;
            at = shown.IndexOf(GuidePage.Prompt, from, StringComparison.Ordinal))
        {
            var start = at + GuidePage.Prompt.Length;
            var command = shown[start..shown.IndexOf('\n', start)];
            var ran = await Run(command.Split(' '));
            real.Append(shown.AsSpan(from, at - from)).Append(GuidePage.Prompt).Append(command).Append('\n')
                .Append(ran.Error).Append(ran.Output);
            from = shown.IndexOf("```\n", start, StringComparison.Ordinal);
        }

        page.IsOrBecomes(real.Append(shown.AsSpan(from)).ToString());
    }

    [Fact]
    public void There_are_consoles_and_files_on_the_pages()
    {
        Assert.All(["README.md", "samples/guide/evening.md", "samples/guide/bench.md", "samples/guide/learn.md", "samples/guide/stock.md"],
            name => Assert.Contains(GuidePage.Prompt, new GuidePage(name).Text, StringComparison.Ordinal));
        Assert.InRange(GuidePage.All.Sum(page => page.YamlFiles().Count()), 8, 100);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_file_shown_is_the_one_beside_the_page(string name)
    {
        var page = new GuidePage(name);
        var real = page.WithFilesAsTheyAre(out var marked);
        Assert.Equal(page.YamlFiles().Count(), marked);
        page.IsOrBecomes(real);
    }

    [Fact]
    public void Every_caution_of_the_sheet_is_there() =>
        HasList(Readme, "cautions", [.. Cautions.All.Select(caution => "- " + caution)]);

    /// <summary>The worked example of learning a bender: a line like the test piece is cut to the test piece's length.</summary>
    [Fact]
    public async Task What_is_learned_from_the_worked_example_cuts_the_test_piece_again()
    {
        var sheet = await Run("show", "samples/guide/learn.yaml");
        Assert.StartsWith("like-the-test-piece: cut 200.0 mm ", sheet.Output, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_file_shown_is_sound_and_its_lines_can_be_made_but_for_those_with_a_slip(string name)
    {
        Assert.All(new GuidePage(name).YamlFiles(), shown =>
        {
            var file = TemplateReader.Read(name, new MemoryStream(Encoding.UTF8.GetBytes(shown.Text)));
            var plan = CarPlan.Of(file, []);
            if (shown.HasSlip)
            {
                Assert.Contains(plan.Stock.Findings, finding => finding.Severity != Severity.Note);
                return;
            }

            Assert.Empty(file.Findings);
            Assert.NotEmpty(file.Lines);
            Assert.DoesNotContain(plan.Stock.Findings, finding => finding.Severity == Severity.Error);
        });
    }

    [Fact]
    public void Every_word_of_the_format_is_explained()
    {
        var format = string.Concat(GuidePage.All.SelectMany(page => page.YamlFiles()).Select(file => file.Text));
        var text = string.Concat(GuidePage.All.Select(page => page.Text));
        Assert.All(Vocabulary.All.SelectMany(place => place.Known), word => Assert.True(
            format.Contains(word + ":", StringComparison.Ordinal)
                || text.Contains($"`{word}: ", StringComparison.Ordinal), $"no page explains `{word}`"));
    }

    /// <summary>One page to begin with: what does not fit goes into the guide.</summary>
    [Fact]
    public void Readme_is_short() => Assert.InRange(Encoding.UTF8.GetByteCount(Readme.Text), 4_000, 12 * 1024);

    [Fact]
    public void Readme_links_to_every_page_of_the_guide()
    {
        var linked = Readme.Links().Select(link => link.Path).ToHashSet(StringComparer.Ordinal);
        Assert.All([.. GuidePage.All.Skip(1).Select(page => page.Name), GuidePage.Findings], name => Assert.Contains(name, linked));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_link_leads_to_a_file_and_a_heading_that_are_there(string name)
    {
        var links = new GuidePage(name).Links().ToList();
        Assert.NotEmpty(links);
        Assert.All(links, link =>
        {
            Assert.True(File.Exists(link.Path), $"{name}: there is no {link.Path}");
            Assert.True(
                link.Anchor.Length == 0 || new GuidePage(link.Path).Anchors().Contains(link.Anchor, StringComparer.Ordinal),
                $"{name}: {link.Path} has no heading #{link.Anchor}");
        });
    }

    private static void HasList(GuidePage page, string list, IEnumerable<string> lines)
    {
        var shown = page.Text;
        var opening = $"<!-- {list} -->\n";
        var start = shown.IndexOf(opening, StringComparison.Ordinal) + opening.Length;
        var end = shown.IndexOf($"<!-- /{list} -->", StringComparison.Ordinal);
        page.IsOrBecomes(shown[..start] + string.Concat(lines.Select(line => line + "\n")) + shown[end..]);
    }
}
