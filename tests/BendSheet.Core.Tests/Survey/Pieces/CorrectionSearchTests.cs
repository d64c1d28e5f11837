using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Survey.Pieces;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Tests.Survey.Pieces;

public class CorrectionSearchTests
{
    private static readonly SourcePosition At = new("test.yaml", 20, 40);

    private static LineTemplate Line { get; } =
        Lines.Of(Lines.Bender(15), [120, 100, 200, 150, 80], (0, 45), (90, 30), (-45, 90), (120, 60));

    /// <summary>Every single bend or twist tried in steps of a quarter degree, and every pair in whole degrees.</summary>
    [Fact]
    public void No_fewer_bends_bring_it_as_near()
    {
        var piece = BentPieceTests.Piece(Line);
        var port = PieceLanding.Of(piece.Nominal);
        var random = new Random(20261128);
        var counts = new HashSet<int>();
        for (var i = 0; i < 40; i++)
        {
            double[] errors = [.. piece.Errors.Select(error => error.Scatter * ((2 * random.NextDouble()) - 1))];
            if (CorrectionSearch.Of(piece, errors, port, WantedFit.CommonPractice, Lines.Mm(4.76), 1) is not { } found)
            {
                continue;
            }

            counts.Add(found.Steps.Length);
            Assert.Equal(PieceLanding.Of(piece.With(found.Errors)).MissTo(port), found.Miss.Millimetres, 9);
            if (found.Steps.Length > 0)
            {
                Assert.False(IsGood(piece, errors, port));
            }

            if (found.Steps.Length > 1)
            {
                Assert.DoesNotContain(Angles(piece), one => Turns(0.25).Any(by => IsGood(piece, Changed(errors, (one, by)), port)));
            }

            if (found.Steps.Length > 2)
            {
                Assert.DoesNotContain(Angles(piece), one => Angles(piece).Any(
                    two => two > one && Turns(1).Any(by => Turns(1).Any(
                        also => IsGood(piece, Changed(errors, (one, by), (two, also)), port)))));
            }
        }

        Assert.Superset(new HashSet<int> { 1, 2 }, counts);
    }

    /// <summary>A trial fit says where the port is by itself: B is moved by what was seen, whatever the piece is.</summary>
    [Fact]
    public void A_trial_fit_moves_B_by_what_was_seen()
    {
        var line = Line with { TrialFit = new(Lines.Mm(5), Lines.Mm(-3), At), Wanted = WantedFit.CommonPractice };
        var piece = BentPieceTests.Piece(line);
        var found = CarPlan.Line(line).Piece!;
        Assert.Equal(Math.Sqrt(34), found.Miss.Millimetres, 6);
        var (before, after) = (PieceLanding.Of(piece.Nominal), PieceLanding.Of(piece.With(found.Correction!.Errors)));
        Assert.Equal(5, after.Ahead - before.Ahead, 1.0);
        Assert.Equal(-3, after.Aside - before.Aside, 1.0);
    }

    /// <summary>The aimed line walked again, without the search's own geometry.</summary>
    [Fact]
    public void Bends_not_made_yet_are_aimed_so_that_B_still_lands()
    {
        var line = Line with
        {
            Bent = [4, 3],
            Checks =
            [
                new(new(PieceKind.Bend, 0, 4), Lines.Deg(64).Radians, At) { Within = Lines.Deg(0.1).Radians },
                new(new(PieceKind.Bend, 0, 3), Lines.Deg(88).Radians, At) { Within = Lines.Deg(0.1).Radians },
                new(new(PieceKind.Roll, 0, 4), Lines.Deg(117).Radians, At) { Within = Lines.Deg(0.1).Radians },
            ],
            Wanted = WantedFit.CommonPractice,
        };
        var solved = CarPlan.Line(line);
        var (wanted, got) = (Landing(Line.Centreline()), Landing(solved.Centreline!));
        Assert.InRange((wanted.EndB - got.EndB).Norm, 0, 1);
        Assert.InRange((wanted.Way - got.Way).Norm, 0, Lines.Deg(1).Radians);
        Assert.All(solved.Plan!.Bends.Take(2), bend => Assert.Equal(
            Line.Plan().Bends[bend.Number - 1].Bend.Turn.Degrees, bend.Bend.Turn.Degrees, 8.0));
        Assert.Equal(64, solved.Plan.Bends[3].Bend.Turn.Degrees, 0.2);
        Assert.Equal("made", solved.Plan.Bends[3].Bend.Note);
        Assert.Null(solved.Plan.Bends[0].Bend.Note);

        // The line along the tube is penned already, and bend 4 was made first.
        AssertGeometry.SameDirection(Line.Plan().Bends[3].Dial, solved.Plan.Bends[3].Dial);

        // The tube is cut already: no more of it is needed.
        Assert.Equal(Line.Plan().CutLength.Millimetres, solved.Plan.CutLength.Millimetres, 6);
        Assert.Contains("are aimed anew: B is then ", solved.Findings.Single(
            finding => finding.Rule == PieceRules.FinishedDiffers).Message, StringComparison.Ordinal);
    }

