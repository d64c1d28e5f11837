using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Survey.Pieces;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Bench.Rules;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Survey.Pieces;

public class PieceInHandTests
{
    private const double Tape = 0.5;

    private static readonly SourcePosition At = new("test.yaml", 20, 40);

    private static LineTemplate Line { get; } = Lines.Of(Lines.Bender(15), [120, 100, 200, 80], (0, 45), (90, 30), (-45, 90)) with
    {
        Wanted = WantedFit.CommonPractice,
        Tolerance = new(Lines.Mm(0.001), Lines.Deg(0.001), Lines.Deg(0.001)) { Tape = Lines.Mm(Tape) },
    };

    public static TheoryData<string, double> Slips => new()
    {
        { "bend 1", 4 }, { "bend 2", -4 }, { "bend 3", 4 }, { "roll 2", 8 }, { "roll 3", -8 }, { "mark 2", 7 },
    };

    /// <summary>Nothing but the sheet's own distances, to half a millimetre.</summary>
    [Theory]
    [MemberData(nameof(Slips))]
    public void A_mistake_is_named_and_undone(string name, double size)
    {
        var piece = BentPieceTests.Piece(Line);
        var errors = new double[piece.Errors.Length];
        errors[Error(piece, name)] = name.StartsWith("mark", StringComparison.Ordinal) ? size : Lines.Deg(size).Radians;
        var found = CarPlan.Line(Measured(piece, errors)).Piece!;
        var mistake = Assert.Single(found.Mistakes);
        Assert.Equal(name, PieceRules.Name(mistake));
        Assert.InRange(Math.Abs(mistake.Size - errors[Error(piece, name)]) / mistake.Within, 0, 2);
        var landing = PieceLanding.Of(piece.With(errors));
        Assert.Equal(landing.MissTo(PieceLanding.Of(piece.Nominal)), found.Miss.Millimetres, 1.0);
        if (!name.StartsWith("mark", StringComparison.Ordinal))
        {
            var step = Assert.Single(found.Correction!.Steps);
            Assert.Equal(name.StartsWith("roll", StringComparison.Ordinal), step.IsTwist);
            errors[Error(piece, $"{(step.IsTwist ? "roll" : "bend")} {step.Bend}")] += step.By.Radians;
            var after = PieceLanding.Of(piece.With(errors));
            Assert.InRange(after.MissTo(PieceLanding.Of(piece.Nominal)), 0, 1.5);
        }
    }

    [Fact]
    public void What_came_out_as_its_sheet_has_it_is_silent()
    {
        var piece = BentPieceTests.Piece(Line);
        Assert.Empty(CarPlan.Line(Measured(piece, new double[piece.Errors.Length])).Findings);
    }

    [Fact]
    public void One_distance_misread_is_measured_again_and_nothing_is_bent()
    {
        var piece = BentPieceTests.Piece(Line);
        var right = Measured(piece, new double[piece.Errors.Length]);
        var line = right with { Checks = right.Checks.SetItem(2, right.Checks[2] with { Value = right.Checks[2].Value + 10 }) };
        var found = CarPlan.Line(line).Piece!;
        Assert.Equal(right.Checks[2].Quantity.Name(3), Assert.Single(found.Mistakes).Misread);
        Assert.Equal(10, found.Mistakes[0].Size, 1.0);
        Assert.True(found.IsGood);
    }

