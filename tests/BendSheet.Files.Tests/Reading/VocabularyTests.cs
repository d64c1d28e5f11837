using System.Reflection;
using BendSheet.Files.Reading;

namespace BendSheet.Files.Tests.Reading;

public class VocabularyTests
{
    [Fact]
    public void Every_vocabulary_is_in_the_list_and_has_no_word_twice()
    {
        Assert.Equal(typeof(Vocabulary).GetProperties(BindingFlags.Static | BindingFlags.Public).Length - 1, Vocabulary.All.Count);
        Assert.All(Vocabulary.All, vocabulary => Assert.Distinct(vocabulary.Known, StringComparer.Ordinal));
    }
}
