using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Clearance;

/// <summary>What is to be said of lines that come too near to each other, or to a zone.</summary>
/// <param name="OfLines">What concerns a line, by its name: the same finding for both lines of a pair.</param>
/// <param name="OfCar">What concerns no line alone.</param>
public sealed record ClearanceFindings(ILookup<string, Finding> OfLines, ImmutableArray<Finding> OfCar);

/// <summary>Rules about the room between lines. All are warnings: places on the car are known only to some millimetres.</summary>
public static class ClearanceRules
{
    /// <summary>Further ones would only hide the first.</summary>
    private const int MostNamed = 100;

    /// <summary>Tube against tube.</summary>
    public static Rule LinesTooNear { get; } = new(
        "lines-too-near", RuleSubject.Making, "Two lines that touch rub each other through as the car shakes them.");

    /// <summary>Tube against a zone.</summary>
    public static Rule NotClear { get; } = new(
        "not-clear", RuleSubject.Making, "Heat boils brake fluid, and what moves cuts or tears a line.");

    /// <summary>All that is to be said.</summary>
    public static ClearanceFindings Check(Clearances clearances)
    {
        var all = clearances.Approaches.OrderBy(one => one.Gap).ToList();
        var named = all.Take(MostNamed).Select(one => (Approach: one, Finding: Of(one))).ToList();
        var ofLines = named.SelectMany(one => new[] { one.Approach.First.Line, one.Approach.Second?.Line }
            .Where(line => line is not null).Select(line => (line!.Template.Name, one.Finding)));
        var ofCar = new List<Finding>();
        if (all.Count > MostNamed)
        {
            ofCar.Add(LinesTooNear.Warning(
                SourcePosition.Whole(all[0].First.At.File),
                $"{Counted.Large(all.Count - MostNamed, "more place")} where lines lie too near are not named: put the nearest right first "
                    + "and look again"));
        }

        if (!clearances.IsWhole)
        {
            ofCar.Add(LinesTooNear.Warning(
                all.Count == 0 ? default : SourcePosition.Whole(all[0].First.At.File),
                "so many lines lie in one place that not all were held against each other: check the places that are typed"));
        }

        return new(ofLines.ToLookup(one => one.Name, one => one.Finding, StringComparer.Ordinal), [.. ofCar]);
    }

    private static Finding Of(Approach approach) => approach.Zone is { } zone ? OfZone(approach, zone) : OfLines(approach);

    private static Finding OfLines(Approach approach)
    {
        var (first, second) = (approach.First, approach.Second!);
        var places = $"{first.Line.Template.Name} {first.InWords}, {second.Line.Template.Name} {second.InWords}";
        var near = approach.Gap <= Tolerances.SamePoint
            ? $"lines {first.Line.Template.Name} and {second.Line.Template.Name} run into each other by "
                + FindingFigures.Mm(Length.Zero - approach.Gap)
            : $"lines {first.Line.Template.Name} and {second.Line.Template.Name} leave {FindingFigures.Mm(approach.Gap)} of air";
        return LinesTooNear.Warning(
            second.At,
            $"{near}: {places}; wanted {FindingFigures.Mm(approach.Wanted)}: lead one of them another way, or clip the two together so "
                + "that neither can rub");
    }

    private static Finding OfZone(Approach approach, KeepClearZone zone)
    {
        var place = $"line {approach.First.Line.Template.Name}, {approach.First.InWords},";
        var why = zone.Why is { } reason ? $" ({reason})" : string.Empty;
        var near = approach.Gap <= Tolerances.SamePoint
            ? $"{place} runs into {zone.Name}{why}"
            : $"{place} passes {zone.Name}{why} with {FindingFigures.Mm(approach.Gap)} of air";
        return NotClear.Warning(
            approach.First.At, $"{near}; wanted {FindingFigures.Mm(approach.Wanted)}: lead it another way, or shield it");
    }
}
