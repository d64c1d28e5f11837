namespace BendSheet.Sheets.Shape;

/// <summary>Scales that a person can convert in the head.</summary>
internal static class ViewScales
{
    private static readonly double[] Denominators =
        [
            1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 150, 200, 300, 400, 500, 1000, 2000, 5000, 10000,
            20000, 50000,
        ];

    /// <summary>By its place in the row, largest scale first; the row has no end.</summary>
    public static double Denominator(int index) =>
        index < Denominators.Length ? Denominators[index] : Denominators[^1] * Math.Pow(10, index + 1 - Denominators.Length);

    /// <summary>The first in the row that does; something does at the latest where the drawing is a point.</summary>
    public static double First(Func<double, bool> does)
    {
        var index = 0;
        while (!does(Denominator(index)))
        {
            index++;
        }

        return Denominator(index);
    }
}
