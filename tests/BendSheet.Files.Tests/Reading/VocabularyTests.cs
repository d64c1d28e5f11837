using System.Reflection;
using BendSheet.Files.Reading;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

public class VocabularyTests
{
    /// <summary>For each vocabulary with later words a sound file with room for one more entry, and the place of that entry.</summary>
    private static readonly Dictionary<string, (string File, string Place)> Room = new(StringComparer.Ordinal)
    {
        ["a line"] = (Top.Replace("tube: {od: 3/16 in}", "tubes: {a: {od: 6}, b: {od: 8}}", StringComparison.Ordinal) + "lines:\n  fl: {WORD: VALUE}\n", "5:8"),
    };

    public static TheoryData<string, string, string> LaterWords
    {
        get
        {
            var words = new TheoryData<string, string, string>();
            foreach (var vocabulary in Vocabulary.All)
            {
                foreach (var word in vocabulary.Later)
                {
                    foreach (var value in new[] { "true", "[]", "{a: 1}", "" })
                    {
                        words.Add(vocabulary.Place, word, value);
                    }
                }
            }

            return words;
        }
    }

    [Theory]
    [MemberData(nameof(LaterWords))]
    public void A_word_still_to_come_is_named_as_such_and_nothing_else_is_said(string place, string word, string value)
    {
        var (typed, at) = Room[place];
        var file = Read(typed.Replace("WORD", word, StringComparison.Ordinal).Replace("VALUE", value, StringComparison.Ordinal));
        Assert.Equal($"{at} not-yet-supported", Places(file));
        Assert.StartsWith($"`{word}` in {place} is not supported yet: this version reads `", file.Findings[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_with_a_word_still_to_come_is_not_made_without_it() => Assert.Empty(Read(LongLine("checks: []")).Lines);

    [Fact]
    public void No_word_is_both_read_and_still_to_come()
    {
        Assert.All(Vocabulary.All, vocabulary => Assert.Empty(vocabulary.Known.Intersect(vocabulary.Later, StringComparer.Ordinal)));
        Assert.Equal(typeof(Vocabulary).GetProperties(BindingFlags.Static | BindingFlags.Public).Length - 1, Vocabulary.All.Count);
    }
}
