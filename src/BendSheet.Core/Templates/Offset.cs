using BendSheet.Core.Findings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Templates;

/// <summary>
/// Two equal bends that carry the tube sideways on to a parallel run. Common practice; travel = height / sin of the bend, which the
/// trade's multipliers are (NAVEDTRA 14119, chapter 16: 1.414 at 45°).
/// </summary>
public static class Offset
{
    /// <summary>The rows of an offset.</summary>
    /// <param name="height">From run to run, centreline to centreline; above zero.</param>
    /// <param name="first">The first bend: its turn is below 180°, its rotation is the way the offset goes.</param>
    /// <param name="straight">Up to the first bend, as the rest of the line was measured.</param>
    /// <param name="at">Where the offset was typed.</param>
    /// <param name="fromRun">The bend was reckoned from the run.</param>
    public static IEnumerable<Row> Rows(Length height, Bend first, Row straight, SourcePosition at, bool fromRun = false)
    {
        yield return straight with { Bend = first };
        yield return new(Travel(height, first.Turn), at, first with { Rotation = Angle.FromDegrees(180), Note = null })
        {
            Habit = MeasuredTo.Corner,
            Inner = new(InnerLegKind.OffsetSlope, height, first.Turn, fromRun),
        };
    }

    /// <summary>Corner to corner along the slope.</summary>
    public static Length Travel(Length height, Angle bend) => 1 / Math.Sin(bend.Radians) * height;

    /// <summary>The bend of an offset that rises so high over so long a run, corner to corner.</summary>
    public static Angle BendOver(Length height, Length run) => Angle.FromRadians(Math.Atan2(height.Millimetres, run.Millimetres));
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
    public static IEnumerable<Row> ThreeBends(Length height, Bend first, Row straight, SourcePosition at, bool fromWidth = false)
    {
        var slope = Offset.Travel(height, first.Turn);
        var plain = first with { Note = null, Rotation = Back };
        yield return straight with { Bend = first };
        var leg = new InnerLeg(InnerLegKind.ThreeBendSlope, height, first.Turn, fromWidth);
        yield return Inner(slope, at, plain with { Turn = Angle.FromDegrees(2 * first.Turn.Degrees) }, leg);
        yield return Inner(slope, at, plain, leg);
    }

    /// <summary>Four bends: an offset up, a flat top, and an offset down. Common practice, no source.</summary>
    /// <param name="height">From run to top, centreline to centreline; above zero.</param>
    /// <param name="top">Of the flat top, corner to corner.</param>
    /// <param name="first">The first bend.</param>
    /// <param name="straight">Up to the first bend.</param>
    /// <param name="at">Where the saddle was typed.</param>
    public static IEnumerable<Row> FourBends(Length height, Length top, Bend first, Row straight, SourcePosition at)
    {
        var slope = Offset.Travel(height, first.Turn);
        var plain = first with { Note = null, Rotation = Back };
        yield return straight with { Bend = first };
        var leg = new InnerLeg(InnerLegKind.FourBendSlope, height, first.Turn, SlopeFromSpan: false);
        yield return Inner(slope, at, plain, leg);
        yield return Inner(top, at, plain with { Rotation = Angle.Zero }, leg with { Kind = InnerLegKind.FourBendTop });
        yield return Inner(slope, at, plain, leg);
    }

    private static Row Inner(Length length, SourcePosition at, Bend bend, InnerLeg leg) =>
        new(length, at, bend) { Habit = MeasuredTo.Corner, Inner = leg };
}
