using System.Globalization;
using BendSheet.Core.Fittings;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Units;

namespace BendSheet.Core.Commissioning;

/// <summary>From network and filling to the words of the commissioning page.</summary>
public static class CommissioningWriter
{
    private const string Entry = "Before the first drive";

    private const string Disclaimer =
        "Use this page so that nothing is forgotten. It approves nothing: the makers' instructions, local rules and a licensed mechanic's "
            + "inspection come first. Do not drive before every box that applies is ticked by the person who looked.";

    private static readonly string[] Rechecks = ["after the first drive", "after the first week", "at", "at", "at"];

    private static readonly string[] Signatures = ["made and fitted", "looked at by a second person", "inspected by a licensed mechanic"];

    /// <summary>The page.</summary>
    /// <param name="project">Empty where the file does not say.</param>
    /// <param name="network">The whole car.</param>
    /// <param name="filling">Of it.</param>
    /// <param name="notation">How lengths are shown.</param>
    public static CommissioningContent Of(string project, PipeNetwork network, Filling filling, LengthNotation notation) => new(
        Entry,
        project.Length == 0 ? Entry : $"{Entry}: {project}",
        Disclaimer,
        [
            .. new[]
            {
                Joints(network), Hoses(network, notation), Fill(filling, notation), Bleed(filling, notation), Pressure(filling),
                Recheck(), Signed(),
            }.Where(section => !section.Rows.IsEmpty),
        ]);

    private static CommissioningSection Joints(PipeNetwork network) => new(
        "Every joint",
        ["Torque: from the maker of the part; write it in before you tighten. Dry: wiped, pressed, and looked at with a lamp."],
        ["Joint", "Between", "Torque", "Tight", "Dry under pressure", "Dry after first drive"],
        [
            .. network.Connections.SelectMany(JointsOf).Select(joint => new CommissioningRow(
                [
                    CommissioningCell.Of(joint.At), CommissioningCell.Of(joint.Between), CommissioningCell.Blank, CommissioningCell.Box,
                    CommissioningCell.Box, CommissioningCell.Box,
                ])),
            .. network.Car.Parts.SelectMany(part => part.Ports.Where(port => port.IsBleeder).Select(port => new CommissioningRow(
                [
                    CommissioningCell.Of($"{part.Name}.{port.Name}"), CommissioningCell.Of("bleed screw"), CommissioningCell.Blank,
                    CommissioningCell.Box, CommissioningCell.Box, CommissioningCell.Box,
                ]))),
        ]);

    /// <summary>A part that sits in another one has one joint, a line or a hose two.</summary>
    private static IEnumerable<(string At, string Between)> JointsOf(Connection connection) => connection.Kind == ConnectionKind.ScrewedIn
        ? [(connection.B.Port!.InWords, connection.InWords)]
        : connection.Ends.Select(end => (end.Port?.InWords ?? end.At ?? "no port named", Between(connection, end)));

    private static string Between(Connection connection, ConnectionEnd end)
    {
        var fitting = end.Fitting is { } known ? $", {known.Name}" : string.Empty;
        var seat = end.Port?.Port.Spec.Seat is { } on ? $", on {on.InWords()}" : string.Empty;
        return connection.Kind == ConnectionKind.Line ? $"{end.Name}{fitting}{seat}" : $"{connection.InWords}{seat}";
    }

    private static CommissioningSection Hoses(PipeNetwork network, LengthNotation notation) => new(
        "Hoses, watched while they move",
        [
            "Wheel from droop to bump, then steering from lock to lock at both: no hose may stretch, kink, twist, rub or touch tyre, "
                + "spring or exhaust.",
            "A hose is 5 to 8 % longer than its longest way (FAA-H-8083-30, p. 7-19).",
        ],
        ["Hose", "Needed", "Typed", "Droop", "Bump", "Lock left", "Lock right", "Touches nothing"],
        [
            .. network.Car.Hoses.Select(hose => new CommissioningRow(
            [
                CommissioningCell.Of(hose.Name),
                hose.Spans is { } spans
                    ? CommissioningCell.Of($"{notation.WithUnit(spans.Least)} to {notation.WithUnit(spans.Most)}")
                    : CommissioningCell.Blank,
                hose.Length is { } length ? CommissioningCell.Of(notation.WithUnit(length)) : CommissioningCell.Blank,
                CommissioningCell.Box, CommissioningCell.Box, CommissioningCell.Box, CommissioningCell.Box, CommissioningCell.Box,
            ])),
        ]);

