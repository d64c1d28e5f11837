using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using BendSheet.Files.Typed;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads what lies in the workshop: tubes, benders and fittings. Null after findings that leave it incomplete.</summary>
internal static class WorkshopReader
{
    internal static readonly (MarkPlace Place, string Word)[] MarkPlaces = [(MarkPlace.Start, "start"), (MarkPlace.Middle, "middle")];

    /// <summary>
    /// 1/8 in is the smallest that publications on vehicle tube name, 3/4 in the largest; a little more on either side.
    /// </summary>
    private static Length SmallestUsual => Length.FromMillimetres(3);

    private static Length LargestUsual => Length.FromMillimetres(20);

    /// <summary>A tube.</summary>
    public static Tube? Tube(string name, YamlValue value, FileContext context)
    {
        if (FieldReader.Of(value, Vocabulary.Tube, context) is not { } map)
        {
            return null;
        }

        var wall = map.Length("wall", Range.PositiveLength);
        var material = map.FreeText("material");
        var smallest = map.Length("smallest-radius", Range.PositiveLength);
        if (map.Length("od", Range.PositiveLength) is not { } od)
        {
            if (!map.Has("od") && !map.HasUnknownWord)
            {
                context.Report(
                    FileRules.MissingWord.Error(map.Position, "a tube needs its outside diameter: add `od`, such as `od: 3/16 in`"));
            }

            return null;
        }

        if ((od < SmallestUsual || od > LargestUsual)
            && !FigureReader.IsBareFraction(map.Text("od")!.Text, context.UnitAt(map.PositionOfValue("od"))))
        {
            context.Report(FileRules.UnusualTube.Warning(
                map.PositionOfValue("od"),
                $"tube of {FindingFigures.Mm(od)} over the outside is no usual brake, clutch or fuel line, which has "
                    + $"{FindingFigures.Mm(SmallestUsual)} to {FindingFigures.Mm(LargestUsual)}: check `od` and its unit"));
        }

        if (wall is { } thickness && od <= 2 * thickness)
        {
            context.Report(FileRules.OutOfRange.Error(
                map.PositionOf("wall"),
                "the wall is half of the outside diameter or more, which leaves no hole: check `od` and `wall`, and their units"));
            return null;
        }

        return new(name, od, wall, material, smallest)
        {
            WallAt = map.PositionOfValue("wall"),
            MaterialAt = map.PositionOfValue("material")
        };
    }

    /// <summary>A bender.</summary>
    public static Bender? Bender(string name, YamlValue value, NameTable<Tube> tubes, FileContext context)
    {
        if (FieldReader.Of(value, Vocabulary.Bender, context) is not { } map)
        {
            return null;
        }

        var mark = map.Choice("mark", MarkPlaces);
        var line = map.FreeText("line");
        var offset = map.Length("offset", Range.SignedLength);
        var grip = map.Length("grip", Range.LengthOrZero);
        var follow = map.Length("follow", Range.LengthOrZero);
        var largest = map.Angle("largest-bend", Range.Turn);
        var factor = map.Number("arc-factor", Range.ArcFactor);
        var around = map.Length("room", Range.PositiveLength);
        var below = map.Length("clear-below", Range.LengthOrZero);
        var body = map.Length("body", Range.PositiveLength);
        var bentTo = map.Length("radius", Range.PositiveLength);
        var scatter = map.Value("scatter") is { } typed ? Scatter(typed, context) : null;
        var tests = map.Value("tests") is { } list ? new TestsReader(bentTo, mark ?? MarkPlace.Start, tubes, context).Read(list) : [];
        if (bentTo is not { } radius)
        {
            if (!map.Has("radius") && !map.HasUnknownWord)
            {
                context.Report(FileRules.MissingWord.Error(
                    map.Position,
                    "a bender needs the radius it bends to, measured to the tube's centreline: add `radius`, such as `radius: 9/16 in`"));
            }

            return null;
        }

        return new(name, radius, map.Value("radius")!.Position)
        {
            Mark = mark ?? MarkPlace.Start,
            Line = line,
            Offset = offset,
            Grip = grip ?? Length.Zero,
            Follow = follow ?? Length.Zero,
            LargestBend = largest,
            ArcFactor = factor,
            ClearAround = around,
            ClearBelow = below,
            Body = body,
            Scatter = scatter,
            Tests = tests,
        };
    }

