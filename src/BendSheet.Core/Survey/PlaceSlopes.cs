namespace BendSheet.Core.Survey;

/// <summary>
/// How everything that can be measured on a line changes with its figures, each taken as large as its standard deviation. By central
/// differences, whose error is of the second order in a step that no tape or protractor shows.
/// </summary>
internal sealed class PlaceSlopes
{
    /// <summary>Of a standard deviation: a micrometre or so, where rounding is a billionth of it.</summary>
    private const double Step = 1e-3;

    private readonly (Places Less, Places More, double Apart)[] _moved;

    private PlaceSlopes(Places at, (Places Less, Places More, double Apart)[] moved)
    {
        At = at;
        _moved = moved;
    }

    /// <summary>The line itself.</summary>
    public Places At { get; }

    /// <summary>How many figures there are.</summary>
    public int Count => _moved.Length;

    /// <summary>The slopes of a line near some values of its figures; null where it has no shape.</summary>
    public static PlaceSlopes? Near(ObservedLine line, double[] values)
    {
        if (line.PlacesWith(values) is not { } at)
        {
            return null;
        }

        var moved = new (Places, Places, double)[values.Length];
        for (var i = 0; i < values.Length; i++)
        {
            // At the edge of what a line can be, from one side only.
            var (less, more) = (Moved(i, -Step), Moved(i, Step));
            moved[i] = (less ?? at, more ?? at, less is null || more is null ? Step : 2 * Step);
        }

        return new(at, moved);

        Places? Moved(int figure, double step)
        {
            double[] tried = [.. values];
            tried[figure] += step * line.Figures[figure].Deviation;
            return line.PlacesWith(tried);
        }
    }

    /// <summary>What a quantity changes by when each figure changes by its standard deviation.</summary>
    public double[] Of(Func<Places, double> quantity) =>
        [.. _moved.Select(moved => (quantity(moved.More) - quantity(moved.Less)) / moved.Apart)];
}
