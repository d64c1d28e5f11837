using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Templates;

public class CoilTests
{
    /// <summary>n·√((2πR)² + p²), the length of a helix (any text on space curves).</summary>
    [Theory]
    [InlineData(1, 25, 0)]
    [InlineData(3, 25, 8)]
    [InlineData(2.25, 40, 30)]
    [InlineData(0.1, 12, 6)]
    public void A_coil_has_the_length_of_its_helix(double turns, double radius, double pitch) => AssertGeometry.Equal(
        turns * Math.Sqrt(Math.Pow(2 * Math.PI * radius, 2) + (pitch * pitch)),
        Coiled(turns, radius, pitch).Length.Millimetres - 20,
        "length of tube");

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_coil_goes_on_by_its_pitch_and_winds_as_said(bool rightHanded)
    {
        // Ten turns: what the start and the end do out of step is small against what the turns add up to.
        var coil = Coiled(10, 25, 8, rightHanded);
        var from = coil.Arcs[0].Start.Position;
        var to = coil.Arcs[^1].End.Position;
        var axis = coil.Arcs[0].Start.Axis;
        Assert.Equal(80, Math.Abs((to - from).Dot(axis)), 1.0);
        Assert.InRange((to - from).Norm, 79, 83);

        // Seen along the way it goes on, a right-handed coil turns clockwise: its turning axis points that way.
        Assert.Equal(rightHanded, (to - from).Dot(axis) > 0);
    }

    [Fact]
    public void A_flat_turn_closes() => AssertGeometry.Equal(
        0, Coiled(1, 30, 0).Arcs[^1].End.Position.DistanceTo(Coiled(1, 30, 0).Arcs[0].Start.Position), "gap of a ring");

    /// <summary>As promised: four marks to a turn, never an arc of more than a quarter.</summary>
    [Theory]
    [InlineData(1, 4)]
    [InlineData(2.5, 10)]
    [InlineData(0.25, 1)]
    [InlineData(0.26, 2)]
    [InlineData(1.01, 5)]
    public void A_flat_coil_has_four_marks_to_a_turn(double turns, int marks) => Assert.Equal(marks, Coiled(turns, 30, 0).Arcs.Length);

    private static TubeCentreline Coiled(double turns, double radius, double pitch, bool rightHanded = true)
    {
        var coil = new Coil(turns, Lines.Mm(radius), Lines.Mm(pitch), rightHanded);
        var former = new Bender("former", coil.CurveRadius, Lines.RadiusAt);
        var rows = coil.Rows(new(Lines.Mm(10), Lines.StraightAt(0), null), Angle.Zero, former, Lines.StraightAt(1), null);
        var route = Route.OfRows([.. rows, new(Lines.Mm(10), Lines.StraightAt(2), null)]).Route!;
        return (Lines.Of(Lines.Bender(10), [10]) with { Route = route }).Centreline();
    }
}
