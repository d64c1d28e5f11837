using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BendSheet.Core.Survey;
using BendSheet.Core.Survey.Pieces;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Benchmarks.Simulated;

/// <summary>
/// An evening's work, simulated: a route is measured with the errors that are typed as tolerances, what the tool asks for is measured too,
/// and a tube is made of what it then says, checked, put right at the bench, offered up and put right once more. How far from its port does
/// B land, once the line is rolled in A to suit?
/// </summary>
internal static class Evening
{
    private const int Lines = 1000;

    /// <summary>Of a mark, in millimetres, of a bend and of a roll, in degrees: a practised hand, a tool that has been learned.</summary>
    private const double MarkError = 0.5;
    private const double BendError = 0.7;
    private const double RollError = 1;

    /// <summary>A bend is nudged until a gap is off by less than this, in millimetres, as it is read.</summary>
    private const double Nudge = 0.5;

    /// <summary>The figures, a line for each number of measurements.</summary>
    public static string Run()
    {
        var text = new StringBuilder(
            "measurements  rule    piece                      miss  askew  within 3 mm  and 2°  bends put right\n");
        foreach (var (count, tape) in new[] { (0, 1.0), (1, 1), (2, 1), (3, 1), (4, 1), (3, 0.5) })
        {
            var (chance, portChance) = (new Chance(20261126), new Chance(20261127));
            var evenings = Enumerable.Range(0, Lines).Select(_ => One(count, tape, chance, portChance)).ToList();
            foreach (var (stage, name) in Stages.Index())
            {
                var landings = evenings.ConvertAll(one => one[stage]);
                text.Append(CultureInfo.InvariantCulture, $"{count,12}  {tape,3:0.0} mm  {name,-22}")
                    .Append(CultureInfo.InvariantCulture, $"{Median(landings.Select(one => one.Miss)),5:0.0} mm  ")
                    .Append(CultureInfo.InvariantCulture, $"{Median(landings.Select(one => one.Askew)),4:0.0}°  ")
                    .Append(CultureInfo.InvariantCulture, $"{Part(landings.Count(one => one.Miss <= 3)),9:0.0} %  ")
                    .Append(CultureInfo.InvariantCulture, $"{Part(landings.Count(one => one is { Miss: <= 3, Askew: <= 2 })),4:0.0} %")
                    .Append(CultureInfo.InvariantCulture, $"{(double)landings.Sum(one => one.Steps) / Lines,17:0.0}\n");
            }
        }

        return text.ToString();
    }

    private static readonly string[] Stages =
    [
        "made exactly", "as it was bent", "put right at the bench",
        "a trial fit, by tape", "a second, by tape", "a trial fit, at port", "a second, at port",
    ];

    private static double Part(int count) => 100.0 * count / Lines;

    private static double Median(IEnumerable<double> figures) => figures.Order().ElementAt(Lines / 2);

    /// <param name="count">How much is measured on the wire beside the rows.</param>
    /// <param name="tape">Of a rule on the bench, and of the gap at a port, in millimetres.</param>
    /// <param name="chance">Of everything.</param>
    /// <param name="portChance">Of what is done at the port.</param>
    private static List<(double Miss, double Askew, int Steps)> One(int count, double tape, Chance chance, Chance portChance)
    {
        var line = SimulatedLine.Random(chance, chance.Whole(3, 7));
        var read = line.Read(chance);
        ImmutableArray<TapedMeasurement> beside =
        [
            .. LineSurvey.Of(read.Template() with { Wanted = new(Length.FromMillimetres(1e-6), Angle.FromDegrees(1e-6)) })!.Next
                .Take(count).Select(next => line.Measured(next.Quantity, next.Within.Millimetres, chance)),
        ];
        var survey = LineSurvey.Of(read.Template(beside))!;
        var port = PieceLanding.Of(Piece(line.Template()).Nominal);
        var piece = Piece(survey.Line);
        var aimed = PieceLanding.Of(piece.Nominal);
        double[] made = [.. piece.Errors.Select(error => chance.Error(error.Kind switch
        {
            PieceErrorKind.Bend => BendError * Math.PI / 180,
            PieceErrorKind.Roll => RollError * Math.PI / 180,
            _ => MarkError,
        }))];
        List<(double, double, int)> stages = [Off(aimed, 0), Off(PieceLanding.Of(piece.With(made)), 0)];

        var checks = PieceChecks.Of(piece, tape);
        var places = piece.With(made);
        WeighedPiece Measured(PieceQuantity one)
        {
            var deviation = one.IsAngle ? Protractor : tape;
            return new(one, places.ValueOf(one) + chance.Error(deviation), deviation);
        }

        var known = PieceCauses.Of(piece, [.. checks.Select(Measured)])[0].Estimate.Errors;
        (known, var steps) = PutRight(piece, known, made, new(aimed, aimed), Seen.AtBench, tape, chance);
        stages.Add(Off(PieceLanding.Of(piece.With(made)), steps));

        stages.AddRange(OfferedUp(Seen.ByTape, chance));
        stages.AddRange(OfferedUp(Seen.AtPort, portChance));
        return stages;

        IEnumerable<(double, double, int)> OfferedUp(Seen how, Chance luck)
        {
            var (tube, thought) = ((double[])made.Clone(), known);
            for (var fit = 0; fit < 2; fit++)
            {
                var (now, there) = (PieceLanding.Of(piece.With(tube)), PieceLanding.Of(piece.With(thought)));
                var seen = new PieceLanding(
                    there.Ahead + port.Ahead - now.Ahead + luck.Error(tape),
                    there.Aside + port.Aside - now.Aside + luck.Error(tape),
                    aimed.Direction);
                (thought, var count) = PutRight(piece, thought, tube, new(seen, port), how, tape, luck);
                yield return Off(PieceLanding.Of(piece.With(tube)), count);
            }
        }

        (double, double, int) Off(PieceLanding landing, int steps) =>
            (landing.MissTo(port), landing.AskewTo(port) * 180 / Math.PI, steps);
    }

