using System.Globalization;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey.Pieces;

/// <summary>
/// A piece that did not come out as its sheet has it. Before it goes on the car it can still be put right, and one that is to be made
/// again needs to know what went wrong.
/// </summary>
public static class PieceRules
{
    /// <summary>The rule.</summary>
    public static Rule FinishedDiffers { get; } = new(
        "finished-differs",
        RuleSubject.Making,
        "A piece that does not measure what its sheet says will not fit where the template did.");

    private const string PortNowhere =
        "this trial fit would put the port beyond A's straight, on the other side from B: roll the piece until B is nearest to the port, "
            + "and measure again";

    /// <summary>All that is to be said.</summary>
    /// <param name="template">With what was measured.</param>
    /// <param name="layout">As the piece was aimed at.</param>
    /// <param name="piece">What it came out as; null where it was not looked at.</param>
    public static IEnumerable<Finding> Check(LineTemplate template, RouteLayout layout, PieceInHand? piece)
    {
        if (piece is null)
        {
            if (template.Checks is [var first, ..])
            {
                yield return FinishedDiffers.Note(first.At, WhyNotLookedAt(template));
            }

            yield break;
        }

        if (piece.IsPortNowhere)
        {
            yield return FinishedDiffers.Error(piece.TrialFit!.At, PortNowhere);
            yield break;
        }

        var bends = template.Route.Bends.Length;
        var worst = piece.Readings.MaxBy(one => Math.Abs(one.Residual) / one.Within);
        var at = worst?.At ?? piece.TrialFit?.At ?? template.At;
        if (!piece.IsExplained && TooLong(template, layout).ToList() is { Count: > 0 } tooLong)
        {
            foreach (var finding in tooLong)
            {
                yield return finding;
            }
        }
        else if (!piece.IsExplained)
        {
            yield return FinishedDiffers.Warning(
                at,
                $"{Reading(worst!, bends)}: nothing explains all that was measured on the piece: measure it again, "
                    + $"{worst!.Quantity.InWords(bends)} first");
        }
        else if (piece.Telling is { } telling)
        {
            yield return FinishedDiffers.Warning(at, Unclear(piece, telling, bends, worst));
        }
        else if (piece.IsHalfMade)
        {
            var lands = piece.Aimed is { } aimed && aimed.Miss <= template.Wanted.Miss && aimed.Askew <= template.Wanted.Askew;
            yield return lands
                ? FinishedDiffers.Note(at, HalfMade(piece, bends, worst))
                : FinishedDiffers.Warning(at, HalfMade(piece, bends, worst));
        }
        else if (!piece.IsGood)
        {
            yield return FinishedDiffers.Warning(at, $"{Differs(piece, bends, worst)}{Remedy(piece, bends)}");
        }
        else if (!piece.Mistakes.IsEmpty)
        {
            var then = piece.Mistakes is [{ Kind: PieceCauseKind.Misread, Misread: var again }, ..]
                ? $" by the others; measure {again} again"
                : ", which is near enough";
            yield return FinishedDiffers.Note(at, Differs(piece, bends, worst) + then);
        }
    }

    private static string WhyNotLookedAt(LineTemplate template) => template.Route.Bends.IsEmpty
        ? "a straight tube has nothing that could be put right: its length is on the sheet"
        : FormattableString.Invariant($"a piece of more than {PieceInHand.MostBends} bends is not looked at as a whole: ")
            + "hold it against the sheet's check distances, stretch by stretch";

    /// <summary>A tape that is drawn tight is never longer than the tube between the two places that it is held to.</summary>
    private static IEnumerable<Finding> TooLong(LineTemplate template, RouteLayout layout)
    {
        var bends = layout.Bends.Length;
        foreach (var check in template.Checks)
        {
            if (check.Quantity is { IsAngle: true } or { Kind: PieceKind.Aside })
            {
                continue;
            }

            // The back of a bend is half a diameter outside the centreline, so between two backs it is at most a diameter more.
            var along = Along(layout, check.Quantity.To) + (-1 * Along(layout, check.Quantity.From)) + template.Tube.OutsideDiameter;
            var most = along + Length.FromMillimetres(Sure * (check.Within ?? PieceWeighing.Tape(template)));
            if (Length.FromMillimetres(check.Value) > most)
            {
                yield return FinishedDiffers.Error(
                    check.At,
                    $"{check.Quantity.InWords(bends)} cannot be {Mm(check.Value)}: the tube between is {Mm(along.Millimetres)} long, and a "
                        + "tape drawn tight is never longer than that; read it again");
            }
        }
    }

