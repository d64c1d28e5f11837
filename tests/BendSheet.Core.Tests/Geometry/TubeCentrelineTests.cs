using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.References;
using BendSheet.Core.Units;
using CsCheck;

namespace BendSheet.Core.Tests.Geometry;

public class TubeCentrelineTests
{
    [Fact]
    public void Corners_of_the_walked_line_are_the_corner_points_of_its_rows() => Shape.Any.Sample(
        shape => AssertGeometry.Equal(
            CornerPoints.Build(shape.Legs, shape.Turns, shape.Rotations), shape.Centreline().CornerPoints()),
        iter: 2000);

    [Fact]
    public void Rows_to_corners_to_rows_gives_the_rows() => Shape.Roomy.Sample(
        shape =>
        {
            var read = CornerPoints.Read(shape.Template().Centreline().CornerPoints());
            for (var i = 0; i < shape.Legs.Length; i++)
            {
                AssertGeometry.Equal(shape.Legs[i], read.Legs[i], "leg");
            }

            for (var i = 0; i < shape.Turns.Length; i++)
            {
                AssertGeometry.Equal(shape.Turns[i], read.Bends[i], "bend");
            }

            for (var i = 1; i < shape.Turns.Length; i++)
            {
                AssertGeometry.SameDirection(Lines.Deg(shape.Rotations[i]), Lines.Deg(read.Rotations[i - 1]), "rotation");
            }
        },
        iter: 2000);

