using BendSheet.Core.Bench;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Sheet;

/// <summary>
/// The order of work in words, as it was planned: cut, finish what is finished first, mark, bend, offer up and trim, finish the rest,
/// check.
/// </summary>
public static class WorkOrder
{
    /// <summary>
    /// What to do where the next bend is held from the other end. The tube is turned about the line from it to the former, so that the same
    /// side stays at the former. Whether that flips it or swings it round level depends on how the tool is mounted, which no file says.
    /// </summary>
    public static string TurnRound(TubeEnd held) =>
        $"Flip the tube end for end: the side at the former stays at the former. Hold the {held} side; the dial still reads right";

    /// <summary>The steps, each to be ticked.</summary>
    public static IEnumerable<string> Of(LineTemplate template, BenchPlan plan, LengthNotation notation) =>
        Steps(template, plan, notation).Select(step => step.Text);

    /// <summary>Some bends of the piece in hand are made, and the others are still to make.</summary>
    internal static bool IsBegun(LineTemplate template, BenchPlan plan) =>
        !template.Bent.IsEmpty && template.Bent.Length < plan.Bends.Length;

    /// <summary>The same with what each is about; bends made one after the other without turning the tube are one.</summary>
    internal static IEnumerable<WorkStep> Steps(LineTemplate template, BenchPlan plan, LengthNotation notation)
    {
        var order = plan.Order;
        if (IsBegun(template, plan))
        {
            yield return new(
                WorkKind.Begun,
                $"Made already: {Counted.Noun(template.Bent.Length, "bend")} {string.Join(", ", template.Bent.Order())}. Wipe off "
                    + "the marks of the others, mark them anew and go on from there; the pen line stays.");
        }

        // Deburred by more than half its wall, the end is too thin for a flare (NAVEDTRA 14315).
        yield return new(
            WorkKind.Cut,
            $"Straighten the tube. Cut it square to {notation.InBoth(plan.CutLength)}. Deburr inside and out, at most half the "
                + "wall. Blow out (eye protection). Letter the ends A and B.");
        foreach (var step in Ends(template, plan, notation, order.FlareAFirst, order.FlareBFirst))
        {
            yield return step;
        }

        if (plan.Bends.Length > 0)
        {
            yield return Mark(template, plan);
        }

        foreach (var step in BendSteps(template, plan, notation))
        {
            yield return step;
        }

        if (plan.Bends.Length > 0)
        {
            yield return new(
                WorkKind.Check,
                $"{Hand(template)} Then check it with a stretched tape: a number is the back (outermost point) of that bend.");
        }

        if (template.To.Trim > Length.Zero)
        {
            yield return Trim(template.To, notation);
        }

        foreach (var step in Ends(template, plan, notation, !order.FlareAFirst, !order.FlareBFirst))
        {
            yield return step;
        }

        var seats = (template.From.IsFlared, template.To.IsFlared) switch
        {
            (false, false) => string.Empty,
            (true, true) => " look at both seats,",
            _ => " look at the seat,",
        };
        yield return new(WorkKind.Finish, $"Measure A to finished B. Blow the line through,{seats} and cap the ends until it is fitted.");
    }

    private static WorkStep Mark(LineTemplate template, BenchPlan plan)
    {
        var slid = HasLoosePieces(template.From, plan.Order.FlareAFirst) || HasLoosePieces(template.To, plan.Order.FlareBFirst)
            ? " Tape the hardware back to its flare."
            : string.Empty;
        return new(
            WorkKind.Mark,
            $"Mark every bend from {(plan.Datum > Length.Zero ? "the flare face" : "the cut end")} of A. Pen a "
                + $"straight line along the whole tube: at the first bend it faces the former.{slid}");
    }

    private static WorkStep Trim(LineEnd end, LengthNotation notation)
    {
        var flare = end.FlareAllowance > Length.Zero ? $", leaving {notation.Size(end.FlareAllowance)} for the flare" : string.Empty;
        return new(
            WorkKind.Trim,
            $"Offer the line up on the car; trim end B ({notation.InBoth(end.Trim)} was left on){flare}. Cut "
                + "square, deburr, blow out.");
    }

    /// <summary>How to see that the piece is not the mirror image of what is wanted, which no distance on it shows.</summary>
    private static string Hand(LineTemplate template)
    {
        if (!template.HasWire)
        {
            return "Check on the car that it is not the mirror image: measurements will not show that.";
        }

        var wire = template.WireOf is { } other ? $"the wire of {other}" : "the wire";
        return template.MirrorsWire
            ? $"Hold it against {wire}: it must be the mirror image of it."
            : $"Hold it against {wire}. Make sure it is not the mirror image: measurements will not show that.";
    }

