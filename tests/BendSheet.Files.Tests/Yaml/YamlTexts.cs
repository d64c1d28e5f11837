using System.Text;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Tests.Yaml;

/// <summary>Texts in, and what came of them out, in a form that fits on one line of a test.</summary>
internal static class YamlTexts
{
    public static YamlReading Read(string text) => YamlDocument.Read("car.yaml", Encoding.UTF8.GetBytes(text));

    /// <summary><c>line:column rule</c>, joined by <c>; </c>.</summary>
    public static string Places(YamlReading reading) =>
        string.Join("; ", reading.Findings.Select(f => $"{f.Position.Line}:{f.Position.Column} {f.Rule.Name}"));

    /// <summary>
    /// The tree with the place of each part: <c>{a@1:1: 1@1:4}</c>; a text with quotes in quotes, a missing one as <c>()</c>.
    /// </summary>
    public static string Show(YamlValue? value) => value switch
    {
        null => "nothing",
        YamlText text => (text.IsEmpty ? "()" : text.IsPlain ? text.Text : $"\"{text.Text}\"") + Place(text),
        YamlList list => $"[{string.Join(", ", list.Items.Select(Show))}]{Place(list)}",
        YamlMap map => $"{{{string.Join(", ", map.Entries.Select(e => $"{Show(e.Key)}: {Show(e.Value)}"))}}}{Place(map)}",
        _ => throw new ArgumentException("another kind of value", nameof(value)),
    };

    /// <summary>All values of a tree, words included.</summary>
    public static IEnumerable<YamlValue> All(YamlValue? value) => value switch
    {
        YamlList list => list.Items.SelectMany(All).Prepend(list),
        YamlMap map => map.Entries.SelectMany(e => All(e.Value).Prepend(e.Key)).Prepend(map),
        null => [],
        _ => [value],
    };

    private static string Place(YamlValue value) => $"@{value.Position.Line}:{value.Position.Column}";
}
