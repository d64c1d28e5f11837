using System.Text.RegularExpressions;

namespace BendSheet.Cli.Tests;

/// <summary>What is printed is worded where it is rounded, in BendSheet.Core: what draws it only says where it goes.</summary>
public partial class NoWordsInDrawingsTests
{
    /// <summary>They write SVG, whose attributes are words as well.</summary>
    private static readonly string[] OfSvg = ["SvgFile.cs", "SvgPage.cs"];

    [Fact]
    public void What_draws_pages_makes_no_words()
    {
        var sources = Directory.EnumerateFiles(
            Path.Combine(RepositoryFolder.Path, "src", "BendSheet.Sheets"), "*.cs", SearchOption.AllDirectories)
            .Where(file => !ColumnTests.IsBuilt(file) && !OfSvg.Contains(Path.GetFileName(file), StringComparer.Ordinal)).ToList();
        Assert.True(sources.Count > 50);
        Assert.Empty(sources.SelectMany(file => Phrases(File.ReadAllText(file)).Select(phrase => $"{Path.GetFileName(file)}:{phrase}")));
    }

    [Theory]
    [InlineData("\"cut end\"")]
    [InlineData("\"Tube: size\"")]
    [InlineData("$\"radius {size}\"")]
    [InlineData("$\"{count} bends\"")]
    [InlineData("$\"{(first ? \"from the end\" : string.Empty)}\"")]
    [InlineData("\"\\\"not\\\" so\"")]
    [InlineData("\"\"\"a \"raw\" one\"\"\"")]
    public void A_phrase_is_found(string source) => Assert.NotEmpty(Phrases($"Text({source});"));

    [Theory]
    [InlineData("\"A\"")]
    [InlineData("\"A\", \"B\"")]
    [InlineData("$\"{name}: {value} – {more}\"")]
    [InlineData("$\"{(one ? $\"{count}\" : \"B\")}–{last}\"")]
    [InlineData("'\"', there, '\\''")]
    [InlineData("1); // as \"cut end\"\n(2")]
    [InlineData("3); throw new InvalidDataException(\"The font lacks a table.\"")]
    public void Letters_figures_comments_and_exceptions_are_no_phrase(string source) => Assert.Empty(Phrases($"Text({source});\n"));

    /// <summary>A message of an exception is our own defect, and is not printed.</summary>
    private static IEnumerable<string> Phrases(string source) => StringLiterals.Of(Exceptions().Replace(source, "throw null!;"))
        .Where(literal => Words().IsMatch(literal.Text)).Select(literal => FormattableString.Invariant($"{literal.Line}: {literal.Text}"));

    /// <summary>Two words, or a word and what is put in beside it.</summary>
    [GeneratedRegex(@"[\p{L}□]\p{P}* \p{P}*\p{L}|\p{L}\p{P}* □", RegexOptions.NonBacktracking)]
    private static partial Regex Words();

    [GeneratedRegex(@"throw new \w+\([^;]*;", RegexOptions.NonBacktracking)]
    private static partial Regex Exceptions();
}
