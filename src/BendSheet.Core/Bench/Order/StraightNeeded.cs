using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Order;

/// <summary>
/// Straight tube that a tool needs on the two sides of a bend: its grip where it holds, its follow where it sweeps, and on either side
/// as much as its mark lies beyond the bend, for a mark on a bend that is made already cannot be brought under the tool's line.
/// </summary>
/// <param name="TowardsA">From the start of the bend.</param>
/// <param name="TowardsB">From the end of the bend.</param>
public readonly record struct StraightNeeded(Length TowardsA, Length TowardsB)
{
    /// <summary>For one bend, held from one end.</summary>
    public static StraightNeeded Of(Bender bender, TubeEnd held, BendPlace place)
    {
        var mark = Bench.Mark.Of(bender, held, place);
        var towardsA = Longer(held == TubeEnd.A ? bender.Grip : bender.Follow, place.Start - mark);
        var towardsB = Longer(held == TubeEnd.B ? bender.Grip : bender.Follow, mark - place.End);
        return new(towardsA, towardsB);
    }

    private static Length Longer(Length one, Length other) => one > other ? one : other;
}
