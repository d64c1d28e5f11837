using System.Text;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Tests.Yaml;

/// <summary>Files broken at random, again and again, starting from good ones.</summary>
public class MutatedYamlTests
{
    private const int Seed = 316;

    private const int Files = 30_000;

    private static readonly string[] Good =
    [
        "units: mm\ntube: {od: 3/16 in}\nlines:\n  front-left:\n    - {straight: 120, bend: 45}\n    - {straight: 60, rotate: 90 cw, "
            + "bend: 30}\n",
        "corners: [[0, 0, 0], [120, 5.5, 0]]\nnote: 'Joe''s'\ntext: \"2' 3\\\"\"\n",
        "a: |\n  two\n  lines\nb: >-\n  folded\n\n# end\n",
        "? a\n: - b\n  - - c\n    - d: 1\n      e: ~\n",
    ];

    private static readonly string[] Specials =
    [
        "{",
        "}",
        "[",
        "]",
        ",",
        ": ",
        ":",
        "- ",
        "-",
        "? ",
        "#",
        " #",
        "&a ",
        "*a ",
        "!",
        "!!",
        "!<",
        ">",
        "|",
        "|2",
        "'",
        "\"",
        "\\",
        "\\x4", "\\UFFFFFFFF",
        "%",
        "%TAG ! ",
        "%YAML 1.1\n",
        "@",
        "`",
        "~",
        "---",
        "\n---\n",
        "...",
        "\n...\n",
        "<<",
        "\n",
        "\r",
        "\r\n",
        "\t",
        " ",
        "  ",
        "\0",
        "\u0085", "\u2028",
        "\uFEFF", "\u00a0", "🚗", "\ud83d", "1,5", "a:1", "a 1", "=", "\u001b", "°",
    ];

    [Fact]
    public void Whatever_is_typed_is_answered_by_findings_inside_the_text()
    {
        var random = new Random(Seed);
        var pool = new List<string>(Good);
        var kept = 0;
        for (var file = 0; file < Files; file++)
        {
            var typed = pool[random.Next(pool.Count)];
            for (var times = random.Next(1, 4); times > 0; times--)
            {
                typed = Mutate(typed, random);
            }

            var reading = Check(typed);
            if (reading.Root is not null && typed.Length < 2_000)
            {
                Keep(pool, typed, random);
                kept++;
            }
        }

        Assert.True(kept > Files / 10, $"only {kept} of {Files} files could be read");
    }

    private static YamlReading Check(string typed)
    {
        try
        {
            var reading = YamlTexts.Read(typed);
            Assert.True(reading.Root is not null || reading.Findings.Count > 0, "neither a tree nor a finding");
            foreach (var finding in reading.Findings)
            {
                AssertInside(reading.Source, finding.Position.Line, finding.Position.Column);
                Assert.DoesNotContain(finding.Message, char.IsControl);
                Assert.Contains(finding.Rule, YamlRules.All);
            }

            foreach (var value in YamlTexts.All(reading.Root))
            {
                AssertInside(reading.Source, value.Position.Line, value.Position.Column);
                AssertStandsThere(reading, value);
            }

            return reading;
        }
        catch (Exception e)
        {
            throw new InvalidOperationException(
                $"seed {Seed}, typed: {Convert.ToBase64String(Encoding.UTF8.GetBytes(typed))} = {typed}", e);
        }
    }

    private static void AssertInside(SourceLines source, int line, int column)
    {
        Assert.InRange(line, 1, source.Count);
        Assert.InRange(column, 1, source[line].Length + 1);
    }

    /// <summary>A plain text without marks begins with the character at its place.</summary>
    private static void AssertStandsThere(YamlReading reading, YamlValue value)
    {
        if (value is YamlText { IsPlain: true, Text.Length: > 0 } text && reading.Findings.Count == 0)
        {
            var line = reading.Source[text.Position.Line];
            Assert.Equal(text.Text[0], line[text.Position.Column - 1]);
        }
    }

    private static void Keep(List<string> pool, string typed, Random random)
    {
        if (pool.Count < 500)
        {
            pool.Add(typed);
        }
        else
        {
            pool[random.Next(Good.Length, pool.Count)] = typed;
        }
    }

    private static string Mutate(string typed, Random random)
    {
        var at = random.Next(typed.Length + 1);
        var length = random.Next(Math.Min(12, typed.Length - at) + 1);
        var special = Specials[random.Next(Specials.Length)];
        return random.Next(6) switch
        {
            0 or 1 => typed.Insert(at, special),
            2 => typed.Remove(at, length),
            3 => typed.Remove(at, length).Insert(at, special),
            4 => typed.Insert(random.Next(typed.Length + 1), typed.Substring(at, length)),
            _ => typed[..at],
        };
    }
}
