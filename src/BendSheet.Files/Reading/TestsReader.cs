using System.Collections.Immutable;
using System.Globalization;
using BendSheet.Core.Bench;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads a bender's test bends and test pieces. One that is wrong is left out after a finding.</summary>
/// <param name="radius">The bender's; null where it could not be read, so that a piece cannot be weighed against it.</param>
/// <param name="line">What the bender's own line stands over.</param>
/// <param name="tubes">All tubes of the file.</param>
/// <param name="context">For findings.</param>
internal sealed class TestsReader(Length? radius, MarkPlace line, NameTable<Tube> tubes, FileContext context)
{
    private const string Example = "`tests: [{pull: 93, got: 90}, {pull: 47.5, got: 45}]`";

    /// <summary>The tests, in the order of the file.</summary>
    public ImmutableArray<BenderTest> Read(YamlValue value)
    {
        if (value is YamlList { Items.Count: > 0 } list)
        {
            return [.. list.Items.Select(Test).OfType<BenderTest>()];
        }

        context.Report(FileRules.WrongKind.Error(
            value.Position, $"`tests` is a list of bends that were tried, such as {Example}, and this is {FieldReader.Kind(value)}"));
        return [];
    }

    private BenderTest? Test(YamlValue value)
    {
        if (FieldReader.Of(value, Vocabulary.Test, context) is not { } map)
        {
            return null;
        }

        var got = Got(map);
        var pull = map.Angle("pull", Range.TestBend);
        var length = map.Length("length", Range.PositiveLength);
        var legs = map.Value("legs") is { } typed ? Legs(typed) : null;
        var mark = map.Length("mark", Range.PositiveLength);
        var measured = map.Choice("measured", MeasuredToWords.All);
        var tube = map.Text("tube") is { } name ? tubes.Find(name, context) : null;
        var isWhole = SaysEnough(map) && (!map.Has("tube") || tube is not null) && (!map.Has("measured") || measured is not null);
        if (got is not { } turn || !isWhole)
        {
            return null;
        }

        if (pull < turn)
        {
            context.Report(FileRules.OutOfRange.Error(
                map.Value("pull")!.Position,
                $"pulled to {AngleNotation.Figure(pull.Value)} a bend cannot come out at {AngleNotation.Figure(turn)}, because tube only "
                    + "comes back: look whether `pull` and `got` changed places"));
            return null;
        }

        if (pull is { } pulled && Springback.IsDoubtful(pulled, turn))
        {
            context.Report(FileRules.OutOfRange.Warning(
                map.Value("pull")!.Position,
                $"the bend came back from {AngleNotation.Figure(pulled)} to {AngleNotation.Figure(turn)}, and tube bent by hand comes "
                    + $"back a few degrees: look at `pull` and {(map.Has("got") ? "`got`" : "`included`")} again"));
        }

        var test = new BenderTest(turn, map.PositionOf(map.Has("got") ? "got" : "included")) { Pull = pull, Tube = tube };
        if (!map.Has("length"))
        {
            return map.Has("pull") == pull.HasValue ? test : null;
        }

        return length is { } before
            && legs is var (first, second)
            && Piece(map, turn, before, first, second, measured ?? MeasuredTo.Corner, tube) is { } piece
            && map.Has("mark") == mark.HasValue
            && (mark is not { } at || IsOnPiece(map, piece with { Mark = at }, turn))
            ? test with { Piece = piece with { Mark = mark } }
            : null;
    }

    private Angle? Got(FieldReader map)
    {
        var got = map.Angle("got", Range.TestBend);
        var included = map.Angle("included", Range.TestIncluded);
        if (map.Has("got") && map.Has("included"))
        {
            context.Report(
                FileRules.SaidTwice.Error(map.PositionOf("included"), "`got` and `included` both say the finished bend: keep one of them"));
            return null;
        }

        if (!map.Has("got") && !map.Has("included"))
        {
            map.ReportMissing("a test needs the bend that came out: add `got`, the degrees that the tube turns, or `included`, the angle "
                + "between its legs");
        }

        return got ?? (included is { } between ? Angle.FromDegrees(180 - between.Degrees) : null);
    }

    /// <summary>Reports what is missing beside the finished bend.</summary>
    private bool SaysEnough(FieldReader map)
    {
        var (hasLength, hasLegs) = (map.Has("length"), map.Has("legs"));
        if (hasLength && !hasLegs)
        {
            context.Report(FileRules.MissingWord.Error(
                map.PositionOf("length"),
                "a test piece needs its two legs after bending beside `length`: add `legs`, such as `legs: [106, 105.5]`"));
        }
        else if (hasLegs && !hasLength)
        {
            context.Report(FileRules.MissingWord.Error(
                map.PositionOf("legs"),
                "a test piece needs the length of the straight tube before bending beside `legs`: add `length`, such as `length: 200`"));
        }
        else if (!hasLength && map.Has("measured"))
        {
            context.Report(FileRules.OutOfPlace.Error(
                map.PositionOf("measured"),
                "`measured` says how legs were measured, and this test has none: add `length` and `legs`, or take it out"));
        }
        else if (!hasLength && map.Has("mark"))
        {
            context.Report(FileRules.OutOfPlace.Error(
                map.PositionOf("mark"),
                "`mark` says where the pen mark was on a test piece, and only with its `length` and `legs` it shows where the tool's line "
                    + "stands: add them, or take it out"));
        }
        else if (!hasLength && !map.Has("pull"))
        {
            map.ReportMissing(
                $"a test needs what the tool was pulled to (`pull`), or a piece's `length` before and its `legs` after, such as {Example}");
        }

        return hasLength == hasLegs && !map.HasUnknownWord;
    }

