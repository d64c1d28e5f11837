using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Files.Reading;

namespace BendSheet.Files.Tests.Reading;

/// <summary>
/// What is said of how sure end B is, held against chance: the figures of a line are drawn again and again with errors as large as the
/// tolerance says, and B lies where it lies (JCGM 101:2008, propagation of distributions by a Monte Carlo method).
/// </summary>
public class HowSureTests
{
    private const int Lines = 40;

    /// <summary>The root mean square of so many is 2 % off where all errors go one way, 1/√(2·draws): a tenth is four times that.</summary>
    private const int Draws = 1000;

    /// <summary>So many draws of each line are typed and read anew.</summary>
    private const int Typed = 2;

    public static TheoryData<string> Forms { get; } = [.. TypedForms.All.Where(form => form is not "distances")];

    /// <summary>Every single line, not only all together.</summary>
    [Theory]
    [MemberData(nameof(Forms))]
    public void It_is_what_chance_makes_of_every_line(string form)
    {
        var random = new Random(20261126);
        for (var i = 0; i < Lines; i++)
        {
            var figures = TypedForms.Figures(form, random);
            var line = TypedForms.Line(form, [.. figures.Select(figure => figure.Value)]);
            var observed = ObservedLine.Of(line, line.Tolerance!);
            var typed = Places(observed, figures);
            var b = observed.PlacesWith(observed.Typed)!.EndB;
            var squares = 0.0;
            for (var draw = 0; draw < Draws; draw++)
            {
                double[] drawn = [.. figures.Select(figure => figure.Value + TypedForms.Error(random, figure.Kind))];
                var there = observed.PlacesWith([.. typed.Select(at => drawn[at] * Unit(figures[at].Kind))])!.EndB;
                squares += (there - b).Dot(there - b);
                if (draw < Typed)
                {
                    // That the figures of the line are those that are typed.
                    Assert.InRange(TypedForms.EndB(TypedForms.Line(form, drawn)).DistanceTo(there), 0, 1e-6);
                }
            }

            Assert.InRange(LineSurvey.Of(line)!.Spread.Millimetres / Math.Sqrt(squares / Draws), 0.9, 1.1);
        }
    }

    /// <summary>
    /// The shape of nothing but distances is found anew for each draw: fewer of them. Near-flat shapes, of which only "at least" is said,
    /// have tests of their own.
    /// </summary>
    [Fact]
    public void It_is_what_chance_makes_of_lines_of_distances()
    {
        var random = new Random(20261126);
        var ratios = new List<double>();
        while (ratios.Count < Lines)
        {
            var figures = TypedForms.Figures("distances", random);
            var line = TypedForms.Line("distances", [.. figures.Select(figure => figure.Value)]);
            if (LineSurvey.Of(line)! is { IsAtLeast: false, Spread: var spread })
            {
                ratios.Add(spread.Millimetres / DrawnAnew(
                    line,
                    () => TypedForms.File(
                        "distances", [.. figures.Select(figure => figure.Value + TypedForms.Error(random, figure.Kind))])));
            }
        }

        Assert.InRange(ratios.Average(), 0.97, 1.03);
        Assert.All(ratios, IsHonest);
    }

    /// <summary>A tenth that the first order may leave out, and three deviations, 5 % each, of 200 draws.</summary>
    internal static void IsHonest(double ratio) => Assert.InRange(ratio, 0.75, 1.25);

    /// <summary>How far off B lies, the root mean square of 200 draws whose shape is found anew; those without one do not count.</summary>
    /// <param name="line">As it is.</param>
    /// <param name="draw">The file of one, typed with its errors.</param>
    internal static double DrawnAnew(LineTemplate line, Func<TemplateFile> draw)
    {
        const int FewerDraws = 200;
        var b = TypedForms.EndB(line);
        List<Vector3D> off =
        [
            .. Enumerable.Range(0, FewerDraws).Select(_ => draw()).Where(file => file.Lines is [_])
                .Select(file => TypedForms.EndB(file.Lines[0]) - b),
        ];
        Assert.InRange(off.Count, 0.9 * FewerDraws, FewerDraws);
        return Math.Sqrt(off.Average(way => way.Dot(way)));
    }

    /// <summary>For each figure of the line, which of those that were typed it is: no two are the same.</summary>
    private static int[] Places(ObservedLine line, (TypedForms.Kind Kind, double Value)[] figures)
    {
        int[] places =
        [
            .. line.Figures.Select(
                figure => Array.FindIndex(
                    figures, typed => Math.Abs((typed.Value * Unit(typed.Kind)) - figure.Observation.Value) < 1e-9)),
        ];
        Assert.Equal(figures.Length, places.Distinct().Count());
        Assert.DoesNotContain(-1, places);
        return places;
    }

    private static double Unit(TypedForms.Kind kind) => kind is TypedForms.Kind.Bend or TypedForms.Kind.Rotation ? Math.PI / 180 : 1;
}
