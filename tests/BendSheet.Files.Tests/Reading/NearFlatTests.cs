using System.Globalization;
using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Units;
using BendSheet.Files.Reading;

namespace BendSheet.Files.Tests.Reading;

/// <summary>
/// Shapes that a tape alone measured, from nearly flat to well out of the plane: where the first order does not say how sure B is, "at
/// least" is said, and nowhere else. Held against chance: the distances are drawn with errors, typed and read anew.
/// </summary>
public class NearFlatTests
{
    private const double Tape = 0.4;

    private readonly Random _random = new(20261126);

    [Fact]
    public void What_is_said_without_at_least_is_what_chance_makes_of_it()
    {
        var ratios = Ratios(from: 5, to: 60, survey => !survey.IsAtLeast);
        Assert.InRange(ratios.Average(), 0.95, 1.05);
        Assert.All(ratios, HowSureTests.IsHonest);
    }

    [Fact]
    public void What_is_said_with_at_least_is_less_than_what_chance_makes_of_it() =>
        Assert.All(Ratios(from: 0.5, to: 15, survey => survey.IsAtLeast), ratio => Assert.InRange(ratio, 0, 0.75));

    /// <summary>A rotation of 12° that a good tape can tell from none, and a poor one cannot.</summary>
    [Theory]
    [InlineData(0.05, false)]
    [InlineData(3, true)]
    public void It_is_the_tape_that_tells_a_rotation_from_none(double tape, bool isAtLeast)
    {
        var points = Points(5, 12);
        Assert.Equal(isAtLeast, LineSurvey.Of(Read(points, () => 0, tape).Lines[0])!.IsAtLeast);
    }

    /// <summary>Of how far off B is said to be, the part that chance makes of it; of lines of four or five points.</summary>
    private List<double> Ratios(double from, double to, Predicate<LineSurvey> isLookedAt)
    {
        var ratios = new List<double>();
        for (var i = 0; ratios.Count < 20; i++)
        {
            var points = Points(4 + (i % 2), from + ((to - from) * _random.NextDouble()));
            var line = Assert.Single(Read(points, () => 0, Tape).Lines);
            if (LineSurvey.Of(line)! is var survey && isLookedAt(survey))
            {
                var drawn = HowSureTests.DrawnAnew(
                    line, () => Read(points, () => TypedForms.Error(_random, TypedForms.Kind.Tape), Tape));
                ratios.Add(survey.Spread.Millimetres / drawn);
            }
        }

        return ratios;
    }

    /// <summary>The corners of a line whose first rotation is given; any other is well out of the plane.</summary>
    private Vector3D[] Points(int count, double degrees)
    {
        double Between(double from, double to) => from + ((to - from) * _random.NextDouble());
        var points = new List<Vector3D> { default };
        var frame = Frame.Default;
        for (var i = 1; i < count; i++)
        {
            frame = frame.Advanced(Length.FromMillimetres(Between(150, 250)));
            points.Add(frame.Position);
            frame = frame.Rolled(Angle.FromDegrees(i switch { 1 => 0, 2 => degrees, _ => 70 }))
                .Bent(Length.FromMillimetres(1e-9), Angle.FromDegrees(Between(30, 90)));
        }

        return [.. points];
    }

    private static TemplateFile Read(Vector3D[] points, Func<double> error, double tape)
    {
        var distances = points.SelectMany((to, j) => points.Take(j).Select((from, i) =>
            string.Create(CultureInfo.InvariantCulture, $"{i}-{j}: {from.DistanceTo(to) + error():R}")));
        var rolls = Enumerable.Range(2, points.Length - 3);
        return TypedTemplates.Read(
            "units: mm\ntube: {od: 3/16 in}\nbender: {radius: 9/16 in}\n"
            + string.Create(CultureInfo.InvariantCulture, $"tolerance: {{straight: 0.5, bend: 0.5, rotate: 1, tape: {tape}}}\n")
            + $"lines:\n  a:\n    distances: {{{string.Join(", ", distances)}}}\n"
            + $"    side: {{{string.Join(", ", rolls.Select(bend => $"{bend}: right"))}}}\n");
    }
}
