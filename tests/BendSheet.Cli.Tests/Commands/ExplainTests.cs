using System.Text;
using BendSheet.Cli.Explain;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Stock;
using BendSheet.Files.Reading;
using BendSheet.Files.Yaml;

namespace BendSheet.Cli.Tests.Commands;

[Collection(FromTheRepository.Name)]
public class ExplainTests : AtTheTerminal
{
    private const string Page = "samples/guide/findings.md";

    /// <summary>What no file of a few printable lines can break; each is broken by a test of its own rule.</summary>
    private static readonly Rule[] WithoutExample =
    [
        YamlRules.ControlCharacter, YamlRules.NotUtf8, YamlRules.NotText, YamlRules.NestedTooDeep, YamlRules.TooManyValues,
        YamlRules.TooManyMistakes, YamlRules.FileTooLarge, FileRules.TooManyRows, FileRules.CannotRead, Choice.UnknownBender,
        StockRules.NotProven,
    ];

    public static TheoryData<string> WithExample =>
        [.. Explanations.All.Where(one => one.Example is not null).Select(one => one.Rule.Name)];

    [Fact]
    public void Every_rule_of_the_program_is_explained_once_with_its_source()
    {
        var all = RuleNameTests.All.Select(one => one.Rule.Name).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(all, Explanations.All.Select(one => one.Rule.Name).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.Equal(all, EveryRule.All.Select(rule => rule.Name).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.All(Explanations.All, one =>
        {
            Assert.NotEmpty(one.Source);
            Assert.NotEmpty(one.Group);
            Assert.All(one.More, sentence => Assert.Matches(@"[.?]$", sentence));
        });
    }

    [Fact]
    public void Every_line_of_the_text_is_understood()
    {
        var lines = File.ReadAllLines("src/BendSheet.Cli/Explain/rules.txt").Where(line => line.Length > 0).ToList();
        var read = Explanations.All.Sum(one => 2 + one.More.Length + (one.Example?.Lines.Length ?? 0)
            + (one.Example?.Asked is null ? 0 : 1) + (one.Example?.AskedRight is null ? 0 : 1));
        Assert.Equal(lines.Count, read + Explanations.All.Select(one => one.Group).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Only_what_cannot_be_shown_has_no_example_and_says_so()
    {
        var without = Explanations.All.Where(one => one.Example is null).ToList();
        Assert.Equal(
            WithoutExample.Select(rule => rule.Name).Order(StringComparer.Ordinal),
            without.Select(one => one.Rule.Name).Order(StringComparer.Ordinal));
        Assert.All(without, one => Assert.NotEmpty(one.More));
    }

    /// <summary>Notes of other rules may stand beside it: a short line without distances across it always has one.</summary>
    [Theory]
    [MemberData(nameof(WithExample))]
    public void The_example_breaks_its_rule_and_no_other_and_made_right_it_breaks_none(string name)
    {
        var one = Explanations.Of(name)!;
        var failing = one.Example!.Checked(right: false).Findings;
        Assert.Contains(failing, finding => finding.Rule == one.Rule);
        Assert.All(failing, finding => Assert.True(
            finding.Rule == one.Rule || finding.Severity == Severity.Note, finding.ToString()));
        var right = one.Example.Checked(right: true);
        Assert.All(right.Findings, finding => Assert.True(
            finding.Rule != one.Rule && finding.Severity == Severity.Note, finding.ToString()));
        Assert.NotEmpty(right.File.LineNames);
    }

    [Theory]
    [MemberData(nameof(WithExample))]
    public async Task I_see_the_reason_both_files_and_what_check_says_of_the_one_that_fails(string name)
    {
        var one = Explanations.Of(name)!;
        var ran = await Run("explain", name);
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        Assert.StartsWith($"{name}: {one.Rule.Why}\n", ran.Output, StringComparison.Ordinal);
        Assert.EndsWith($"\nSource: {one.Source}\n", ran.Output, StringComparison.Ordinal);
        var said = ran.Output[ran.Output.IndexOf("` says:\n", StringComparison.Ordinal)..];
        Assert.Contains($"[{name}]\n", said, StringComparison.Ordinal);

        // What is printed can be typed: the files, taken off the screen again.
        var failing = Taken(ran.Output, "A file that fails:\n\n");
        Assert.Equal(one.Example!.Failing, failing);
        Assert.Equal(one.Example.Right, Taken(ran.Output, "The same made right:\n\n"));
        if (one.Example.Asked is null)
        {
            Assert.Contains($"[{name}]", (await Run("check", Typed(failing))).Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task What_no_file_shows_is_told_in_words()
    {
        var ran = await Run("explain", "cannot-read");
        Assert.Equal(0, ran.Code);
        Assert.Contains("fnich.yaml", ran.Output, StringComparison.Ordinal);
        Assert.Contains("\nSource: ", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_a_rule_I_see_all_of_them_by_group_in_a_line_each()
    {
        var ran = await Run("explain");
        Assert.Equal(0, ran.Code);
        var lines = ran.Output.Split('\n');
        Assert.All(EveryRule.All, rule => Assert.Single(
            lines,
            line => line.StartsWith($"  {rule.Name} ", StringComparison.Ordinal) && line.EndsWith(rule.Why, StringComparison.Ordinal)));
        Assert.Contains("Plumbing", lines, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("leg-to-short", "there is no rule `leg-to-short`: did you mean `leg-too-short`?")]
    [InlineData("swordfish", "there is no rule `swordfish`: `bendsheet explain` lists them all.")]
    public async Task I_am_offered_the_rule_that_I_misspelt(string typed, string sentence)
    {
        var ran = await Run("explain", typed);
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Output);
        Assert.Equal($"bendsheet: {sentence}\n", ran.Error);
    }

    [Theory]
    [InlineData("[leg-too-short]")]
    [InlineData("Leg-Too-Short")]
    public async Task I_can_type_it_as_it_stands_in_the_finding(string typed) =>
        Assert.StartsWith("leg-too-short: ", (await Run("explain", typed)).Output, StringComparison.Ordinal);

    [Fact]
    public async Task One_word_too_many_is_told_so()
    {
        var ran = await Run("explain", "leg-too-short", "ring");
        Assert.Equal(2, ran.Code);
        Assert.StartsWith(
            "bendsheet: `ring` is one word too many: `explain` takes one rule.\n", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task On_a_terminal_the_command_is_said_once_after_the_findings_of_the_worst_rule()
    {
        var car = Typed(Explanations.Of("leg-too-short")!.Example!.Failing.Replace("units", "nuits", StringComparison.Ordinal));
        var piped = await Run("check", car);
        Assert.DoesNotContain("bendsheet explain", piped.Error + piped.Output, StringComparison.Ordinal);
        Width = 200;
        var shown = await Run("check", car);
        Assert.EndsWith("\nFor why and an example: bendsheet explain unknown-word\n", shown.Error, StringComparison.Ordinal);
        Assert.Equal(2, shown.Error.Split("bendsheet explain").Length);
        Assert.DoesNotContain("bendsheet explain", shown.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_nothing_is_found_nothing_is_said()
    {
        Width = 100;
        Assert.Empty((await Run("check", Typed(Explanations.Of("tab-in-indent")!.Example!.Right))).Error);
    }

    /// <summary>The switch of <see cref="Rewriting"/> writes the page again.</summary>
    [Fact]
    public void The_page_of_the_guide_is_what_the_program_has()
    {
        var real = ExplanationText.Page();
        if (Rewriting.IsWanted)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Page)!);
            File.WriteAllText(Page, real, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
            return;
        }

        Assert.True(File.Exists(Page), $"{Page} is missing: {Rewriting.Switch}=1 writes it");
        Assert.Equal(real, File.ReadAllText(Page));
    }

    private static string Taken(string shown, string heading)
    {
        var from = shown.IndexOf(heading, StringComparison.Ordinal) + heading.Length;
        return string.Concat(shown[from..].Split('\n').TakeWhile(line => line.StartsWith("  ", StringComparison.Ordinal))
            .Select(line => line[2..] + "\n"));
    }
}
