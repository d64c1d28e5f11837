using BendSheet.Sheets.Fonts;

namespace BendSheet.Cli.Output;

/// <summary>
/// Names that differ as typed but print alike: the font lacks some of their characters, or they differ in what cannot be seen.
/// </summary>
internal static class AlikeOnPaper
{
    /// <summary>A sentence for each set of names that come out as one.</summary>
    /// <param name="names">Of the lines that are printed together.</param>
    public static IEnumerable<string> Warnings(IEnumerable<string> names) => names.Distinct(StringComparer.Ordinal)
        .GroupBy(name => PrintableText.Of(name).Text, StringComparer.Ordinal)
        .Where(alike => alike.Count() > 1)
        .Select(
            alike =>
                $"the lines {Listed([.. alike.Select(name => $"`{Visible.Text(name)}`")])} {(alike.Count() == 2 ? "both" : "all")} print "
                    + $"as `{alike.Key}`, and nobody can tell them apart on paper: "
            + "give them names that differ in letters, figures or signs that print.");

    private static string Listed(string[] names) => $"{string.Join(", ", names[..^1])} and {names[^1]}";
}
