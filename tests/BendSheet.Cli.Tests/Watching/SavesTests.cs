using System.Collections.Immutable;
using BendSheet.Cli.Watching;

namespace BendSheet.Cli.Tests.Watching;

/// <summary>Looks at files, one letter a look: <c>a</c> and <c>b</c> are states of a file, <c>0</c> an empty one, <c>-</c> none.</summary>
public class SavesTests
{
    [Theory]
    [InlineData("a", "aaaaaaaaaaaa", 0)]
    [InlineData("a", "aab", 0)]
    [InlineData("a", "aabb", 4)]
    [InlineData("a", "abcdee", 6)]
    [InlineData("a", "abaaaaaaaaaaaaa", 0)]
    [InlineData("a", "a-a", 0)]
    [InlineData("a", "a---bb", 6)]
    [InlineData("a", "0000bb", 6)]
    [InlineData("a", "-------", 0)]
    [InlineData("a", "--------", 8)]
    [InlineData("a", "00000000", 8)]
    [InlineData("-", "----------bb", 12)]
    [InlineData("-", "--------------", 0)]
    public void A_save_is_over_when_the_file_is_quiet(string seen, string looks, int at)
    {
        var saves = new Saves(Look(seen[0]));
        Assert.Equal(at, 1 + looks.ToList().FindIndex(look => saves.Takes(Look(look))));
    }

    [Fact]
    public void Any_of_several_files_is_watched()
    {
        var saves = new Saves([.. Look('a'), .. Look('b')]);
        Assert.False(saves.Takes([.. Look('a'), .. Look('c')]));
        Assert.True(saves.Takes([.. Look('a'), .. Look('c')]));
    }

    private static ImmutableArray<FileStamp> Look(char state) => state switch
    {
        '-' => [FileStamp.Gone],
        '0' => [new(IsThere: true, 1, 0)],
        _ => [new(IsThere: true, state, 10)],
    };
}
