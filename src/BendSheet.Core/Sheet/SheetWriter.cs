using BendSheet.Core.Bench;
using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Stock;
using BendSheet.Core.Survey;
using BendSheet.Core.Survey.Pieces;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Sheet;

/// <summary>Words and rounds a planned line for the page and the terminal. Nothing is calculated after this.</summary>
public static class SheetWriter
{
    /// <summary>Stands where nothing can be given.</summary>
    public const string Dash = "–";

    /// <summary>The content of one line's sheet.</summary>
    /// <param name="line">With a plan.</param>
    /// <param name="project">Empty where the file does not say.</param>
    /// <param name="notation">How lengths are written.</param>
    /// <param name="typed">The file's own notation, which the fingerprint tells; null where it is the same.</param>
    /// <exception cref="ArgumentException">The line has no plan.</exception>
    public static SheetContent Of(SolvedLine line, string project, LengthNotation notation, LengthNotation? typed = null)
    {
        if (line is not { Centreline: { } centreline, Plan: { } plan })
        {
            throw new ArgumentException("Only a line that can be made has a sheet.", nameof(line));
        }

        var template = line.Template;
        return new SheetContent
        {
            Line = template.Name,
            Project = project,
            Ends = EndWords.WithLetters(EndWords.A(template.From), EndWords.B(template.To)),
            Tube = TubeWords.InWords(template.Tube, notation),
            Bender = BendersInWords(template, notation),
            CutLength = Figure.Of(plan.CutLength, notation),
            DevelopedLength = Figure.Of(plan.DevelopedLength, notation),
            Fingerprint = Fingerprint.Of(line.Typed, project, typed ?? notation),
            Made = template.Made,
            Datum = DatumInWords(plan),
            DatumName = DatumName(plan),
            Rows = [.. Rows(template, plan, notation)],
            ReadFirst = [.. ReadFirst(line, notation)],
            Order = [.. Order(line, notation)],
            Checks = [.. Checks(line, notation)],
            Levers = LeversInWords(plan, notation),
            Envelope = EnvelopeInWords(Envelope.Of(centreline, template.Tube.OutsideDiameter), notation),
            Axes = AxesInWords(template),
            Strip = Strip.Of(template, plan, notation) with { Clips = [.. line.Clips?.Clips.Select(clip => clip.Mark) ?? []] },
            Shape = centreline,
            TubeDiameter = template.Tube.OutsideDiameter,
            Notation = notation,
            Adjusted = line.Survey is { } survey ? [.. SurveyWords.Adjusted(survey, notation)] : [],
            HowSure = line.Survey is { } sure && sure.FitsAs(template.Wanted) ? SurveyWords.HowSure(sure, notation) : null,
            LiesOnCar = template.LiesOnCar,
            Clips = [.. ClipWords.Of(template, line.Clips, plan, notation)],
            DrillingStrips = DrillingWriter.Of(line, notation),
            Gauges = [.. BendGauge.Of(plan, notation)],
            DialStops = [.. DialStop.Of(plan)],
        };
    }

    /// <summary>What to measure before cutting comes first, unless the tube is cut already.</summary>
    private static IEnumerable<string> Order(SolvedLine line, LengthNotation notation)
    {
        var before = line is { Survey: { } survey, Template.IsCut: false } ? SurveyWords.BeforeCutting(survey, notation) : null;
        return new[] { before }.OfType<string>().Concat(WorkOrder.Of(line.Template, line.Plan!, notation));
    }

    /// <summary>The figures of each bend, rounded once, in working order.</summary>
    internal static IEnumerable<BendRow> Rows(LineTemplate template, BenchPlan plan, LengthNotation notation)
    {
        BenchBend? before = null;
        foreach (var bend in plan.InWorkingOrder)
        {
            var roll = plan.RollTo(bend);
            yield return new BendRow
            {
                Number = bend.Number,
                TurnRound = before is not null && before.Held != bend.Held ? WorkOrder.TurnRound(bend.Held) : null,
                Mark = notation.Figure(bend.Mark - plan.Datum),
                MarkOther = notation.Other.WithUnit(bend.Mark - plan.Datum),
                LineAt = bend.LineAt,
                Held = HeldInWords(bend.Held),
                Rotate = before is null ? Dash : AngleNotation.Rotation(roll),
                Dial = AngleNotation.Dial(bend.Dial),
                Pull = AngleNotation.Figure(bend.Pull),
                Bend = AngleNotation.Figure(bend.Bend.Turn),
                StraightAfter = notation.Figure(bend.StraightAfter),
                Swing = SwingInWords(bend.Swing, template.Tube, notation),
                Lever = notation.WithUnit(bend.Lever),
                Tool = bend.Bender != template.Bender ? bend.Bender.Name : null,
                Note = bend.Bend.Note,
            };
            before = bend;
        }
    }

    /// <summary>With an arrow from the held end to the tool, A lying on the left.</summary>
    private static string HeldInWords(TubeEnd held) => held == TubeEnd.A ? "A →" : "← B";

    /// <summary>Over the outside of the tube, rounded up to 10 mm or 1/2 in: nobody clears a bench more finely.</summary>
    internal static string SwingInWords(Length swing, Tube tube, LengthNotation notation)
    {
        var step = notation.Imperial ? Length.FromInches(0.5) : Length.FromMillimetres(10);
        return notation.Size(Math.Ceiling((swing + (0.5 * tube.OutsideDiameter)) / step) * step);
    }