    /// <summary>What tells that a bend is put right.</summary>
    private enum Seen
    {
        /// <summary>What a tape reads, on the bench.</summary>
        AtBench,

        /// <summary>By how much more a tape reads than before.</summary>
        ByTape,

        /// <summary>The gap at the port itself, offered up after every nudge.</summary>
        AtPort,
    }

    /// <summary>Where a port is.</summary>
    /// <param name="Typed">As somebody who knows the piece by its checks has to take it to be.</param>
    /// <param name="True">Where it is.</param>
    private readonly record struct Port(PieceLanding Typed, PieceLanding True);

    /// <summary>Bends what the tool says until what it says is read.</summary>
    private static (double[] Known, int Steps) PutRight(
        BentPiece piece, double[] known, double[] made, Port port, Seen how, double tape, Chance chance)
    {
        // What is near enough is left alone.
        var (landing, wanted) = (PieceLanding.Of(piece.With(known)), WantedFit.CommonPractice);
        if (landing.MissTo(port.Typed) <= wanted.Miss.Millimetres && landing.AskewTo(port.Typed) <= wanted.Askew.Radians)
        {
            return (known, 0);
        }

        if (CorrectionSearch.Of(piece, known, port.Typed, wanted, Diameter, tape, how == Seen.AtPort) is not { } correction)
        {
            return (known, 0);
        }

        foreach (var step in correction.Steps)
        {
            var error = piece.IndexOf(step.IsTwist ? PieceErrorKind.Roll : PieceErrorKind.Bend, step.Bend);
            double Read(PieceQuantity one) => piece.With(made).ValueOf(one);
            switch (step)
            {
                case { Gap: { } gap }:
                    double Gap()
                    {
                        var now = PieceLanding.Of(piece.With(made));
                        return gap.IsAside ? port.True.Aside - now.Aside : port.True.Ahead - now.Ahead;
                    }

                    Move(made, error, step.By, Gap, gap.Left.Millimetres + chance.Error(tape) + chance.Between(-Nudge, Nudge));
                    break;
                case { Until: { } until } when how == Seen.ByTape:
                    var reads = Read(until) + chance.Error(tape) + step.Change.Millimetres + chance.Error(tape);
                    Move(made, error, step.By, () => Read(until), reads);
                    break;
                case { Until: { } until } when how == Seen.AtBench:
                    Move(made, error, step.By, () => Read(until), step.Reads.Millimetres + chance.Error(tape));
                    break;
                default:
                    made[error] += step.By.Radians + chance.Error((step.IsTwist ? RollError : BendError) * Math.PI / 180);
                    break;
            }
        }

        return (correction.Errors, correction.Steps.Length);
    }

    /// <summary>A bend is moved by about so much, until something reads what it is to.</summary>
    private static void Move(double[] made, int error, Angle by, Func<double> read, double until)
    {
        var middle = made[error] + by.Radians;
        made[error] = middle;
        for (var round = 0; round < 8; round++)
        {
            var (at, now) = (made[error], read());
            made[error] += 1e-4;
            var slope = (read() - now) / 1e-4;
            made[error] = Math.Clamp(at + ((until - now) / slope), middle - 0.1, middle + 0.1);
        }
    }

    private static BentPiece Piece(LineTemplate template)
    {
        var layout = RouteLayout.Of(template).Layout!;
        return new(layout, [.. layout.Bends.Select(_ => TubeEnd.A)], Diameter);
    }

    /// <summary>Of a roll by protractor, in radians.</summary>
    private const double Protractor = 2 * Math.PI / 180;

    private static Length Diameter { get; } = Length.FromInches(3.0 / 16);
}
