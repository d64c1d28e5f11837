using BendSheet.Core.Car;
using BendSheet.Core.Fittings;
using BendSheet.Core.Sheet;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Sheet;

/// <summary>A line that uses everything a file can say.</summary>
internal static class FullLine
{
    public static LengthNotation Metric { get; } = new(Imperial: false, FractionsOf: 32);

    public static Fitting An3 { get; } = new(
        "an3", Flare.Single37, Lines.Mm(0.5), [new("nut", Lines.Mm(17)), new("sleeve", Lines.Mm(9))], Lines.Mm(35));

    public static Fitting Inverted { get; } = new(
        "inverted", Flare.Double45, Lines.Mm(2), [new("tube nut", Lines.Mm(20))], Lines.Mm(40));

    public static Bender Hand { get; } = Lines.Bender(Lines.NineSixteenths) with
    {
        Mark = MarkPlace.Start,
        Offset = Lines.Mm(1.3),
        Grip = Lines.Mm(12),
        Follow = Lines.Mm(10),
        LargestBend = Lines.Deg(180),
        ArcFactor = 1.01,
    };

    public static LineTemplate Template { get; } = Lines.OfRows(
        Hand,
        Row(0, 120, 0, 45, "clear of the tank"),
        Row(1, 60, 90, 30, null),
        Row(2, 200, -45, 90, null),
        new Row(Lines.Mm(80), Lines.StraightAt(3), null)) with
    {
        Tube = new("main", Length.FromInches(3.0 / 16), Length.FromInches(0.028), "copper-nickel", Lines.Mm(9.5)),
        Wire = new(Lines.Mm(2.4), Lines.Mm(4)),
        From = new("front tee", An3, Length.Zero),
        To = new("left caliper hose", Inverted, Lines.Mm(25)),
        Tolerance = new(Lines.Mm(1), Lines.Deg(1.5), Lines.Deg(3)),
    };

    public static SheetContent Content(LineTemplate template, LengthNotation? notation = null) =>
        SheetWriter.Of(CarPlan.Line(template), "Finch", notation ?? Metric);

    public static LineTemplate WithBends(this LineTemplate template, Func<Bend, Bend> change) => template.WithRows(
        row => row.Bend is { } bend ? row with { Bend = change(bend) } : row);

    public static LineTemplate WithRows(this LineTemplate template, Func<Row, Row> change) => template with
    {
        Route = Route.OfRows([.. template.Route.Legs.Select((leg, i) => change(new(
            leg.Measured, leg.At, i == template.Route.Bends.Length ? null : template.Route.Bends[i])))]).Route!,
    };

    private static Row Row(int row, double straight, double rotate, double turn, string? note) => new(
        Lines.Mm(straight), Lines.StraightAt(row), new(Lines.Deg(turn), Lines.Deg(rotate), Hand, note, Lines.TurnAt(row)));
}
