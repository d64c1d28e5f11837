using System.Globalization;
using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Cli.Output;

/// <summary>
/// Every route as ordinary rows, ready to paste below <c>lines:</c> of a file in any unit: what coordinates, moves, templates, offsets,
/// saddles and coils come to, so that nobody has to trust a black box.
/// </summary>
public static class SolvedRows
{
    /// <summary>Fixed-point, as a typed figure is, and finer than any arithmetic on it.</summary>
    private const string FigureFormat = "0.############";

    /// <summary>The lines with their remarks.</summary>
    public static string Write(CarPlan plan)
    {
        var text = new StringBuilder(
            "# Each route as rows: go straight, roll the bending plane, bend. Paste what you need below `lines:` of your file.\n");
        var tools = RowTools.Of(plan);
        if (tools.OwnIsNamedHere)
        {
            Append(
                text,
                $"# at the top of the file, in place of `bender: {{…}}`: `benders: {{hand: {{…}}, {tools.Entries}}}`, ");
            Append(text, $"with what stood after `bender` between the braces of `hand`\n");
        }
        else if (tools.Entries.Length > 0)
        {
            Append(text, $"# with `{tools.Entries}` in `benders:`\n");
        }

        text.Append("lines:\n");
        foreach (var line in plan.Lines)
        {
            if (line.Layout is { } layout)
            {
                Append(text, line.Template, layout, tools);
            }
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, LineTemplate template, RouteLayout layout, RowTools tools)
    {
        var cornered = layout.Legs.All(leg => leg.CornerToCorner is not null);
        text.Append("  ").Append(Name(template.Name)).Append(":\n");
        AppendWord(text, "tube", template.Tube.Name);
        AppendWord(text, "bender", tools.NameOf(template.Bender));
        text.Append("    measured: ").Append(cornered ? "corner" : "straight").Append('\n');
        if (!cornered)
        {
            Append(text, $"    # with `wire: {{radius: {Mm(WireRadius(template))}}}` at the top of the file\n");
        }

        if (template.LiesOnCar)
        {
            Append(
                text,
                $"    # on the car end A lies at {Point(template.Start.Position)}, heads {Point(template.Start.Direction)} ");
            Append(text, $"and bends towards {Point(template.Start.Side)}\n");
        }

        text.Append("    rows:\n");
        for (var i = 0; i < layout.Legs.Length; i++)
        {
            var before = i == 0 ? null : layout.Bends[i - 1];
            var after = i == layout.Bends.Length ? null : layout.Bends[i];
            var straight = cornered ? layout.Legs[i].CornerToCorner!.Value : Flat(template, layout.Legs[i], before, after);
            Append(text, $"      - {{straight: {Mm(straight)}");
            if (after is not null)
            {
                AppendBend(text, after.Bend, template.Bender, tools);
            }

            text.Append("}\n");
        }
    }

    private static void AppendBend(StringBuilder text, Bend bend, Bender lines, RowTools tools)
    {
        if (bend.Rotation != Angle.Zero)
        {
            Append(text, $", rotate: {Figure(Math.Abs(bend.Rotation.Degrees))} {(bend.Rotation > Angle.Zero ? "cw" : "ccw")}");
        }

        Append(text, $", bend: {Figure(bend.Turn.Degrees)}");
        if (bend.Bender != lines)
        {
            Append(text, $", bender: {Name(tools.NameOf(bend))}");
        }

        if (bend.Note is { } note)
        {
            Append(text, $", note: {Name(note)}");
        }
    }

    /// <summary>The flat part on the wire that comes to this leg.</summary>
    private static Length Flat(LineTemplate template, LegLayout leg, BendLayout? before, BendLayout? after) =>
        leg.Whole - ((HalfTangent(before) + HalfTangent(after)) * WireRadius(template));

    private static double HalfTangent(BendLayout? bend) => bend is { Setback: { } setback } ? setback / bend.Radius : 0;

    private static Length WireRadius(LineTemplate template) => template.Wire.Radius ?? template.Bender.Radius;

    private static void AppendWord(StringBuilder text, string word, string value)
    {
        if (value.Length > 0)
        {
            Append(text, $"    {word}: {Name(value)}\n");
        }
    }

    internal static string Mm(Length length) => Figure(length.Millimetres) + " mm";

    private static string Point(Vector3D point) => $"[{Figure(point.X)}, {Figure(point.Y)}, {Figure(point.Z)}]";

    /// <summary>A small negative value, rounded to zero, would have a minus sign.</summary>
    private static string Figure(double value) =>
        value.ToString(FigureFormat, CultureInfo.InvariantCulture) is var figure && figure is "-0" ? "0" : figure;

    /// <summary>Quoted where YAML would read anything but a plain word in it.</summary>
    private static string Name(string name) =>
        name.All(character => char.IsAsciiLetterOrDigit(character) || character is '-' or '_' or ' ') && char.IsAsciiLetter(name[0])
        ? name
        : $"\"{name.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    private static void Append(StringBuilder text, FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture));
}
