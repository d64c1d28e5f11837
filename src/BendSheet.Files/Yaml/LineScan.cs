using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Files.Yaml;

/// <summary>
/// Looks at the bare lines before they are parsed, for what the parser reports at the wrong place, counts as a line end that no editor
/// shows, or silently skips: tabs that indent, control characters, and lines that begin with a percent sign.
/// </summary>
internal static class LineScan
{
    /// <summary>The text for the parser, of the same length and lines: what was reported is blanked out. Only tabs in front of a line stay:
    /// how wide they were meant has to be seen from the lines around.</summary>
    public static string Clean(SourceLines source, List<Finding> findings)
    {
        char[]? cleaned = null;
        Reported tabs = new(), controls = new(), directives = new();
        for (var line = 1; line <= source.Count; line++)
        {
            var content = source[line];
            var start = source.StartOf(line);
            var indent = content.Length - content.TrimStart().Length;
            var isBare = indent == content.Length || content[indent] == '#';
            if (content.StartsWith('%'))
            {
                directives.Note(start);
                Replace(start, '#');
            }

            var odd = content[..indent].IndexOfAnyExcept(' ');
            if (odd >= 0 && !isBare && !InvisibleCharacter.Is(content[odd]))
            {
                tabs.Note(start + odd);
            }

            for (var at = 0; at < content.Length; at++)
            {
                if (InvisibleCharacter.Is(content[at]))
                {
                    controls.Note(start + at);
                    Replace(start + at, ' ');
                }
                else if (isBare && at < indent && content[at] != ' ')
                {
                    Replace(start + at, ' ');
                }
            }
        }

        findings.AddRange(Findings(source, tabs, controls, directives));
        return cleaned is null ? source.Text : new string(cleaned);

        void Replace(int at, char by)
        {
            cleaned ??= source.Text.ToCharArray();
            cleaned[at] = by;
        }
    }

    private static IEnumerable<Finding> Findings(SourceLines source, Reported tabs, Reported controls, Reported directives)
    {
        if (tabs.Count > 0)
        {
            var what = source.Text[tabs.First] == '\t' ? "a tab" : "a space that is not an ordinary one";
            yield return YamlRules.TabInIndent.Error(source.AtOffset(tabs.First),
                $"this line is indented with {what}{More(tabs.Count, "line")}: use spaces, two for each step in");
        }

        if (controls.Count > 0)
        {
            var code = FormattableString.Invariant($"U+{(int)source.Text[controls.First]:X4}");
            yield return YamlRules.ControlCharacter.Error(source.AtOffset(controls.First),
                $"an invisible character ({code}) stands here{More(controls.Count, "place")}: delete it and type the line again");
        }

        if (directives.Count > 0)
        {
            yield return YamlRules.Directive.Error(source.AtOffset(directives.First),
                $"a line cannot begin with %{More(directives.Count, "line")}: write # before a remark, or delete the line");
        }
    }

    private static string More(int count, string noun) => count == 1 ? "" : $", and {Counted.Large(count - 1, noun)} more";

    private sealed class Reported
    {
        public int First { get; private set; }

        public int Count { get; private set; }

        public void Note(int offset)
        {
            First = Count == 0 ? offset : First;
            Count++;
        }
    }
}
