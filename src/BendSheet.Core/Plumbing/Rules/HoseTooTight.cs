using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Plumbing.Rules;

/// <summary>
/// FAA AC 43.13-1B, Table 9-3, p. 9-22: hose for 3/16 in tube is bent to a radius of 3.00 in at least. Only that row of the table is known
/// here, and only where the file says how tight the hose is bent. A warning: the maker of the hose knows better.
/// </summary>
public static class HoseTooTight
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "hose-too-tight", RuleSubject.Making, "Hose bent tighter than it is made for kinks or cracks.");

    /// <summary>The published radius.</summary>
    public static Length Smallest => Length.FromInches(3);

    private static Length Size => Length.FromInches(3.0 / 16);

    /// <summary>A warning at the radius of each hose for 3/16 in tube that is bent tighter.</summary>
    public static IEnumerable<Finding> Check(PipeNetwork network) => network.Car.Hoses
        .Where(hose => hose.BentTo is { } radius && radius.FallsShortOf(Smallest) && IsForSize(hose, network))
        .Select(hose => Rule.Warning(
            hose.BentToAt,
            $"hose {hose.Name} is bent to a radius of {FindingFigures.Mm(hose.BentTo!.Value)}, and the smallest published for hose on tube "
                + $"of 3/16 in is {FindingFigures.Mm(Smallest)} (FAA AC 43.13-1B, Table 9-3): lead it in a wider curve, in every position "
                + "of wheel and steering, or go by what its maker gives"));

    /// <summary>By the hose's own ends, by the ports they go to, or by a line that goes to the same part.</summary>
    private static bool IsForSize(Hose hose, PipeNetwork network)
    {
        HoseEnd[] ends = [hose.From, hose.To];
        var parts = ends.Select(end => end.Port?.Part.Name).OfType<string>().ToHashSet(StringComparer.Ordinal);
        return ends.SelectMany(end => new[] { end.Spec, end.Port?.Port.Spec }).OfType<PortSpec>().Any(IsStandard)
            || network.Connections.SelectMany(connection => connection.Ends)
                .Any(end => end.Tube?.IsOfSize(Size) == true && end.Port is { } place && parts.Contains(place.Part.Name));
    }

    private static bool IsStandard(PortSpec spec) => spec is { Thread: { } thread, Seat: { } seat }
        && StandardPort.Find(seat, Size).Any(row => row.Thread.Fits(thread));
}
