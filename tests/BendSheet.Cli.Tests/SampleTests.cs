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
    [InlineData("finch.json", 0, "show", "samples/finch.yaml", "--format", "json")]
    [InlineData("finch.csv", 0, "show", "samples/finch.yaml", "--format", "csv")]
    public async Task The_figures_of_the_sample_stay_the_same(string expected, int code, params string[] args)
    {
        var ran = await Run(args);
        Assert.Equal(code, ran.Code);
        AssertIsAsExpected(expected, ran.Output);
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
