using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Survey.Pieces;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Tests.Survey.Pieces;

public class PortWatchTests
{
    private static readonly SourcePosition At = new("test.yaml", 20, 40);

    private static LineTemplate Line { get; } =
        Lines.Of(Lines.Bender(15), [120, 100, 200, 150, 80], (0, 45), (90, 30), (-45, 90), (120, 60));

    /// <summary>Two moves that stand square to each other, each with a gap of its own: only the last readings count.</summary>
    [Fact]
    public void Each_move_is_seen_in_its_own_gap()
    {
        var watch = PortWatch.Of([[0, 300], [200, 0]], 10)!;
        Assert.All(watch.Order.Zip(watch.IsAside), one => Assert.Equal(one.First == 0, one.Second));
        Assert.Equal(2, watch.Variance, 9);
    }

    /// <summary>The gap along which a move goes is read once more, the other one stays as it was misread at first.</summary>
    [Fact]
    public void One_move_leaves_the_other_gap_as_it_was_read()
    {
        var watch = PortWatch.Of([[250, 0]], 10)!;
        Assert.False(Assert.Single(watch.IsAside));
        Assert.Equal(2, watch.Variance, 9);
    }

    [Fact]
    public void A_bend_that_moves_neither_gap_is_not_watched()
    {
        Assert.Null(PortWatch.Of([[250, 0], [5, -8]], 10));
    }

    /// <summary>Drawn by chance: every reading is off, every bend is moved until its gap reads what is to be left.</summary>
    [Fact]
    public void B_comes_to_lie_as_far_off_as_is_said()
    {
        double[][] moves = [[180, 60], [-90, 140], [40, 75]];
        var watch = PortWatch.Of([.. moves], 10)!;
        var random = new Random(20261126);
        double Misread() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        const int Draws = 20_000;
        var sum = 0.0;
        for (var draw = 0; draw < Draws; draw++)
        {
            // Two gaps that are not what was typed; B goes as it was planned, and further until the gap reads right.
            double[] gaps = [Misread(), Misread()];
            foreach (var (bend, isAside) in watch.Order.Zip(watch.IsAside, (bend, aside) => (bend, aside ? 1 : 0)))
            {
                var more = (gaps[isAside] + Misread()) / moves[bend][isAside];
                gaps = [gaps[0] - (more * moves[bend][0]), gaps[1] - (more * moves[bend][1])];
            }

            sum += (gaps[0] * gaps[0]) + (gaps[1] * gaps[1]);
        }

        Assert.InRange(sum / Draws / watch.Variance, 0.95, 1.05);
    }

    /// <summary>
    /// The gaps were misread by 2 mm and 1.5 mm at first. Bends moved until the port looks as the tool says bring B to the port itself;
    /// moved by as much as the tool says they bring it to where the port was thought to be.
    /// </summary>
    [Fact]
    public void What_is_seen_at_the_port_makes_up_for_a_gap_that_was_misread()
    {
        var (ahead, aside) = (9.0, -7.0);
        var line = Line with { TrialFit = new(Lines.Mm(ahead + 2), Lines.Mm(aside - 1.5), At), Wanted = WantedFit.CommonPractice };
        var found = CarPlan.Line(line).Piece!.Correction!;
        Assert.InRange(found.Steps.Length, 2, 3);
        Assert.All(found.Steps, step => Assert.NotNull(step.Gap));
        Assert.Contains(found.Steps, step => step.Gap!.IsAside);
        Assert.Contains(found.Steps, step => !step.Gap!.IsAside);

        var piece = BentPieceTests.Piece(line);
        var start = PieceLanding.Of(piece.Nominal);
        var port = start with { Ahead = start.Ahead + ahead, Aside = start.Aside + aside };
        var made = new double[piece.Errors.Length];
        foreach (var step in found.Steps)
        {
            var error = piece.IndexOf(step.IsTwist ? PieceErrorKind.Roll : PieceErrorKind.Bend, step.Bend);
            var (low, high) = (step.By.Radians - 0.1, step.By.Radians + 0.1);
            double Gap(double by)
            {
                var tried = (double[])made.Clone();
                tried[error] = by;
                var now = PieceLanding.Of(piece.With(tried));
                return (step.Gap!.IsAside ? port.Aside - now.Aside : port.Ahead - now.Ahead) - step.Gap.Left.Millimetres;
            }

            for (var half = 0; half < 50; half++)
            {
                var middle = (low + high) / 2;
                (low, high) = Gap(low) > 0 == Gap(middle) > 0 ? (middle, high) : (low, middle);
            }

            made[error] = low;
        }

        var byAngle = PieceLanding.Of(piece.With(found.Errors)).MissTo(port);
        Assert.InRange(byAngle, 1.5, 3.5);
        Assert.InRange(PieceLanding.Of(piece.With(made)).MissTo(port), 0, byAngle / 2);
    }

    [Fact]
    public void The_finding_says_what_to_look_at_on_the_car()
    {
        var line = Line with { TrialFit = new(Lines.Mm(9), Lines.Mm(-7), At), Wanted = WantedFit.CommonPractice };
        var said = CarPlan.Line(line).Findings.Single(finding => finding.Rule == PieceRules.FinishedDiffers).Message;
        Assert.Matches(
            "; to put it right, a little at a time and offered up each time, .*, until the port lies [0-9.]+ mm .* than B, then .*, "
                + "until B is as far (ahead|aside) as the port: B is then ",
            said);
    }
}
