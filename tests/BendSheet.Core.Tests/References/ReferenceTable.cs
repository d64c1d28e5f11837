using System.Text;

namespace BendSheet.Core.Tests.References;

/// <summary>A table of published values: comma separated, one header row, figures kept as they were printed.</summary>
internal static class ReferenceTable
{
    /// <summary>All rows, each by column name. A table without rows proves nothing, so it is a failure.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "references", file));
        var heads = Fields(lines[0]);
        var rows = lines.Skip(1).Select(line => Fields(line).Zip(heads).ToDictionary(
            pair => pair.Second, pair => pair.First, StringComparer.Ordinal)).ToList();
        Assert.NotEmpty(rows);
        Assert.All(rows, row => Assert.Equal(heads.Count, row.Count));
        return rows;
    }

    /// <summary>The rows that may prove something.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Confirmed(string file)
    {
        var rows = Read(file).Where(row => string.Equals(row["mark"], "CONFIRMED", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(rows);
        return rows;
    }

    /// <summary>The printed figure of a confirmed row.</summary>
    public static string Printed(string file, string id) =>
        Assert.Single(Confirmed(file), row => string.Equals(row["id"], id, StringComparison.Ordinal))["printed"];

    private static List<string> Fields(string line)
    {
        var fields = new List<string>();
        var field = new StringBuilder();
        var quoted = false;
        foreach (var character in line)
        {
            if (character == '"')
            {
                quoted = !quoted;
            }
            else if (character == ',' && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(character);
            }
        }

        fields.Add(field.ToString());
        return fields;
    }
}
