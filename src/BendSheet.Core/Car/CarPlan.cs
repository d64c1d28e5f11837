using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Bench.Order;
using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Clearance;
using BendSheet.Core.Commissioning;
using BendSheet.Core.Findings;
using BendSheet.Core.Picture;
using BendSheet.Core.Placing;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Plumbing.Rules;
using BendSheet.Core.Sheet;
using BendSheet.Core.Survey;
using BendSheet.Core.Survey.Pieces;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using MathNet.Numerics;

namespace BendSheet.Core.Car;

/// <summary>From what was typed to everything solved. Start reading here: every command and every page rests on this plan.</summary>
public sealed class CarPlan
{
    private readonly IReadOnlyCollection<string> _wanted;
    private CarStock? _stock;
    private Filling? _filling;

    /// <summary>The matrices of a line are small: threads for them take longer to start than the sums.</summary>
    static CarPlan() => Control.MaxDegreeOfParallelism = 1;

    private CarPlan(MeasuredCar measured, ImmutableArray<Finding> findings, IReadOnlyCollection<string> wanted)
    {
        _wanted = wanted;
        Measured = measured;
        Findings = findings;
        Verdict = findings.Verdict();
    }

    /// <summary>As typed and understood.</summary>
    public MeasuredCar Measured { get; }

    /// <summary>The file's findings that concern the lines asked for, and those of these lines, in the order of the file.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>What the findings come to.</summary>
    public Verdict Verdict { get; }

    /// <summary>The lines asked for, solved; without those that a mistake in the file concerns.</summary>
    public ImmutableArray<SolvedLine> Lines { get; private init; } = [];

    /// <summary>The lines asked for that have only a rough length; without those that a mistake in the file concerns.</summary>
    public ImmutableArray<RoughLine> RoughLines { get; private init; } = [];

    /// <summary>No line was asked for by name: all of them are here, as far as they can be read.</summary>
    public bool IsWhole => _wanted.Count == 0;

    /// <summary>
    /// The lines whose sheets can be printed: those with nothing against them. A plumbing mistake that is not at a line's own end stops no
    /// sheet.
    /// </summary>
    public IEnumerable<SolvedLine> Printable => Lines.Where(line => line.Plan is not null && line.Findings.Verdict() == Verdict.Good);

    /// <summary>Names of the lines asked for that have no sheet because of errors, in the order of the file.</summary>
    public IEnumerable<string> NotPrinted =>
        Measured.LineNames.Where(name => _wanted.Asks(name)).Except(Printable.Select(line => line.Template.Name), StringComparer.Ordinal)
            .Except(RoughLines.Select(line => line.Name), StringComparer.Ordinal);

    /// <summary>The whole car, whatever lines were asked for; nothing where the file is wrong.</summary>
    public PipeNetwork Network { get; private init; } = PipeNetwork.None;

    /// <summary>Lines whose places are known, held against each other and against what they keep clear of.</summary>
    public Clearances Clearances { get; private init; } = Clearances.None;

    /// <summary>What the circuits hold, and the ways to their bleed screws.</summary>
    public Filling Filling => _filling ??= Filling.Of(Network, Lines, RoughLines);

    /// <summary>The page for the work after the last bend; null where the file has no parts.</summary>
    /// <param name="notation">How lengths are shown; null as the file has them.</param>
    public CommissioningContent? Commissioning(LengthNotation? notation = null) => Network.IsEmpty
        ? null
        : CommissioningWriter.Of(Measured.Project, Network, Filling, notation ?? Measured.Notation);

    /// <summary>The whole car in one picture, whatever lines were asked for; null where it has neither a place nor a network.</summary>
    /// <param name="notation">How lengths are shown; null as the file has them.</param>
    public CarPicture? Picture(LengthNotation? notation = null)
    {
        var known = Lines.ToDictionary(line => line.Template.Name, StringComparer.Ordinal);
        List<SolvedLine> lines =
        [
            .. Measured.Lines.Where(line => Measured.IsSound(line.Name)).Select(line => known.GetValueOrDefault(line.Name) ?? Line(line)),
        ];
        List<RoughLine> rough = [.. Measured.RoughLines.Where(line => Measured.IsSound(line.Name))];
        List<string> mistyped =
        [
            .. Measured.LineNames.Except(
                lines.Select(line => line.Template.Name).Concat(rough.Select(line => line.Name)), StringComparer.Ordinal),
        ];
        return PictureWriter.Of(
            Measured.Project, Network, lines, rough, Measured.Room.Zones, mistyped, notation ?? Measured.Notation);
    }

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
        ImmutableArray<Finding> unknown = [.. Choice.UnknownLines(car, wanted)];

