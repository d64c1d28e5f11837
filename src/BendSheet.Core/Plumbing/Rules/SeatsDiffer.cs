using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Plumbing.Rules;

/// <summary>
/// FAA-H-8083-30, p. 7-5: 45° tools must not be used for 37° fittings. Cones of two angles touch on one line, are crushed there, and leak.
/// A plain end, a bubble flare and a banjo each want a seat of their own kind.
/// </summary>
public static class SeatsDiffer
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "seats-differ",
        RuleSubject.Making,
        "Cones of 37° and 45° touch only on a line and leak; each flare seals only on the seat it is made for.");

    /// <summary>An error at the port, where the end that goes to it cannot seal there.</summary>
    public static IEnumerable<Finding> Check(PortUse use)
    {
        // Taper threads have a rule of their own.
        if (use.Place.Port.Spec.Seat is not { } seat || use.End.Seats is not { } own || own.Contains(seat)
            || (seat == Seat.Taper) != (own is [Seat.Taper]))
        {
            yield break;
        }

        yield return Rule.Error(
            use.Position,
            $"{use.End.Name} has {use.End.InWords}, and {use.Place.InWords} has {seat.InWords()}: "
                + $"{Why(use, own, seat)}; {Cure(use, seat)}");
    }

    private static string Why(PortUse use, IReadOnlyList<Seat> own, Seat seat)
    {
        if (seat == Seat.Bleed)
        {
            return "nothing can be connected to it";
        }

        if (use.End.Fitting is { Flare: Flare.None })
        {
            return "without a flare nothing seals there";
        }

        return own.Count == 0 || own[0].Cone() is not { } angle || seat.Cone() is not { } other ? "they do not seal on each other"
            : angle != other ? "cones of different angles touch only on a line and leak"
            : "one nut goes over the cone and the other into the port";
    }

    private static string Cure(PortUse use, Seat seat) =>
        seat == Seat.Bleed ? "take another port"
        : use.End.Fitting is { } fitting && seat.FlareWords() is { } flare
            ? $"use a fitting with `flare: {flare}` in the place of {fitting.Name}, or an adapter between them"
        : "put an adapter between them";
}