    /// <summary>A distance over three bends alone could be any of them.</summary>
    [Fact]
    public void Where_two_mistakes_explain_it_alike_it_is_said_what_tells_them_apart()
    {
        var piece = BentPieceTests.Piece(Line);
        PieceQuantity whole = new(PieceKind.Distance, 0, 4);
        var line = Line with { Checks = [new(whole, piece.Nominal.ValueOf(whole) - 9, At)] };
        var found = CarPlan.Line(line);
        Assert.NotNull(found.Piece!.Telling);
        Assert.Null(found.Piece.Correction);
        Assert.Contains(
            $"measure {found.Piece.Telling.Quantity.InWords(3)} as well",
            Assert.Single(found.Findings).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_bend_is_said_with_what_to_do()
    {
        var piece = BentPieceTests.Piece(Line);
        var errors = new double[piece.Errors.Length];
        errors[Error(piece, "bend 2")] = Lines.Deg(4).Radians;
        var message = OneFinding.Of(Measured(piece, errors)).Message;
        Assert.Contains(": bend 2 turned 4° ± ", message, StringComparison.Ordinal);
        Assert.Contains(" too far explains it; end B is ", message, StringComparison.Ordinal);
        Assert.Contains("; to put it right, open bend 2 by 4°, until ", message, StringComparison.Ordinal);
    }

    /// <summary>A single reading may be the slip itself.</summary>
    [Fact]
    public void A_protractor_alone_may_have_been_misread()
    {
        var line = Line with { Checks = [new(new(PieceKind.Bend, 0, 2), Lines.Deg(40).Radians, At)] };
        var message = OneFinding.Of(line).Message;
        Assert.StartsWith("bend 2 is 40° on the piece, 10° more than the sheet's 30°: ", message, StringComparison.Ordinal);
        Assert.Contains("bend 2 misread", message, StringComparison.Ordinal);
        Assert.Contains("bend 2 turned ", message, StringComparison.Ordinal);
        Assert.Contains(" as well, which is ", message, StringComparison.Ordinal);
    }

    /// <summary>A tape in metres, or another piece: nothing is advised.</summary>
    [Theory]
    [InlineData(99_000, "a tape drawn tight is never longer than that; read it again")]
    [InlineData(0.1, "nothing explains all that was measured on the piece: measure it again, A to B first")]
    public void What_nothing_explains_is_measured_again(double read, string cure)
    {
        var found = CarPlan.Line(Line with { Checks = [new(new(PieceKind.Distance, 0, 4), read, At)] });
        Assert.Null(found.Piece!.Correction);
        Assert.EndsWith(
            cure,
            Assert.Single(found.Findings).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_that_is_not_believed_moves_nothing()
    {
        var piece = BentPieceTests.Piece(Line);
        var right = Measured(piece, new double[piece.Errors.Length]);
        var misread = right.Checks[2] with { Value = right.Checks[2].Value + 90 };
        var found = CarPlan.Line(right with { Checks = right.Checks.SetItem(2, misread) });
        Assert.Equal(0, found.Piece!.Miss.Millimetres, 1.0);
        Assert.Null(found.Piece.Correction);
        Assert.EndsWith(" again", Assert.Single(found.Findings).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_straight_tube_has_nothing_to_put_right()
    {
        var line = Lines.Of(Lines.Bender(10), [321]) with { Checks = [new(new(PieceKind.Distance, 0, 1), 322, At)] };
        Assert.StartsWith("a straight tube has nothing", OneFinding.Of(line).Message, StringComparison.Ordinal);
    }

    /// <summary>120 random lines with one slip each, measured to half a millimetre.</summary>
    [Theory]
    [InlineData(false, 4)]
    [InlineData(true, 8)]
    public void The_right_cause_comes_first_in_at_least_85_of_100(bool isRoll, double degrees)
    {
        var kind = isRoll ? PieceErrorKind.Roll : PieceErrorKind.Bend;
        const int All = 120;
        var random = new Random(20261127);
        var first = 0;
        for (var i = 0; i < All; i++)
        {
            var bends = random.Next(3, 7);
            var line = Lines.Of(
                Lines.Bender(Lines.NineSixteenths),
                [.. Enumerable.Range(0, bends + 1).Select(_ => 60 + (340 * random.NextDouble()))],
                [.. Enumerable.Range(0, bends).Select(_ => ((360 * random.NextDouble()) - 180, 20 + (90 * random.NextDouble())))]);
            if (RouteLayout.Of(line).Layout!.Legs.Any(leg => leg.StraightLeft < Length.Zero))
            {
                first++;
                continue;
            }

            var piece = new BentPiece(RouteLayout.Of(line).Layout!, [.. Enumerable.Repeat(TubeEnd.A, bends)], Lines.Mm(4.76));
            var bend = random.Next(kind == PieceErrorKind.Roll ? 2 : 1, bends + 1);
            var errors = new double[piece.Errors.Length];
            errors[piece.IndexOf(kind, bend)] = Lines.Deg(random.Next(2) == 0 ? degrees : -degrees).Radians;
            var places = piece.With(errors);
            var causes = PieceCauses.Of(piece, [.. PieceChecks.Of(piece, Tape).Select(
                one => new WeighedPiece(one, places.ValueOf(one) + (one.IsAngle ? 0 : Error(random)), one.IsAngle ? 0.03 : Tape))]);
            var wanted = kind == PieceErrorKind.Roll ? PieceCauseKind.Roll : PieceCauseKind.Bend;
            first += causes[0].Cause is { } cause && cause.Kind == wanted && cause.Bend == bend ? 1 : 0;
        }

        Assert.InRange(first, 0.85 * All, All);
    }

    /// <summary>Box and Muller.</summary>
    private static double Error(Random random) =>
        Tape * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    /// <summary>The line with its piece measured by the distances that the sheet asks for.</summary>
    private static LineTemplate Measured(BentPiece piece, double[] errors)
    {
        var places = piece.With(errors);
        return Line with
        {
            Checks = [.. PieceChecks.Of(piece, Tape).Select(one => new PieceMeasurement(one, places.ValueOf(one), At))],
        };
    }

    private static int Error(BentPiece piece, string name) => piece.IndexOf(
        name[..4] switch
        {
            "bend" => PieceErrorKind.Bend,
            "roll" => PieceErrorKind.Roll,
            _ => PieceErrorKind.Mark,
        },
        name[^1] - '0');
}
