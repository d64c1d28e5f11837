using System.Globalization;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Cli.Tests.Guide;

/// <summary>The drawings of README and the guide, made of the demo's own line and of the program's own geometry.</summary>
internal static class GuideDrawings
{
    /// <summary>The wire of a line in a view from the right and above, with what is typed at each leg and each bend.</summary>
    /// <param name="route">As typed, measured corner to corner.</param>
    /// <param name="corners">A, the corners and B, in millimetres.</param>
    public static string Wire(Route route, IReadOnlyList<Vector3D> corners)
    {
        var drawing = new Drawing(760, 425, "A wire with its measurements: straight, bend and rotate, from A to B");
        (double X, double Y) At(Vector3D p) => (40 + (1.4 * Math.Sqrt(0.75) * (p.X + p.Y)), 230 + (1.4 * (((p.X - p.Y) / 2) - p.Z)));
        for (var i = 1; i < corners.Count - 1; i++)
        {
            var ahead = Unit(corners[i] - corners[i - 1]);
            var next = Unit(corners[i + 1] - corners[i]);
            var steps = Enumerable.Range(0, 13).Select(k => Unit(((12 - k) * ahead) + (k * next))).ToList();
            drawing.Line("dash", At(corners[i]), At(corners[i] + (55 * ahead)));
            drawing.Line("turn", [.. steps.Select(way => At(corners[i] + (42 * way)))]);
        }

        drawing.Line("wire", [.. corners.Select(At)]);
        for (var i = 0; i < route.Legs.Length; i++)
        {
            var middle = At(0.5 * (corners[i] + corners[i + 1]));
            var rolled = i > 0 && i < route.Bends.Length;
            var below = i is 1 or 2;
            var x = middle.X + (i == 2 ? 34 : below ? 4 : i == 0 ? 0 : -14);
            var y = middle.Y + (i == 1 ? 50 : below ? 34 : i == 0 ? -22 : 4);
            var anchor = below ? "middle" : i == 0 ? "start" : "end";
            drawing.Write("label", (x, y), anchor, Invariant($"straight: {route.Legs[i].Measured.Millimetres:0.#}"));
            if (rolled)
            {
                drawing.Write("label", (x, y + 18), "middle", "rotate: " + Rotation(route.Bends[i].Rotation));
            }
        }

        for (var i = 0; i < corners.Count; i++)
        {
            var at = At(corners[i]);
            var isEnd = i == 0 || i == corners.Count - 1;
            drawing.Circle("knot", at, 11);
            drawing.Write("name", (at.X, at.Y + 5), "middle", i == 0 ? "A" : isEnd ? "B" : Invariant($"{i}"));
            if (!isEnd)
            {
                var right = i == 3;
                var place = right ? (at.X + 18, at.Y + 10) : (at.X, at.Y - 26);
                drawing.Write("label", place, right ? "start" : "middle", Invariant($"bend: {route.Bends[i - 1].Turn.Degrees:0.#}"));
            }
        }

        drawing.Write("small", (20, 415), "start", "Dashed: where the wire would go without the bend. bend is the angle from there.");
        return drawing.ToString();
    }

    /// <summary>How a rotation is read: along the straight between two bends, the straight that one came from pointing up.</summary>
    public static string Rotation()
    {
        var drawing = new Drawing(760, 330,
            "Reading a rotation: seen from A, the straight you came from up; the next one says 0, 90 cw, 180 or 90 ccw");
        drawing.Write("name", (20, 28), "start", "1. Look along the straight between the two bends, from its A side.");
        drawing.Line("wire", (60, 90), (60, 230), (300, 230), (360, 180));
        foreach (var (name, x, y) in new[] { ("A", 60, 90), ("1", 60, 230), ("2", 300, 230) })
        {
            drawing.Circle("knot", (x, y), 11);
            drawing.Write("name", (x, y + 5), "middle", name);
        }

        drawing.Arrow("look", (12, 262), (250, 262));
        drawing.Write("label", (20, 283), "start", "your eye looks this way");
        drawing.Write("label", (76, 140), "start", "the straight you came from");
        drawing.Write("label", (352, 170), "end", "the next straight");

        drawing.Write("name", (430, 60), "start", "2. Turn the wire: the straight you");
        drawing.Write("name", (430, 78), "start", "came from points straight up.");
        var middle = (X: 575.0, Y: 205.0);
        drawing.Circle("dial", middle, 76);
        foreach (var degrees in new[] { 0, 90, 180, -90 })
        {
            var (right, up) = NextSeenFromA(Angle.FromDegrees(degrees));
            var tip = (X: middle.X + (70 * right), Y: middle.Y - (70 * up));
            if (degrees != 0)
            {
                drawing.Line("next", middle, tip);
            }

            var side = right > 0.5 ? "right" : right < -0.5 ? "left" : up > 0.5 ? "up" : "down";
            var text = $"{side}: {(degrees == 0 ? "0" : Rotation(Angle.FromDegrees(degrees)))}";
            var anchor = right > 0.5 ? "start" : right < -0.5 ? "end" : "middle";
            drawing.Write("label", (middle.X + (86 * right), middle.Y - (94 * up) + 5), anchor, text);
        }

        drawing.Line("wire", middle, (middle.X, middle.Y - 52));
        drawing.Circle("end", middle, 9);
        drawing.Write("name", (20, 320), "start", "3. Read where the next straight points, like a clock hand. cw: clockwise.");
        return drawing.ToString();
    }

