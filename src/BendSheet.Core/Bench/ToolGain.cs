using System.Collections.Immutable;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench;

/// <summary>One test piece against what was learned from all of them.</summary>
/// <param name="Test">With a piece.</param>
/// <param name="Residual">How much more tube its bend took up than the learned arc factor has it.</param>
public sealed record PieceResidual(BenderTest Test, Length Residual);

/// <summary>
/// What test pieces say about the tube that a tool's bends take up. A bend of R and turn b should take up R·b; a tool that stretches the
/// tube, or bends it to another radius than it says, takes up f·R·b, and gains 2·R·tan(b/2) − f·R·b against the way over the corner.
/// </summary>
/// <remarks>Least squares of one unknown, all pieces with equal weight and their residuals in length: Σxy / Σx² (Gauss).</remarks>
/// <param name="Radius">The tool's, to the tube's centreline.</param>
/// <param name="ArcFactor">f with the typed radius kept: what developed lengths and marks are made with.</param>
/// <param name="ArcFactorError">Its standard error; null with one piece, which shows no scatter.</param>
/// <param name="EffectiveRadius">The radius that has this gain with f = 1; null where no piece tells (measured along) or none has.</param>
/// <param name="Pieces">Each against the arc factor, in the order of the file.</param>
/// <param name="Scatter">Standard deviation of the residuals, n − 1; null with one piece.</param>
public sealed record ToolGain(
    Length Radius,
    double ArcFactor,
    double? ArcFactorError,
    Length? EffectiveRadius,
    ImmutableArray<PieceResidual> Pieces,
    Length? Scatter)
{
    /// <summary>What the pieces say.</summary>
    /// <param name="tests">Those that count for one tube; the ones without a piece are left out.</param>
    /// <param name="radius">The tool's.</param>
    /// <returns>Null without a piece.</returns>
    public static ToolGain? Of(IEnumerable<BenderTest> tests, Length radius)
    {
        ImmutableArray<BenderTest> pieces = [.. tests.Where(test => test.Piece is not null)];
        if (pieces.IsEmpty)
        {
            return null;
        }

        (double ByRadius, double Taken)[] arcs =
            [.. pieces.Select(
                test => ((test.Got.Radians * radius).Millimetres, PieceConversion.TubeInBend(test.Piece!, test.Got, radius).Millimetres))];
        var squares = arcs.Sum(arc => arc.ByRadius * arc.ByRadius);
        var factor = arcs.Sum(arc => arc.ByRadius * arc.Taken) / squares;
        var residuals = arcs.Select(arc => arc.Taken - (factor * arc.ByRadius)).ToList();
        double? scatter = pieces.Length > 1 ? Math.Sqrt(residuals.Sum(residual => residual * residual) / (pieces.Length - 1)) : null;
        return new(
            radius,
            factor,
            scatter / Math.Sqrt(squares),
            RadiusFrom(pieces, radius),
            [.. pieces.Zip(residuals, (test, residual) => new PieceResidual(test, Length.FromMillimetres(residual)))],
            scatter is { } known ? Length.FromMillimetres(known) : null);
    }

    /// <summary>What a bend below 180° gains against the way over its corner, by what was learned.</summary>
    public Length Gain(Angle turn) => GainOf(turn, ArcFactor);

    /// <summary>The same by the radius alone.</summary>
    public Length GainByRadius(Angle turn) => GainOf(turn, 1);

    /// <summary>What the standard error would come to with one piece more that scatters as the others do; null with one piece.</summary>
    public double? ErrorWithOneMore(Angle turn) => Scatter is { } scatter
        ? scatter.Millimetres / Math.Sqrt(Pieces.Sum(piece => Square(piece.Test.Got.Radians * Radius)) + Square(turn.Radians * Radius))
        : null;

    private static double Square(Length length) => length.Millimetres * length.Millimetres;

    private Length GainOf(Angle turn, double factor) => ((2 * Math.Tan(turn.Radians / 2)) - (factor * turn.Radians)) * Radius;

    private static Length? RadiusFrom(ImmutableArray<BenderTest> tests, Length radius)
    {
        // Gain = R·(2·tan(b/2) − b) between corners; tube in the bend = R·b between flat parts. Along the tube R does not come in.
        var rows = tests.Where(test => test.Piece!.Habit != MeasuredTo.Along).Select(test => test.Piece!.Habit == MeasuredTo.Straight
            ? (Factor: test.Got.Radians, Measured: PieceConversion.TubeInBend(test.Piece!, test.Got, radius).Millimetres)
            : (Factor: (2 * Math.Tan(test.Got.Radians / 2)) - test.Got.Radians, Measured: PieceConversion.Gain(
                test.Piece!, test.Got, radius).Millimetres)).ToList();
        var squares = rows.Sum(row => row.Factor * row.Factor);
        var effective = rows.Sum(row => row.Factor * row.Measured) / squares;
        return effective > 0 && double.IsFinite(effective) ? Length.FromMillimetres(effective) : null;
    }
}