    /// <summary>A measurement is not off by more of its standard deviations; most bends come out a little large or small as well.</summary>
    private const double Sure = 6;

    private static Length Along(RouteLayout layout, int place)
    {
        var along = Length.Zero;
        for (var i = 0; i < place; i++)
        {
            along += layout.Legs[i].StraightLeft;
            if (i < layout.Bends.Length)
            {
                along += (i + 1 == place ? 0.5 : 1) * layout.Bends[i].Arc;
            }
        }

        return along;
    }

    /// <summary>A mistake in words: <c>bend 2 turned 3.1° ± 0.4° too little</c>.</summary>
    public static string InWords(PieceMistake mistake)
    {
        ArgumentNullException.ThrowIfNull(mistake);
        var by = mistake.IsAngle
            ? $"{Degrees(mistake.Size)} ± {Degrees(mistake.Within)}"
            : $"{Mm(mistake.Size)} ± {Mm(mistake.Within)}";
        var bend = mistake.Bend.ToString(CultureInfo.InvariantCulture);
        return mistake.Kind switch
        {
            PieceCauseKind.Bend => $"bend {bend} turned {by} too {(mistake.Size > 0 ? "far" : "little")}",
            PieceCauseKind.Roll => $"all from bend {bend} on rolled {by} too far {Sense(mistake)}",
            PieceCauseKind.Plane => $"bend {bend} alone made {by} too far {Sense(mistake)}",
            PieceCauseKind.Mark => $"bend {bend} made {by} too near to {(mistake.Size > 0 ? "B" : "A")}",
            PieceCauseKind.EndA => $"the first straight {by} too {(mistake.Size > 0 ? "long" : "short")}",
            PieceCauseKind.EndB => $"the last straight {by} too {(mistake.Size > 0 ? "long" : "short")}",
            _ => $"{mistake.Misread} misread",
        };
    }

    /// <summary>What a mistake is in, short: <c>bend 2</c>, <c>end A</c>, <c>A-3</c>.</summary>
    public static string Name(PieceMistake mistake)
    {
        ArgumentNullException.ThrowIfNull(mistake);
        var bend = mistake.Bend.ToString(CultureInfo.InvariantCulture);
        return mistake.Kind switch
        {
            PieceCauseKind.Bend => $"bend {bend}",
            PieceCauseKind.Roll => $"roll {bend}",
            PieceCauseKind.Plane => $"plane {bend}",
            PieceCauseKind.Mark => $"mark {bend}",
            PieceCauseKind.EndA => "end A",
            PieceCauseKind.EndB => "end B",
            _ => $"reading {mistake.Misread}",
        };
    }

    /// <summary>What to do, in words; null where nothing is to be done, or nobody knows.</summary>
    public static string? InWords(Correction? correction, int bends, bool afterTrialFit) => correction is { Steps.IsEmpty: false }
        ? (correction.Steps.Any(step => step.Gap is not null) ? "a little at a time and offered up each time, " : string.Empty)
            + string.Join(", then ", correction.Steps.Select(step => InWords(step, bends, afterTrialFit)))
            + $": B is then {Mm(correction.Miss.Millimetres)} off and {AngleNotation.Figure(correction.Askew)} askew"
        : null;

    private static string Differs(PieceInHand piece, int bends, PieceReading? worst)
    {
        var measured = worst is null ? string.Empty : $"{Reading(worst, bends)}: ";
        var port = piece.TrialFit is null ? string.Empty : "by the trial fit ";
        return $"{measured}{Why(piece)}{port}end B is {Mm(piece.Miss.Millimetres)} off its port and "
            + $"{AngleNotation.Figure(piece.Askew)} askew";
    }

    private static string Unclear(PieceInHand piece, TellingMeasurement telling, int bends, PieceReading? worst)
    {
        var why = piece.Mistakes.Length > 1
            ? $"{string.Join(", or ", piece.Mistakes.Select(InWords))}, would explain it"
            : "several small ones or one mistake would explain it";
        return $"{(worst is null ? string.Empty : $"{Reading(worst, bends)}: ")}{why}, and B lies elsewhere with each: measure "
            + $"{telling.Quantity.InWords(bends)} as well, which is {Figure(telling.Quantity, telling.IfFirst)} or "
            + $"{Figure(telling.Quantity, telling.IfSecond)}, before anything is put right";
    }

