using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests;

/// <summary>Lines for tests. Every figure has a position of its own, so that a finding can be told from its neighbour's.</summary>
internal static class Lines
{
    public const double NineSixteenths = 14.2875;

    /// <summary>Of no known wall, so that nothing published is held against the radius of a test's tool.</summary>
    public static Tube Tube { get; } = new("main", Length.FromInches(3.0 / 16), null, "copper-nickel", null);

    public static SourcePosition NameAt { get; } = new("test.yaml", 8, 3);

    public static SourcePosition RadiusAt { get; } = new("test.yaml", 3, 18);

    /// <summary>Where the straight of a row was typed, rows counted from 0.</summary>
    public static SourcePosition StraightAt(int row) => new("test.yaml", 10 + row, 17);

    /// <summary>Where the bend of a row was typed, rows counted from 0.</summary>
    public static SourcePosition TurnAt(int row) => new("test.yaml", 10 + row, 30);

    public static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);

    public static Angle Deg(double degrees) => Angle.FromDegrees(degrees);

    public static Bender Bender(double radiusMm, string name = "hand") => new(name, Mm(radiusMm), RadiusAt);

    /// <summary>A line with all its bends on one tool.</summary>
    /// <param name="bender">The tool.</param>
    /// <param name="legs">In millimetres, one more than bends.</param>
    /// <param name="bends">Rotation and turn in degrees.</param>
    public static LineTemplate Of(Bender bender, double[] legs, params (double Rotate, double Turn)[] bends) =>
        Of(bender, [.. legs.Select(Mm)], bends);

    /// <inheritdoc cref="Of(Bender, double[], ValueTuple{double, double}[])"/>
    public static LineTemplate Of(Bender bender, Length[] legs, params (double Rotate, double Turn)[] bends)
    {
        var rows = legs.Select((leg, i) => new Row(
            leg,
            StraightAt(i),
            i == bends.Length ? null : new Bend(Deg(bends[i].Turn), Deg(bends[i].Rotate), bender, null, TurnAt(i))
            {
                TurnFrom = new Observation(ObservationKind.Bend, Deg(bends[i].Turn).Radians, TurnAt(i)),
                RotationFrom = new Observation(ObservationKind.Rotation, Deg(bends[i].Rotate).Radians, TurnAt(i)),
            })
        {
            StraightFrom = new Observation(ObservationKind.Leg, leg.Millimetres, StraightAt(i)),
        });
        return OfRows(bender, [.. rows]);
    }

    public static LineTemplate OfRows(Bender bender, params Row[] rows)
    {
        var (route, findings) = Route.OfRows(rows);
        Assert.Empty(findings);
        return new(
            "front-left", NameAt, Tube, bender, Wire.Unknown, LineEnd.Unknown, LineEnd.Unknown, route!)
        {
            // How sure the far end is has tests of its own.
            Wanted = new(Mm(100_000), Deg(180)),
        };
    }

    /// <summary>The line solved, with its tool changed in every bend.</summary>
    public static LineTemplate OnTool(this LineTemplate template, Bender bender) => template with
    {
        Bender = bender,
        Route = Route.OfRows([.. template.Route.Legs.Select((leg, i) => new Row(
            leg.Measured,
            leg.At,
            i == template.Route.Bends.Length ? null : template.Route.Bends[i] with { Bender = bender }))]).Route!,
    };

    /// <summary>The line with some tube left on at end B.</summary>
    public static LineTemplate Trimmed(this LineTemplate template, Length trim) => template with { To = template.To with { Trim = trim } };

    /// <summary>The line with its first bend on another tool.</summary>
    public static LineTemplate FirstBendOn(this LineTemplate template, Bender bender) => template with
    {
        Route = Route.Of(template.Route.Legs, template.Route.Bends.SetItem(0, template.Route.Bends[0] with { Bender = bender })),
    };

    /// <summary>The centreline of a line that can be made.</summary>
    public static TubeCentreline Centreline(this LineTemplate template) => Made(template).Centreline!;

    /// <summary>The plan of a line that can be made.</summary>
    public static BenchPlan Plan(this LineTemplate template) => Made(template).Plan!;

    /// <summary>End A, the corners, end B, of a line whose bends all have a corner.</summary>
    public static Vector3D[] CornerPoints(this TubeCentreline centreline) => [.. centreline.Corners.Select(corner => corner!.Value)];

    private static SolvedLine Made(LineTemplate template)
    {
        var solved = CarPlan.Line(template);
        Assert.True(solved.Plan is not null, string.Join(Environment.NewLine, solved.Findings));
        return solved;
    }
}
