using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Geometry;
using BendSheet.Core.Workshop;
using CsCheck;

namespace BendSheet.Core.Tests.Templates;

public class MeasuredToTests
{
    public static TheoryData<MeasuredTo> Habits { get; } = [.. MeasuredToWords.All.Select(entry => entry.Habit)];

    [Theory]
    [MemberData(nameof(Habits))]
    public void However_a_wire_was_measured_the_tube_is_the_same(MeasuredTo habit) =>
        Gen.Select(Shape.Roomy, Gen.Double[0.2, 1], Gen.Double[0.1, 1.9]).Sample(
            (shape, radiusPart, diameterPart) =>
            {
                // The wire is bent tighter than the tube, and may be almost as thick as its own bends allow.
                var radius = radiusPart * shape.Radius;
                var wire = new BentWire(CornerPoints.Build(shape.Legs, shape.Turns, shape.Rotations), diameterPart * radius, radius);
                var byCorners = shape.Template();
                var measured = Lines.Of(
                    Lines.Bender(shape.Radius), wire.Read(habit), [.. shape.Turns.Select((turn, i) => (shape.Rotations[i], turn))]) with
                {
                    Habit = habit,
                    Wire = new(Lines.Mm(wire.Diameter), Lines.Mm(wire.Radius)),
                };
                AssertGeometry.Equal(byCorners.Centreline().CornerPoints(), measured.Centreline().CornerPoints());
                AssertGeometry.Equal(byCorners.Plan().DevelopedLength, measured.Plan().DevelopedLength);
            },
            iter: 500);

    /// <summary>A wire of 2.4 mm bent to 4 mm in one square corner, its two legs 50 mm to the corner.</summary>
    [Theory]
    [InlineData(MeasuredTo.Corner, 50)]
    [InlineData(MeasuredTo.Straight, 46)] // less the radius
    [InlineData(MeasuredTo.Outside, 51.2)] // and half the wire
    [InlineData(MeasuredTo.Inside, 48.8)] // less half the wire
    [InlineData(MeasuredTo.Along, 49.14159265358979)] // 46 and an eighth of a circle of radius 4
    public void One_square_corner(MeasuredTo habit, double measured)
    {
        var template = Lines.Of(Lines.Bender(10), [measured, measured], (0, 90)) with
        {
            Habit = habit,
            Wire = new(Lines.Mm(2.4), Lines.Mm(4)),
        };
        var layout = RouteLayout.Of(template).Layout!;
        AssertGeometry.Equal(50, layout.Legs[0].CornerToCorner!.Value.Millimetres);
        AssertGeometry.Equal(40, layout.Legs[0].StraightLeft.Millimetres);
        AssertGeometry.Equal(50, layout.Legs[1].CornerToCorner!.Value.Millimetres);
    }

    [Theory]
    [MemberData(nameof(Habits))]
    public void Without_a_bend_there_is_only_one_way_to_measure(MeasuredTo habit)
    {
        var template = Lines.Of(Lines.Bender(10), [321]) with { Habit = habit, Wire = new(Lines.Mm(2.4), Lines.Mm(4)) };
        Assert.Equal(321, template.Plan().DevelopedLength.Millimetres);
    }

    [Theory]
    [InlineData(MeasuredTo.Straight, true, false)]
    [InlineData(MeasuredTo.Along, true, false)]
    [InlineData(MeasuredTo.Outside, false, true)]
    [InlineData(MeasuredTo.Inside, false, true)]
    [InlineData(MeasuredTo.Corner, false, false)]
    public void A_habit_says_what_it_needs_to_know_of_the_wire(MeasuredTo habit, bool radius, bool diameter)
    {
        Assert.Equal(radius, habit.NeedsWireRadius());
        Assert.Equal(diameter, habit.NeedsWireDiameter());
        var wire = new Wire(diameter ? Lines.Mm(2.4) : null, radius ? Lines.Mm(4) : null);
        LegConversion.CornerToCorner(Lines.Mm(50), habit, wire, null, Lines.Deg(90));
        if (radius || diameter)
        {
            Assert.Throws<InvalidOperationException>(
                () => LegConversion.CornerToCorner(Lines.Mm(50), habit, Wire.Unknown, null, Lines.Deg(90)));
        }
    }

    [Fact]
    public void Every_habit_has_one_word()
    {
        Assert.Equal(Enum.GetValues<MeasuredTo>().Order(), MeasuredToWords.All.Select(entry => entry.Habit).Order());
        Assert.Equal(
            ["corner", "straight", "outside", "inside", "along"], MeasuredToWords.All.Select(entry => entry.Word), StringComparer.Ordinal);
    }
}
