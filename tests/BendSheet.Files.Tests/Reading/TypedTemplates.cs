using System.Text;
using BendSheet.Files.Reading;

namespace BendSheet.Files.Tests.Reading;

/// <summary>Files as typed, and what came of them in a form that fits on one line of a test.</summary>
internal static class TypedTemplates
{
    /// <summary>A sound beginning of three lines; what a test is about stands on line 4 and below.</summary>
    public const string Top = "units: mm\ntube: {od: 3/16 in}\nbender: {radius: 9/16 in}\n";

    /// <summary>A sound line, to stand below whatever else is typed.</summary>
    public const string Line = "lines:\n  fl:\n    - {straight: 120, bend: 45}\n    - {straight: 80}\n";

    public static TemplateFile Read(string typed) => Read(Encoding.UTF8.GetBytes(typed));

    public static TemplateFile Read(byte[] typed)
    {
        using var content = new MemoryStream(typed);
        return TemplateReader.Read("car.yaml", content);
    }

    /// <summary>A file of one line with these rows: <see cref="Top"/>, two lines more, and the rows from line 6, column 5 on.</summary>
    public static string Rows(params string[] rows) => Top + "lines:\n  fl:\n" + string.Concat(rows.Select(row => $"    - {row}\n"));

    /// <summary>A file of one line that says more: its words stand from line 6, column 5 on, and one row of 300 below them.</summary>
    public static string LongLine(params string[] words) =>
        Top + "lines:\n  fl:\n" + string.Concat(words.Select(word => $"    {word}\n")) + "    rows: [{straight: 300}]\n";

    /// <summary><c>line:column rule</c>, joined by <c>; </c>.</summary>
    public static string Places(TemplateFile file) =>
        string.Join("; ", file.Findings.Select(finding => $"{finding.Position.Line}:{finding.Position.Column} {finding.Rule.Name}"));
}
