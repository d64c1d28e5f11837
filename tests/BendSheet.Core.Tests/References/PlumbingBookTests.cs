using BendSheet.Core.Geometry;

namespace BendSheet.Core.Tests.References;

/// <summary>City &amp; Guilds Textbook, Plumbing Book 1: worked examples for bent copper tube, in millimetres.</summary>
public class PlumbingBookTests
{
    private const string Table = "worked_examples.csv";

    /// <summary>
    /// P. 108: two tubes side by side, 80 mm between their centres, go round one centre on 88 and 168 mm. With those radii and the corner
    /// moved by as much both ways, the two lines are 80 mm apart everywhere.
    /// </summary>
    [Fact]
    public void Concentric_bends_keep_two_tubes_at_their_distance()
    {
        var inner = AssertGeometry.Number(ReferenceTable.Printed(Table, "cg_conc_inner"));
        var outer = AssertGeometry.Number(ReferenceTable.Printed(Table, "cg_conc_outer"));
        var near = Lines.Of(Lines.Bender(inner), [400, 400], (0, 90)).Centreline().Arcs[0];
        var far = Lines.Of(Lines.Bender(outer), [480, 480], (0, 90)).Centreline().Arcs[0];

        // The outer tube begins beside the inner one, 80 mm to the right of it: the first bend turns left.
        var aside = new Vector3D(0, 80, 0);
        for (var turned = 0; turned <= 90; turned += 15)
        {
            var (on, beside) = (near.PointAt(Lines.Deg(turned)), far.PointAt(Lines.Deg(turned)) - aside);
            AssertGeometry.Equal(80, on.DistanceTo(beside), $"at {turned}°");
        }
    }

    /// <summary>Pp. 107 and 109: the print has 1.57 and 3.142 / 2 for π/2, 0.0008 and 0.0002 of it off.</summary>
    [Theory]
    [InlineData("cg_arc_157", 0.0008)]
    [InlineData("cg_arc_quarter", 0.0003)]
    public void Arc_of_a_square_bend(string id, double rounded)
    {
        var plan = Lines.Of(Lines.Bender(60), [200, 200], (0, 90)).Plan();
        AssertGeometry.PrintedFromRounded(ReferenceTable.Printed(Table, id), plan.Bends[0].Layout.Arc.Millimetres, 60 * rounded, id);
    }

    /// <summary>
    /// Pp. 148 and 149: five legs less four gains. The print's gain of 21.5 is that of a radius of 50 to a tenth; it is rounded before it
    /// is taken off four times.
    /// </summary>
    [Fact]
    public void Five_legs_less_four_gains()
    {
        var plan = Lines.Of(Lines.Bender(50), [888, 890, 350, 450, 488], (0, 90), (90, 90), (90, 90), (90, 90)).Plan();
        Assert.All(plan.Bends, bend => AssertGeometry.Printed(
            ReferenceTable.Printed(Table, "cg_gain"), bend.Layout.Gain!.Value.Millimetres, "gain"));
        AssertGeometry.PrintedFromRounded(
            ReferenceTable.Printed(Table, "cg_total"), plan.DevelopedLength.Millimetres, 4 * 0.05, "length of tube");
    }
}
