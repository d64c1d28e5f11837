using System.Collections.Immutable;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench;

/// <summary>An end of the part-bent tube, up to the nearest bend that is made, where there is one.</summary>
/// <param name="Straight">From the end, as it is cut then, to that bend or to the other end.</param>
/// <param name="Turn">Of that bend; null where the tube is straight up to its other end.</param>
/// <param name="Radius">Of that bend, to the centreline; zero without one.</param>
public sealed record EndOfTube(Length Straight, Angle? Turn, Length Radius)
{
    /// <summary>The end at a moment of the order of work.</summary>
    /// <param name="line">With a plan.</param>
    /// <param name="end">Which one; not flared yet, and trimmed where it is trimmed on the car.</param>
    /// <param name="made">Which bends are made, from 0.</param>
    /// <exception cref="ArgumentException">The line has no plan.</exception>
    public static EndOfTube Of(SolvedLine line, TubeEnd end, ImmutableHashSet<int> made)
    {
        ArgumentNullException.ThrowIfNull(made);
        if (line is not { Plan: { } plan, Template: var template })
        {
            throw new ArgumentException("Only a line that can be made has ends.", nameof(line));
        }

        // An end that is flared after the bends is trimmed before it is flared.
        var flaredFirst = end == TubeEnd.A ? plan.Order.FlareAFirst : plan.Order.FlareBFirst;
        var trim = end == TubeEnd.B && !flaredFirst ? template.To.Trim : Length.Zero;
        if (made.IsEmpty)
        {
            return new(plan.CutLength - trim, null, Length.Zero);
        }

        var bend = plan.Bends[end == TubeEnd.A ? made.Min() : made.Max()];
        return new(
            end == TubeEnd.A ? bend.Start : plan.CutLength - trim - bend.End,
            bend.Bend.Turn,
            bend.Layout.Radius);
    }
}