    private static bool HasLoosePieces(LineEnd end, bool flaredFirst) => flaredFirst && end.Fitting is { Hardware.IsEmpty: false };

    private static IEnumerable<WorkStep> Ends(LineTemplate template, BenchPlan plan, LengthNotation notation, bool atA, bool atB)
    {
        var alike = template.From.Fitting == template.To.Fitting;
        var firstIsB = plan.Order is { FlareBFirst: true, FlareAFirst: false };
        return (atA ? EndSteps("A", template.From, template.Tube, notation, alike && firstIsB ? "B" : null) : [])
            .Concat(atB ? EndSteps("B", template.To, template.Tube, notation, alike && !firstIsB ? "A" : null) : []);
    }

    /// <summary>A step for all bends that are held from one end, and one for each time the tube is turned round.</summary>
    private static IEnumerable<WorkStep> BendSteps(LineTemplate template, BenchPlan plan, LengthNotation notation)
    {
        var left = plan.InWorkingOrder.ToList();
        while (left.Count > 0)
        {
            var held = left[0].Held;
            if (left.Count < plan.Bends.Length)
            {
                yield return new(WorkKind.Flip, TurnRound(held) + ".");
            }

            var group = left.TakeWhile(bend => bend.Held == held).ToList();
            left.RemoveRange(0, group.Count);
            var swing = SheetWriter.SwingInWords(group.Max(bend => bend.Swing), template.Tube, notation);
            var swept = held == TubeEnd.A ? TubeEnd.B : TubeEnd.A;
            yield return new(
                WorkKind.Bends,
                $"{BendsInWords(group, plan)}: hold the {held} side, sweep the {swept} side ({swing} clear). {ToolStep(group)}.")
            {
                Bends = [.. group],
            };
        }
    }

    private static string BendsInWords(List<BenchBend> group, BenchPlan plan)
    {
        if (plan.Bends.Length == 1)
        {
            return "Make the bend";
        }

        if (group.Count == 1)
        {
            return FormattableString.Invariant($"Make bend {group[0].Number}");
        }

        var step = group[1].Number - group[0].Number;
        var inOneRun = group.Zip(group.Skip(1), (one, next) => next.Number - one.Number == step).All(same => same) && Math.Abs(step) == 1;
        return group.Count > 2 && inOneRun
            ? FormattableString.Invariant($"Make bends {group[0].Number} to {group[^1].Number} in that order")
            : $"Make bends {string.Join(", ", group.SkipLast(1).Select(bend => FormattableString.Invariant($"{bend.Number}")))} and "
                + $"{FormattableString.Invariant($"{group[^1].Number}")} in that order";
    }

    internal static string ToolStep(IReadOnlyCollection<BenchBend> group)
    {
        var tools = group.Select(bend => bend.Bender).Distinct().ToList();
        return tools.Count == 1
            ? $"Mark at the tool's {LineInWords(tools[0])}"
            : "Mark at the tool's own line ("
            + string.Join("; ", tools.Select(tool => $"{(tool.Name.Length == 0 ? "the bender" : tool.Name)}: {LineInWords(tool)}")) + ")";
    }

    private static string LineInWords(Bender bender)
    {
        var line = bender.Line is { } name ? $"line {name}" : bender.Mark == MarkPlace.Start ? "start-of-bend line" : "middle-of-bend line";
        return ToolLine.Of(bender).Offset == Length.Zero ? line : line + ", whose offset the marks allow for already";
    }

    private static IEnumerable<WorkStep> EndSteps(string end, LineEnd lineEnd, Tube tube, LengthNotation notation, string? alikeAt)
    {
        if (lineEnd.Fitting is not { } fitting)
        {
            yield break;
        }

        var steps = new List<string>();
        if (fitting.Hardware.Length > 0)
        {
            var pieces = fitting.Hardware.Select(
                piece => alikeAt is null ? $"{piece.Name} ({notation.Size(piece.Length)})" : piece.Name);
            var facing = fitting.Hardware.Select(EndWords.Facing).Distinct(StringComparer.Ordinal);
            steps.Add($"slide on {string.Join(", then ", pieces)}, {string.Join(", ", facing)} towards {end}");
        }

        if (fitting.Flare != Flare.None)
        {
            steps.Add(FlareStep.Of(fitting, tube, notation, alikeAt));
        }

        if (steps.Count > 0)
        {
            yield return new(end is "A" ? WorkKind.EndA : WorkKind.EndB, $"End {end}: {string.Join("; ", steps)}.");
        }
    }
}