    private static string? LeversInWords(BenchPlan plan, LengthNotation notation) => plan.Bends.IsEmpty
        ? null
        : "One degree more at a bend moves B by: "
            + string.Join(
                "; ", plan.Bends.Select(bend => FormattableString.Invariant($"bend {bend.Number} {notation.WithUnit(bend.Lever)}"))) + ".";

    private static string BendersInWords(LineTemplate template, LengthNotation notation)
    {
        // A coil's former is named by the radius that was typed; the radius of the curve depends on the pitch as well.
        var benders = template.Route.Bends.Select(bend => (bend.Bender, IsFormer: bend.FromTangent))
            .DefaultIfEmpty((template.Bender, IsFormer: false));
        return string.Join("; ", benders.Select(tool => tool.IsFormer
            ? tool.Bender.Name
            : (tool.Bender.Name.Length == 0 ? string.Empty : tool.Bender.Name + ", ") + "radius " + notation.Size(tool.Bender.Radius))
            .Distinct(StringComparer.Ordinal));
    }

    internal static string DatumName(BenchPlan plan) => plan.Datum > Length.Zero ? "the finished flare face of A" : "the cut end of A";

    private static string DatumInWords(BenchPlan plan) =>
        $"Marks count from {DatumName(plan)}. {Cautions.Rounded}";

    private static IEnumerable<string> ReadFirst(SolvedLine line, LengthNotation notation)
    {
        foreach (var finding in line.Findings.Where(
            finding => (finding.Severity != Severity.Note || finding.Rule == PieceRules.FinishedDiffers)
                && finding.Rule != SurveyRules.FarEndUnsure))
        {
            yield return Sentence(finding.Message);
        }

        if (line.Template.Taped is { } taped)
        {
            yield return TapedInWords(taped, notation);
        }

        if (line.Piece is { Readings.IsEmpty: false } piece)
        {
            yield return "Measured on the piece less the sheet's: "
                + string.Join(", ", piece.Readings.Select(reading => $"{reading.Name} {Difference(reading, notation)}")) + ".";
        }

        if (line.Template.Route.Bends.IsEmpty)
        {
            yield break;
        }

        foreach (var remark in ToolRemarks.Of(line.Template, line.Plan!))
        {
            yield return remark;
        }

        if (line.Survey is { } survey)
        {
            if (SurveyWords.LargestChange(survey, notation) is { } change)
            {
                yield return change;
            }

            if (!survey.FitsAs(line.Template.Wanted))
            {
                yield return SurveyWords.HowSure(survey, notation);
            }
        }
    }

    /// <summary>How well the distances go together. With none to spare they always do, which proves nothing.</summary>
    private static string TapedInWords(TapedFit taped, LengthNotation notation)
    {
        if (taped.Worst is not { } worst || taped.RootMeanSquare <= Tolerances.SamePoint)
        {
            return "The corners come from taped distances with none to spare: a wrong one would not show. Tape one or two more.";
        }

        var all = string.Join(
            ", ", taped.Residuals.Select(residual => $"{residual.Measured.Name} {notation.Difference(residual.Residual)}"));
        return FormattableString.Invariant(
            $"The corners come from {taped.Residuals.Length} taped distances, which agree to {notation.Fine(taped.RootMeanSquare)} ")
            + $"(root mean square); {worst.Measured.Name} is the worst. Measured minus fitted: {all}.";
    }

    /// <summary>What shows every bend and every roll of the finished piece.</summary>
    private static IEnumerable<CheckDistance> Checks(SolvedLine line, LengthNotation notation)
    {
        var template = line.Template;
        var piece = new BentPiece(line.Layout!, [.. line.Plan!.Bends.Select(bend => bend.Held)], template.Tube.OutsideDiameter);
        var places = piece.Nominal;
        return PieceChecks.Of(piece, PieceWeighing.Tape(template)).Select(
            one => new CheckDistance(one.Name(piece.Bends), Checked(one, places.ValueOf(one), notation)));
    }

    private static string Checked(PieceQuantity quantity, double value, LengthNotation notation) => quantity.IsAngle
        ? AngleNotation.Rotation(Angle.FromRadians(value))
        : notation.Figure(Length.FromMillimetres(value));

    private static string Difference(PieceReading reading, LengthNotation notation) => reading.Quantity.IsAngle
        ? (reading.Residual > 0 ? "+" : string.Empty) + AngleNotation.Figure(Angle.FromRadians(reading.Residual))
        : notation.Difference(Length.FromMillimetres(reading.Residual));

    private static string AxesInWords(LineTemplate template) => template switch
    {
        { LiesOnCar: true } => "X forward, Y left, Z up, as the line lies on the car",
        { Route.Bends: [] } => "X along the tube",
        { Route.Bends: [{ Rotation.Degrees: not 0 }, ..] } => "X along the first straight; the first bend is rolled out of Y as typed",
        _ => "X along the first straight, Y where the first bend turns, Z at right angles",
    };

    private static string EnvelopeInWords(Envelope envelope, LengthNotation notation) =>
        $"{notation.WithUnit(envelope.X)} × {notation.WithUnit(envelope.Y)} × {notation.WithUnit(envelope.Z)}";

    /// <summary>Words of the file stand in quotation marks on paper, where nobody types.</summary>
    private static string Sentence(string message)
    {
        var parts = message.Split('`').Select((part, i) => i % 2 == 0 ? part : $"“{part}”");
        return string.Concat(parts) is var text ? char.ToUpperInvariant(text[0]) + text[1..] + "." : string.Empty;
    }
}
