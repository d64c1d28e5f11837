using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Car;

/// <summary>Picks the lines and benders that were asked for by name.</summary>
public static class Choice
{
    /// <summary>A line was asked for that the file does not have.</summary>
    public static Rule UnknownLine { get; } = new(
        "unknown-line", RuleSubject.File, "A line whose name is not in the file would be left out, and nobody would know.");

    /// <summary>A bender was asked for that the file does not have.</summary>
    public static Rule UnknownBender { get; } = new(
        "unknown-bender", RuleSubject.File, "A bender whose name is not in the file would be left out, and nobody would know.");

    /// <summary>Whether a name was asked for; none asked for means all.</summary>
    public static bool Asks(this IReadOnlyCollection<string> wanted, string name) =>
        wanted.Count == 0 || wanted.Contains(name, StringComparer.Ordinal);

    /// <summary>A mistake in the file that does not concern the lines asked for.</summary>
    public static Rule WrongElsewhere { get; } = new(
        "wrong-elsewhere",
        RuleSubject.File,
        "A mistake elsewhere in the file does not stop this line, but still has to be put right.");

    /// <summary>
    /// The findings of the file that concern what was asked for: all of them where nothing was, and otherwise those of the lines, with a
    /// note of how many mistakes there are elsewhere.
    /// </summary>
    public static IEnumerable<Finding> OfFile(MeasuredCar car, IReadOnlyCollection<string> wanted)
    {
        if (wanted.Count == 0 || car.LineNames.IsEmpty)
        {
            return car.Findings;
        }

        List<Finding> concerning = [.. wanted.Where(car.LineNames.Contains).SelectMany(line => car.FindingsOf(line)).Distinct()];
        var elsewhere = car.Findings.Except(concerning).Count(finding => finding.Severity == Severity.Error);
        return elsewhere == 0
            ? concerning
            : concerning.Append(WrongElsewhere.Note(
                SourcePosition.Whole(car.FileName),
                $"{Counted.Words(elsewhere, "mistake")} elsewhere in the file: `check` without `--line` says "
                    + $"{(elsewhere == 1 ? "which" : "them all")}"));
    }

    /// <summary>A finding for each line asked for that is not in the file.</summary>
    public static IEnumerable<Finding> UnknownLines(MeasuredCar car, IReadOnlyCollection<string> wanted)
    {
        var known = car.LineNames.ToList();
        return (known.Count == 0 ? [] : wanted.Except(known, StringComparer.Ordinal)).Select(line => UnknownLine.Error(
            SourcePosition.Whole(car.FileName),
            $"there is no line `{line}`: " + (NearestWord.Among(line, known) is { } nearest
                ? $"did you mean `{nearest}`?"
                : $"the file has `{string.Join("`, `", known)}`")));
    }

    /// <summary>The benders in the order of the file, and a finding for each name that is not in it.</summary>
    /// <param name="car">All benders.</param>
    /// <param name="wanted">None means all.</param>
    public static (ImmutableArray<Bender> Benders, ImmutableArray<Finding> Findings) Benders(
        MeasuredCar car, IReadOnlyCollection<string> wanted)
    {
        var known = car.Benders.Select(bender => bender.Name).Where(bender => bender.Length > 0).ToList();
        var findings = Unknown(car, wanted, known).Select(bender => UnknownBender.Error(
            SourcePosition.Whole(car.FileName),
            $"there is no bender `{bender}`: " + (NearestWord.Among(bender, known) is { } nearest ? $"did you mean `{nearest}`?"
                : known.Count == 0 ? "the file's only bender has no name; leave `--bender` out"
                : $"the file has `{string.Join("`, `", known)}`")));
        return ([.. car.Benders.Where(bender => wanted.Asks(bender.Name))], [.. findings]);
    }

    /// <summary>Where the file itself is wrong, the name may be there and unreadable: then that is what has to be said.</summary>
    private static IEnumerable<string> Unknown(MeasuredCar car, IReadOnlyCollection<string> wanted, List<string> known) =>
        wanted.Count == 0 || car.Findings.Verdict() == Verdict.WrongFile ? [] : wanted.Except(known, StringComparer.Ordinal);
}