        // A line that cannot be read would leave its ports open: one cause is enough, and only the ends of the others are looked at.
        var isWrong = car.Findings.Verdict() == Verdict.WrongFile;
        var network = PipeNetwork.Of(car.Parts, car.Lines, car.RoughLines);
        var plumbing = PlumbingRules.Check(network);
        var steps = SlipSearch.StepsOfFile;
        var solved = templates.Select(line => Line(line, steps)).ToList();
        var clearances = Clearances.Of(OnCar(car, solved, wanted), car.Room);
        var room = ClearanceRules.Check(clearances);
        var lines = solved.ConvertAll(
            line => line.With(plumbing.OfLines[line.Template.Name].Concat(room.OfLines[line.Template.Name])));

        List<Finding> ofLines =
        [
            .. Choice.OfFile(car, wanted),
            .. unknown,
            .. lines.SelectMany(line => line.Findings),
            .. rough.SelectMany(line => line.Findings),
        ];

        // Distinct, because a line and its mirror image can have the same fault in the same rows.
        List<Finding> ofCar = wanted.Count == 0 && !isWrong ? [.. plumbing.OfCar, .. BleederLow.Check(network), .. room.OfCar] : [];
        var findings = ofLines.Concat(ofCar).Distinct().InFileOrder().ToImmutableArray();
        return new(car, findings, wanted)
        {
            // A mistake elsewhere in the file takes nothing from a line that it does not concern.
            Lines = unknown.IsEmpty ? [.. lines.Where(line => car.IsSound(line.Template.Name))] : [],
            RoughLines = unknown.IsEmpty ? [.. rough.Where(line => car.IsSound(line.Name))] : [],
            Network = isWrong ? PipeNetwork.None : network,
            Clearances = clearances,
        };
    }

    /// <summary>The lines to hold against each other: those not asked for too, unless no line asked for has a place.</summary>
    private static IEnumerable<SolvedLine> OnCar(MeasuredCar car, List<SolvedLine> solved, IReadOnlyCollection<string> wanted)
    {
        if (!solved.Exists(line => line.Template.HasPlace) || wanted.Count == 0)
        {
            return solved;
        }

        var known = solved.ToDictionary(line => line.Template.Name, StringComparer.Ordinal);
        return car.Lines.Select(line => known.GetValueOrDefault(line.Name) ?? Line(line));
    }

    /// <summary>
    /// One line: template → survey → layout → centreline → straight tube → order → bench plan, and at each stage what does not hold.
    /// </summary>
    public static SolvedLine Line(LineTemplate typed) => Line(typed, SlipSearch.StepsOfFile);

    private static SolvedLine Line(LineTemplate typed, SearchSteps steps)
    {
        var placed = PlacedTemplate.Of(typed);
        var survey = placed.Surveying?.Survey(steps);
        var ofPorts = PortRules.Check(typed, placed, survey).ToImmutableArray();
        if (survey is { IsSuspect: true })
        {
            var ofSurvey = ofPorts.Verdict() == Verdict.Good ? SurveyRules.Check(typed, survey) : [];
            return new(typed, null, null, null, [.. ofPorts, .. ofSurvey]) { Survey = survey };
        }

        var template = survey?.Line ?? placed.Line;
        var (layout, findings) = RouteLayout.Of(template);
        if (layout is null)
        {
            return new(template, null, null, null, findings);
        }

        findings = [.. findings, .. ofPorts, .. LayoutRules.Check(template, layout)];
        if (layout.Legs.Any(leg => leg.StraightLeft < Length.Zero))
        {
            return new(template, layout, null, null, findings);
        }

        template = placed.OnCar(template, layout);
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
            .. survey is null ? SurveyRules.CheckWithoutSurvey(typed) : SurveyRules.Check(typed, survey),
            .. order is null ? NoOrder.Why(template, layout, tube, reach) : NoClearance.Check(template, plan, reach),
            .. HoldsAir.Check(template, layout, centreline),
            .. TubeAgainstItself.Check(template, layout, centreline),
            .. ClipsFarApart.Check(template),
            .. NoPlaceForClip.Check(template, clips),
            .. PieceRules.Check(template, layout, piece),
        ])
        {
            Typed = placed.Line,
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

        // The pen line is on the tube: with the first bend of the order where that is made, or else where its sheet had it.
        var sheet = begun.Plan!;
        var first = sheet.Order.Steps[0].Bend;
        Angle? penned = aimed.Bent.Contains(first + 1) ? null : sheet.Bends[first].Dial;
        var pulls = Pulls(aimed, layout);
        var reach = new SweepReach(layout, tube, pulls);
        var (order, stopped) = OrderPlanner.GoOn(sheet.Order, aimed, layout, tube, reach);
        var plan = BenchPlan.Of(aimed, layout, centreline, tube, pulls, order, penned);
        var clips = ClipPlan.Of(aimed, layout, tube);
        IEnumerable<Finding> ofTheRest =
        [
            .. LayoutRules.Check(aimed, layout),
            .. stopped is { } bend ? NoOrder.Begun(layout, bend) : NoClearance.Check(aimed, plan, reach),
            .. HoldsAir.Check(aimed, layout, centreline),
            .. TubeAgainstItself.Check(aimed, layout, centreline),
            .. NoPlaceForClip.Check(aimed, clips),
        ];
        return begun with
        {
            Template = aimed,
            Findings = [.. begun.Findings, .. ofTheRest.Except(begun.Findings)],
            Layout = layout,
            Centreline = centreline,
            Plan = plan,
            Clips = clips,
        };
    }

    private static ImmutableArray<Angle> Pulls(LineTemplate template, RouteLayout layout) =>
        [.. layout.Bends.Select(bend => BenderCalibration.Of(bend.Bend.Bender, template.Tube).Pull(bend.Bend.Turn))];

    /// <summary>The sheets' content of every line that has a plan.</summary>
    public IEnumerable<SheetContent> Sheets() => Lines.Where(line => line.Plan is not null).Select(line => Sheet(line, Measured.Notation));

    /// <summary>The sheets to print.</summary>
    /// <param name="notation">How lengths are shown. The fingerprint tells what was typed, not how it is shown.</param>
    /// <param name="withSteps">With a panel for each thing done.</param>
    public IEnumerable<SheetContent> SheetsToPrint(LengthNotation notation, bool withSteps = false) => Printable.Select(line => withSteps
        ? Sheet(line, notation) with { Steps = StepWriter.Of(line, notation) }
        : Sheet(line, notation));

    private SheetContent Sheet(SolvedLine line, LengthNotation notation) =>
        line.Template.Clips?.Rail is null
            ? SheetWriter.Of(line, Measured.Project, notation, Measured.Notation)
            : SheetWriter.Of(line, Measured.Project, notation, Measured.Notation) with { DrillingStrips = OnRail(line, notation) };

    /// <summary>
    /// The strips of a line whose rail others may share. Lines that were not asked for are on the rail all the same; its strip goes with
    /// the first line printed.
    /// </summary>
    private ImmutableArray<DrillingStrip> OnRail(SolvedLine line, LengthNotation notation)
    {
        return DrillingWriter.Of(line, LinesOn(line.Template.Clips!.Rail!), IsFirstOf, notation);

        bool IsFirstOf(ClipRail rail) => string.Equals(
            line.Template.Name,
            Printable.Select(one => one.Template.Name)
                .FirstOrDefault(name => rail.Lines.Any(one => string.Equals(one.Line, name, StringComparison.Ordinal))),
            StringComparison.Ordinal);
    }

    /// <summary>The rails on which clips of several lines sit, in the order of the file.</summary>
    public IEnumerable<ClipRail> Rails => Measured.Lines.Select(line => line.Clips?.Rail).OfType<string>().Distinct(StringComparer.Ordinal)
        .Select(rail => ClipRail.Shared(rail, LinesOn(rail))).OfType<ClipRail>();

    /// <summary>The lines whose clips name a rail, those that were not asked for among them.</summary>
    private List<SolvedLine> LinesOn(string rail)
    {
        var known = Lines.ToDictionary(line => line.Template.Name, StringComparer.Ordinal);
        return
        [
            .. Measured.Lines.Where(line => string.Equals(line.Clips?.Rail, rail, StringComparison.Ordinal))
                .Select(line => known.GetValueOrDefault(line.Name) ?? Line(line)),
        ];
    }

    /// <summary>There are enough lines for a cover: what is to be said of one line alone is on its sheet.</summary>
    public bool HasCover => Printable.Count() + RoughLines.Length + NotPrinted.Count() > 1;

    /// <summary>The cover of these lines. For some lines of a file, or for a file with a mistake, it says nothing of the stock.</summary>
    /// <param name="notation">How lengths are shown; null as the file has them.</param>
    public CoverContent Cover(LengthNotation? notation = null)
    {
        var (project, typed) = (Measured.Project, Measured.Notation);
        ImmutableArray<SolvedLine> printable = [.. Printable];
        var cover = printable.Length == Measured.Lines.Length && Measured.Findings.Verdict() != Verdict.WrongFile
            ? CoverWriter.OfFile(project, Lines, RoughLines, Stock.Plan, Stock.Shopping, notation ?? typed, typed)
            : CoverWriter.OfSome(project, printable, notation ?? typed, typed);
        return cover with { Missing = [.. NotPrinted.Select(Missing)] };
    }

    /// <summary>A tag for each of these lines, made or not; rough ones have no number.</summary>
    /// <param name="notation">How lengths are shown.</param>
    public TagSheet Tags(LengthNotation notation) =>
        TagWriter.Of(Measured.Project, Printable, RoughLines, notation, Measured.Notation);

    private MissingLine Missing(string name)
    {
        var ofFile = Measured.FindingsOf(name).Where(finding => finding.Severity == Severity.Error).ToList();
        var ofLine = Lines.Where(line => string.Equals(line.Template.Name, name, StringComparison.Ordinal))
            .SelectMany(line => line.Findings).Where(finding => finding.Severity == Severity.Error);
        return CoverWriter.Missing(name, ofFile.Count > 0, [.. ofFile.Concat(ofLine).Distinct().InFileOrder()]);
    }
}
