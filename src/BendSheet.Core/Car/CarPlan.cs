using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Bench.Order;
using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Findings;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Plumbing.Rules;
using BendSheet.Core.Sheet;
using BendSheet.Core.Survey;
using BendSheet.Core.Survey.Pieces;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Car;

/// <summary>From what was typed to everything solved. Start reading here: every command and every page rests on this plan.</summary>
public sealed class CarPlan
{
    private CarStock? _stock;

    private CarPlan(MeasuredCar measured, ImmutableArray<Finding> findings)
    {
        Measured = measured;
        Findings = findings;
        Verdict = findings.Verdict();
    }

    /// <summary>As typed and understood.</summary>
    public MeasuredCar Measured { get; }

    /// <summary>All of the file's findings, and those of the lines asked for, in the order of the file.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>What the findings come to.</summary>
    public Verdict Verdict { get; }

    /// <summary>The lines asked for, solved; none where the file is wrong.</summary>
    public ImmutableArray<SolvedLine> Lines { get; private init; } = [];

    /// <summary>The lines asked for that have only a rough length; none where the file is wrong.</summary>
    public ImmutableArray<RoughLine> RoughLines { get; private init; } = [];

    /// <summary>No line was asked for by name: all of them are here, as far as they can be read.</summary>
    public bool IsWhole { get; private init; }

    /// <summary>
    /// What the findings of the file and its lines come to: a mistake in the plumbing at no line's own end stops no sheet.
    /// </summary>
    public Verdict SheetsVerdict { get; private init; }

    /// <summary>The whole car, whatever lines were asked for; nothing where the file is wrong.</summary>
    public PipeNetwork Network { get; private init; } = PipeNetwork.None;

    /// <summary>The tube and the hardware for these lines.</summary>
    public CarStock Stock => _stock ??= CarStock.Of(this);

    /// <summary>
    /// Templates → solved lines → network and its rules. Stock, sheets and cover follow from the plan when they are asked for.
    /// </summary>
    /// <param name="car">What was typed.</param>
    /// <param name="wanted">The lines asked for by name; none means all.</param>
    public static CarPlan Of(MeasuredCar car, IReadOnlyCollection<string> wanted)
    {
        var templates = car.Lines.Where(line => wanted.Asks(line.Name));
        var rough = car.RoughLines.Where(line => wanted.Asks(line.Name)).ToImmutableArray();

        // A line that cannot be read would leave its ports open: one cause is enough.
        var network = car.Findings.Verdict() == Verdict.WrongFile ? PipeNetwork.None : PipeNetwork.Of(car.Parts, car.Lines, car.RoughLines);
        var plumbing = PlumbingRules.Check(network);
        var lines = templates.Select(Line).Select(line => line.With(plumbing.OfLines[line.Template.Name])).ToImmutableArray();

        List<Finding> ofLines =
        [
            .. car.Findings,
            .. Choice.UnknownLines(car, wanted),
            .. lines.SelectMany(line => line.Findings),
            .. rough.SelectMany(line => line.Findings),
        ];

        // A line and its mirror image can have the same fault in the same rows.
        var findings = ofLines.Concat(wanted.Count == 0 ? plumbing.OfCar : []).Distinct().InFileOrder().ToImmutableArray();
        var isWrong = findings.Verdict() == Verdict.WrongFile;
        return new(car, findings)
        {
            Lines = isWrong ? [] : lines,
            RoughLines = isWrong ? [] : rough,
            IsWhole = wanted.Count == 0,
            SheetsVerdict = ofLines.Verdict(),
            Network = isWrong ? PipeNetwork.None : network,
        };
    }

