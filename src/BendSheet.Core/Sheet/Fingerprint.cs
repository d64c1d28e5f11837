using System.Globalization;
using System.Text;
using BendSheet.Core.Bench;
using BendSheet.Core.Fittings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Sheet;

/// <summary>
/// Six characters that tell a sheet made from an older file from a current one. They depend on everything typed about the line that its
/// sheet is made from, and on nothing else: not on how that is adjusted, not on the file's name, its comments or the places where things
/// were typed, and not on whether the line is made, because the sheet beside the finished line must stay the sheet of the file.
/// </summary>
public static class Fingerprint
{
    /// <summary>
    /// Nobody reads a ten-thousandth, and what follows from what was typed differs in its last digits from machine to machine.
    /// </summary>
    private const double PartsOfOne = 10_000;

    /// <summary>The first six digits of the hash of the line's input, as typed.</summary>
    public static string Of(LineTemplate template, string project, LengthNotation notation)
    {
        var text = new StringBuilder();

        // The last value was once whether the line is made: without it every sheet that is printed already would have another number.
        Add(text, project, template.Name, template.Habit, notation.Imperial, notation.FractionsOf, false);
        var tube = template.Tube;
        Add(text, tube.OutsideDiameter, tube.Wall, tube.Material, tube.SmallestRadius);
        Add(text, template.Wire.Diameter, template.Wire.Radius);
        Add(text, template.Tolerance?.Straight, template.Tolerance?.Bend, template.Tolerance?.Rotate);
        Add(text, template.Tolerance?.Tape, template.Tolerance?.Square, template.Wanted.Miss, template.Wanted.Askew);
        Add(text, template.Start.Position, template.Start.Direction, template.Start.Side, template.LiesOnCar);
        Add(text, template.Clips?.Every, template.Clips?.FromEnds, template.Clips?.Hole);
        if (template.Clips is { } clips)
        {
            Add(text, clips.Width);
            if (clips.Rail is { } rail)
            {
                Add(text, rail);
            }
        }

        AddEnd(text, template.From);
        AddEnd(text, template.To);
        var toolFrom = text.Length;
        AddBender(text, template.Bender, tube);
        var tool = text.ToString(toolFrom, text.Length - toolFrom);
        foreach (var leg in template.Route.Legs)
        {
            Add(text, leg.Measured, leg.Habit);
        }

        foreach (var bend in template.Route.Bends)
        {
            Add(text, bend.Turn, bend.Rotation, bend.Note, bend.FromTangent);
            if (ReferenceEquals(bend.Bender, template.Bender))
            {
                text.Append(tool);
            }
            else
            {
                AddBender(text, bend.Bender, tube);
            }
        }

        AddDeviations(text, template.Route);
        AddTaped(text, template);
        if (!template.HasWire || template.WireOf is not null)
        {
            Add(text, template.HasWire, template.WireOf, template.MirrorsWire);
        }

        return ContentHash.Of(Encoding.UTF8.GetBytes(text.ToString()))[..6];
    }

    /// <summary>What was measured beside the route, and on the piece.</summary>
    private static void AddTaped(StringBuilder text, LineTemplate template)
    {
        foreach (var taped in template.Beside)
        {
            Add(text, taped.Quantity.Kind, taped.Quantity.From, taped.Quantity.To, taped.Quantity.Axis, taped.Value, taped.Within);
            if (taped.Quantity.Back is not null)
            {
                Add(text, "back");
            }
        }

        foreach (var check in template.Checks)
        {
            Add(text, check.Quantity.Kind, check.Quantity.From, check.Quantity.To, check.Value, check.Within);
        }

        Add(text, [.. template.Bent]);
        Add(text, template.TrialFit?.Ahead, template.TrialFit?.Aside);
    }

    /// <summary>One standard deviation of each figure that was typed with its own, in millimetres or radians.</summary>
    private static void AddDeviations(StringBuilder text, Route route)
    {
        var terms = route.Legs.Select(leg => leg.From).Concat(route.Bends.SelectMany(bend => new[] { bend.RotationFrom, bend.TurnFrom }));
        foreach (var term in terms)
        {
            term?.ValueWith(observation =>
            {
                if (observation.Within is { } within)
                {
                    Add(text, within);
                }

                return observation.Value;
            });
        }
    }

    private static void AddEnd(StringBuilder text, LineEnd end)
    {
        Add(text, end.At, end.Trim, end.Fitting?.Name, end.Fitting?.Flare, end.Fitting?.FlareAllowance, end.Fitting?.Straight);
        if (end.Fitting?.Countersink is { } countersink)
        {
            Add(text, countersink);
        }

        foreach (var piece in end.Fitting?.Hardware ?? [])
        {
            Add(text, piece.Name, piece.Length);
        }

        if (end.Port?.Port.Lie is { } lie)
        {
            Add(text, lie.Position, lie.Facing, lie.Within);
        }

        if (end.Port?.Port.Spec is { } port)
        {
            // The sheet says so where the thread or the seat does not fit.
            Add(text, end.Fitting?.Thread?.InWords, port.InWords, port.Source?.InWords);
        }
    }

    private static void AddBender(StringBuilder text, Bender bender, Tube tube)
    {
        Add(
            text,
            bender.Name,
            bender.Radius,
            bender.Mark,
            ToolLine.Of(bender).Offset,
            bender.Grip,
            bender.Follow,
            bender.LargestBend,
            bender.ArcFactor,
            bender.ClearAround, bender.ClearBelow, bender.Body);
        if (bender.Line is { } line)
        {
            Add(text, line);
        }

        foreach (var test in bender.Tests.Where(test => test.CountsFor(tube)))
        {
            Add(
                text,
                test.Got,
                test.Pull,
                test.Piece?.Length,
                test.Piece?.FirstLeg,
                test.Piece?.SecondLeg,
                test.Piece?.Habit,
                test.Piece?.OutsideDiameter);
        }

        // Where the tool's line stands is the same on every tube.
        foreach (var test in bender.Tests.Where(test => test.Piece?.Mark is not null))
        {
            Add(text, test.Got, test.Piece!.Length, test.Piece.FirstLeg, test.Piece.SecondLeg, test.Piece.Habit, test.Piece.Mark);
        }
    }

    private static void Add(StringBuilder text, params ReadOnlySpan<object?> values)
    {
        foreach (var value in values)
        {
            text.Append(CultureInfo.InvariantCulture, $"{Rounded(value)}\u001f");
        }

        text.Append('\n');
    }

    private static object? Rounded(object? value) => value switch
    {
        Length length => Rounded(length.Millimetres),
        Angle angle => Rounded(angle.Degrees),
        double number => Rounded(number),
        Vector3D way => FormattableString.Invariant($"{Rounded(way.X)} {Rounded(way.Y)} {Rounded(way.Z)}"),
        _ => value,
    };

    private static long Rounded(double number) => (long)Math.Round(number * PartsOfOne);
}
