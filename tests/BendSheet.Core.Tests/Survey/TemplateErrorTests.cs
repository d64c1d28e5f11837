using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Geometry;
using CsCheck;

namespace BendSheet.Core.Tests.Survey;

public class TemplateErrorTests
{
    private static MeasuringTolerance Tolerance { get; } = new(Lines.Mm(1), Lines.Deg(1.5), Lines.Deg(3));

    /// <summary>Each figure of the template changed a little, end B found again from corner points alone, the squares added up.</summary>
    [Fact]
    public void It_is_the_root_of_the_squares_of_what_each_figure_moves() => Shape.Roomy.Sample(
        shape =>
        {
            double squares = 0;
            for (var leg = 0; leg < shape.Legs.Length; leg++)
            {
                var i = leg;
                squares += Squared(1, more => EndB(Changed(shape.Legs, i, more), shape.Turns, shape.Rotations));
            }

            for (var bend = 0; bend < shape.Turns.Length; bend++)
            {
                var i = bend;
                squares += Squared(1.5, more => EndB(shape.Legs, Changed(shape.Turns, i, more), shape.Rotations));
                squares += i == 0 ? 0 : Squared(3, more => EndB(shape.Legs, shape.Turns, Changed(shape.Rotations, i, more)));
            }

            AssertGeometry.Equal(Math.Sqrt(squares), TemplateError.AtEndB(shape.Centreline(), Tolerance)!.Value.Millimetres);
        },
        iter: 300);

    [Fact]
    public void A_straight_tube_is_as_uncertain_as_its_only_leg() =>
        AssertGeometry.Equal(1, TemplateError.AtEndB(Lines.Of(Lines.Bender(10), [321]).Centreline(), Tolerance)!.Value.Millimetres);

    [Fact]
    public void Without_a_corner_there_is_no_figure() =>
        Assert.Null(TemplateError.AtEndB(new Shape(15, [50, 50], [180], [0]).Centreline(), Tolerance));

    private static double Squared(double deviation, Func<double, Vector3D> endB)
    {
        var column = Slope.Of(endB, step: 0.02);
        return deviation * deviation * column.Dot(column);
    }

    private static double[] Changed(double[] figures, int index, double more) =>
        [.. figures.Select((figure, i) => i == index ? figure + more : figure)];

    private static Vector3D EndB(double[] legs, double[] turns, double[] rotations) => CornerPoints.Build(legs, turns, rotations)[^1];
}
