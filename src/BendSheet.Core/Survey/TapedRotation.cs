using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>
/// The rotation between the bends at two neighbouring corners, from the six distances of a tetrahedron. The tape tells its size only.
/// </summary>
/// <param name="Bend">The number of the second bend, which the rotation belongs to.</param>
/// <param name="Size">In radians, from 0 (both turn the same way, flat) to π (they turn against each other, flat).</param>
/// <param name="Over">The distance over both corners.</param>
/// <param name="Flat">What that distance is in the nearer flat shape.</param>
/// <param name="NearerFlat">The rotation of the nearer flat shape, 0 or π.</param>
internal sealed record TapedRotation(int Bend, double Size, TapedDistance Over, Length Flat, double NearerFlat)
{
    /// <summary>A distance nearer to that of a flat shape than this part of its three legs differs from it by rounding only.</summary>
    private const double Rounding = 1e-13;

    /// <summary>A flat shape has no side.</summary>
    public bool IsFlat => Size == NearerFlat;

    /// <summary>Nearer to flat than a tape can tell.</summary>
    public bool MayBeFlat => Apart(Over.Distance, Flat) <= Tolerances.TapeReading;

    /// <summary>The same two bends in one plane, with the distance over them that belongs to it.</summary>
    public TapedRotation Flattened() => this with { Size = NearerFlat, Over = Over with { Distance = Flat } };

    /// <summary>The rotation at a bend from the second on; null, mostly with a finding, where the distances give none.</summary>
    /// <param name="bend">Its number, which is its corner's.</param>
    /// <param name="turns">The bends found, by corner number.</param>
    /// <param name="table">The distances.</param>
    /// <param name="findings">Where a finding is added.</param>
    /// <remarks>
    /// The outer corners lie h1 and h2 off the axis of the leg between, and x apart along it. Then e² = x² + h1² + h2² − 2·h1·h2·cos φ,
    /// which lies between x² + (h1 − h2)² and x² + (h1 + h2)²; by half angles tan²(φ/2) = (e² − least²)/(most² − e²), without the
    /// cancellation of acos near a flat shape.
    /// </remarks>
    public static TapedRotation? At(int bend, double?[] turns, DistanceTable table, List<Finding> findings)
    {
        if (turns[bend - 1] is not { } first || turns[bend] is not { } second || table.Between(bend - 2, bend + 1) is not { } over)
        {
            return null;
        }

        var before = table.Between(bend - 2, bend - 1)!.Distance.Millimetres;
        var between = table.Between(bend - 1, bend)!.Distance.Millimetres;
        var after = table.Between(bend, bend + 1)!.Distance.Millimetres;
        var (h1, h2) = (before * Math.Sin(first), after * Math.Sin(second));
        var x = (before * Math.Cos(first)) + between + (after * Math.Cos(second));
        var least = double.Hypot(x, h1 - h2);
        var most = double.Hypot(x, h1 + h2);
        var e = over.Distance.Millimetres;
        var slip = Tolerances.TapeSlip.Millimetres;
        if (e < least - slip || e > most + slip)
        {
            findings.Add(Impossible(over, bend, Length.FromMillimetres(least), Length.FromMillimetres(most)));
            return null;
        }

        var rounding = Rounding * (before + between + after);
        var aboveLeast = e - least <= rounding ? 0 : e - least;
        var belowMost = most - e <= rounding ? 0 : most - e;
        var size = 2 * Math.Atan2(Math.Sqrt(aboveLeast * (e + least)), Math.Sqrt(belowMost * (e + most)));
        var open = Math.Abs(e - least) <= Math.Abs(most - e);
        var (flat, nearerFlat) = open ? (least, 0.0) : (most, Math.PI);
        return new(bend, (open ? aboveLeast : belowMost) == 0 ? nearerFlat : size, over, Length.FromMillimetres(flat), nearerFlat);
    }

    private static Length Apart(Length one, Length other) => one > other ? one - other : other - one;

    private static Finding Impossible(TapedDistance over, int bend, Length least, Length most)
    {
        var (by, word) = over.Distance < least ? (least - over.Distance, "little") : (over.Distance - most, "much");
        var inner = TapedDistance.NameOf(bend - 2, bend);
        var outer = TapedDistance.NameOf(bend - 1, bend + 1);
        return TapedRules.RotationImpossible.Error(
            over.At,
            $"distance {over.Name} is {FindingFigures.Mm(over.Distance)}, {FindingFigures.UpMm(by)} too {word}: bends {bend - 1} and "
                + $"{bend} allow {FindingFigures.Mm(least)} to {FindingFigures.Mm(most)}, however they are rolled; measure {over.Name} "
                + $"again, and if it stays, {inner} and {outer}");
    }
}
