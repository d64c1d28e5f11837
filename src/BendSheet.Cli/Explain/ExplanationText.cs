using System.Text;
using BendSheet.Cli.Output;

namespace BendSheet.Cli.Explain;

/// <summary>Explanations for a person at a terminal, and for the page of the guide.</summary>
public static class ExplanationText
{
    /// <summary>What is said after findings on a terminal.</summary>
    public static string Hint(string rule) => $"For why and an example: bendsheet explain {rule}";

    /// <summary>Every rule by its group, a line each.</summary>
    /// <param name="width">Of the terminal, in columns; null where it is a file or another program.</param>
    public static string List(int? width)
    {
        var text = new StringBuilder();
        var widest = Explanations.All.Max(one => one.Rule.Name.Length);
        foreach (var group in Explanations.All.GroupBy(one => one.Group, StringComparer.Ordinal))
        {
            text.Append(group.Key).Append('\n');
            foreach (var one in group)
            {
                text.Append("  ").Append(one.Rule.Name.PadRight(widest)).Append("  ").Append(one.Rule.Why).Append('\n');
            }

            text.Append('\n');
        }

        return Wrapped.Text(text.Append("`bendsheet explain leg-too-short` shows one of them with an example.\n").ToString(), width);
    }

    /// <summary>One rule: its reason, an example that fails, what is said of it, the same made right, the source.</summary>
    /// <param name="one">The rule.</param>
    /// <param name="width">Of the terminal, in columns; null where it is a file or another program.</param>
    public static string Of(Explanation one, int? width)
    {
        var text = new StringBuilder($"{one.Rule.Name}: {one.Rule.Why}\n");
        foreach (var sentence in one.More)
        {
            text.Append(sentence).Append('\n');
        }

        var told = Wrapped.Text(text.ToString(), width);
        var source = Wrapped.Text($"Source: {one.Source}\n", width);
        return one.Example is not { } example
            ? told + source
            : $"{told}\nA file that fails:\n\n{Indented(example.Failing)}\n{Wrapped.Text(Typed(example), width)}\n"
                + $"{Indented(Said(one, example, width - 2))}\nThe same made right:\n\n{Indented(example.Right)}"
                + $"{(example.AskedRight is { } name ? $"\nAsked for as `--line {name}`.\n" : string.Empty)}\n{source}";
    }

    /// <summary>The page of the guide with all of them.</summary>
    public static string Page()
    {
        var text = new StringBuilder("""
            # Findings

            A finding is one sentence: `file:line:column: error: what is wrong, and what would make it right [rule]`. An **error** stops the
            sheet, a **warning** does not but wants a look, a **note** is only worth knowing. Here is each rule with its reason and a small
            file that breaks it: the lines with `-` fail, the lines with `+` in their place are right. `bendsheet explain RULE` shows the
            same.

            The text of this page is the program's own: `src/BendSheet.Cli/Explain/rules.txt`.

            """.ReplaceLineEndings("\n"));
        foreach (var group in Explanations.All.GroupBy(one => one.Group, StringComparer.Ordinal))
        {
            text.Append($"\n## {group.Key}\n");
            foreach (var one in group)
            {
                text.Append($"\n### {one.Rule.Name}\n\n{string.Join('\n', [one.Rule.Why, .. one.More])}\n");
                if (one.Example is { } example)
                {
                    text.Append($"\n```diff\n{string.Concat(example.Lines.Select(line => $"{line.Mark} {line.Text}\n"))}```\n");
                    text.Append($"\n```text\n{Said(one, example, width: null)}```\n");
                }

                text.Append($"\nSource: {one.Source}.\n");
            }
        }

        return text.ToString();
    }

    private static string Typed(RuleExample example) =>
        $"`bendsheet check {RuleExample.FileName}{(example.Asked is { } name ? $" --line {name}" : string.Empty)}` says:\n";

    /// <summary>Only what the rule itself says.</summary>
    private static string Said(Explanation one, RuleExample example, int? width)
    {
        var (file, findings) = example.Checked(right: false);
        return FindingText.Write(findings.Where(finding => finding.Rule == one.Rule), file.Source, colour: false, width);
    }

    private static string Indented(string text) =>
        string.Concat(text.TrimEnd('\n').Split('\n').Select(line => $"  {line}\n"));
}