    /// <summary>
    /// One line: template → survey → layout → centreline → straight tube → order → bench plan, and at each stage what does not hold.
    /// </summary>
    public static SolvedLine Line(LineTemplate typed)
    {
        var survey = LineSurvey.Of(typed);
        if (survey is { IsSuspect: true })
        {
            return new(typed, null, null, null, [.. SurveyRules.Check(typed, survey)]) { Survey = survey };
        }

        var template = survey?.Line ?? typed;
        var (layout, findings) = RouteLayout.Of(template);
        if (layout is null)
        {
            return new(template, null, null, null, findings);
        }

        findings = findings.AddRange(LayoutRules.Check(template, layout));
        if (layout.Legs.Any(leg => leg.StraightLeft < Length.Zero))
        {
            return new(template, layout, null, null, findings);
        }

        var centreline = layout.Centreline(template.Start);
        var tube = StraightTube.Of(template, layout);
        var pulls = Pulls(template, layout);
        var reach = new SweepReach(layout, tube, pulls);
        var order = OrderPlanner.Find(template, layout, tube, reach);
        var plan = BenchPlan.Of(template, layout, centreline, tube, pulls, order ?? OrderPlanner.FromA(layout, reach));
        var clips = ClipPlan.Of(template, layout, tube);
        var piece = PieceInHand.Of(template, layout, [.. plan.Bends.Select(bend => bend.Held)]);
        var solved = new SolvedLine(template, layout, centreline, plan,
        [
            .. findings,
            .. survey is null ? [] : SurveyRules.Check(typed, survey),
            .. order is null ? NoOrder.Why(template, layout, tube, reach) : NoClearance.Check(template, plan, reach),
            .. HoldsAir.Check(template, layout, centreline),
            .. TubeAgainstItself.Check(template, layout, centreline),
            .. ClipsFarApart.Check(template),
            .. NoPlaceForClip.Check(template, clips),
            .. PieceRules.Check(template, piece),
        ])
        {
            Survey = survey,
            Clips = clips,
            Piece = piece,
        };
        return piece?.Aimed is { } aimed ? WithTheRestAimedAnew(solved, aimed.Template) : solved;
    }

    /// <summary>A half-made line in the order of work that it was begun in.</summary>
    private static SolvedLine WithTheRestAimedAnew(SolvedLine begun, LineTemplate aimed)
    {
        var layout = RouteLayout.Of(aimed).Layout!;
        var centreline = layout.Centreline(aimed.Start);
        var tube = StraightTube.Of(aimed, layout);
        var plan = begun.Plan!;

        // The pen line is on the tube: with the first bend of the order where that is made, or else where its sheet had it.
        var first = plan.Order.Steps[0].Bend;
        Angle? penned = aimed.Bent.Contains(first + 1) ? null : plan.Bends[first].Dial;
        return begun with
        {
            Template = aimed,
            Findings = [.. begun.Findings, .. LayoutRules.Check(aimed, layout).Except(begun.Findings)],
            Layout = layout,
            Centreline = centreline,
            Plan = BenchPlan.Of(aimed, layout, centreline, tube, Pulls(aimed, layout), plan.Order, penned),
            Clips = ClipPlan.Of(aimed, layout, tube),
        };
    }

    private static ImmutableArray<Angle> Pulls(LineTemplate template, RouteLayout layout) =>
        [.. layout.Bends.Select(bend => BenderCalibration.Of(bend.Bend.Bender, template.Tube).Pull(bend.Bend.Turn))];

    /// <summary>The sheets' content of every line that can be made.</summary>
    /// <param name="notation">How lengths are shown; null as the file has them. The fingerprint tells what was typed, not how it is
    /// shown.</param>
    public IEnumerable<SheetContent> Sheets(LengthNotation? notation = null) => Lines.Where(line => line.Plan is not null)
        .Select(line => SheetWriter.Of(line, Measured.Project, notation ?? Measured.Notation, Measured.Notation));

    /// <summary>The lines are enough for a cover: what there is to say of one alone stands on its sheet.</summary>
    public bool HasCover => Lines.Count(line => line.Plan is not null) + RoughLines.Length > 1;

    /// <summary>The cover of these lines. Of some lines of a file the stock says nothing.</summary>
    /// <param name="notation">How lengths are shown; null as the file has them.</param>
    public CoverContent Cover(LengthNotation? notation = null)
    {
        var (project, typed) = (Measured.Project, Measured.Notation);
        return Lines.Length == Measured.Lines.Length
            ? CoverWriter.OfFile(project, Lines, RoughLines, Stock.Plan, Stock.Shopping, notation ?? typed, typed)
            : CoverWriter.OfSome(project, Lines, notation ?? typed, typed);
    }
}
