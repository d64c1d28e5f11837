using BendSheet.Core.Bench;
using BendSheet.Core.Centreline;
using BendSheet.Core.Findings;
using BendSheet.Core.Fit;
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
    /// <exception cref="ArgumentException">The line has no plan.</exception>
    public static SheetContent Of(SolvedLine line, string project, LengthNotation notation)
    {
        if (line is not { Centreline: { } centreline, Plan: { } plan })
        {
            throw new ArgumentException("Only a line that can be made has a sheet.", nameof(line));
        }

        var template = line.Template;
        return new(
            template.Name,
            project,
            EndsInWords(template),
            TubeInWords(template.Tube, notation),
            BendersInWords(template, notation),
            Figure.Of(plan.CutLength, notation),
            Figure.Of(plan.DevelopedLength, notation),
            Fingerprint.Of(template, project, notation),
            template.Made,
            DatumInWords(template),
            [.. plan.Bends.Select(bend => RowOf(bend, template, plan, notation))],
            [.. ReadFirst(line, notation)],
            [.. WorkOrder.Of(template, plan, notation)],
            [.. Checks(template.Route, centreline, notation)],
            EnvelopeInWords(Envelope.Of(centreline, template.Tube.OutsideDiameter), notation),
            AxesInWords(template),
            Strip.Of(template, plan) with { Clips = [.. line.Clips?.Clips.Select(clip => clip.Mark) ?? []] },
            centreline,
            template.Tube.OutsideDiameter,
            notation)
        {
            Clips = [.. ClipWords.Of(template, line.Clips, notation)],
        };
    }

    private static BendRow RowOf(BenchBend bend, LineTemplate template, BenchPlan plan, LengthNotation notation) => new(
        FormattableString.Invariant($"{bend.Number}"),
        notation.Figure(bend.Mark),
        notation.Other.WithUnit(bend.Mark),
        HasTwoDatums(template) ? notation.Figure(bend.Mark - plan.FlareFaceA) : null,
        bend.Number == 1 && bend.Bend.Rotation == Angle.Zero ? Dash : AngleNotation.Rotation(bend.Bend.Rotation),
        AngleNotation.Dial(bend.Dial),
        AngleNotation.Figure(bend.Pull),
        AngleNotation.Figure(bend.Bend.Turn),
        notation.Figure(bend.StraightAfter),
        notation.WithUnit(bend.Lever),
        bend.Bender != template.Bender ? bend.Bender.Name : null,
        bend.Bend.Note);

    private static string EndsInWords(LineTemplate template) => $"A: {template.From.At ?? "end A"} → B: {template.To.At ?? "end B"}";

    private static string TubeInWords(Tube tube, LengthNotation notation)
    {
        var size = notation.Size(tube.OutsideDiameter);
        if (tube.Wall is { } wall)
        {
            size += " × " + notation.Size(wall);
        }

        return tube.Material is { } material ? $"{size}, {material}" : size;
    }

    private static string BendersInWords(LineTemplate template, LengthNotation notation)
    {
        var benders = template.Route.Bends.Select(bend => bend.Bender).Distinct().DefaultIfEmpty(template.Bender);
        return string.Join("; ", benders.Select(bender =>
            (bender.Name.Length == 0 ? string.Empty : bender.Name + ", ") + "radius " + notation.Size(bender.Radius)));
    }

    private static string DatumInWords(LineTemplate template) =>
        "Marks count from the cut end of A"
        + (HasTwoDatums(template) ? "; once A is flared, use the flare-face column" : string.Empty)
        + ". +/−: a little more/less.";

    private static bool HasTwoDatums(LineTemplate template) => template.From.IsFlared && template.From.Takes > Length.Zero;

    private static IEnumerable<string> ReadFirst(SolvedLine line, LengthNotation notation)
    {
        foreach (var finding in line.Findings.Where(finding => finding.Severity != Severity.Note))
        {
            yield return Sentence(finding.Message);
        }

        if (line.Template.Taped is { } taped)
        {
            yield return TapedInWords(taped);
        }

        if (line.Template.Route.Bends.IsEmpty)
        {
            yield break;
        }

        yield return "Pull angles are not corrected for springback (no test bends): check each angle before the next bend.";
        if (line.Template.Tolerance is { } tolerance && TemplateError.AtEndB(line.Centreline!, tolerance) is { } error)
        {
            yield return $"Measured to {notation.Size(tolerance.Straight)}, {AngleNotation.Figure(tolerance.Bend)} bend and {AngleNotation.Figure(tolerance.Rotate)} "
                + $"rotation, the template places end B to about {notation.WithUnit(error)} (standard deviation).";
        }
    }

    /// <summary>How well the distances go together. With none to spare they always do, which proves nothing.</summary>
    private static string TapedInWords(TapedFit taped)
    {
        if (taped.Worst is not { } worst || taped.RootMeanSquare <= Tolerances.SamePoint)
        {
            return "The corners come from taped distances with none to spare: a wrong one would not show. Tape one or two more.";
        }

        var all = string.Join(", ", taped.Residuals.Select(residual => FormattableString.Invariant(
            $"{residual.Measured.Name} {residual.Residual.Millimetres:+0.0;-0.0;0.0}")));
        return FormattableString.Invariant($"The corners come from {taped.Residuals.Length} taped distances, which miss them by {taped.RootMeanSquare.Millimetres:0.0} mm ")
            + $"(root mean square), {worst.Measured.Name} the worst. Measured less reconciled, in mm: {all}.";
    }

    /// <summary>To every corner that can be found on the piece, which those inside a coil cannot.</summary>
    private static IEnumerable<CheckDistance> Checks(Route route, TubeCentreline centreline, LengthNotation notation)
    {
        var corners = centreline.Corners;
        for (var i = 1; i < corners.Length; i++)
        {
            if (corners[i] is { } corner && (i > route.Bends.Length || !route.Bends[i - 1].FromTangent))
            {
                var to = i == corners.Length - 1 ? "finished B" : FormattableString.Invariant($"corner {i}");
                yield return new("A", to, Figure.Of(Length.FromMillimetres(centreline.EndA.DistanceTo(corner)), notation));
            }
        }
    }

    private static string AxesInWords(LineTemplate template) => template switch
    {
        { LiesOnCar: true } => "X forward, Y left, Z up, as the line lies on the car",
        { Route.Bends: [{ Rotation.Degrees: not 0 }, ..] } => "X along the first straight; the first bend is rolled out of Y as typed",
        _ => "X along the first straight, Y where the first bend turns, Z at right angles",
    };

    private static string EnvelopeInWords(Envelope envelope, LengthNotation notation) =>
        $"{notation.WithUnit(envelope.X)} × {notation.WithUnit(envelope.Y)} × {notation.WithUnit(envelope.Z)}";

    private static string Sentence(string message) => char.ToUpperInvariant(message[0]) + message[1..] + ".";
}
