using BendSheet.Core.Bench;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Sheet;

/// <summary>
/// The order of work in words: cut and mark, slide on and flare at A, bend from A to B, trim, slide on and flare at B, check. End B is
/// left until the line has been offered up, because that is where errors gather. Common practice, no source.
/// </summary>
public static class WorkOrder
{
    /// <summary>The steps, each to be ticked.</summary>
    public static IEnumerable<string> Of(LineTemplate template, BenchPlan plan, LengthNotation notation)
    {
        yield return $"Cut square to {notation.InBoth(plan.CutLength)}; deburr inside and out; blow out (eye protection); letter the ends A and B.";
        if (plan.Bends.Length > 0)
        {
            yield return "Before flaring, mark every bend from the cut end of A; draw a line along the tube as the dial's zero.";
        }

        foreach (var step in EndSteps("A", template.From, template.Tube, notation, alikeAt: null))
        {
            yield return step;
        }

        if (plan.Bends.Length > 0)
        {
            yield return $"{BendStep(plan)}: A side held, B side swept, {ToolStep(template)}; tick the table.";
            yield return "Lay it beside the wire: the same hand, not its mirror image, which no distance shows. Then measure to the corners.";
        }

        if (template.To.Trim > Length.Zero)
        {
            var flare = template.To.Takes > Length.Zero ? $", leaving {notation.Size(template.To.Takes)} for the flare" : string.Empty;
            yield return $"Offer the line up on the car; trim end B ({notation.InBoth(template.To.Trim)} was left on){flare}. Cut square, deburr, blow out.";
        }

        foreach (var step in EndSteps("B", template.To, template.Tube, notation, template.From.Fitting == template.To.Fitting ? "A" : null))
        {
            yield return step;
        }

        yield return "Measure A to finished B. Blow the line through, look at both seats, and cap the ends until it is fitted.";
    }

    private static string BendStep(BenchPlan plan) => plan.Bends.Length == 1
        ? "Make the bend"
        : FormattableString.Invariant($"Make bends 1 to {plan.Bends.Length} in that order, from A");

    private static string ToolStep(LineTemplate template)
    {
        var tools = template.Route.Bends.Select(bend => bend.Bender).Distinct().ToList();
        return tools.Count == 1
            ? $"mark at the tool's {LineInWords(tools[0])}"
            : "mark at the tool's own line (" + string.Join("; ", tools.Select(tool => $"{(tool.Name.Length == 0 ? "the bender" : tool.Name)}: {LineInWords(tool)}")) + ")";
    }

    private static string LineInWords(Bender bender)
    {
        var line = bender.Mark == MarkPlace.Start ? "start-of-bend line" : "middle-of-bend line";
        return bender.Offset == Length.Zero ? line : line + ", its offset being in the marks already";
    }

    private static IEnumerable<string> EndSteps(string end, LineEnd lineEnd, Tube tube, LengthNotation notation, string? alikeAt)
    {
        if (lineEnd.Fitting is not { } fitting)
        {
            yield break;
        }

        var steps = new List<string>();
        if (fitting.SlideOns.Length > 0)
        {
            var pieces = fitting.SlideOns.Select(piece => $"{piece.Name} ({notation.Size(piece.Length)})");
            steps.Add($"slide on {string.Join(", then ", pieces)}, seat {(fitting.SlideOns.Length == 1 ? "side" : "sides")} towards {end}");
        }

        if (fitting.Flare != Flare.None)
        {
            steps.Add(FlareStep.Of(fitting, tube, notation, alikeAt));
        }

        if (steps.Count > 0)
        {
            yield return $"End {end}: {string.Join("; ", steps)}.";
        }
    }
}