    private static HandScatter? Scatter(YamlValue value, FileContext context)
    {
        if (FieldReader.Of(value, Vocabulary.Scatter, context) is not { } map)
        {
            return null;
        }

        var usual = HandScatter.CommonPractice;
        return new(
            map.Length("mark", Range.PositiveLength) ?? usual.Mark,
            map.Angle("bend", Range.PositiveAngle) ?? usual.Bend,
            map.Angle("roll", Range.PositiveAngle) ?? usual.Roll);
    }

    /// <summary>A fitting.</summary>
    public static Fitting? Fitting(string name, YamlValue value, FileContext context)
    {
        if (FieldReader.Of(value, Vocabulary.Fitting, context) is not { } map)
        {
            return null;
        }

        var flare = map.Choice("flare", Flares.All);
        var takes = map.Length("takes", Range.LengthOrZero);
        var countersink = map.Length("countersink", Range.LengthOrZero);
        var straight = map.Length("straight", Range.LengthOrZero);
        var thread = map.Text("thread") is { } typed ? Thread(typed, context) : null;
        var slideOns = map.Value("slide-on") is { } list ? Hardware(list, context) : [];
        if (flare is null)
        {
            if (!map.Has("flare") && !map.HasUnknownWord)
            {
                context.Report(FileRules.MissingWord.Error(
                    map.Position,
                    $"fitting {AsTyped.Show(name)} does not say how its end is formed: add `flare`, one of "
                        + $"{string.Join(", ", Flares.All.Select(known => $"`{known.Words}`"))}"));
            }

            return null;
        }

        if (flare == Flare.None && takes > Length.Zero)
        {
            context.Report(FileRules.OutOfPlace.Error(
                map.PositionOf("takes"), "a plain end takes up no tube: take `takes` out, or say which flare is made"));
        }

        if (countersink is not null && flare is not (Flare.Single37 or Flare.Single45))
        {
            context.Report(FileRules.OutOfPlace.Error(
                map.PositionOf("countersink"),
                "`countersink` says how far the tube of a single flare stands out of the bar, and this end has none: take it out"));
        }

        return new(name, flare.Value, takes ?? Length.Zero, slideOns, straight ?? Length.Zero)
        {
            FlareAt = map.PositionOfValue("flare"),
            Countersink = countersink,
            Thread = thread
        };
    }

    private static ScrewThread? Thread(YamlText text, FileContext context)
    {
        var thread = ThreadText.Read(text.Text);
        if (thread is null)
        {
            context.Report(
                FileRules.UnreadablePort.Error(
                    text.Position, $"{AsTyped.Show($"thread: {text.Text}")} is not a thread: write it like `3/8-24` or `M10x1`"));
        }

        return thread;
    }

    /// <summary>A list of single words with a length: <c>[{nut: 17}, {sleeve: 9}]</c>.</summary>
    private static ImmutableArray<EndHardware> Hardware(YamlValue value, FileContext context)
    {
        var pieces = ImmutableArray.CreateBuilder<EndHardware>();
        foreach (var item in value is YamlList list ? list.Items : [value])
        {
            if (item is YamlMap { Entries: [var piece] }
                && FieldReader.Of(item, new Vocabulary("a piece to slide on", "{nut: 17 mm}", [piece.Key.Text]), context) is { } map)
            {
                var hasName = NameCheck.CanBePrinted(piece.Key, "a piece to slide on", context);
                if (map.Length(piece.Key.Text, Range.PositiveLength) is { } length && hasName)
                {
                    pieces.Add(new(piece.Key.Text, length));
                }
            }
            else
            {
                context.Report(FileRules.WrongKind.Error(
                    item.Position,
                    "`slide-on` lists what goes on, in that order, each with its length: `slide-on: [{nut: 17}, {sleeve: 9}]`"));
            }
        }

        return pieces.ToImmutable();
    }
}
