using System.Text;
using System.Text.RegularExpressions;

namespace BendSheet.Cli.Tests.Guide;

/// <summary>
/// One page that a builder reads: README, or a page of the guide. Names in it are relative to the repository's folder in consoles and
/// marks, to the page's own folder in links.
/// </summary>
/// <param name="Name">Its file, from the repository's folder, with slashes.</param>
public sealed partial record GuidePage(string Name)
{
    /// <summary>What stands before a command that a page shows with its answer.</summary>
    public const string Prompt = "```console\n$ bendsheet ";

    private const string Yaml = "```yaml\n";

    /// <summary>README first, then the pages of the guide in the order of their names, but for <see cref="Findings"/>.</summary>
    public static IReadOnlyList<GuidePage> All { get; } =
    [
        new("README.md"),
        .. Directory.GetFiles(Path.Combine(RepositoryFolder.Path, "samples/guide"), "*.md").Order(StringComparer.Ordinal)
            .Select(path => new GuidePage("samples/guide/" + Path.GetFileName(path)))
            .Where(page => !string.Equals(page.Name, Findings, StringComparison.Ordinal)),
    ];

    /// <summary>The page as it is on the disk now.</summary>
    public string Text => File.ReadAllText(Place);

    /// <summary>The page that is made whole of the texts of `explain`: its files and consoles are held there.</summary>
    public const string Findings = "samples/guide/findings.md";

    /// <summary>Each file to type that the page shows in full, with whether its mark says that it holds a slip.</summary>
    public IEnumerable<(string Text, bool HasSlip)> YamlFiles()
    {
        var text = Text;
        for (var at = text.IndexOf(Yaml, StringComparison.Ordinal); at >= 0; at = text.IndexOf(Yaml, at + 1, StringComparison.Ordinal))
        {
            var start = at + Yaml.Length;
            var mark = text[..at].TrimEnd('\n');
            mark = mark[(mark.LastIndexOf('\n') + 1)..];
            yield return (text[start..text.IndexOf("```", start, StringComparison.Ordinal)],
                mark.StartsWith("<!-- slip in: ", StringComparison.Ordinal));
        }
    }

    /// <summary>What the page links to and shows as pictures, without addresses on the web: paths from the repository's folder.</summary>
    public IEnumerable<(string Path, string Anchor)> Links() => LinkPattern().Matches(Text)
        .Where(link => !link.Groups["to"].Value.Contains("://", StringComparison.Ordinal))
        .Select(link => (link.Groups["to"].Value is { Length: > 0 } to ? Normal(to) : Name, link.Groups["anchor"].Value));

    /// <summary>What a link to each of the page's headings says after the #.</summary>
    public IEnumerable<string> Anchors() => Text.Split('\n').Where(line => line.StartsWith('#'))
        .Select(line => NotInAnchors().Replace(line.TrimStart('#').Trim().ToLowerInvariant(), string.Empty).Replace(' ', '-'));

    /// <summary>Holds the page against what it should say, or writes that down where it is asked for.</summary>
    public void IsOrBecomes(string real)
    {
        if (Rewriting.IsWanted)
        {
            File.WriteAllText(Place, real);
            return;
        }

        Assert.Equal(real, Text);
    }

    /// <summary>The files beside the page that it shows: each block after a mark is the file that the mark names.</summary>
    /// <param name="count">How many there are.</param>
    public string WithFilesAsTheyAre(out int count)
    {
        var blocks = 0;
        var real = FileBlock().Replace(Text, block =>
        {
            blocks++;
            var file = File.ReadAllText(Path.Combine(RepositoryFolder.Path, block.Groups["file"].Value));
            return new StringBuilder(block.Groups["mark"].Value).Append('\n').Append(Yaml).Append(file).Append("```\n").ToString();
        });
        count = blocks;
        return real;
    }

    private string Place => Path.Combine(RepositoryFolder.Path, Name);

    private string Normal(string link) => Path.GetRelativePath(
        RepositoryFolder.Path, Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Place)!, link))).Replace('\\', '/');

    [GeneratedRegex(@"\]\((?<to>[^)#\s]*)(#(?<anchor>[^)\s]*))?\)", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex LinkPattern();

    [GeneratedRegex("[^a-z0-9 -]", RegexOptions.NonBacktracking)]
    private static partial Regex NotInAnchors();

    [GeneratedRegex(
        @"(?<mark><!-- (file|slip in): (?<file>[a-z0-9./-]+) -->)\n```yaml\n.*?```\n",
        RegexOptions.Singleline | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex FileBlock();
}
