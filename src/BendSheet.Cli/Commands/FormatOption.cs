using System.CommandLine;
using BendSheet.Cli.Output;
using BendSheet.Core.Car;

namespace BendSheet.Cli.Commands;

/// <summary><c>--format</c>, with the ways to show a plan that it chooses from; the first is taken where nothing is said.</summary>
internal sealed class FormatOption : Option<string>
{
    public FormatOption(IReadOnlyList<Format> formats, string description)
        : base("--format")
    {
        Description = description;
        HelpName = string.Join('|', formats.Select(known => known.Word));
        DefaultValueFactory = _ => formats[0].Word;
        this.AcceptOnlyFromAmong([.. formats.Select(known => known.Word)]);
    }

    /// <summary>A way to show a plan.</summary>
    /// <param name="Word">As typed.</param>
    /// <param name="Write">The text of a plan.</param>
    internal sealed record Format(string Word, Func<CarPlan, View, string> Write);

    /// <summary>Tables as wide as they are.</summary>
    public static Option<bool> Wide() => new("--wide")
    {
        Description = "A table with all its columns and every sentence on one line, however narrow the terminal is. A file or another "
            + "program always gets it so.",
    };

    /// <summary>The one that was asked for.</summary>
    public Format Chosen(ParseResult parsed, IEnumerable<Format> formats) =>
        formats.First(known => string.Equals(known.Word, parsed.GetRequiredValue(this), StringComparison.Ordinal));
}
