using System.Globalization;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Files.Reading;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

/// <summary>Random lines in every form that a route can be typed in.</summary>
internal static class TypedForms
{
    private const string Top =
        "units: mm\ntube: {od: 3/16 in}\nbender: {radius: 9/16 in}\nwire: {diameter: 2.4, radius: 4}\n"
            + "tolerance: {straight: 0.5, bend: 0.5, rotate: 1, tape: 0.4}\n";

    /// <summary>What a figure is of.</summary>
    public enum Kind
    {
        Straight,
        Bend,
        Rotation,
        Tape,
    }

    public static IReadOnlyList<string> All { get; } =
    [
        "corner", "straight", "outside", "inside", "along", "u-bend", "offset", "run", "saddle", "box", "use", "corners", "legs",
        "distances",
    ];

    /// <summary>The line of a file that has these figures.</summary>
    /// <param name="form">One of <see cref="All"/>.</param>
    /// <param name="f">Its figures, as <see cref="Figures"/> lists them.</param>
    /// <param name="more">Another word of the line with its value, such as <c>taped: {A-B: 300}</c>.</param>
    public static LineTemplate Line(string form, double[] f, string more = "")
    {
        var file = File(form, f, more);
        Assert.True(file.Lines is [_], string.Join(Environment.NewLine, file.Findings));
        return file.Lines[0];
    }

    /// <summary>The file with such a line.</summary>
    public static TemplateFile File(string form, double[] f, string more = "")
    {
        string N(int i) => f[i].ToString("R", CultureInfo.InvariantCulture);
        var body = form switch
        {
            "u-bend" => $"    measured: straight\n    rows: [{{straight: {N(0)}, bend: {N(1)}}}, {{straight: {N(2)}, rotate: {N(3)}, bend: "
                + $"{N(4)}}}, {{straight: {N(5)}}}]\n",
            "offset" =>
                $"    rows: [{{straight: {N(0)}, offset: {N(1)}, bend: {N(2)}, rotate: 0}}, {{straight: {N(3)}, rotate: {N(4)}, bend: "
                + $"{N(5)}}}, {{straight: {N(6)}}}]\n",
            "run" => $"    rows: [{{straight: {N(0)}, offset: {N(1)}, run: {N(2)}, rotate: 0}}, {{straight: {N(3)}, rotate: {N(4)}, bend: "
                + $"{N(5)}}}, {{straight: {N(6)}}}]\n",
            "saddle" =>
                $"    rows: [{{straight: {N(0)}, saddle: {N(1)}, bends: 3, bend: {N(2)}}}, {{straight: {N(3)}, rotate: {N(4)}, bend: "
                + $"{N(5)}}}, {{straight: {N(6)}}}]\n",
            "box" => $"    rows: [{{straight: {N(0)}, saddle: {N(1)}, bends: 4, bend: {N(2)}, width: {N(3)}}}, {{straight: {N(4)}, rotate: "
                + $"{N(5)}, bend: {N(6)}}}, {{straight: {N(7)}}}]\n",
            "use" => $"    rows: [{{straight: {N(0)}, bend: {N(1)}}}, {{use: piece, rotate: {N(2)}}}, {{straight: {N(3)}}}, {{use: piece, "
                + $"rotate: {N(4)}, reverse: true, mirror: true}}, {{straight: {N(5)}}}]\n",
            "corners" => $"    corners: [[{N(0)}, {N(1)}, {N(2)}], [{N(3)}, {N(4)}, {N(5)}], [{N(6)}, {N(7)}, {N(8)}], [{N(9)}, {N(10)}, "
                + $"{N(11)}]]\n",
            "legs" =>
                $"    legs: [{{forward: {N(0)}, left: {N(1)}, up: {N(2)}}}, {{forward: {N(3)}, left: {N(4)}, up: {N(5)}}}, {{forward: "
                + $"{N(6)}, left: {N(7)}, up: {N(8)}}}]\n",
            "distances" => $"    distances: {{0-1: {N(0)}, 0-2: {N(1)}, 1-2: {N(2)}, 0-3: {N(3)}, 1-3: {N(4)}, 2-3: {N(5)}, 0-4: {N(6)}, "
                + $"1-4: {N(7)}, 2-4: {N(8)}, 3-4: {N(9)}}}\n    side: {{2: right, 3: right}}\n",
            _ =>
                $"    measured: {form}\n    rows: [{{straight: {N(0)}, bend: {N(1)}}}, {{straight: {N(2)}, rotate: {N(3)}, bend: {N(4)}}}, "
                + $"{{straight: {N(5)}, rotate: {N(6)}, bend: {N(7)}}}, {{straight: {N(8)}}}]\n",
        };
        var templates = form is "use"
            ? $"templates: {{piece: [{{straight: {N(6)}, bend: {N(7)}}}, {{straight: {N(8)}}}]}}\n"
            : string.Empty;
        return Read(Top + templates + "lines:\n  a:\n" + body + (more.Length == 0 ? more : $"    {more}\n"));
    }

