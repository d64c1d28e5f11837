using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using MathNet.Numerics.LinearAlgebra;

namespace BendSheet.Core.Tests.Survey;

/// <summary>
/// The screen's sums against least squares by the library's QR: an equation for every figure, that it does not move, and one for every
/// quantity, with slopes by central differences. What is not believed has no equation.
/// </summary>
public class SlipScreenTests
{
    private static readonly ObservedLine Line = ObservedLine.Of(
        Lines.Of(Lines.Bender(10), [123, 174, 251, 182], (0, 47), (73, 38), (-52, 84)), new(Lines.Mm(1), Lines.Deg(1.5), Lines.Deg(3)));

    private static readonly WeighedQuantity[] Beside =
    [
        Missed(TapedKind.Distance, 0, 2, 3, 1),
        Missed(TapedKind.Distance, 0, 3, -4, 0.7),
        Missed(TapedKind.Distance, 1, 3, 1.5, 1.3),
        Missed(TapedKind.Ahead, 0, 3, 5, 2),
    ];

    private static readonly SlipScreen Screen = SlipScreen.Around(Line, Line.Typed, Beside)!;

    private static readonly double[] Misses = [.. Beside.Select(one => (one.Millimetres - At(Line.Typed, one)) / one.Deviation)];

    [Fact]
    public void All_that_was_measured_comes_to_the_least_sum_of_squares()
    {
        Is(Least(Misses), Screen.ChiSquare);
        double[] others = [-2, 1, 0.5, 3];
        Is(Least(others), Screen.ChiSquareOf(others));
    }

    [Fact]
    public void A_figure_that_is_not_believed_has_no_equation()
    {
        var moving = Enumerable.Range(0, Line.Figures.Length).Where(figure => Slopes(Beside[^1])[figure] != 0).ToList();
        Assert.InRange(moving.Count, 5, Line.Figures.Length - 1);
        Assert.All(moving, figure => Is(Least(Misses, withoutFigure: figure), Screen.ChiSquareWithoutFigure(figure)));
    }

    /// <summary>Nothing is measured to end B: the last leg.</summary>
    [Fact]
    public void A_figure_that_moves_nothing_changes_nothing() =>
        Is(Screen.ChiSquare, Screen.ChiSquareWithoutFigure(Line.Figures.ToList().FindIndex(figure => figure.Name is "leg 4")));

    [Fact]
    public void A_quantity_that_is_not_believed_has_no_equation_and_one_that_is_read_as_more_misses_by_more()
    {
        for (var i = 0; i < Beside.Length; i++)
        {
            var (without, read) = Screen.ChiSquareOfQuantity(i);
            Is(Least(Misses, quantities: [.. Enumerable.Range(0, Beside.Length).Where(other => other != i)]), without);
            Is(Least([.. Misses.Select((miss, k) => k == i ? miss + 2.5 : miss)]), read(2.5));
        }
    }

    /// <summary>Each quantity for itself: the figures need to agree with one at a time.</summary>
    [Fact]
    public void Not_adjusted_is_the_sum_of_each_adjusted_alone() =>
        Is(Enumerable.Range(0, Beside.Length).Sum(i => Least(Misses, quantities: [i])), Screen.Unadjusted(Misses));

    private static double Least(double[] misses, int withoutFigure = -1, int[]? quantities = null)
    {
        quantities ??= [.. Enumerable.Range(0, Beside.Length)];
        var figures = Line.Figures.Length;
        var believed = Enumerable.Range(0, figures).Where(figure => figure != withoutFigure).ToArray();
        var equations = Matrix<double>.Build.DenseOfRows(
            believed.Select(figure => Enumerable.Range(0, figures).Select(i => i == figure ? 1.0 : 0))
                .Concat(quantities.Select(i => Slopes(Beside[i]).AsEnumerable())));
        var right = Vector<double>.Build.DenseOfEnumerable(believed.Select(_ => 0.0).Concat(quantities.Select(i => misses[i])));
        var rest = right - (equations * equations.QR().Solve(right));
        return rest * rest;
    }

    private static double[] Slopes(WeighedQuantity one) =>
    [
        .. Line.Figures.Select((figure, i) =>
        {
            double Moved(double by) =>
                At([.. Line.Typed.Select((value, k) => k == i ? value + (by * figure.Deviation) : value)], one);
            return (Moved(0.01) - Moved(-0.01)) / (0.02 * one.Deviation);
        }),
    ];

    private static double At(double[] values, WeighedQuantity one) => Line.PlacesWith(values)!.ValueOf(one.Quantity);

    private static WeighedQuantity Missed(TapedKind kind, int from, int to, double more, double deviation)
    {
        var quantity = new TapedQuantity(kind, from, to);
        return new(quantity, Line.PlacesWith(Line.Typed)!.ValueOf(quantity) + more, deviation);
    }

    private static void Is(double expected, double found) => Assert.Equal(1, found / expected, 1e-6);
}
