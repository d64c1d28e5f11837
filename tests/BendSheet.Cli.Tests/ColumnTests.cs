namespace BendSheet.Cli.Tests;

/// <summary>
/// No line of code goes beyond the columns of .editorconfig. What stands between three quotes is a file's own text. No method is longer
/// than DEVELOPERS.md allows.
/// </summary>
public class ColumnTests
{
    private const int Most = 140;
    private const int MostLines = 60;

    [Fact]
    public void No_line_of_code_is_longer_than_the_editor_is_set_to()
    {
        Assert.Contains(
            $"max_line_length = {Most}", File.ReadAllText(Path.Combine(RepositoryFolder.Path, ".editorconfig")), StringComparison.Ordinal);
        var code = Code("src", "tests");
        Assert.True(code.Count > 400);
        Assert.Empty(code.SelectMany(TooLong));
    }

    [Fact]
    public void No_method_is_longer_than_the_contributor_guide_allows()
    {
        Assert.Contains(
            FormattableString.Invariant($"methods at most {MostLines} lines"),
            File.ReadAllText(Path.Combine(RepositoryFolder.Path, "DEVELOPERS.md")).ReplaceLineEndings(" "),
            StringComparison.Ordinal);
        var methods = Code("src").SelectMany(Methods).ToList();
        Assert.True(methods.Count > 1000);
        Assert.DoesNotContain(methods, method => method.Lines > MostLines);
    }

    private static List<string> Code(params string[] folders) =>
    [
        .. folders.SelectMany(folder => Directory.EnumerateFiles(
            Path.Combine(RepositoryFolder.Path, folder), "*.cs", SearchOption.AllDirectories)).Where(file => !IsBuilt(file)),
    ];

    /// <summary>By their braces, which the formatter puts on lines of their own; what stands in a method is no longer than it.</summary>
    private static IEnumerable<(string Method, int Lines)> Methods(string file)
    {
        var lines = File.ReadAllLines(file);
        for (var end = 0; end < lines.Length; end++)
        {
            var brace = lines[end].TrimStart(' ');
            var indent = lines[end].Length - brace.Length;
            if (indent < 4 || brace is not "}")
            {
                continue;
            }

            var open = Array.FindLastIndex(lines, end, line => Indent(line) == indent && line.EndsWith('{'));
            var begin = open < 1 ? -1 : Array.FindLastIndex(lines, open - 1, line => Indent(line) == indent);
            if (begin >= 0 && lines[begin].Contains('(', StringComparison.Ordinal) && !IsType(lines[begin]))
            {
                yield return ($"{Path.GetFileName(file)}: {lines[begin].Trim()}", end - begin + 1);
            }
        }
    }

    private static int Indent(string line) => line.Length == 0 ? int.MaxValue : line.Length - line.TrimStart(' ').Length;

    private static bool IsType(string line) => line.Split(' ', '(').Any(word => word is "class" or "record" or "struct" or "interface");

    internal static bool IsBuilt(string file) =>
        Path.GetDirectoryName(file)!.Split(Path.DirectorySeparatorChar).Any(folder => folder is "obj" or "bin");

    private static IEnumerable<string> TooLong(string file)
    {
        var isText = false;
        foreach (var (number, line) in File.ReadLines(file).Index())
        {
            var quotes = line.Split("\"\"\"").Length - 1;
            if (line.Length > Most && !isText && quotes == 0)
            {
                yield return FormattableString.Invariant($"{Path.GetFileName(file)}:{number + 1}: {line.Length} columns");
            }

            isText ^= quotes % 2 == 1;
        }
    }
}
