using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

public class NameCheckTests
{
    [Theory]
    [InlineData("front-left")]
    [InlineData("front left 2")]
    [InlineData("Bremsleitung vorn, öÄß")]
    [InlineData("前左")]
    [InlineData("1")]
    [InlineData("a.b")]
    public void Most_names_will_do(string name) => Assert.Equal(name, Assert.Single(Read(Named(name)).Lines).Name);

    [Theory]
    [InlineData("a/b", "has `/` in it")]
    [InlineData("a\\\\b", "has `\\` in it")]
    [InlineData("a:b", "has `:` in it")]
    [InlineData("a*", "has `*` in it")]
    [InlineData("..", "begins with `.`")]
    [InlineData(".hidden", "begins with `.`")]
    [InlineData("-o", "begins with `-`")]
    [InlineData("a\\e[31m", "a character in it that cannot be seen")]
    [InlineData("a\\nb", "a character in it that cannot be seen")]
    [InlineData("a\\tb", "a character in it that cannot be seen")]
    [InlineData("a\\u202Eb", "a character in it that cannot be seen")] // turns the direction of writing
    [InlineData("a\\u200Bb", "a character in it that cannot be seen")]
    [InlineData("\\u200D\\u00AD", "has nothing in it that can be seen")] // joiner, soft hyphen
    [InlineData("\\u3164", "has nothing in it that can be seen")] // Hangul filler
    [InlineData("\\u2800 \\u2800", "has nothing in it that can be seen")] // Braille pattern without dots
    [InlineData("\\U000E0041\\uFE0F", "has nothing in it that can be seen")] // tag, variation selector
    [InlineData("", "needs a name")]
    [InlineData("  ", "needs a name")]
    public void A_name_that_cannot_be_part_of_a_file_name_is_refused(string name, string words)
    {
        var file = Read(Named(name));
        Assert.Equal("5:3 unusable-name", Places(file));
        Assert.Contains(words, file.Findings[0].Message, StringComparison.Ordinal);
        Assert.Empty(file.Lines);
    }

    /// <summary>é is one character on some keyboards and two on others (Unicode Standard Annex 15).</summary>
    [Fact]
    public void Names_that_are_composed_differently_are_one_name()
    {
        var twice = Read(Top + "lines:\n  \"r\u00E9ar\": [{straight: 100}]\n  \"re\u0301ar\": [{straight: 100}]\n");
        Assert.Equal("6:3 duplicate-word", Places(twice));

        var mirrored = Read(Top + "lines:\n  \"r\u00E9ar\": [{straight: 100}]\n  other: {mirror: \"re\u0301ar\"}\n");
        Assert.Empty(mirrored.Findings);
        Assert.Equal("r\u00E9ar", mirrored.Lines[0].Name);
    }

    [Fact]
    public void A_name_has_at_most_a_hundred_characters()
    {
        Assert.Empty(Read(Named(new string('n', 100))).Findings);
        Assert.Equal("5:3 unusable-name", Places(Read(Named(new string('n', 101)))));
    }

    [Theory]
    [InlineData("project: \"\\e[31m\"")]
    [InlineData("project: \"\\0\"")]
    [InlineData("project: \"\\x9b31m\"")]
    [InlineData("project: \"\\u202E\"")]
    public void Free_text_holds_nothing_that_a_terminal_would_obey(string typed)
    {
        var file = Read(Top + typed + "\n" + Line);
        Assert.Equal("4:10 control-character", Places(file));
        Assert.Empty(file.Project);
    }

    private static string Named(string name) => Top + $"lines:\n  \"{name}\":\n    - {{straight: 120}}\n";
}
