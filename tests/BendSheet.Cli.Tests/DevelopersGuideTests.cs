using System.Text.RegularExpressions;

namespace BendSheet.Cli.Tests;

/// <summary>What the contributor guide names is there.</summary>
public partial class DevelopersGuideTests
{
    private static string Guide { get; } = File.ReadAllText(Path.Combine(RepositoryFolder.Path, "DEVELOPERS.md"));

    [Fact]
    public void Every_file_and_folder_that_it_names_exists()
    {
        var named = Places().Matches(Guide).Select(match => match.Groups["place"].Value).Distinct(StringComparer.Ordinal).ToList();
        Assert.True(named.Count > 30);
        Assert.All(named, place => Assert.True(Path.Exists(Path.Combine(RepositoryFolder.Path, place)), $"there is no {place}"));
    }

    [Fact]
    public void Every_folder_of_the_source_is_in_the_layout()
    {
        var projects = Directory.GetDirectories(Path.Combine(RepositoryFolder.Path, "src"));
        var folders = projects.Concat(projects.SelectMany(Directory.GetDirectories)).Select(folder => Path.GetFileName(folder))
            .Where(folder => folder is not ("bin" or "obj"));
        Assert.All(folders, folder => Assert.Contains($"{folder}/", Guide, StringComparison.Ordinal));
    }

    [GeneratedRegex(@"`(?<place>(src|tests|samples|\.ci)/[A-Za-z0-9./]+)`", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Places();
}
