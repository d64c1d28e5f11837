using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;

namespace BendSheet.Core.Tests.Survey;

/// <summary>Where a tape across a bend touches it.</summary>
public class BackOfBendTests
{
    /// <summary>
    /// From the corner inwards, reckoned by hand: r·(1/cos(bend/2) − 1) − w/2. Under half a millimetre on wire of 2.4 mm bent to 4 mm,
    /// 3.5 mm on 3/16 in tube bent 90° on 9/16 in.
    /// </summary>
    [Theory]
    [InlineData(90, 4, 2.4, "0.457")]
    [InlineData(90, 14.2875, 4.7625, "3.537")]
    [InlineData(0, 14.2875, 4.7625, "-2.381")]
    [InlineData(120, 10, 5, "7.500")]
    public void It_lies_so_far_inwards_of_the_corner(double bend, double radius, double diameter, string printed) =>
        AssertGeometry.Printed(printed, BackOfBend.Depth(Lines.Deg(bend), Lines.Mm(radius), Lines.Mm(diameter)).Millimetres);

    /// <summary>Sampled round the outside of the bend: no point lies further out along the bisector.</summary>
    [Theory]
    [InlineData(30)]
    [InlineData(90)]
    [InlineData(150)]
    public void No_point_of_the_bend_lies_further_out(double bend)
    {
        const double Radius = 14.2875;
        const double Diameter = 4.7625;
        var centreline = Lines.Of(Lines.Bender(Radius), [200, 200], (0, bend)).Centreline();
        var arc = Assert.Single(centreline.Arcs);
        var after = (centreline.EndB - centreline.Corners[1]!.Value) is var way ? 1 / way.Norm * way : default;
        var corner = centreline.Corners[1]!.Value;
        var outwards = new Vector3D(1, 0, 0) - after is var back ? 1 / back.Norm * back : default;
        var outermost = Enumerable.Range(0, 1001).Max(i =>
        {
            var turned = i / 1000.0 * bend * Math.PI / 180;
            var centre = arc.Start.Position + (Radius * arc.Start.Side);
            var outside = (Math.Sin(turned) * arc.Start.Direction) - (Math.Cos(turned) * arc.Start.Side);
            return (centre + ((Radius + (Diameter / 2)) * outside) - corner).Dot(outwards);
        });
        var point = BackOfBend.Of(corner, new(1, 0, 0), after, Lines.Mm(Radius), Lines.Mm(Diameter));
        Assert.Equal(outermost, (point - corner).Dot(outwards), 1e-3);
        AssertGeometry.Equal(0, (point - corner).Cross(outwards).Norm);
    }

    [Fact]
    public void Where_nothing_is_bent_it_is_the_corner() =>
        AssertGeometry.Equal(
            new Vector3D(1, 2, 3), BackOfBend.Of(new(1, 2, 3), new(1, 0, 0), new(1, 0, 0), Lines.Mm(4), Lines.Mm(2)));
}