    private static string Remedy(PieceInHand piece, int bends) => piece switch
    {
        { Mistakes: [{ Kind: PieceCauseKind.Misread }, ..] } => $"; measure {piece.Mistakes[0].Misread} again",
        { Correction.Steps.IsEmpty: true } => ", which is near enough",
        _ => InWords(piece.Correction, bends, piece.TrialFit is not null) is { } words
            ? $"; to put it right, {words}"
            : "; no three bends put right bring it there: make the piece again",
    };

    private static string HalfMade(PieceInHand piece, int bends, PieceReading? worst)
    {
        var measured = worst is null ? string.Empty : $"{Reading(worst, bends)}: {Why(piece)}";
        var asItWas = $"{measured}made on as the sheet was, end B would be {Mm(piece.Miss.Millimetres)} off its port and "
            + $"{AngleNotation.Figure(piece.Askew)} askew";
        if (piece.Mistakes is [{ Kind: PieceCauseKind.Misread, Misread: var again }, ..])
        {
            return $"{asItWas}; measure {again} again before going on";
        }

        return piece.Aimed is { } aimed
            ? $"{asItWas}; the bends not made yet are aimed anew: B is then {Mm(aimed.Miss.Millimetres)} off and "
                + $"{AngleNotation.Figure(aimed.Askew)} askew"
            : $"{asItWas}, and the bends not made yet cannot bring it there: make the piece again";
    }

    private static string Why(PieceInHand piece) =>
        piece.Mistakes.IsEmpty ? string.Empty : $"{string.Join(", or ", piece.Mistakes.Select(InWords))} explains it; ";

    private static string InWords(CorrectionStep step, int bends, bool afterTrialFit)
    {
        var by = AngleNotation.Figure(Angle.FromDegrees(Math.Abs(step.By.Degrees)));
        var number = step.Bend.ToString(CultureInfo.InvariantCulture);
        var act = step.IsTwist
            ? $"twist the straight before bend {number} by {by} {(step.By > Angle.Zero ? "cw" : "ccw")}"
            : $"{(step.By > Angle.Zero ? "close" : "open")} bend {number} by {by}";
        return step switch
        {
            { Gap: { } gap } => $"{act}, until {InWords(gap)}",
            { Until: null } => act,
            { Until: var until } when afterTrialFit =>
                $"{act}, until {until.Value.InWords(bends)} is {Mm(step.Change.Millimetres)} "
                    + $"{(step.Change > Length.Zero ? "more" : "less")} than now",
            { Until: var until } => $"{act}, until {until.Value.InWords(bends)} is {Mm(step.Reads.Millimetres)}",
        };
    }

    /// <summary>In the words of <c>trial-fit</c>.</summary>
    private static string InWords(PortGap gap) => (gap.IsAside, Math.Abs(gap.Left.Millimetres) < Level, gap.Left > Length.Zero) switch
    {
        (false, true, _) => "B is as far ahead as the port",
        (true, true, _) => "B is as far aside as the port",
        (false, _, true) => $"the port lies {Mm(gap.Left.Millimetres)} further ahead than B",
        (true, _, true) => $"the port lies {Mm(gap.Left.Millimetres)} further aside than B",
        (false, _, false) => $"the port lies {Mm(gap.Left.Millimetres)} less far ahead than B",
        (true, _, false) => $"the port lies {Mm(gap.Left.Millimetres)} less far aside than B",
    };

    /// <summary>Nobody sees a gap of less, in millimetres.</summary>
    private const double Level = 0.5;

    private static string Reading(PieceReading one, int bends) => one.Quantity.IsAngle
        ? $"{one.Name} is {Degrees(one.Measured)} on the piece, {Degrees(one.Residual)} {Than(one)} the sheet's {Degrees(one.Expected)}"
        : $"{one.Quantity.InWords(bends)} is {Mm(one.Measured)} on the piece, {Mm(one.Residual)} {Than(one)} the sheet's "
            + Mm(one.Expected);

    private static string Than(PieceReading one) => one.Residual > 0 ? "more than" : "less than";

    private static string Sense(PieceMistake mistake) => mistake.Size > 0 ? "cw" : "ccw";

    private static string Figure(PieceQuantity quantity, double value) =>
        quantity.IsAngle ? AngleNotation.Figure(Angle.FromRadians(value)) : Mm(value);

    /// <summary>How large an angle is, whichever way.</summary>
    private static string Degrees(double radians) => AngleNotation.Figure(Angle.FromRadians(Math.Abs(radians)));

    private static string Mm(double millimetres) => FindingFigures.Mm(Length.FromMillimetres(Math.Abs(millimetres)));
}
