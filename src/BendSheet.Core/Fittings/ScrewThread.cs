using System.Globalization;
using BendSheet.Core.Units;

namespace BendSheet.Core.Fittings;

/// <summary>
/// A screw thread by the name it is sold under: <c>3/8-24</c>, <c>M10x1</c>. Of a pipe thread the size is a name, not a diameter.
/// </summary>
/// <param name="Size">Nominal size.</param>
/// <param name="Pitch">Threads to the inch; of a metric thread millimetres from thread to thread.</param>
/// <param name="IsMetric">Whether it is metric.</param>
public sealed record ScrewThread(Length Size, double Pitch, bool IsMetric)
{
    /// <summary>Figures nearer than this name one thread: 0.375 and 3/8, but not 7/16 and 11 mm.</summary>
    private const double SameFigure = 0.001;

    /// <summary>A thread by inches and threads to the inch.</summary>
    public static ScrewThread Inch(double size, double perInch) => new(Length.FromInches(size), perInch, IsMetric: false);

    /// <summary>A metric thread by diameter and pitch in millimetres.</summary>
    public static ScrewThread Metric(double size, double pitch) => new(Length.FromMillimetres(size), pitch, IsMetric: true);

    /// <summary>Whether one screws into the other. A 3/8-24 goes a turn into an M10x1, which is how both get spoilt.</summary>
    public bool Fits(ScrewThread other) =>
        IsMetric == other.IsMetric
        && Math.Abs(Pitch - other.Pitch) < SameFigure
        && Math.Abs(Size.Millimetres - other.Size.Millimetres) < 25 * SameFigure;

    /// <summary>As it is typed.</summary>
    public string InWords
    {
        get
        {
            var pitch = Pitch.ToString("0.###", CultureInfo.InvariantCulture);
            return IsMetric
                ? string.Create(CultureInfo.InvariantCulture, $"M{Size.Millimetres:0.##}x{pitch}")
                : $"{SizeInWords(Size)}-{pitch}";
        }
    }

    private static string SizeInWords(Length size) =>
        LengthNotation.InchSize(size) ?? size.Inches.ToString("0.####", CultureInfo.InvariantCulture);
}