    private static CommissioningSection Fill(Filling filling, LengthNotation notation) => new(
        "Filling",
        ["In the lines only: cylinders, calipers, hoses and the reservoir are not included. Fresh fluid of the kind that the maker names."],
        ["Circuit", "Lines hold", "Tube", "Not counted", "Filled"],
        [
            .. filling.Circuits.Select(circuit => new CommissioningRow(
            [
                CommissioningCell.Of(circuit.Circuit.InWords),
                CommissioningCell.Of(circuit.Litres > 0 ? InLitres(circuit.Litres) : "not known"),
                CommissioningCell.Of(notation.WithUnit(circuit.Tube)),
                CommissioningCell.Of(string.Join(", ", circuit.NotCounted)),
                CommissioningCell.Box,
            ])),
        ]);

    /// <summary><c>0.024 litres</c>.</summary>
    public static string InLitres(double litres) => litres.ToString("0.000", CultureInfo.InvariantCulture) + " litres";

    private static CommissioningSection Bleed(Filling filling, LengthNotation notation) => new(
        "Bleeding",
        [
            "Longest way first, as a help: the car maker's order rules where there is one.",
            .. filling.HighPlaces.Select(
                high => $"Line {high.Line} has a hump {notation.WithUnit(high.Hump.Height)} high, "
                    + $"{notation.WithUnit(high.Hump.AlongTube)} along the tube from A: air stays there."),
        ],
        ["Bleed screw", "Circuit", "Tube", "Hose", "No more air"],
        [
            .. filling.Bleeders.Select(way => new CommissioningRow(
            [
                CommissioningCell.Of(way.Bleeder),
                CommissioningCell.Of(way.Circuit.InWords),
                CommissioningCell.Of((way.IsAtLeast ? "at least " : string.Empty) + notation.WithUnit(way.Tube)),
                CommissioningCell.Of(notation.WithUnit(way.Hose)),
                CommissioningCell.Box,
            ])),
        ]);

    private static CommissioningSection Pressure(Filling filling) => new(
        "Pressure held",
        [
            "Press the pedal and hold it: it must not sink, and no joint may weep. The maker or local rules say how hard to press, and for "
                + "how long.",
            "A published example: 125 lb on the pedal for 10 s, for hydraulic brakes of vehicles over 10,000 lb (49 CFR 570.55).",
        ],
        ["Circuit", "Pedal force", "Seconds", "Pedal did not sink", "All joints dry"],
        [
            .. filling.Circuits.Select(circuit => new CommissioningRow(
            [
                CommissioningCell.Of(circuit.Circuit.InWords), CommissioningCell.Blank, CommissioningCell.Blank, CommissioningCell.Box,
                CommissioningCell.Box,
            ])),
        ]);

    private static CommissioningSection Recheck() => new(
        "Looked at again",
        ["Every joint, every hose, every clip and the level of the fluid."],
        ["When", "Date", "Miles or km", "Who", "Good"],
        [
            .. Rechecks.Select(when => new CommissioningRow(
            [
                string.Equals(when, "at", StringComparison.Ordinal) ? new(CellKind.Blank, when) : CommissioningCell.Of(when),
                CommissioningCell.Blank, CommissioningCell.Blank, CommissioningCell.Blank, CommissioningCell.Box,
            ])),
        ]);

    private static CommissioningSection Signed() => new(
        "Who looked",
        [],
        ["What", "Date", "Name", "Signature"],
        [
            .. Signatures.Select(what =>
                new CommissioningRow(
                    [CommissioningCell.Of(what), CommissioningCell.Blank, CommissioningCell.Blank, CommissioningCell.Blank])),
        ]);
}