    /// <summary>
    /// How `ahead` and `aside` of a corner or of B are measured: a straight edge along the straight at A, a square across to the point.
    /// </summary>
    /// <param name="corners">A, the corners and B, in millimetres, the first straight along X.</param>
    public static string AheadAndAside(IReadOnlyList<Vector3D> corners)
    {
        var drawing = new Drawing(760, 400,
            "B ahead is measured along a straight edge held on the straight at A; B aside is measured across, with a square");
        var b = corners[^1];
        var aside = Math.Sqrt((b.Y * b.Y) + (b.Z * b.Z));
        (double X, double Y) At(Vector3D p) => (90 + (1.15 * p.X), 330 - (1.15 * (((p.Y * b.Y) + (p.Z * b.Z)) / aside)));
        var foot = At(new(b.X, 0, 0));
        drawing.Line("edge", (60, 340), (foot.X + 220, 340));
        drawing.Write("small", (foot.X + 60, 362), "start", "straight edge along the straight at A");
        drawing.Line("wire", [.. corners.Select(At)]);
        drawing.Line("dash", At(b), foot);
        drawing.Line("square", (foot.X - 16, foot.Y), (foot.X - 16, foot.Y - 16), (foot.X, foot.Y - 16));
        drawing.Arrow("size", ((At(corners[0]).X + foot.X) / 2, 375), (foot.X, 375));
        drawing.Arrow("size", ((At(corners[0]).X + foot.X) / 2, 375), (At(corners[0]).X, 375));
        drawing.Write("name", ((At(corners[0]).X + foot.X) / 2, 394), "middle", Invariant($"B ahead: {b.X:0.#}"));
        var top = At(b).Y;
        var right = corners.Max(corner => At(corner).X) + 30;
        drawing.Arrow("size", (right, (foot.Y + top) / 2), (right, foot.Y));
        drawing.Arrow("size", (right, (foot.Y + top) / 2), (right, top));
        drawing.Write("name", (right + 12, ((foot.Y + top) / 2) + 5), "start", Invariant($"B aside: {aside:0.#}"));
        drawing.Write("small", (right + 12, ((foot.Y + top) / 2) + 25), "start", "with a square, from the straight edge to B");
        for (var i = 0; i < corners.Count; i++)
        {
            var at = At(corners[i]);
            drawing.Circle("knot", at, 11);
            drawing.Write("name", (at.X, at.Y + 5), "middle", i == 0 ? "A" : i == corners.Count - 1 ? "B" : Invariant($"{i}"));
        }

        return drawing.ToString();
    }

    /// <summary>Where the straight after two square bends points, seen from A, the one before them pointing up.</summary>
    private static (double Right, double Up) NextSeenFromA(Angle rotation)
    {
        var (leg, radius, square) = (Length.FromMillimetres(50), Length.FromMillimetres(5), Angle.FromDegrees(90));
        var walked = TubeCentreline.Walk(
            Frame.Default, [leg, leg, leg], [new(Angle.FromDegrees(0), radius, square), new(rotation, radius, square)]);
        Vector3D first = walked.Corners[1]!.Value, second = walked.Corners[2]!.Value;
        Vector3D along = Unit(second - first), up = Unit(walked.EndA - first), next = Unit(walked.EndB - second);
        return (next.Dot(along.Cross(up)), next.Dot(up));
    }

    private static string Rotation(Angle rotation) => rotation.Degrees switch
    {
        180 => "180",
        < 0 => Invariant($"{-rotation.Degrees:0.#} ccw"),
        _ => Invariant($"{rotation.Degrees:0.#} cw"),
    };

    private static Vector3D Unit(Vector3D way) => (1 / way.Norm) * way;

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
