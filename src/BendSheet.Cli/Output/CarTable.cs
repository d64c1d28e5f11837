using System.Text;
using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Clearance;
using BendSheet.Core.Commissioning;
using BendSheet.Core.Geometry;
using BendSheet.Core.Sheet;
using BendSheet.Core.Units;

namespace BendSheet.Cli.Output;

/// <summary>The car as one thing in text, below the way of the fluid: filling, bleeding, hoses, places, zones, drilling.</summary>
internal static class CarTable
{
    /// <summary>Each section that has something to say, with an empty line before it.</summary>
    public static string Write(CarPlan plan)
    {
        var notation = plan.Measured.Notation;
        var text = new StringBuilder();
        Section(text, "In the lines, by circuit (parts and hoses hold fluid too):", Filling(plan.Filling, notation));
        Section(
            text, "Ways to the bleed screws, longest first (the car maker's order rules where there is one):", Bleeders(plan, notation));
        Section(text, "Hoses, with 5 to 8 % slack over the longest way (FAA-H-8083-30, p. 7-19):", Hoses(plan, notation));
        Section(text, "On the car (forward, left, up):", Places(plan, notation));
        Section(text, $"Kept clear ({notation.WithUnit(plan.Measured.Room.Between)} between lines):", Zones(plan, notation));
        Section(text, "Holes for clips on one straight, all from the first:", Runs(plan, notation));
        Section(text, "Holes for clips on rails that lines share, all from one edge:", Rails(plan, notation));
        return text.ToString();
    }

    private static void Section(StringBuilder text, string heading, IEnumerable<string> lines)
    {
        var first = true;
        foreach (var line in lines)
        {
            text.Append(first ? $"\n{heading}\n" : string.Empty).Append("  ").Append(line).Append('\n');
            first = false;
        }
    }

    private static IEnumerable<string> Filling(Filling filling, LengthNotation notation) => filling.Circuits.Select(circuit =>
        $"{circuit.Circuit.InWords}: {Held(circuit, notation)}"
            + (circuit.Rough.IsEmpty ? string.Empty : $"; by a rough length: {string.Join(", ", circuit.Rough)}")
            + (circuit.NotCounted.IsEmpty ? string.Empty : $"; not counted: {string.Join(", ", circuit.NotCounted)}"));

    private static string Held(CircuitFilling circuit, LengthNotation notation) =>
        circuit.Litres > 0 ? $"{CommissioningWriter.InLitres(circuit.Litres)} in {notation.WithUnit(circuit.Tube)} of tube"
        : circuit.Tube > Length.Zero ? $"{notation.WithUnit(circuit.Tube)} of tube; litres need the `wall` of the tube"
        : "not known, no line of it has a shape yet";

    private static IEnumerable<string> Bleeders(CarPlan plan, LengthNotation notation) =>
    [
        .. plan.Filling.Bleeders.Select(way =>
            $"{way.Bleeder}: {Way(way, notation)} from {way.Circuit.InWords}"),
        .. plan.Filling.HighPlaces.Select(high =>
            $"line {high.Line}: a hump {notation.WithUnit(high.Hump.Height)} high, {notation.WithUnit(high.Hump.AlongTube)} from A"),
    ];

    private static string Way(BleederWay way, LengthNotation notation) =>
        way.IsAtLeast && way.Length == Length.Zero ? "so far without a length,"
        : $"{(way.IsAtLeast ? "at least " : string.Empty)}{notation.WithUnit(way.Tube)} of tube"
            + (way.Hose > Length.Zero ? $" and {notation.WithUnit(way.Hose)} of hose" : string.Empty);

    private static IEnumerable<string> Hoses(CarPlan plan, LengthNotation notation) => plan.Network.Car.Hoses
        .Where(hose => hose.Spans is not null)
        .Select(hose => $"{hose.Name}: {notation.WithUnit(hose.Spans!.Least)} to {notation.WithUnit(hose.Spans.Most)} for its "
            + $"{notation.WithUnit(hose.Spans.Longest.Span)} at {hose.Spans.Longest.Word}"
            + (hose.Length is { } length ? $", and it has {notation.WithUnit(length)}" : string.Empty));

    private static IEnumerable<string> Places(CarPlan plan, LengthNotation notation) =>
    [
        .. from part in plan.Network.Car.Parts
           from port in part.Ports
           where port.Lie?.Position is not null
           select $"{part.Name}.{port.Name}: {Point(port.Lie!.Position!.Value, notation)}",
        .. plan.Lines.Where(line => line is { Centreline: not null, Template.HasPlace: true }).Select(line =>
            $"line {line.Template.Name}: A {Point(line.Centreline!.EndA, notation)}, B {Point(line.Centreline.EndB, notation)}"),
    ];

    private static IEnumerable<string> Zones(CarPlan plan, LengthNotation notation) =>
    [
        .. plan.Measured.Room.Zones.Select(zone =>
            $"{zone.Name}: {notation.WithUnit(zone.Clearance)}{(zone.Why is { } why ? $" ({why})" : string.Empty)}"),
        .. plan.Clearances.Approaches.Select(approach => Near(approach, notation)),
    ];

    private static string Near(Approach approach, LengthNotation notation)
    {
        var first = $"{approach.First.Line.Template.Name} {approach.First.InWords}";
        var other = approach.Second is { } second ? $"{second.Line.Template.Name} {second.InWords}" : approach.Zone!.Name;
        return $"too near: {first}, and {other}: {notation.WithUnit(approach.Gap)}, wanted {notation.WithUnit(approach.Wanted)}";
    }

    private static IEnumerable<string> Runs(CarPlan plan, LengthNotation notation) =>
        from line in plan.Lines
        from run in ClipRun.Of(line)
        select FormattableString.Invariant($"line {line.Template.Name}, straight {run.Straight}: ")
            + string.Join(", ", run.Holes.Select(notation.Figure)) + $" {notation.Symbol}";

    private static IEnumerable<string> Rails(CarPlan plan, LengthNotation notation) => plan.Rails.Select(rail =>
        $"rail {rail.Name}, from {DrillingWords.Edge(rail)}: "
            + string.Join(", ", rail.Holes.Select(hole => $"{notation.Figure(hole.Place)} ({Clips(hole)})")) + $" {notation.Symbol}");

    private static string Clips(RailHole hole) =>
        string.Join(", ", hole.Clips.Select(clip => FormattableString.Invariant($"{clip.Line} {clip.Number}")));

    private static string Point(Vector3D point, LengthNotation notation) => string.Join(
        ", ", new[] { point.X, point.Y, point.Z }.Select(part => notation.WithUnit(Length.FromMillimetres(part))));
}
