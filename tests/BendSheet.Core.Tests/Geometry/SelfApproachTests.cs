using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Geometry;

public class SelfApproachTests
{
    private const double OneStep = 1.0;

    [Fact]
    public void A_line_that_turns_half_round_at_most_does_not_come_near_itself()
    {
        Assert.Null(Approach(within: 19.9, radius: 10, [100, 100], (0, 180)));
        Assert.Null(Approach(within: 19.9, radius: 10, [100, 40, 0, 100], (0, 60), (90, 60), (180, 60)));
    }

    [Fact]
    public void A_square_that_closes_comes_near_where_its_ends_cross()
    {
        // Legs left straight of 80 between corners of radius 10, the last bend's straight crossing the first at right angles, level with
        // it.
        var approach = Approach(within: 10, radius: 10, [80, 80, 80, 80, 80], (0, 90), (0, 90), (0, 90), (0, 90))!;
        Assert.Equal(0, approach.Distance.Millimetres, 6);
        Assert.Equal((0, false), (approach.First.Number, approach.First.InBend));
    }

    /// <summary>Random lines, bent so much that some come near themselves, against all pairs of points in small steps.</summary>
    [Fact]
    public void Walked_in_small_steps_no_two_places_half_a_turn_apart_are_nearer()
    {
        var random = new Random(20240303);
        var near = 0;
        for (var line = 0; line < 300; line++)
        {
            var bends = random.Next(2, 9);
            var straights = Enumerable.Range(0, bends + 1).Select(_ => random.Next(4) == 0 ? 0.0 : 40 * random.NextDouble()).ToArray();
            var shape = new Shape(
                10,
                straights,
                [.. Enumerable.Range(0, bends).Select(_ => 10 + (100 * random.NextDouble()))],
                [.. Enumerable.Range(0, bends).Select(_ => (60 * random.NextDouble()) - 30)]);
            var centreline = shape.Centreline();
            var within = random.Next(2) == 0 ? 19.5 : 6;
            var found = SelfApproach.Of(centreline, Lines.Mm(within));
            var stepped = Stepped(centreline);
            if (found is null)
            {
                Assert.True(
                    stepped >= within - Tolerances.SamePoint.Millimetres,
                    $"line {line}, {shape}: nothing found within {within}, but steps come to {stepped}");
                continue;
            }

            near++;
            var distance = found.Distance.Millimetres;
            Assert.True(
                distance <= stepped
                    + Tolerances.SamePoint.Millimetres, $"line {line}, {shape}: found {distance}, but steps come to {stepped}");
            Assert.True(distance >= stepped - OneStep, $"line {line}, {shape}: found {distance}, but steps come only to {stepped}");
            Assert.Equal(distance, PointAt(centreline, found.First).DistanceTo(PointAt(centreline, found.Second)), 6);
        }

        Assert.InRange(near, 50, 250);
    }

    private static SelfApproach? Approach(double within, double radius, double[] straights, params (double Rotate, double Turn)[] bends) =>
        SelfApproach.Of(
        new Shape(radius, straights, [.. bends.Select(bend => bend.Turn)], [.. bends.Select(bend => bend.Rotate)]).Centreline(),
        Lines.Mm(within));

    /// <summary>At most half of <see cref="OneStep"/> apart along the tube; 1e-9 of a half turn is left to what doubles lose.</summary>
    private static double Stepped(TubeCentreline centreline)
    {
        var points = new List<(Vector3D Point, double Turned)>();
        var turned = 0.0;
        for (var i = 0; i < centreline.Straights.Length; i++)
        {
            Walk(Stretch.Of(centreline.Straights[i]), 0);
            if (i < centreline.Arcs.Length)
            {
                Walk(Stretch.Of(centreline.Arcs[i]), centreline.Arcs[i].Turn.Radians);
            }
        }

        var least = double.PositiveInfinity;
        for (var i = 0; i < points.Count; i++)
        {
            for (var j = i + 1; j < points.Count; j++)
            {
                if (points[j].Turned - points[i].Turned >= Math.PI - 1e-9)
                {
                    least = Math.Min(least, points[i].Point.DistanceTo(points[j].Point));
                }
            }
        }

        return least;

        void Walk(Stretch stretch, double turn)
        {
            var steps = (int)Math.Ceiling(stretch.Length.Millimetres / (OneStep / 2)) + 1;
            points.AddRange(
                Enumerable.Range(0, steps + 1)
                    .Select(step => (stretch.PointAt((double)step / steps * stretch.Length), turned + (turn * step / steps))));
            turned += turn;
        }
    }

    /// <summary>The place must also lie so far along the tube as it says.</summary>
    private static Vector3D PointAt(TubeCentreline centreline, TubePlace place)
    {
        var before = centreline.Straights.Take(place.InBend ? place.Number + 1 : place.Number).Sum(straight => straight.Length.Millimetres)
            + centreline.Arcs.Take(place.Number).Sum(arc => arc.Length.Millimetres);
        var on = place.InBend ? Stretch.Of(centreline.Arcs[place.Number]) : Stretch.Of(centreline.Straights[place.Number]);
        return on.PointAt(place.AlongTube - Lines.Mm(before));
    }
}
