using System.Globalization;
using BendSheet.Core.Bench;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Cli.Output;

/// <summary>What test pieces say about the tube that a bend uses up, each piece against it, and what one piece more would bring.</summary>
internal static class LearnedLength
{
    private static readonly Angle Square = Angle.FromDegrees(90);

    /// <summary>What a ruler is read to.</summary>
    private static readonly Length Reading = Length.FromMillimetres(0.5);

    /// <summary>The lines of the part.</summary>
    public static IEnumerable<string> Lines(Bender bender, BenderCalibration tool, LengthNotation notation)
    {
        if (tool.Gain is not { } gain)
        {
            return
            [
                "Tube in a bend: no test piece was measured before and after.",
                "  At the next test, measure the straight tube before (`length`) and both legs after (`legs`, `measured: outside`).",
            ];
        }

        return
        [
            $"Tube in a bend, from {Counted.Words(gain.Pieces.Length, "test piece")}:",
            .. Lines(bender, gain, notation).Select(line => "  " + line),
        ];
    }

    private static IEnumerable<string> Lines(Bender bender, ToolGain gain, LengthNotation notation)
    {
        yield return $"a 90° bend gains {notation.Fine(gain.Gain(Square))} against its corner; by the radius alone "
            + $"{notation.Fine(gain.GainByRadius(Square))}";
        var either = gain.ArcFactorError is { } error ? $" ± {LearnedTools.Factor(error)} (standard error)" : string.Empty;
        yield return $"arc factor {LearnedTools.Factor(gain.ArcFactor)}{either}"
            + $": a bend uses up {Percent(gain.ArcFactor)} than its arc by the radius";
        yield return gain.EffectiveRadius is { } effective
            ? $"effective radius {notation.Fine(effective)}: with arc factor 1, a tool of this radius would gain as much"
            : "effective radius unknown: no radius gains as these pieces did, or all of them were measured `along`, which says nothing "
                + "about it";
        foreach (var piece in gain.Pieces)
        {
            var taken = PieceConversion.TubeInBend(piece.Test.Piece!, piece.Test.Got, gain.Radius);
            var against = gain.Pieces.Length == 1
                ? $"by the radius {notation.Fine(piece.Test.Got.Radians * gain.Radius)}"
                : $"by the arc factor {notation.Fine(taken - piece.Residual)} "
                    + $"({Off(piece.Residual, notation)}{(IsWorst(piece, gain) ? ", the worst" : string.Empty)})";
            yield return $"{LearnedTools.TestName(bender, piece.Test)}: a bend of {AngleNotation.Figure(piece.Test.Got)} used up "
                + $"{notation.Fine(taken)}; {against}";
        }

        if (gain.Scatter is { } scatter)
        {
            yield return $"scatter {notation.Fine(scatter)} (2 times in 3 within that)";
            yield return "One more piece of 90°, as good as these, would bring the standard error to about "
                + $"{LearnedTools.Factor(gain.ErrorWithOneMore(Square)!.Value)}.";
        }
        else
        {
            var open = Math.Sqrt(3) * (Reading / (gain.Pieces[0].Test.Got.Radians * gain.Radius));
            yield return $"One piece: nothing shows how far to trust it. Three readings, each to about {notation.Fine(Reading)}, leave "
                + $"the arc factor open by about {LearnedTools.Factor(open)}; bend one more, of 90° or above.";
        }
    }

    private static bool IsWorst(PieceResidual piece, ToolGain gain) =>
        gain.Pieces.Length > 2 && Math.Abs(piece.Residual.Millimetres) >= gain.Pieces.Max(other => Math.Abs(other.Residual.Millimetres));

    private static string Off(Length residual, LengthNotation notation) =>
        notation.Fine(Length.FromMillimetres(Math.Abs(residual.Millimetres))) + " off";

    private static string Percent(double factor)
    {
        var percent = Math.Round(Math.Abs(factor - 1) * 100, 1);
        return percent == 0
            ? "no more or less"
            : string.Create(CultureInfo.InvariantCulture, $"{percent:0.0} % {(factor > 1 ? "more" : "less")}");
    }
}
