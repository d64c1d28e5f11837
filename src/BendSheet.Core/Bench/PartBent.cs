using System.Collections.Immutable;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench;

/// <summary>
/// The tube at a moment of the order of work: the bends made so far need not be one stretch, all tube between them is still straight. End A
/// at the origin, its straight along +X; in millimetres.
/// </summary>
/// <param name="Start">Where the bend in the tool begins, towards A, rolled to its plane.</param>
/// <param name="End">Where it ends, towards B, rolled to its plane.</param>
/// <param name="Touched">The face or cut end of A, the back of each made bend, the face or cut end of B; null where a tape has nothing to
/// touch.</param>
public sealed record PartBent(Frame Start, Frame End, ImmutableArray<Vector3D?> Touched)
{
    /// <summary>The centreline from A to B; arcs as short straight pieces.</summary>
    public ImmutableArray<Vector3D> Points { get; private init; } = [];

    /// <summary>For each place in <see cref="Touched"/> the number of the nearest point.</summary>
    public ImmutableArray<int> TouchedAt { get; private init; } = [];

    /// <summary>Which of the points the bend in the tool begins at.</summary>
    public int First { get; private init; }

    /// <summary>Which of the points it ends at.</summary>
    public int Last { get; private init; }

    /// <summary>The points before which a straight was shortened.</summary>
    public ImmutableArray<int> Breaks { get; private init; } = [];

    /// <summary>The tube with a bend in the tool.</summary>
    /// <param name="line">With a plan.</param>
    /// <param name="bends">Those in the tool, from 0; several of them where a coil is wound in one go.</param>
    /// <param name="isMade">Which bends are made.</param>
    /// <param name="longest">Longer straights are shortened to this, for a drawing; null for the tube as it is.</param>
    /// <exception cref="ArgumentException">The line has no plan.</exception>
    public static PartBent Of(SolvedLine line, (int First, int Last) bends, Func<int, bool> isMade, Length? longest = null)
    {
        ArgumentNullException.ThrowIfNull(isMade);
        return Of(line, bends, isMade, default, longest);
    }

    /// <summary>The same with the bend in the tool out by a slip of the hands.</summary>
    internal static PartBent Of(SolvedLine line, (int First, int Last) bends, Func<int, bool> isMade, BendSlip slip, Length? longest = null)
    {
        if (line is not { Layout: { } layout, Plan: { } plan })
        {
            throw new ArgumentException("Only a line that can be made is bent.", nameof(line));
        }

        var template = line.Template;
        var walk = new Walk(longest, 0.5 * template.Tube.OutsideDiameter, layout.Bends.Length);
        var at = plan.Order.FlareAFirst ? template.From.FlareAllowance : Length.Zero;
        var (start, end) = (Frame.Default, Frame.Default);
        var (first, last) = (0, 0);
        for (var i = 0; i < layout.Bends.Length; i++)
        {
            walk.Roll += i == 0 ? Angle.Zero : layout.Bends[i].Bend.Rotation;
            var (bend, inTool) = (plan.Bends[i], i >= bends.First && i <= bends.Last);
            if (!isMade(i) && !inTool)
            {
                continue;
            }

            // A bend that is turned further takes its tube from the swept side.
            var by = inTool ? slip : default;
            var taken = by.Turn.Radians * bend.Layout.Radius;
            walk.GoStraight(bend.Start - at + by.Mark - (bend.Held == TubeEnd.B ? taken : Length.Zero));
            walk.Turn(by.Roll);
            if (i == bends.First)
            {
                (start, first) = (walk.Frame, walk.Count - 1);
            }

            at = bend.End + by.Mark + (bend.Held == TubeEnd.A ? taken : Length.Zero);
            if (isMade(i))
            {
                walk.Bend(i, bend.Layout, by.Turn);
            }
            else
            {
                walk.GoStraight(bend.End - bend.Start, whole: true);
            }

            walk.Roll = -by.Roll;
            if (i == bends.Last)
            {
                (end, last) = (walk.Frame, walk.Count - 1);
            }
        }

        walk.GoStraight(plan.CutLength - at - (plan.Order.FlareBFirst ? template.To.FlareAllowance : Length.Zero));
        return new(start, end, walk.Touched())
        {
            Points = walk.Points,
            TouchedAt = walk.TouchedAt(),
            First = first,
            Last = last,
            Breaks = walk.Breaks,
        };
    }

    /// <summary>From A to B, carrying a frame along.</summary>
    private sealed class Walk(Length? longest, Length halfWidth, int bends)
    {
        private const double DegreesPerPiece = 6;

        private readonly ImmutableArray<Vector3D>.Builder _points = Begun();
        private readonly ImmutableArray<int>.Builder _breaks = ImmutableArray.CreateBuilder<int>();
        private readonly Vector3D?[] _touched = new Vector3D?[bends + 2];
        private readonly int[] _touchedAt = new int[bends + 2];

        public Frame Frame { get; private set; } = Frame.Default;

        /// <summary>How far the plane of the next bend is rolled against that of the one before that is made.</summary>
        public Angle Roll { get; set; }

        public int Count => _points.Count;

        public ImmutableArray<Vector3D> Points => _points.ToImmutable();

        public ImmutableArray<int> Breaks => _breaks.ToImmutable();

        public void GoStraight(Length length, bool whole = false)
        {
            var shortened = !whole && longest is { } most && length > most;
            if (shortened)
            {
                _breaks.Add(_points.Count);
            }

            Frame = Frame.Advanced(shortened ? longest!.Value : length);
            Add(Frame.Position);
        }

        public void Turn(Angle more)
        {
            Frame = Frame.Rolled(Roll + more);
            Roll = Angle.Zero;
        }

        public void Bend(int index, BendLayout bend, Angle more)
        {
            var turn = bend.Bend.Turn + more;
            var pieces = Math.Max(1, (int)Math.Ceiling(turn.Degrees / DegreesPerPiece));
            for (var i = 1; i <= pieces; i++)
            {
                Add(Frame.Bent(bend.Radius, Angle.FromDegrees(turn.Degrees * i / pieces)).Position);
            }

            if (!bend.Bend.FromTangent)
            {
                var middle = Frame.Bent(bend.Radius, Angle.FromDegrees(turn.Degrees / 2));
                _touchedAt[index + 1] = Count - 1 - (pieces / 2);
                _touched[index + 1] = middle.Position - (halfWidth.Millimetres * middle.Side);
            }

            Frame = Frame.Bent(bend.Radius, turn);
        }

        public ImmutableArray<Vector3D?> Touched() => [default(Vector3D), .. _touched[1..^1], Frame.Position];

        public ImmutableArray<int> TouchedAt() => [.. _touchedAt[..^1], Count - 1];

        private static ImmutableArray<Vector3D>.Builder Begun()
        {
            var points = ImmutableArray.CreateBuilder<Vector3D>();
            points.Add(default);
            return points;
        }

        private void Add(Vector3D point)
        {
            if (point.DistanceTo(_points[^1]) > Tolerances.SamePoint.Millimetres)
            {
                _points.Add(point);
            }
        }
    }
}

/// <summary>How a bend may come out different from what was aimed at.</summary>
/// <param name="Turn">Bent further.</param>
/// <param name="Roll">Its plane rolled, clockwise looking from A.</param>
/// <param name="Mark">Made further towards B.</param>
internal readonly record struct BendSlip(Angle Turn, Angle Roll, Length Mark);
