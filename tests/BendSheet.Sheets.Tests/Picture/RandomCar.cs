using BendSheet.Core.Geometry;
using BendSheet.Core.Picture;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Units;

namespace BendSheet.Sheets.Tests.Picture;

/// <summary>Cars that nobody built: lines, hoses, parts and zones anywhere, of any circuit.</summary>
internal static class RandomCar
{
    private static readonly LengthNotation Millimetres = new(Imperial: false, 32);

    /// <summary>With places.</summary>
    public static CarPicture Placed(Random random, int lines)
    {
        var circuits = random.Next(1, 9);
        var runs = new List<PicturedRun>();
        var parts = new List<PicturedPart>();
        for (var i = 0; i < lines; i++)
        {
            var name = Name(random, "line", i);
            runs.Add(new(ConnectionKind.Line, name, Length(random), End($"from-{i}"), End($"to-{i}"), random.Next(2) == 0)
            {
                Tube = Tube(random),
                Circuit = random.Next(4) == 0 ? null : random.Next(circuits),
            });
            if (random.Next(2) == 0)
            {
                parts.Add(new(Name(random, "part", i), "tee", IsSource: false, [runs[^1].Tube!.EndA, runs[^1].Tube!.EndB]));
            }

            if (random.Next(4) == 0)
            {
                runs.Add(new(ConnectionKind.Hose, $"hose-{i}", Length(random), End($"to-{i}"), End($"wheel-{i}"), IsMade: false)
                {
                    Hose = (runs[^1].Tube!.EndB, runs[^1].Tube!.EndB + new Vector3D(0, random.Next(50, 300), random.Next(-100, 100))),
                });
            }
        }

        var zones = Enumerable.Range(0, random.Next(4)).Select(i => (Name: $"zone {i}", Shape: Zone(random)));
        return Numbered(runs, parts, [.. zones], circuits);
    }

    /// <summary>Of ports without a place: trees, rings, ends that lead to no part.</summary>
    public static CarPicture Network(Random random, int lines)
    {
        var parts = Enumerable.Range(0, random.Next(1, lines + 2))
            .Select(i => new PicturedPart(Name(random, "part", i), "tee", IsSource: i % 20 == 3, [])).ToList();
        var reach = random.Next(1, 20);
        var runs = Enumerable.Range(0, lines).Select(i => new PicturedRun(
            random.Next(5) switch { 0 => ConnectionKind.Hose, 1 => ConnectionKind.ScrewedIn, _ => ConnectionKind.Line },
            Name(random, "line", i),
            random.Next(6) == 0 ? string.Empty : Length(random),
            To(i - random.Next(1, reach + 1)),
            To(i + 1),
            random.Next(2) == 0)
        {
            Circuit = random.Next(3) == 0 ? null : random.Next(3),
        });
        return Numbered([.. runs], parts, [], 3);

        PicturedEnd To(int i) => random.Next(12) == 0
            ? new(random.Next(2) == 0 ? "the reservoir" : "end A", null, IsNamed: false)
            : End(parts[Math.Abs(i) % parts.Count].Name);
    }

    private static CarPicture Numbered(
        List<PicturedRun> runs, List<PicturedPart> parts, List<(string Name, Solid Shape)> zones, int circuits)
    {
        var number = 0;
        return new(
            "Finch",
            Millimetres,
            [.. runs.Select(run => run.Kind == ConnectionKind.ScrewedIn ? run : run with { Number = ++number })],
            [.. parts.Select(part => part with { Number = ++number })],
            [.. zones.Select(zone => new PicturedZone(zone.Name, "25.0 mm", zone.Shape, ++number))],
            [.. Enumerable.Range(0, circuits).Select(i => FormattableString.Invariant($"circuit-{i}"))],
            []);
    }

    private static PicturedEnd End(string part) => new(part + ".in", part, IsNamed: true);

    /// <summary>Short ones as on most cars, and some that are too long for any label.</summary>
    private static string Name(Random random, string what, int i) => random.Next(12) == 0
        ? FormattableString.Invariant($"{new string('W', random.Next(1, 60))} {what} {i}")
        : FormattableString.Invariant($"{what}-{i}");

    private static string Length(Random random) => FormattableString.Invariant($"{random.Next(100, 3000)}.5 mm");

    private static TubeCentreline Tube(Random random)
    {
        var heading = random.Next(4) switch
        {
            0 => (new Vector3D(1, 0, 0), new Vector3D(0, 1, 0)),
            1 => (new Vector3D(-1, 0, 0), new Vector3D(0, 0, 1)),
            2 => (new Vector3D(0, 1, 0), new Vector3D(0, 0, 1)),
            _ => (new Vector3D(0, 0, -1), new Vector3D(1, 0, 0)),
        };
        var bends = random.Next(0, 7);
        var start = new Frame(
            new(random.Next(0, 2400), random.Next(-700, 700), random.Next(0, 600)), heading.Item1, heading.Item2);
        return TubeCentreline.Walk(
            start,
            [.. Enumerable.Range(0, bends + 1).Select(_ => BendSheet.Core.Units.Length.FromMillimetres(random.Next(40, 400)))],
            [.. Enumerable.Range(0, bends).Select(_ => new ArcAhead(
                Angle.FromDegrees(random.Next(-180, 181)),
                BendSheet.Core.Units.Length.FromMillimetres(14.3),
                Angle.FromDegrees(random.Next(15, 121))))]);
    }

    private static Solid Zone(Random random)
    {
        var from = new Vector3D(random.Next(0, 2200), random.Next(-600, 500), random.Next(0, 400));
        var to = from + new Vector3D(random.Next(50, 500), random.Next(50, 300), random.Next(50, 300));
        return random.Next(2) == 0
            ? new SolidBox(from, to)
            : new SolidCylinder(from, to, BendSheet.Core.Units.Length.FromMillimetres(random.Next(10, 60)));
    }
}
