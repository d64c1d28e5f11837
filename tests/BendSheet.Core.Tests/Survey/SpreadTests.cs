using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Geometry;
using CsCheck;

namespace BendSheet.Core.Tests.Survey;

public class SpreadTests
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

            AssertGeometry.Equal(Math.Sqrt(squares), LineSurvey.Of(shape.Template() with { Tolerance = Tolerance })!.Spread.Millimetres);
        },
        iter: 300);

    private static double Squared(double deviation, Func<double, Vector3D> endB)
    {
        var column = Slope.Of(endB, step: 0.02);
        return deviation * deviation * column.Dot(column);
    }

    private static double[] Changed(double[] figures, int index, double more) =>
        [.. figures.Select((figure, i) => i == index ? figure + more : figure)];

    private static Vector3D EndB(double[] legs, double[] turns, double[] rotations) => CornerPoints.Build(legs, turns, rotations)[^1];
}