    /// <summary>Of a random line of a form, in the order of the file.</summary>
    public static (Kind Kind, double Value)[] Figures(string form, Random random)
    {
        (Kind, double) S() => (Kind.Straight, Between(random, 120, 300));
        (Kind, double) A() => (Kind.Bend, Between(random, 25, 100));
        (Kind, double) R() => (Kind.Rotation, Between(random, 40, 140));
        return form switch
        {
            "u-bend" => [S(), (Kind.Bend, 180 + Between(random, 5, 20)), S(), R(), A(), S()],
            "offset" => [S(), (Kind.Straight, Between(random, 40, 80)), (Kind.Bend, Between(random, 30, 60)), S(), R(), A(), S()],
            "run" => [S(), (Kind.Straight, Between(random, 40, 80)), (Kind.Straight, Between(random, 60, 120)), S(), R(), A(), S()],
            "saddle" => [S(), (Kind.Straight, Between(random, 40, 80)), (Kind.Bend, Between(random, 30, 45)), S(), R(), A(), S()],
            "box" =>
            [
                S(), (Kind.Straight, Between(random, 40, 80)), (Kind.Bend, Between(random, 30, 60)), S(), S(), R(), A(), S(),
            ],
            "use" => [S(), A(), R(), S(), R(), S(), S(), A(), S()],
            "corners" or "legs" => [.. Enumerable.Range(0, form is "legs" ? 9 : 12).Select(i => (Kind.Tape, Part(form, i, random)))],
            "distances" => [.. Distances(random).Select(distance => (Kind.Tape, distance))],
            _ => [S(), A(), S(), R(), A(), S(), R(), A(), S()],
        };
    }

    /// <summary>Corners that turn well, a coordinate or a part of the way each.</summary>
    private static double Part(string form, int index, Random random)
    {
        double[] corners = [0, 0, 0, 200, 20, 10, 260, 220, 40, 240, 260, 260];
        double[] moves = [200, 20, 10, 60, 200, 30, 30, 40, 220];
        return (form is "legs" ? moves : corners)[index] + Between(random, 0, 20);
    }

    /// <summary>All between five points, of which no four lie near a plane.</summary>
    private static IEnumerable<double> Distances(Random random)
    {
        Vector3D[] points =
        [
            new(0, 0, 0), new(200, Between(random, 0, 20), 0), new(240, 200, Between(random, 0, 20)), new(120, 300, 150),
            new(20, 200, Between(random, 250, 300)),
        ];
        for (var to = 1; to < points.Length; to++)
        {
            for (var from = 0; from < to; from++)
            {
                yield return points[from].DistanceTo(points[to]);
            }
        }
    }

    /// <summary>Seen from A: its straight ahead, the first bend to the side.</summary>
    public static Vector3D EndB(LineTemplate template) => Corners(template)[^1];

    /// <summary>End A, the corners, end B, all of which it has, seen so.</summary>
    public static Vector3D[] Corners(LineTemplate template)
    {
        var centreline = RouteLayout.Of(template).Layout!.Centreline(template.Start);
        var start = centreline.Arcs[0].Start;
        return
        [
            .. centreline.Corners.OfType<Vector3D>().Select(corner => corner - centreline.EndA)
                .Select(way => new Vector3D(way.Dot(start.Direction), way.Dot(start.Side), way.Dot(start.Axis))),
        ];
    }

    /// <summary>One that is made in reading a figure, as large as the tolerance says: normal, in millimetres or degrees.</summary>
    public static double Error(Random random, Kind kind)
    {
        var normal = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        return normal * Deviation(kind);
    }

    /// <summary>As the files say it, in millimetres or degrees.</summary>
    public static double Deviation(Kind kind) => kind switch { Kind.Rotation => 1, Kind.Tape => 0.4, _ => 0.5 };

    private static double Between(Random random, double from, double to) => from + ((to - from) * random.NextDouble());
}
