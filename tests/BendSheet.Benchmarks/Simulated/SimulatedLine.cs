using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Benchmarks.Simulated;

/// <summary>A line as it truly is: legs corner to corner in millimetres, bends and rotations in degrees.</summary>
internal sealed record SimulatedLine(double[] Legs, double[] Turns, double[] Rotations)
{
    public static MeasuringTolerance Tolerance { get; } =
        new(Length.FromMillimetres(1), Angle.FromDegrees(1.5), Angle.FromDegrees(3)) { Tape = Length.FromMillimetres(1) };

    private static Bender Bender { get; } = new("hand", Length.FromInches(9.0 / 16), default);

    private static Tube Tube { get; } = new("brake", Length.FromInches(3.0 / 16), null, "copper-nickel", null);

    /// <summary>A line that can be made, with so many bends.</summary>
    public static SimulatedLine Random(Chance chance, int bends)
    {
        while (true)
        {
            var line = new SimulatedLine(
                [.. Enumerable.Range(0, bends + 1).Select(_ => Math.Round(chance.Between(60, 400)))],
                [.. Enumerable.Range(0, bends).Select(_ => Math.Round(chance.Between(20, 110)))],
                [.. Enumerable.Range(0, bends).Select(_ => Math.Round(chance.Between(-180, 180)))]);
            if (RouteLayout.Of(line.Template()).Layout!.Legs.All(leg => leg.StraightLeft > Length.Zero))
            {
                return line;
            }
        }
    }

    /// <summary>The rows as somebody reads them off.</summary>
    public SimulatedLine Read(Chance chance) => new(
        [.. Legs.Select(leg => leg + chance.Error(Tolerance.Straight.Millimetres))],
        [.. Turns.Select(turn => Math.Max(1, turn + chance.Error(Tolerance.Bend.Degrees)))],
        [.. Rotations.Select((rotation, i) => i == 0 ? rotation : rotation + chance.Error(Tolerance.Rotate.Degrees))]);

    /// <summary>The same in whole millimetres and degrees, as they are typed.</summary>
    public SimulatedLine ReadWhole(Chance chance) => new(
        [.. Legs.Select(leg => chance.Whole(leg, Tolerance.Straight.Millimetres))],
        [.. Turns.Select(turn => Math.Max(1, chance.Whole(turn, Tolerance.Bend.Degrees)))],
        [.. Rotations.Select((rotation, i) => i == 0 ? rotation : chance.Whole(rotation, Tolerance.Rotate.Degrees))]);

    /// <summary>The line of a file that has these rows.</summary>
    public LineTemplate Template(params ImmutableArray<TapedMeasurement> beside)
    {
        var rows = Legs.Select((leg, i) => new Row(Length.FromMillimetres(leg), default, i == Turns.Length ? null : BendOf(i))
        {
            StraightFrom = new Observation(ObservationKind.Leg, leg, default),
        });
        return new(
            "line", default, Tube, Bender, Wire.Unknown, LineEnd.Unknown, LineEnd.Unknown, Route.OfRows([.. rows]).Route!)
        {
            Tolerance = Tolerance,
            Beside = beside,
        };
    }

    /// <summary>What is there truly, seen from end A.</summary>
    public double ValueOf(TapedQuantity quantity)
    {
        var points = RouteLayout.Of((this with { Rotations = [0, .. Rotations.Skip(1)] }).Template()).Layout!
            .Centreline(Frame.Default).Corners;
        var (from, to) = (points[quantity.From]!.Value, points[quantity.To]!.Value);
        return quantity.Kind switch
        {
            TapedKind.Ahead => to.X,
            TapedKind.Aside => Math.Sqrt((to.Y * to.Y) + (to.Z * to.Z)),
            _ => from.DistanceTo(to),
        };
    }

    /// <summary>Measured with an error of its own.</summary>
    public TapedMeasurement Measured(TapedQuantity quantity, double within, Chance chance) =>
        new(quantity, Length.FromMillimetres(ValueOf(quantity) + chance.Error(within)), default(SourcePosition));

    /// <summary>The same in whole millimetres.</summary>
    public TapedMeasurement MeasuredWhole(TapedQuantity quantity, double within, Chance chance) =>
        new(quantity, Length.FromMillimetres(chance.Whole(ValueOf(quantity), within)), default(SourcePosition));

    private Bend BendOf(int i) =>
        new(Angle.FromDegrees(Turns[i]), Angle.FromDegrees(Rotations[i]), Bender, null, default)
        {
            TurnFrom = new Observation(ObservationKind.Bend, Turns[i] * Math.PI / 180, default),
            RotationFrom = new Observation(ObservationKind.Rotation, Rotations[i] * Math.PI / 180, default),
        };
}
