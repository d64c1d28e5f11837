namespace BendSheet.Cli.Tests;

/// <summary>No line of code goes beyond the columns of .editorconfig. What stands between three quotes is a file's own text.</summary>
public class ColumnTests
{
    private const int Most = 140;

    [Fact]
    public void No_line_of_code_is_longer_than_the_editor_is_set_to()
    {
        Assert.Contains(
            $"max_line_length = {Most}", File.ReadAllText(Path.Combine(RepositoryFolder.Path, ".editorconfig")), StringComparison.Ordinal);
        var code = new[] { "src", "tests" }.SelectMany(folder => Directory.EnumerateFiles(
            Path.Combine(RepositoryFolder.Path, folder), "*.cs", SearchOption.AllDirectories)).Where(file => !IsBuilt(file)).ToList();
        Assert.True(code.Count > 400);
        Assert.Empty(code.SelectMany(TooLong));
    }

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
