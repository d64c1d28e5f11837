namespace BendSheet.Core.Tests.References;

public class ReferenceTableTests
{
    public static TheoryData<string> Files { get; } =
    [
        .. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "references"), "*.csv")
            .Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal),
    ];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_row_names_its_publication_and_its_mark(string file)
    {
        foreach (var row in ReferenceTable.Read(file))
        {
            Assert.NotEmpty(row["source"]);
            Assert.DoesNotContain("://", row["source"], StringComparison.Ordinal);
            Assert.Matches("^(CONFIRMED|WEAK|MEMORY)$", row["mark"]);
        }
    }
}
