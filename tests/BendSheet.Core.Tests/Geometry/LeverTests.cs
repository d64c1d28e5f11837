using BendSheet.Core.Geometry;
using CsCheck;

namespace BendSheet.Core.Tests.Geometry;

/// <summary>
/// Levers against the line walked again with an angle a little larger and a little smaller. Pulled further at the bench, the tube wraps
/// further round the former and no tube is made: the longer arc comes off the straight on the swept side.
/// </summary>
public class LeverTests
{
    private const double StepDegrees = 0.02;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Lever_of_a_bend_is_how_far_end_B_moves_for_a_degree_with_the_tubes_length_kept(bool heldAtB) => Shape.Roomy.Sample(
        shape =>
        {
            var line = shape.Centreline();
            for (var i = 0; i < shape.Turns.Length; i++)
            {
                var bend = i;
                var moved = Slope.Of(more => Pulled(shape, bend, more, heldAtB).EndB, StepDegrees).Norm;
                AssertGeometry.Equal(moved, Lever.OfBend(line, i, heldAtB).Millimetres, $"lever of bend {i + 1}");
                AssertGeometry.Equal(line.Length, Pulled(shape, bend, StepDegrees, heldAtB).Length, "tube");
            }
        },
        iter: 300);

    [Fact]
    public void A_bend_right_at_end_B_moves_nothing_where_A_is_held()
    {
        var line = new Shape(15, [100, 0], [90], [0]).Centreline();
        AssertGeometry.Equal(0, Lever.OfBend(line, 0, aboutStart: false).Millimetres);

        // Held at B the tube comes off the side of A: the whole arc, as far across as its chord, turns about its start.
        AssertGeometry.Equal(15 * Math.Sqrt(2) * Math.PI / 180, Lever.OfBend(line, 0, aboutStart: true).Millimetres);
    }

    private static TubeCentreline Pulled(Shape shape, int bend, double moreDegrees, bool heldAtB)
    {
        var straights = shape.Straights.ToArray();
        var turns = shape.Turns.ToArray();
        turns[bend] += moreDegrees;
        straights[heldAtB ? bend : bend + 1] -= shape.Radius * moreDegrees * Math.PI / 180;
        return (shape with { Straights = straights, Turns = turns }).Centreline();
    }
}