    private (Length First, Length Second)? Legs(YamlValue value)
    {
        if (value is not YamlList { Items: [var one, var other] })
        {
            context.Report(FileRules.WrongKind.Error(
                value.Position,
                "`legs` is the two legs of the bent piece, such as `legs: [106, 105.5]`, and this is "
                    + (value is YamlList { Items.Count: > 0 } list ? Counted.Large(list.Items.Count, "length") : FieldReader.Kind(value))));
            return null;
        }

        var first = FigureReader.Length(one, "legs", Range.PositiveLength, context);
        var second = FigureReader.Length(other, "legs", Range.PositiveLength, context);
        return first is { } leg && second is { } last ? (leg, last) : null;
    }

    private TestPiece? Piece(FieldReader map, Angle turn, Length length, Length first, Length second, MeasuredTo habit, Tube? tube)
    {
        if (turn >= Tolerances.NoCorner && habit != MeasuredTo.Straight)
        {
            context.Report(RouteLayout.NoCorner.Error(
                map.PositionOf(map.Has("got") ? "got" : "included"),
                $"a test piece of {AngleNotation.Figure(turn)} has no corner to measure to: measure its flat parts and say `measured: "
                    + "straight` for it"));
            return null;
        }

        var diameter = (tube ?? tubes.OnlyOne)?.OutsideDiameter;
        if (habit.NeedsWireDiameter() && diameter is null)
        {
            if (tubes.HasSeveral)
            {
                context.Report(FileRules.MissingWord.Error(
                    map.PositionOf("measured"),
                    "legs measured over a tube's faces need its outside diameter, and the file has several tubes: add `tube:` with the "
                        + "name of the one that was bent"));
            }

            return null;
        }

        var piece = new TestPiece(length, first, second, habit, diameter);
        return radius is { } known && IsOnePiece(map, piece, turn, known) ? piece : null;
    }

    /// <summary>
    /// As a part of the arc by the radius: a bend hardly ever takes up so much more or less tube; more often the legs were measured in
    /// another way. Common practice, no source.
    /// </summary>
    private const double UsualStretch = 0.15;

    /// <summary>
    /// A tool's lines stand between the start and the corner of a square bend, a radius apart: further than this, in radii, a figure has
    /// slipped. Common practice, no source.
    /// </summary>
    private const double UsualOffset = 2;

    /// <summary>The mark lies on the piece; one that is far from the bend is a warning.</summary>
    private bool IsOnPiece(FieldReader map, TestPiece piece, Angle turn)
    {
        if (piece.Mark > piece.Length)
        {
            context.Report(FileRules.OutOfRange.Error(
                map.PositionOf("mark"),
                $"the mark lies {FindingFigures.Mm(piece.Mark!.Value)} along a piece of {FindingFigures.Mm(piece.Length)}: check both, and "
                    + "their units"));
            return false;
        }

        var offset = ToolLine.OffsetOf(piece, turn, radius!.Value, line);
        var most = UsualOffset * radius.Value;
        if (offset > most || offset < Length.Zero - most)
        {
            context.Report(FileRules.OutOfRange.Warning(
                map.PositionOf("mark"),
                $"the mark lies {FindingFigures.Mm(offset > Length.Zero ? offset : Length.Zero - offset)} from the "
                    + $"{(line == MarkPlace.Start ? "start" : "middle")} of the bend, further than a tool's line stands from it: `mark` "
                    + "and the first of `legs` are measured from the end of the side that was held; look whether the legs changed places"));
        }

        return true;
    }

    /// <summary>The legs and the length can belong together: the bend took up about as much tube as its radius says.</summary>
    private bool IsOnePiece(FieldReader map, TestPiece piece, Angle turn, Length tool)
    {
        var (taken, byRadius) = (PieceConversion.TubeInBend(piece, turn, tool), turn.Radians * tool);
        if (Range.ArcFactor.Allows(taken / byRadius))
        {
            if (Math.Abs((taken / byRadius) - 1) > UsualStretch)
            {
                context.Report(FileRules.OutOfRange.Warning(
                    map.PositionOf("legs"),
                    $"the bend of this piece took up {FindingFigures.Mm(taken)} of tube, and by the tool's radius it takes "
                        + $"{FindingFigures.Mm(byRadius)}: hand-bent tube is nearer to that, so look at `measured`, the lengths and the "
                        + "tool's `radius`"));
            }

            return true;
        }

        var (less, most) = (Range.ArcFactor.AtLeast * byRadius, Range.ArcFactor.AtMost * byRadius);
        context.Report(FileRules.OutOfRange.Error(
            map.PositionOf("legs"),
            string.Create(
                CultureInfo.InvariantCulture,
                $"`length` and `legs` do not belong together: they leave {FindingFigures.Mm(taken)} of tube for a bend of "
                    + $"{AngleNotation.Figure(turn)}, and by the tool's radius it takes {FindingFigures.Mm(byRadius)} (from "
                    + $"{FindingFigures.UpMm(less)} to {FindingFigures.DownMm(most)} can be); measure all three again, and look at "
                    + $"`measured` and the tool's `radius`")));
        return false;
    }
}
