using BendSheet.Core.Findings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Templates;

/// <summary>
/// Two equal bends that carry the tube sideways on to a parallel run. Common practice; travel = height / sin(bend), the trade's multiplier
/// (NAVEDTRA 14119, chapter 16: 1.414 at 45°).
/// </summary>
public static class Offset
{
    /// <summary>The rows of an offset.</summary>
    /// <param name="height">From run to run, centreline to centreline; above zero.</param>
    /// <param name="first">The first bend: its turn is below 180°, its rotation is the way the offset goes.</param>
    /// <param name="straight">Up to the first bend, as the rest of the line was measured.</param>
    /// <param name="at">Where the offset was typed.</param>
    /// <param name="fromRun">The bend was reckoned from the run.</param>
    /// <param name="heightFrom">What the height follows from; null where it is not measured but known.</param>
    public static IEnumerable<Row> Rows(
        Length height, Bend first, Row straight, SourcePosition at, bool fromRun = false, Term? heightFrom = null)
    {
        yield return straight with { Bend = first };
        yield return new(
            Travel(height, first.Turn), at, first with { Rotation = Angle.FromDegrees(180), RotationFrom = null, Note = null })
        {
            Habit = MeasuredTo.Corner,
            Inner = new(InnerLegKind.OffsetSlope, height, first.Turn, fromRun),
            StraightFrom = TravelFrom(height, heightFrom, first),
        };
    }

    /// <summary>Corner to corner along the slope.</summary>
    public static Length Travel(Length height, Angle bend) => 1 / Math.Sin(bend.Radians) * height;

    /// <summary>What the slope's length follows from; null where neither height nor bend is measured.</summary>
    internal static Term? TravelFrom(Length height, Term? heightFrom, Bend first) => heightFrom is null && first.TurnFrom is null
        ? null
        : Term.From(
            [heightFrom ?? Term.Exactly(height.Millimetres), first.TurnFrom ?? Term.Exactly(first.Turn.Radians)],
            parts => parts[0] / Math.Sin(parts[1]),
            parts => [1 / Math.Sin(parts[1]), -parts[0] * Math.Cos(parts[1]) / (Math.Sin(parts[1]) * Math.Sin(parts[1]))]);

    /// <summary>The bend of an offset that rises so high over so long a run, corner to corner.</summary>
    public static Angle BendOver(Length height, Length run) => Angle.FromRadians(Math.Atan2(height.Millimetres, run.Millimetres));

    /// <summary>What such a bend follows from.</summary>
    /// <param name="height">In millimetres.</param>
    /// <param name="run">In millimetres.</param>
    public static Term BendOverFrom(Term height, Term run) => Term.From(
        [height, run],
        parts => Math.Atan2(parts[0], parts[1]),
        parts =>
        {
            var squared = (parts[0] * parts[0]) + (parts[1] * parts[1]);
            return [parts[1] / squared, -parts[0] / squared];
        });
}

/// <summary>A hump over an obstacle and back on to the same run.</summary>
public static class Saddle
{
    private static readonly Angle Back = Angle.FromDegrees(180);

    /// <summary>
    /// Three bends: up by a, a bend of 2a over the top, down by a. From outer corner to outer corner it is 2·height / tan a wide. Common
    /// practice, no source.
    /// </summary>
    /// <param name="height">From run to top, centreline to centreline; above zero.</param>
    /// <param name="first">The first bend.</param>
    /// <param name="straight">Up to the first bend.</param>
    /// <param name="at">Where the saddle was typed.</param>
    /// <param name="fromWidth">The bend was reckoned from the width.</param>
    /// <param name="heightFrom">What the height follows from; null where it is not measured but known.</param>
    public static IEnumerable<Row> ThreeBends(
        Length height, Bend first, Row straight, SourcePosition at, bool fromWidth = false, Term? heightFrom = null)
    {
        var plain = first with { Note = null, Rotation = Back, RotationFrom = null };
        var slope = new Row(Offset.Travel(height, first.Turn), at, plain)
        {
            Habit = MeasuredTo.Corner,
            Inner = new(InnerLegKind.ThreeBendSlope, height, first.Turn, fromWidth),
            StraightFrom = Offset.TravelFrom(height, heightFrom, first),
        };
        var over = plain with
        {
            Turn = Angle.FromDegrees(2 * first.Turn.Degrees),
            TurnFrom = first.TurnFrom is { } turn ? Term.Sum(turn, turn) : null,
        };
        return [straight with { Bend = first }, slope with { Bend = over }, slope];
    }

    /// <summary>Four bends: an offset up, a flat top, and an offset down. Common practice, no source.</summary>
    /// <param name="height">From run to top, centreline to centreline; above zero.</param>
    /// <param name="top">Of the flat top, corner to corner.</param>
    /// <param name="first">The first bend.</param>
    /// <param name="straight">Up to the first bend.</param>
    /// <param name="at">Where the saddle was typed.</param>
    /// <param name="heightFrom">What the height follows from; null where it is not measured but known.</param>
    /// <param name="topFrom">What the top follows from; null where it is not measured but known.</param>
    public static IEnumerable<Row> FourBends(
        Length height, Length top, Bend first, Row straight, SourcePosition at, Term? heightFrom = null, Term? topFrom = null)
    {
        var plain = first with { Note = null, Rotation = Back, RotationFrom = null };
        var leg = new InnerLeg(InnerLegKind.FourBendSlope, height, first.Turn, SlopeFromSpan: false);
        var slope = new Row(Offset.Travel(height, first.Turn), at, plain)
        {
            Habit = MeasuredTo.Corner,
            Inner = leg,
            StraightFrom = Offset.TravelFrom(height, heightFrom, first),
        };
        var flat = slope with
        {
            Straight = top,
            Bend = plain with { Rotation = Angle.Zero },
            Inner = leg with { Kind = InnerLegKind.FourBendTop },
            StraightFrom = topFrom,
        };
        return [straight with { Bend = first }, slope, flat, slope];
    }
}
