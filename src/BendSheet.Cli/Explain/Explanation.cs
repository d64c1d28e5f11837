using System.Collections.Immutable;
using System.Text;
using BendSheet.Cli.Output;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Files.Reading;

namespace BendSheet.Cli.Explain;

/// <summary>What there is to say of a rule beside its reason.</summary>
/// <param name="Rule">The rule that it explains.</param>
/// <param name="Group">Its subject, as a heading.</param>
/// <param name="More">Sentences, each on a line of its own; may be none.</param>
/// <param name="Source">Where the rule or its figures come from.</param>
/// <param name="Example">A small file that fails and the same made right; null where none can be shown.</param>
public sealed record Explanation(Rule Rule, string Group, ImmutableArray<string> More, string Source, RuleExample? Example);

/// <summary>A file that fails and the same made right, line by line as a comparison of the two.</summary>
/// <param name="Lines">Each with what it stands in: ' ' in both, '-' only in the one that fails, '+' only in the right one.</param>
/// <param name="Asked">The line that is asked for by name, in the one that fails; null for all.</param>
/// <param name="AskedRight">The same, where the name is what is made right.</param>
public sealed record RuleExample(ImmutableArray<(char Mark, string Text)> Lines, string? Asked, string? AskedRight)
{
    /// <summary>What findings call the file.</summary>
    public const string FileName = "example.yaml";

    /// <summary>The file that fails.</summary>
    public string Failing => Text('+');

    /// <summary>The same made right.</summary>
    public string Right => Text('-');

    /// <summary>What <c>check</c> says of a file.</summary>
    /// <param name="right">Of the one that is made right, or else of the one that fails.</param>
    public (TemplateFile File, ImmutableArray<Finding> Findings) Checked(bool right)
    {
        var file = TemplateReader.Read(FileName, new MemoryStream(Encoding.UTF8.GetBytes(right ? Right : Failing)));
        var asked = right ? AskedRight ?? Asked : Asked;
        return (file, [.. CheckFindings.Of(CarPlan.Of(file, asked is null ? [] : [asked]))]);
    }

    private string Text(char leftOut) =>
        string.Concat(Lines.Where(line => line.Mark != leftOut).Select(line => line.Text + "\n"));
}
