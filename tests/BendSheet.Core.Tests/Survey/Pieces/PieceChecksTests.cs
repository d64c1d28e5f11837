using BendSheet.Core.Survey.Pieces;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Tests.Survey.Pieces;

public class PieceChecksTests
{
    [Fact]
    public void A_straight_tube_has_its_length() =>
        Assert.Equal([new(PieceKind.Distance, 0, 1)], Checks(Lines.Of(Lines.Bender(10), [321])));

    /// <summary>Out of a flat line a roll moves nothing along the way to anything else.</summary>
    [Fact]
    public void What_no_tape_shows_of_a_flat_line_is_for_the_protractor()
    {
        var checks = Checks(Lines.Of(Lines.Bender(10), [100, 100, 100, 100], (0, 60), (180, 60), (0, 60)));
        Assert.Equal(
            [new(PieceKind.Roll, 0, 2), new(PieceKind.Roll, 0, 3)], checks.Where(check => check.Kind == PieceKind.Roll));
    }

    /// <summary>
    /// Each bend 4° and each roll 8° off changes the distances otherwise than any other one would, whatever its size: of 100 random lines
    /// with bends of 20° and more, since beside a bend of almost nothing two rolls are one.
    /// </summary>
    [Fact]
    public void Every_bend_and_every_roll_can_be_told_from_every_other()
    {
        var random = new Random(20261129);
        for (var line = 0; line < 100; line++)
        {
            var bends = random.Next(1, 8);
            var piece = BentPieceTests.Piece(Lines.Of(
                Lines.Bender(Lines.NineSixteenths),
                [.. Enumerable.Range(0, bends + 1).Select(_ => 80 + (320 * random.NextDouble()))],
                [.. Enumerable.Range(0, bends).Select(_ => ((360 * random.NextDouble()) - 180, 20 + (90 * random.NextDouble())))]));
            var checks = PieceChecks.Of(piece, 0.5);
            Assert.InRange(checks.Length, 1, (3 * piece.Bends) + 1);
            var nominal = piece.Nominal;
            int[] angles =
            [
                .. Enumerable.Range(0, piece.Errors.Length).Where(i => piece.Errors[i].Kind is PieceErrorKind.Bend or PieceErrorKind.Roll),
            ];
            var signatures = angles.Select(error =>
            {
                var errors = new double[piece.Errors.Length];
                errors[error] = Lines.Deg(piece.Errors[error].Kind == PieceErrorKind.Bend ? 4 : 8).Radians;
                var places = piece.With(errors);
                return checks.Select(one => (places.ValueOf(one) - nominal.ValueOf(one)) / (one.IsAngle ? 0.035 : 0.5)).ToArray();
            }).ToList();
            foreach (var (i, one) in signatures.Index())
            {
                foreach (var other in signatures.Where((_, k) => k != i))
                {
                    // What is left of the one when as much of the other as explains it best is taken away, in standard deviations.
                    var alike = Dot(one, other) * Dot(one, other) / Dot(other, other);
                    Assert.InRange(Math.Sqrt(Dot(one, one) - alike), 1, double.PositiveInfinity);
                }
            }
        }
    }

    private static double Dot(double[] a, double[] b) => a.Zip(b, (x, y) => x * y).Sum();

    private static PieceQuantity[] Checks(LineTemplate template) => [.. PieceChecks.Of(BentPieceTests.Piece(template), 0.5)];
}