    /// <summary>
    /// A bend that is closed takes the tube for it from the straight that is swept: closed by 3° on a radius of 15 mm it takes 0.79 mm.
    /// </summary>
    [Theory]
    [InlineData(0.6, false)]
    [InlineData(1, true)]
    public void A_bend_is_not_closed_by_more_than_the_straight_beside_it_has(double left, bool closes)
    {
        const double Radius = 15;
        var piece = BentPieceTests.Piece(
            Lines.Of(Lines.Bender(Radius), [120, (Radius * Math.Tan(22.5 * Math.PI / 180)) + left], (0, 45)));
        Assert.Equal(left, piece.StraightBefore(2), 9);
        var wanted = new double[piece.Errors.Length];
        wanted[piece.IndexOf(PieceErrorKind.Bend, 1)] = 3 * Math.PI / 180;
        var found = CorrectionSearch.Of(
            piece, new double[piece.Errors.Length], PieceLanding.Of(piece.With(wanted)), WantedFit.CommonPractice, Lines.Mm(4.76), 1);
        Assert.Equal(closes, found is not null);
        if (found is not null)
        {
            Assert.Equal(3, Assert.Single(found.Steps).By.Degrees, 0.2);
        }
    }

    /// <summary>
    /// Bends 1 and 2 leave each other just the grip that the tool needs. Aimed anew, bend 2 comes nearer to bend 1, which is made: in the
    /// order of work that the line was begun in it can no longer be held.
    /// </summary>
    [Theory]
    [InlineData(12, true)]
    [InlineData(2, false)]
    public void The_order_that_was_begun_is_checked_again(double grip, bool stops)
    {
        const double Radius = 15;
        var setbacks = Radius * (Math.Tan(22.5 * Math.PI / 180) + Math.Tan(15 * Math.PI / 180));
        var tool = Lines.Bender(Radius) with { Grip = Lines.Mm(grip), Follow = Lines.Mm(grip) };
        var line = Lines.Of(tool, [120, setbacks + 12, 200, 150], (0, 45), (90, 30), (-45, 90)) with { Wanted = WantedFit.CommonPractice };
        var begun = CarPlan.Line(line);
        Assert.Equal([0, 1, 2], begun.Plan!.Order.Steps.Select(step => step.Bend));
        Assert.DoesNotContain(begun.Findings, finding => finding.Rule == NoOrder.Rule);

        // Bend 1 came out 3° too little.
        var goesOn = CarPlan.Line(line with
        {
            Bent = [1],
            Checks = [new(new(PieceKind.Bend, 0, 1), Lines.Deg(42).Radians, At) { Within = Lines.Deg(0.1).Radians }],
        });
        Assert.NotNull(goesOn.Piece!.Aimed);
        Assert.InRange(goesOn.Layout!.Legs[1].StraightLeft.Millimetres, 2, 11.9);
        var findings = goesOn.Findings.Where(finding => finding.Rule == NoOrder.Rule).ToList();
        Assert.Equal(stops, findings.Count == 1);
        Assert.All(findings, finding =>
        {
            Assert.StartsWith("aimed anew, bend 2 has too little straight tube beside it", finding.Message, StringComparison.Ordinal);
            Assert.Equal(Lines.TurnAt(1), finding.Position);
        });
    }

    private static (Vector3D EndB, Vector3D Way) Landing(TubeCentreline line)
    {
        var (b, way) = (line.EndB, line.Straights[^1].Start.Direction);
        var aside = Math.Sqrt((b.Y * b.Y) + (b.Z * b.Z));
        return (new(b.X, aside, 0), new(way.X, ((b.Y * way.Y) + (b.Z * way.Z)) / aside, ((b.Y * way.Z) - (b.Z * way.Y)) / aside));
    }

    private static IEnumerable<int> Angles(BentPiece piece) =>
        Enumerable.Range(0, piece.Errors.Length).Where(i => piece.Errors[i].Kind is PieceErrorKind.Bend or PieceErrorKind.Roll);

    private static IEnumerable<double> Turns(double step) =>
        Enumerable.Range(1, (int)(8 / step)).SelectMany(i => new[] { i * step, -i * step });

    private static double[] Changed(double[] errors, params (int Error, double Degrees)[] changes)
    {
        var changed = (double[])errors.Clone();
        foreach (var (error, degrees) in changes)
        {
            changed[error] += degrees * Math.PI / 180;
        }

        return changed;
    }

    /// <summary>A third of the wanted 3 mm and half of the wanted 2°.</summary>
    private static bool IsGood(BentPiece piece, double[] errors, PieceLanding port)
    {
        var landing = PieceLanding.Of(piece.With(errors));
        return landing.MissTo(port) <= 1 && landing.AskewTo(port) <= Math.PI / 180;
    }
}
