using BendSheet.Core.Geometry;
using BendSheet.Core.Units;
using CsCheck;

namespace BendSheet.Core.Tests.Geometry;

public class HighPointTests
{
    /// <summary>Samples lie this far apart; between two of them a bend of the least radius rises less than the tolerance.</summary>
    private const double SampleMm = 0.2;
    private const double ToleranceMm = 0.01;

    [Fact]
    public void Humps_are_those_that_a_dense_walk_along_the_tube_finds() => Shape.Roomy.Sample(
        shape =>
        {
            var centreline = shape.Template().Centreline();
            var walked = Walked(centreline);
            var found = HighPoint.Of(centreline).Where(hump => hump.Height.Millimetres > 1).ToList();
            Assert.Equal(walked.Count, found.Count);
            Assert.All(walked.Zip(found), pair =>
            {
                Assert.Equal(pair.First.Height, pair.Second.Height.Millimetres, ToleranceMm);
                Assert.Equal(pair.First.Along, pair.Second.AlongTube.Millimetres, 3.0);
            });
        },
        iter: 200);

    [Fact]
    public void A_line_that_rises_all_the_way_holds_no_air() =>
        Assert.Empty(
            HighPoint.Of(
                (Lines.Of(Lines.Bender(10), [50, 60, 70], (0, 45), (20, 30)) with { Start = new(default, new(0, 0, 1), new(1, 0, 0)) })
                    .Centreline()));

    /// <summary>
    /// Highest places with lower ones on both sides, and how deep the shallower of the two dips is, where it is over a millimetre.
    /// </summary>
    private static List<(double Height, double Along)> Walked(TubeCentreline centreline)
    {
        var heights = new List<(double Z, double Along)>();
        var along = 0.0;
        for (var i = 0; i < centreline.Straights.Length; i++)
        {
            var straight = centreline.Straights[i];
            var pieces = (int)Math.Ceiling(straight.Length.Millimetres / SampleMm) + 1;
            for (var k = 0; k <= pieces; k++)
            {
                var part = straight.Length.Millimetres * k / pieces;
                heights.Add((straight.Start.Advanced(Length.FromMillimetres(part)).Position.Z, along + part));
            }

            along += straight.Length.Millimetres;
            if (i == centreline.Arcs.Length)
            {
                break;
            }

            var arc = centreline.Arcs[i];
            pieces = (int)Math.Ceiling(arc.Length.Millimetres / SampleMm) + 1;
            for (var k = 0; k <= pieces; k++)
            {
                heights.Add(
                    (arc.PointAt(Angle.FromDegrees(arc.Turn.Degrees * k / pieces)).Z, along + (arc.Length.Millimetres * k / pieces)));
            }

            along += arc.Length.Millimetres;
        }

        var humps = new List<(double Height, double Along)>();
        for (var i = 0; i < heights.Count; i++)
        {
            var (before, after) = (Dip(heights, i, -1), Dip(heights, i, 1));
            if (Math.Min(before, after) > 1 && IsTop(heights, i))
            {
                humps.Add((Math.Min(before, after), heights[i].Along));
            }
        }

        return humps;
    }

    private static bool IsTop(List<(double Z, double Along)> heights, int at) =>
        at > 0 && at + 1 < heights.Count && heights[at].Z >= heights[at - 1].Z && heights[at].Z > heights[at + 1].Z;

    /// <summary>How far the tube goes down on one side before it rises above the place again.</summary>
    private static double Dip(List<(double Z, double Along)> heights, int at, int step)
    {
        if (!IsTop(heights, at))
        {
            return 0;
        }

        var low = heights[at].Z;
        for (var i = at + step; i >= 0 && i < heights.Count && heights[i].Z <= heights[at].Z; i += step)
        {
            low = Math.Min(low, heights[i].Z);
        }

        return heights[at].Z - low;
    }
}
