using System.Collections.Immutable;
using BendSheet.Core.Findings;

namespace BendSheet.Cli.Explain;

/// <summary>
/// The explanations, from <c>rules.txt</c> beside this: <c>== </c> begins a group, <c>= </c> a rule; then sentences, <c>source: </c>,
/// <c>ask: </c> and <c>right: </c> (a line's name, asked for), and the example as a comparison of the two files, two columns further in.
/// </summary>
public static class Explanations
{
    private const string Group = "== ", Name = "= ", Source = "source: ", Ask = "ask: ", AskRight = "right: ";

    /// <summary>In the order of the text.</summary>
    public static ImmutableArray<Explanation> All { get; } = Read();

    /// <summary>The one of a rule; null where no rule has that name.</summary>
    public static Explanation? Of(string rule) => All.FirstOrDefault(one => string.Equals(one.Rule.Name, rule, StringComparison.Ordinal));

    private static ImmutableArray<Explanation> Read()
    {
        using var stream = typeof(Explanations).Assembly.GetManifestResourceStream("rules.txt")!;
        using var reader = new StreamReader(stream);
        var rules = EveryRule.All.ToDictionary(rule => rule.Name, StringComparer.Ordinal);
        var all = ImmutableArray.CreateBuilder<Explanation>();
        var (group, rule, said) = (string.Empty, (Rule?)null, new List<string>());
        while (reader.ReadLine() is { } line)
        {
            if (!line.StartsWith(Group, StringComparison.Ordinal) && !line.StartsWith(Name, StringComparison.Ordinal))
            {
                said.Add(line);
                continue;
            }

            End();
            (group, rule) = line.StartsWith(Group, StringComparison.Ordinal)
                ? (line[Group.Length..], null)
                : (group, rules.TryGetValue(line[Name.Length..], out var named)
                    ? named
                    : throw new InvalidOperationException($"rules.txt explains {line}, which is no rule"));
        }

        End();
        return all.ToImmutable();

        void End()
        {
            if (rule is not null)
            {
                all.Add(One(rule, group, said));
            }

            said.Clear();
        }
    }

    private static Explanation One(Rule rule, string group, List<string> said)
    {
        ImmutableArray<(char, string)> example =
            [.. said.Where(line => line.Length > 2 && line[0] is ' ' or '-' or '+').Select(line => (line[0], line[2..]))];
        ImmutableArray<string> more =
        [
            .. said.Where(line => line.Length > 0 && char.IsAsciiLetterUpper(line[0]) || line.StartsWith('`')),
        ];
        return new(
            rule,
            group,
            more,
            After(Source) ?? string.Empty,
            example.IsEmpty ? null : new(example, After(Ask), After(AskRight)));

        string? After(string word) =>
            said.Find(line => line.StartsWith(word, StringComparison.Ordinal)) is { } line ? line[word.Length..] : null;
    }
}
