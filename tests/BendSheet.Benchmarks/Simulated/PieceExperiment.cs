using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BendSheet.Core.Survey.Pieces;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Benchmarks.Simulated;

/// <summary>
/// Random lines of 3 to 6 bends made with one bend out by 4° or one roll by 8°, checked by the distances that the sheet asks for: how
/// often is the mistake named?
/// </summary>
internal static class PieceExperiment
{
    private const int Lines = 300;
    private const double Tape = 0.5;

    /// <summary>Of a roll by protractor, in radians.</summary>
    private const double Protractor = 2 * Math.PI / 180;

    public static string Run()
    {
        var text = new StringBuilder("out by     hands     distances  first  alone  wrong alone  clean suspected  named\n");
        foreach (var steady in new[] { 0.0, 0.5, 1 })
        {
            foreach (var roll in new[] { false, true })
            {
                var chance = new Chance(20261126);
                var (first, alone, wrong, asked, clean, named) = (0, 0, 0, 0, 0, 0);
                for (var i = 0; i < Lines; i++)
                {
                    var line = SimulatedLine.Random(chance, chance.Whole(3, 7));
                    var layout = RouteLayout.Of(line.Template()).Layout!;
                    var bends = layout.Bends.Length;
                    var piece = new BentPiece(
                        layout, [.. Enumerable.Repeat(TubeEnd.A, bends)], Length.FromInches(3.0 / 16));
                    var checks = PieceChecks.Of(piece, Tape);
                    asked += checks.Length;
                    double[] errors = [.. piece.Errors.Select(error => chance.Error(steady * error.Kind switch
                    {
                        PieceErrorKind.Bend => 0.7 * Math.PI / 180,
                        PieceErrorKind.Roll => Math.PI / 180,
                        _ => 0.5,
                    }))];
                    clean += IsNamed(Causes(piece, checks, errors, chance)) ? 1 : 0;
                    var bend = chance.Whole(roll ? 2 : 1, bends + 1);
                    var sign = chance.Whole(0, 2) == 0 ? -1 : 1;
                    errors[piece.IndexOf(roll ? PieceErrorKind.Roll : PieceErrorKind.Bend, bend)]
                        += sign * (roll ? 8 : 4) * Math.PI / 180;
                    var causes = Causes(piece, checks, errors, chance);
                    bool Is(Explained one) =>
                        one.Cause?.Bend == bend && one.Cause.Kind == (roll ? PieceCauseKind.Roll : PieceCauseKind.Bend);
                    var isAlone = causes[1].Misfit - causes[0].Misfit > PieceCauses.TellsApart;
                    first += Is(causes[0]) ? 1 : 0;
                    alone += Is(causes[0]) && isAlone ? 1 : 0;
                    wrong += !Is(causes[0]) && isAlone && IsNamed(causes) ? 1 : 0;
                    named += IsNamed(causes) ? 1 : 0;
                }

                text.Append(CultureInfo.InvariantCulture, $"{(roll ? "roll 8°" : "bend 4°"),-10} {steady,-9} ")
                    .Append(CultureInfo.InvariantCulture, $"{(double)asked / Lines,9:0.0}")
                    .Append(CultureInfo.InvariantCulture, $" {100.0 * first / Lines,6:0.0} {100.0 * alone / Lines,6:0.0}")
                    .Append(CultureInfo.InvariantCulture, $" {100.0 * wrong / Lines,12:0.0} {100.0 * clean / Lines,12:0.0}")
                    .Append(CultureInfo.InvariantCulture, $" {100.0 * named / Lines,12:0.0}\n");
            }
        }

        return text.ToString();
    }

    private static bool IsNamed(ImmutableArray<Explained> causes) => causes[0].Cause is not null
        && causes.First(one => one.Cause is null).Misfit - causes[0].Misfit > PieceCauses.TellsApart;

    private static ImmutableArray<Explained> Causes(
        BentPiece piece, ImmutableArray<PieceQuantity> checks, double[] errors, Chance chance)
    {
        var places = piece.With(errors);
        return PieceCauses.Of(piece, [.. checks.Select(one =>
        {
            var deviation = one.IsAngle ? Protractor : Tape;
            return new WeighedPiece(one, places.ValueOf(one) + chance.Error(deviation), deviation);
        })]);
    }
}
