using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;

namespace BendSheet.Core.Plumbing.Rules;

/// <summary>
/// A taper thread seals in its flanks and only in another taper thread; a straight one holds a seat together and seals nothing itself.
/// </summary>
public static class TaperAgainstStraight
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "taper-against-straight",
        RuleSubject.Making,
        "A taper thread seals only in a taper thread; in a straight one it jams, splits the port or leaks.");

    /// <summary>An error at the port.</summary>
    public static IEnumerable<Finding> Check(PortUse use)
    {
        if (use.Place.Port.Spec.Seat is { } seat
            && use.End.Seats is { } own
            && (seat == Seat.Taper) != (own is [Seat.Taper])
            && seat != Seat.Bleed)
        {
            var (taper, straight) = seat == Seat.Taper ? (use.Place.InWords, use.End.Name) : (use.End.Name, use.Place.InWords);
            yield return Rule.Error(
                use.Position,
                $"{taper} has a taper thread and {straight} a straight one: the taper jams in it and neither seals; put an adapter "
                    + $"between them, taper on one side and `{Wanted(own, seat)}` on the other");
        }
    }

    private static string Wanted(IReadOnlyList<Seat> own, Seat seat) =>
        (seat != Seat.Taper ? seat : own is [var first, ..] ? first : Seat.Flare37).Word();
}
