using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Sheet;
using BendSheet.Files.Reading;

namespace BendSheet.Cli.Tests;

/// <summary>
/// What README shows is what the program says: its consoles, its lists, and its files. The switch of <see cref="Rewriting"/> writes
/// consoles and lists again.
/// </summary>
[Collection(FromTheRepository.Name)]
public class ReadmeTests : AtTheTerminal
{
    private const string Readme = "README.md";
    private const string Prompt = "```console\n$ bendsheet ";

    [Fact]
    public async Task Each_console_shows_what_the_command_in_it_says()
    {
        var shown = await File.ReadAllTextAsync(Readme);
        var real = new StringBuilder();
        var from = 0;
        var consoles = 0;
        for (var at = shown.IndexOf(Prompt, StringComparison.Ordinal); at >= 0; at = shown.IndexOf(Prompt, from, StringComparison.Ordinal))
        {
            var command = shown[(at + Prompt.Length)..shown.IndexOf('\n', at + Prompt.Length)];
            var ran = await Run(command.Split(' '));
            real.Append(shown.AsSpan(from, at - from)).Append(Prompt).Append(command).Append('\n').Append(ran.Error).Append(ran.Output);
            from = shown.IndexOf("```\n", at + Prompt.Length, StringComparison.Ordinal);
            consoles++;
        }

        Assert.InRange(consoles, 2, 100);
        IsOrBecomes(shown, real.Append(shown.AsSpan(from)).ToString());
    }

    /// <summary>The worked example: the file that stands in front of the console, and what the command says of it.</summary>
    [Fact]
    public async Task What_is_learned_from_the_worked_example_is_what_the_command_says()
    {
        const string Opening = "<!-- learned -->\n";
        var shown = await File.ReadAllTextAsync(Readme);
        var before = shown[..shown.IndexOf(Opening, StringComparison.Ordinal)];
        var start = before.LastIndexOf("```yaml\n", StringComparison.Ordinal) + "```yaml\n".Length;
        Piped = before[start..before.IndexOf("```", start, StringComparison.Ordinal)];
        var ran = await Run("learn", "-");
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        HasList("learned", ["```text", .. ran.Output.TrimEnd('\n').Split('\n'), "```"]);
        var sheet = await Run("show", "-");
        Assert.StartsWith("like-the-test-piece: cut 200.0 mm ", sheet.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_caution_of_the_sheet_is_there() => HasList("cautions", [.. Cautions.All.Select(caution => "- " + caution)]);

    [Fact]
    public void Every_file_in_it_is_sound_and_its_lines_can_be_made()
    {
        var files = Blocks("```yaml\n");
        Assert.InRange(files.Count, 2, 100);
        Assert.All(files, text =>
        {
            var file = TemplateReader.Read(Readme, new MemoryStream(Encoding.UTF8.GetBytes(text)));
            Assert.Empty(file.Findings);
            Assert.NotEmpty(file.Lines);
            Assert.DoesNotContain(CarPlan.Of(file, []).Stock.Findings, finding => finding.Severity == Severity.Error);
        });
    }

    [Fact]
    public void Every_word_of_the_format_is_explained()
    {
        var format = string.Concat(Blocks("```yaml\n"));
        var text = File.ReadAllText(Readme);
        Assert.All(Vocabulary.All.SelectMany(place => place.Known), word => Assert.True(
            format.Contains(word + ":", StringComparison.Ordinal)
                || text.Contains($"`{word}: ", StringComparison.Ordinal), $"README does not explain `{word}`"));
    }

    private static List<string> Blocks(string opening)
    {
        var text = File.ReadAllText(Readme);
        var blocks = new List<string>();
        for (var at = text.IndexOf(opening, StringComparison.Ordinal); at >= 0; at = text
            .IndexOf(opening, at + 1, StringComparison.Ordinal))
        {
            var start = at + opening.Length;
            blocks.Add(text[start..text.IndexOf("```", start, StringComparison.Ordinal)]);
        }

        return blocks;
    }

    private static void HasList(string name, IEnumerable<string> lines)
    {
        var shown = File.ReadAllText(Readme);
        var opening = $"<!-- {name} -->\n";
        var start = shown.IndexOf(opening, StringComparison.Ordinal) + opening.Length;
        var end = shown.IndexOf($"<!-- /{name} -->", StringComparison.Ordinal);
        IsOrBecomes(shown, shown[..start] + string.Concat(lines.Select(line => line + "\n")) + shown[end..]);
    }

    private static void IsOrBecomes(string shown, string real)
    {
        if (Rewriting.IsWanted)
        {
            File.WriteAllText(Readme, real);
            return;
        }

        Assert.Equal(real, shown);
    }
}