    [Fact]
    public void Published_corner_points_come_back_from_their_rows()
    {
        var points = ReferenceTable.Confirmed("corner_points.csv").Select(row => new Vector3D(
            AssertGeometry.Number(row["x"]), AssertGeometry.Number(row["y"]), AssertGeometry.Number(row["z"]))).ToArray();
        var read = CornerPoints.Read(points);
        var walked = Lines.Of(
            Lines.Bender(1), read.Legs, (0, read.Bends[0]), (read.Rotations[0], read.Bends[1])).Centreline().CornerPoints();
        for (var i = 0; i < points.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                AssertGeometry.Equal(points[i].DistanceTo(points[j]), walked[i].DistanceTo(walked[j]), $"from {j} to {i}");
            }
        }
    }

    [Fact]
    public void Straights_and_arcs_join_without_a_gap_or_a_kink() => Shape.Any.Sample(
        shape =>
        {
            var line = shape.Centreline();
            for (var i = 0; i < line.Arcs.Length; i++)
            {
                var arc = line.Arcs[i];
                AssertGeometry.Equal(line.Straights[i].End, arc.PointAt(Angle.Zero), "start of arc");
                AssertGeometry.Equal(line.Straights[i + 1].Start.Position, arc.PointAt(arc.Turn), "end of arc");

                // A chord makes half its angle with the tangent: so much, and no more, with the straights at both ends.
                var small = 0.1 * arc.Turn.Degrees;
                var first = arc.PointAt(Lines.Deg(small)) - arc.PointAt(Angle.Zero);
                var last = arc.PointAt(arc.Turn) - arc.PointAt(Lines.Deg(arc.Turn.Degrees - small));
                AssertGeometry.Equal(small / 2, DegreesBetween(line.Straights[i].Start.Direction, first), "kink before the arc");
                AssertGeometry.Equal(small / 2, DegreesBetween(last, line.Straights[i + 1].Start.Direction), "kink behind the arc");
            }
        },
        iter: 500);

    [Fact]
    public void Length_is_that_of_densely_sampled_chords() => Shape.Any.Sample(
        shape =>
        {
            var line = shape.Centreline();
            var sampled = line.Straights.Sum(straight => straight.Start.Position.DistanceTo(straight.End))
                + line.Arcs.Sum(ArcTests.SampledLength);
            AssertGeometry.Equal(sampled, line.Length.Millimetres);
        },
        iter: 500);

    [Fact]
    public void Mirrored_the_line_is_its_mirror_image_in_the_plane_of_its_first_bend() => Shape.Roomy.Sample(
        shape =>
        {
            // By default end A heads along X and the first bend, where its rotation is 0, turns towards Y: that plane stays, Z turns over.
            var template = (shape with { Rotations = [0, .. shape.Rotations[1..]] }).Template();
            var mirrored = template with { Route = template.Route.Mirrored() };
            AssertGeometry.Equal(
                [.. template.Centreline().CornerPoints().Select(point => point with { Z = -point.Z })],
                mirrored.Centreline().CornerPoints());
        },
        iter: 1000);

    [Fact]
    public void Reversed_the_line_has_the_same_shape() => Shape.Roomy.Sample(
        shape =>
        {
            var template = shape.Template();
            var there = template.Centreline().CornerPoints();
            var back = (template with { Route = template.Route.Reversed() }).Centreline().CornerPoints();
            for (var i = 0; i < there.Length; i++)
            {
                for (var j = 0; j < i; j++)
                {
                    AssertGeometry.Equal(there[i].DistanceTo(there[j]), back[^(i + 1)].DistanceTo(back[^(j + 1)]), $"from {j} to {i}");
                }
            }

            // Equal distances hold for the mirror image too; the sense of the rotations tells the two apart.
            var forwards = CornerPoints.Read(there).Rotations;
            var backwards = CornerPoints.Read(back).Rotations;
            for (var i = 0; i < forwards.Length; i++)
            {
                AssertGeometry.SameDirection(Lines.Deg(forwards[i]), Lines.Deg(backwards[^(i + 1)]), "rotation");
            }
        },
        iter: 1000);

    [Fact]
    public void A_flat_template_lies_in_the_plane_forward_and_left()
    {
        var line = Lines.Of(Lines.Bender(10), [50, 60, 70], (0, 90), (180, 90)).Centreline();
        AssertGeometry.Equal([default, new(50, 0, 0), new(50, 60, 0), new(120, 60, 0)], line.CornerPoints());
    }

    [Fact]
    public void Clockwise_seen_from_A_turns_a_bend_to_the_left_upwards()
    {
        // Forward, then left, then 90° clockwise looking left: up turns forward, forward turns down, so backward turns up.
        var line = Lines.Of(Lines.Bender(10), [50, 60, 70], (0, 90), (90, 90)).Centreline();
        AssertGeometry.Equal(new Vector3D(50, 60, 70), line.EndB);
    }

    [Fact]
    public void A_line_without_bends_is_one_straight()
    {
        var line = Lines.Of(Lines.Bender(10), [321]).Centreline();
        Assert.Empty(line.Arcs);
        AssertGeometry.Equal([default, new(321, 0, 0)], line.CornerPoints());
        Assert.Equal(321, line.Length.Millimetres);
    }

    [Fact]
    public void A_U_bend_brings_the_line_back_two_radii_away_and_has_no_corner()
    {
        var line = Flat([100, 80], 180).Centreline();
        Assert.Equal([true, false, true], line.Corners.Select(corner => corner is not null));
        AssertGeometry.Equal(new Vector3D(20, 30, 0), line.EndB);
        AssertGeometry.Equal(180 + (15 * Math.PI), line.Length.Millimetres);
    }

    [Fact]
    public void A_full_turn_ends_where_it_began()
    {
        var line = Flat([100, 80], 360).Centreline();
        AssertGeometry.Equal(new Vector3D(180, 0, 0), line.EndB);
        AssertGeometry.Equal(180 + (30 * Math.PI), line.Length.Millimetres);
    }

    [Fact]
    public void A_leg_too_short_for_its_bends_has_no_centreline()
    {
        var (layout, _) = RouteLayout.Of(Lines.Of(Lines.Bender(10), [9, 50], (0, 90)));
        Assert.Throws<ArgumentException>(() => layout!.Centreline(Frame.Default));
    }

    private static Core.Templates.LineTemplate Flat(double[] legs, double turn) =>
        Lines.Of(Lines.Bender(15), legs, (0, turn)) with
        {
            Habit = Core.Workshop.MeasuredTo.Straight,
            Wire = new(null, Lines.Mm(15)),
        };

    private static double DegreesBetween(Vector3D a, Vector3D b) => Math.Atan2(a.Cross(b).Norm, a.Dot(b)) * 180 / Math.PI;
}
