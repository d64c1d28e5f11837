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
        yield return $"Cut the tube square to {notation.InBoth(plan.CutLength)}. Deburr it inside and out and blow it out, with eye protection. Letter the ends A and B.";
        if (plan.Bends.Length > 0)
        {
            yield return "Before anything is flared, mark every bend from the cut end of A, each from the end and not from the mark before, and draw a line along the tube as the dial's zero.";
        }

        foreach (var step in EndSteps("A", template.From, notation))
        {
            yield return step;
        }

        if (plan.Bends.Length > 0)
        {
            yield return $"{BendStep(plan)} {ToolStep(template)} Tick each row of the table as it is done.";
            yield return "Lay the piece beside the wire and measure the check distances before end B is finished.";
        }

        if (template.To.Trim > Length.Zero)
        {
            yield return $"Offer the line up on the car and trim end B: {notation.InBoth(template.To.Trim)} was left on for this. Cut square, deburr, blow out.";
        }

        foreach (var step in EndSteps("B", template.To, notation))
        {
            yield return step;
        }

        yield return "Blow the line through, look at both seats, and cap the ends until it is fitted.";
    }

    private static string BendStep(BenchPlan plan) => plan.Bends.Length == 1
        ? "Make the bend, the A side held in the tool and the B side swept."
        : FormattableString.Invariant($"Make bends 1 to {plan.Bends.Length} in that order, the A side held in the tool and the B side swept.");

    private static string ToolStep(LineTemplate template)
    {
        var places = template.Route.Bends.Select(bend => bend.Bender).Distinct()
            .Select(bender => (Prefix: bender.Name.Length == 0 ? "the tool" : bender.Name, Line: LineInWords(bender))).ToList();
        return places.Count == 1
            ? $"Each mark goes under {places[0].Line} of the tool."
            : "Each mark goes under the tool's own line: " + string.Join(", ", places.Select(place => $"{place.Prefix}, {place.Line}")) + ".";
    }

    private static string LineInWords(Bender bender)
    {
        var line = bender.Mark == MarkPlace.Start ? "the start-of-bend line" : "the middle-of-bend line";
        return bender.Offset == Length.Zero ? line : line + " (the tool's offset is already in the marks)";
    }

    private static IEnumerable<string> EndSteps(string end, LineEnd lineEnd, LengthNotation notation)
    {
        if (lineEnd.Fitting is not { } fitting)
        {
            yield break;
        }

        if (fitting.SlideOns.Length > 0)
        {
            var pieces = fitting.SlideOns.Select((piece, i) =>
                $"{(i == 0 ? "the" : "then the")} {piece.Name} ({notation.WithUnit(piece.Length)})");
            yield return $"End {end}, before the flare: slide on {string.Join(", ", pieces)}, each with the side that meets the fitting towards {end}.";
        }

        if (fitting.Flare != Flare.None)
        {
            var takes = fitting.Takes > Length.Zero ? $" It takes up {notation.WithUnit(fitting.Takes)} of tube, which is in the lengths." : string.Empty;
            yield return $"Make the {fitting.Flare.InWords()} at end {end}.{takes}";
        }
    }
}
