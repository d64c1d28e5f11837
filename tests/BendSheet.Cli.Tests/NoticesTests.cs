using System.Text.RegularExpressions;

namespace BendSheet.Cli.Tests;

/// <summary>Whoever gets the program gets the terms of what it is made with.</summary>
public partial class NoticesTests
{
    private static string Notices { get; } = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "THIRD-PARTY-NOTICES.txt"));

    [Fact]
    public void Every_package_that_ships_is_named()
    {
        var versions = File.ReadAllText(Path.Combine(RepositoryFolder.Path, "Directory.Packages.props"));
        var shipped = Packages().Matches(versions[..versions.IndexOf("Checking it", StringComparison.Ordinal)])
            .Select(match => match.Groups["name"].Value).ToList();
        Assert.InRange(shipped.Count, 3, 20);
        Assert.All(shipped, name => Assert.Contains(name, Notices, StringComparison.Ordinal));
    }

    [Fact]
    public void The_font_s_licence_is_there_word_for_word() => Assert.EndsWith(
        File.ReadAllText(Path.Combine(RepositoryFolder.Path, "src", "BendSheet.Sheets", "Fonts", "OFL.txt")).TrimEnd(),
        Notices.TrimEnd(),
        StringComparison.Ordinal);

    [GeneratedRegex("PackageVersion Include=\"(?<name>[^\"]+)\"", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Packages();
}
