using BendSheet.Core.Bench;
using BendSheet.Core.Bench.Order;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Geometry;
using BendSheet.Core.Workshop;
using CsCheck;

namespace BendSheet.Core.Tests.Bench.Order;

public class SweepReachTests
{
    [Fact]
    public void A_straight_end_reaches_as_far_as_its_length_and_the_radius_over_the_corner()
    {
        // 300 of tube from the start of the bend, the former's middle 15 beside it: √(300² + 15²).
        var plan = Lines.Of(Lines.Bender(15), [500, 300 - (15 * Math.PI / 2) + 15], (0, 90)).Plan();
        Assert.Equal(TubeEnd.A, plan.Bends[0].Held);
        AssertGeometry.Equal(Math.Sqrt((300 * 300) + (15 * 15)), plan.Bends[0].Swing.Millimetres);
    }

    /// <summary>
    /// The sweep made in small steps with the whole tube built anew each time, as a finished shape with the bend only partly made: the
    /// furthest point of the swept side from the former's axis.
    /// </summary>
    [Fact]
    public void No_point_of_the_swept_side_comes_further_out_at_any_moment_of_the_sweep() =>
        Gen.Select(Shape.Roomy, Gen.Int[0, 5], Gen.Int[0, 5], Gen.Bool).Sample(
        (shape, which, madeOf, fromB) =>
        {
            var template = fromB ? shape.Template() with { Route = shape.Template().Route.Reversed() } : shape.Template();
            var layout = RouteLayout.Of(template).Layout!;
            var tube = StraightTube.Of(template, layout);
            var bend = which % layout.Bends.Length;
            var made = madeOf % (layout.Bends.Length - bend);
            var swings = new SweepReach(layout, tube, [.. layout.Bends.Select(known => known.Bend.Turn)]);
            var swing = swings.Of(bend, TubeEnd.A, made).Millimetres;
            var seen = Enumerable.Range(0, 41).Max(step => Furthest(layout, bend, made, step / 40.0));
            AssertGeometry.AtMost(swing + (0.01 * shape.Radius), seen, "reach seen");
            AssertGeometry.AtMost(seen + (0.01 * shape.Radius), swing, "swing");

            // The same tube read from its other end, held from B.
            var reversed = template with { Route = template.Route.Reversed() };
            var other = RouteLayout.Of(reversed).Layout!;
            var mirrored = new SweepReach(other, StraightTube.Of(reversed, other), [.. other.Bends.Select(known => known.Bend.Turn)]);
            AssertGeometry.Equal(swing, mirrored.Of(other.Bends.Length - 1 - bend, TubeEnd.B, made).Millimetres, "read from B");
        },
        iter: 300);

    private static double Furthest(RouteLayout layout, int bend, int made, double part)
    {
        // Everything before the bend is held and stays straight here; the bends beyond the made ones are straight still.
        var legs = new List<LegLayout>();
        var bends = new List<BendLayout>();
        var straight = Lines.Mm(0);
        var rotation = Lines.Deg(0);
        for (var i = 0; i < layout.Bends.Length; i++)
        {
            straight += layout.Legs[i].StraightLeft;
            var typed = layout.Bends[i].Bend;
            rotation += typed.Rotation;
            if (i < bend || i > bend + made)
            {
                straight += layout.Bends[i].Arc;
                continue;
            }

            var turn = i == bend ? Lines.Deg(Math.Max(1e-9, part * typed.Turn.Degrees)) : typed.Turn;
            legs.Add(new(straight, HasCorners: false, straight, typed.TurnAt));
            bends.Add(new(typed with { Turn = turn, Rotation = rotation }));
            straight = i == bend ? (1 - part) * layout.Bends[i].Arc : Lines.Mm(0);
            rotation = Lines.Deg(0);
        }

        legs.Add(
            new(straight + layout.Legs[^1].StraightLeft, HasCorners: false, straight + layout.Legs[^1].StraightLeft, layout.Legs[^1].At));
        var shape = new RouteLayout([.. legs], [.. bends]).Centreline(Frame.Default);
        var former = shape.Arcs[0];
        var axis = former.Start.Axis;
        var points = shape.Straights.Skip(1).SelectMany(piece => new[] { piece.Start.Position, piece.End })
            .Concat(
                shape.Arcs.Skip(1).SelectMany(
                    arc => Enumerable.Range(0, 61).Select(i => arc.PointAt(Lines.Deg(arc.Turn.Degrees * i / 60)))));
        return points.Max(point => (point - former.Centre).Cross(axis).Norm);
    }
}
