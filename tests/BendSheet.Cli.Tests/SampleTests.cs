using System.Text;

namespace BendSheet.Cli.Tests;

/// <summary>
/// What the program says about the samples, byte for byte as in <c>samples/expected</c>. Where a change is wanted,
/// <c>BENDSHEET_REWRITE_EXPECTED=1 dotnet test tests/BendSheet.Cli.Tests</c> writes these files again; the
/// difference is then read in review.
/// </summary>
[Collection(FromTheRepository.Name)]
public class SampleTests : AtTheTerminal
{
    [Theory]
    [InlineData("finch.txt", 0, "show", "samples/finch.yaml")]
    [InlineData("wren.txt", 0, "show", "samples/wren.yaml")]
    [InlineData("finch.json", 0, "show", "samples/finch.yaml", "--format", "json")]
    [InlineData("finch-parts.txt", 0, "show", "samples/finch.yaml", "--parts")]
    [InlineData("finch-stock.txt", 0, "stock", "samples/finch.yaml")]
    [InlineData("finch.csv", 0, "show", "samples/finch.yaml", "--format", "csv")]
    public async Task The_figures_of_the_sample_stay_the_same(string expected, int code, params string[] args)
    {
        var ran = await Run(args);
        Assert.Equal(code, ran.Code);
        AssertIsAsExpected(expected, ran.Output);
    }

    /// <summary>
    /// Counted by hand. Lines still to make: front-feed, front-left, front-right and clutch have an3 at both ends, rear at A: 9 nuts and 9
    /// sleeves, of which 4 are on hand. Inverted: rear at B, both ends of rear-axle-left and of filler: 5 nuts. rear-axle-right is
    /// made.
    /// </summary>
    [Theory]
    [InlineData("9", "nut", "an3, 17 mm")]
    [InlineData("5", "sleeve", "an3, 9 mm")]
    [InlineData("5", "nut", "inverted, 20 mm")]
    [InlineData("9", "clip", "for 3/16 in tube, hole 5 mm")]
    [InlineData("3", "bulkhead, 2 × 3/8-24 flare 37", "")]
    [InlineData("0", "bulkhead, 3/8-24 inverted 45, 3/8-24 flare 37", "")]
    [InlineData("1", "tee, 3 × 3/8-24 flare 37", "")]
    [InlineData("1", "tee, 3 × 3/8-24 inverted 45", "")]
    [InlineData("2", "caliper, 3/8-24 flare 37", "")]
    [InlineData("2", "wheel-cylinder, 3/8-24 inverted 45", "")]
    [InlineData("2", "hose, 350.0 mm, 3/8-24 flare 37 to 3/8-24 flare 37", "")]
    [InlineData("1", "hose, 300.0 mm, 3/8-24 flare 37 to 3/8-24 inverted 45", "")]
    [InlineData("0", "hose, 400.0 mm, 3/8-24 flare 37 to 3/8-24 flare 37", "")]
    public async Task The_shopping_list_of_the_sample_is_what_a_person_counts(string toBuy, string what, string which)
    {
        var rows = (await Run("stock", "samples/finch.yaml")).Output.Split('\n')
            .Select(row => row.Split("  ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)).ToList();
        Assert.Single(rows, row => row is [var buy, var name, .. var rest]
            && string.Equals(buy, toBuy, StringComparison.Ordinal) && string.Equals(name, what, StringComparison.Ordinal)
            && (which.Length == 0 || string.Equals(rest[0], which, StringComparison.Ordinal)));
    }

    [Fact]
    public async Task The_findings_about_the_broken_sample_stay_the_same()
    {
        var ran = await Run("check", "samples/finch-broken.yaml");
        Assert.Equal(2, ran.Code);
        AssertIsAsExpected("finch-broken.txt", ran.Error + ran.Output);
    }

    private static void AssertIsAsExpected(string name, string text)
    {
        var path = $"samples/expected/{name}";
        var bytes = Encoding.UTF8.GetBytes(text);
        if (Rewriting.IsWanted)
        {
            Directory.CreateDirectory("samples/expected");
            File.WriteAllBytes(path, bytes);
            return;
        }

        Assert.True(File.Exists(path), $"{path} is missing: {Rewriting.Switch}=1 writes it");

        // The texts first: their difference can be read.
        Assert.Equal(File.ReadAllText(path), text);
        Assert.Equal(File.ReadAllBytes(path), bytes);
    }
}
