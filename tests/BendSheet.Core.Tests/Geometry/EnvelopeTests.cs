using BendSheet.Core.Geometry;
using BendSheet.Core.Units;
using CsCheck;

namespace BendSheet.Core.Tests.Geometry;

public class EnvelopeTests
{
    private const int AroundTube = 180;
    private const int AlongArc = 180;

    /// <summary>
    /// The sampled surface never reaches beyond the box, and misses its faces by no more than the sag of the chords between samples:
    /// radius × step²/8, along the arc and around the tube, at both faces.
    /// </summary>
    [Fact]
    public void The_box_just_holds_the_densely_sampled_surface() => Shape.Any.Sample(
        shape =>
        {
            var tubeRadius = shape.Radius / 3;
            var line = shape.Centreline();
            var box = Envelope.Of(line, Lines.Mm(2 * tubeRadius));
            var surface = Surface(line, tubeRadius).ToList();
            var aroundStep = 2 * Math.PI / AroundTube;
            var alongStep = shape.Turns.DefaultIfEmpty(0).Max() * Math.PI / 180 / AlongArc;
            var sag = 2 * ((tubeRadius * aroundStep * aroundStep) + ((shape.Radius + tubeRadius) * alongStep * alongStep)) / 8;
            Check(surface, point => point.X, box.X, sag);
            Check(surface, point => point.Y, box.Y, sag);
            Check(surface, point => point.Z, box.Z, sag);
        },
        iter: 20);

    [Fact]
    public void A_straight_tube_is_as_wide_as_its_diameter()
    {
        var box = Envelope.Of(Lines.Of(Lines.Bender(10), [321]).Centreline(), Lines.Mm(5));
        AssertGeometry.Equal(321, box.X.Millimetres);
        AssertGeometry.Equal(5, box.Y.Millimetres);
        AssertGeometry.Equal(5, box.Z.Millimetres);
    }

    [Fact]
    public void A_full_turn_is_as_high_as_two_radii_and_a_diameter()
    {
        var line = new Shape(15, [0, 0], [360], [0]).Centreline();
        var box = Envelope.Of(line, Lines.Mm(5));
        AssertGeometry.Equal(35, box.X.Millimetres);
        AssertGeometry.Equal(35, box.Y.Millimetres);
        AssertGeometry.Equal(5, box.Z.Millimetres);
    }

    [Fact]
    public void A_square_corner_reaches_from_the_cut_end_to_the_outside_of_the_far_leg()
    {
        var box = Envelope.Of(Lines.Of(Lines.Bender(15), [100, 80], (0, 90)).Centreline(), Lines.Mm(5));
        AssertGeometry.Equal(102.5, box.X.Millimetres);
        AssertGeometry.Equal(82.5, box.Y.Millimetres);
        AssertGeometry.Equal(5, box.Z.Millimetres);
    }

    private static void Check(List<Vector3D> surface, Func<Vector3D, double> along, Length box, double sag)
    {
        var sampled = surface.Max(along) - surface.Min(along);
        AssertGeometry.AtMost(box.Millimetres, sampled, "sampled surface");
        AssertGeometry.AtMost(sampled + sag, box.Millimetres, "box");
    }

    private static IEnumerable<Vector3D> Surface(TubeCentreline line, double tubeRadius)
    {
        var sections = line.Straights
            .SelectMany(straight => new[] { straight.Start, straight.Start.Advanced(straight.Length) })
            .Concat(line.Arcs.SelectMany(arc => Enumerable.Range(0, AlongArc + 1)
                .Select(i => arc.Start.Bent(arc.Radius, Angle.FromDegrees(arc.Turn.Degrees * i / AlongArc)))));
        foreach (var section in sections)
        {
            for (var i = 0; i < AroundTube; i++)
            {
                var (sin, cos) = Math.SinCos(2 * Math.PI * i / AroundTube);
                yield return section.Position + (tubeRadius * cos * section.Side) + (tubeRadius * sin * section.Axis);
            }
        }
    }
}
