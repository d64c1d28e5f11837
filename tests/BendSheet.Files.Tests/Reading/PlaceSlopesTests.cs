using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;

namespace BendSheet.Files.Tests.Reading;

/// <summary>
/// How the places of a line move with its figures, against the same found by walking the line again with each figure changed: central
/// differences of two steps, without their common error in step² (Richardson).
/// </summary>
public class PlaceSlopesTests
{
    private const int Lines = 8;
    private const double Step = 0.02;

    public static TheoryData<string> Forms { get; } = [.. TypedForms.All];

    [Theory]
    [MemberData(nameof(Forms))]
    public void They_are_those_of_the_line_walked_again(string form)
    {
        var random = new Random(20261126);
        for (var i = 0; i < Lines; i++)
        {
            Compare(TypedForms.Line(form, [.. TypedForms.Figures(form, random).Select(figure => figure.Value)]));
        }
    }

    [Theory]
    [InlineData("[{straight: 120, bend: 40}, {straight: 60, coil: 2.5, radius: 20, pitch: 8}, {straight: 90, rotate: 30, "
        + "bend: 50}, {straight: 80}]")]
    [InlineData("[{straight: 120, included: 130}, {straight: 60}, {straight: 40, rotate: 30, bend: 60}, {straight: 90, rotate: -70, "
        + "saddle: 30, width: 160, bends: 3}, {straight: 80}]")]
    public void They_are_for_coils_and_what_else_a_row_may_say(string rows) =>
        Compare(Assert.Single(TypedTemplates.Read(
            "units: mm\ntube: {od: 3/16 in}\nbender: {radius: 9/16 in}\nlines:\n  a:\n    rows: " + rows + "\n").Lines));

    private static void Compare(LineTemplate template)
    {
        var line = ObservedLine.Of(template, template.Tolerance ?? MeasuringTolerance.CommonPractice);
        var (typed, slopes) = (line.Typed, PlaceSlopes.Near(line, line.Typed)!);
        Assert.NotEmpty(typed);
        Assert.Equal(typed.Length, slopes.Count);
        foreach (var quantity in Quantities(slopes.At))
        {
            double[] known = [.. slopes.Of(places => Value(places, quantity))];
            for (var figure = 0; figure < typed.Length; figure++)
            {
                double At(double by)
                {
                    double[] tried = [.. typed];
                    tried[figure] += by * line.Figures[figure].Deviation;
                    return Value(line.PlacesWith(tried)!, quantity);
                }

                double Central(double step) => (At(step) - At(-step)) / (2 * step);
                var walked = ((4 * Central(Step / 2)) - Central(Step)) / 3;
                Assert.True(
                    Math.Abs(known[figure] - walked) < 1e-7 * Math.Max(1, Math.Abs(walked)),
                    $"{line.Figures[figure].Name}, {quantity}: {known[figure]} is not {walked}");
            }
        }

        foreach (var (distance, pair) in Distances(slopes.At))
        {
            Assert.All(
                slopes.Of(distance).Zip(slopes.Of(places => pair(places).Norm)),
                each => Assert.Equal(each.First, each.Second, 1e-7));
        }
    }

    /// <summary>Every coordinate of every point, of the last direction, and of how it lies on the car.</summary>
    private static IEnumerable<(int Point, int Axis)> Quantities(Places at)
    {
        for (var point = -3; point < at.Points.Length; point++)
        {
            for (var axis = 0; axis < 3 && (point < 0 || at.Points[point] is not null); axis++)
            {
                yield return (point, axis);
            }
        }
    }

    private static double Value(Places places, (int Point, int Axis) quantity)
    {
        var vector = quantity.Point switch
        {
            -3 => places.Start.Direction,
            -2 => places.Start.Side,
            -1 => places.LastDirection,
            var point => places.Points[point]!.Value,
        };
        return quantity.Axis switch { 0 => vector.X, 1 => vector.Y, _ => vector.Z };
    }

    private static IEnumerable<(TapedQuantity Quantity, Func<Places, Vector3D> Way)> Distances(Places at)
    {
        for (var to = 2; to < at.Points.Length; to++)
        {
            var end = to;
            if (at.Points[to] is not null)
            {
                yield return (new(TapedKind.Distance, 0, to), places => places.Points[end]!.Value - places.Points[0]!.Value);
            }
        }
    }
}
