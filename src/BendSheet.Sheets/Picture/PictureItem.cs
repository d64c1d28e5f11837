using BendSheet.Core.Geometry;
using BendSheet.Core.Picture;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Picture;

/// <summary>What an item of the picture is.</summary>
internal enum ItemKind
{
    /// <summary>A line or a hose.</summary>
    Run,

    /// <summary>A part.</summary>
    Part,

    /// <summary>A zone to keep clear.</summary>
    Zone,
}

/// <summary>A line, a hose, a part or a zone with its points in the car.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Number">In the key.</param>
/// <param name="Label">Name, and length where it has one; printable.</param>
/// <param name="Points">Of a run from end to end; of a part its ports; of a zone points whose hull it is. In millimetres.</param>
internal sealed record PictureItem(ItemKind Kind, int Number, string Label, IReadOnlyList<Vector3D> Points)
{
    private const int RimPoints = 48;

    /// <summary>Of a run.</summary>
    public PicturedRun? Run { get; init; }

    /// <summary>All that the views show.</summary>
    public static IReadOnlyList<PictureItem> Of(CarPicture picture, Func<string, string> printable) =>
    [
        .. picture.Shown.Select(
            run => new PictureItem(ItemKind.Run, run.Number, printable(PictureWords.Label(run)), Way(run)) { Run = run }),
        .. picture.Parts.Where(part => !part.Places.IsEmpty)
            .Select(part => new PictureItem(ItemKind.Part, part.Number, printable(part.Name), part.Places)),
        .. picture.Zones.Select(zone => new PictureItem(ItemKind.Zone, zone.Number, printable(zone.Name), Rim(zone.Shape))),
    ];

    private static IReadOnlyList<Vector3D> Way(PicturedRun run) =>
        run.Tube is { } tube ? Polyline.Of(tube).Points : [run.Hose!.Value.A, run.Hose!.Value.B];

    private static IReadOnlyList<Vector3D> Rim(Solid shape) => shape switch
    {
        SolidBox box => [.. Corners(box.From, box.To)],
        SolidCylinder cylinder => [.. Rims(cylinder)],
        _ => [],
    };

    private static IEnumerable<Vector3D> Corners(Vector3D one, Vector3D other) =>
        from x in new[] { one.X, other.X }
        from y in new[] { one.Y, other.Y }
        from z in new[] { one.Z, other.Z }
        select new Vector3D(x, y, z);

    private static IEnumerable<Vector3D> Rims(SolidCylinder cylinder)
    {
        var axis = 1 / cylinder.From.DistanceTo(cylinder.To) * (cylinder.To - cylinder.From);
        var away = Math.Abs(axis.X) < 0.5 ? new Vector3D(1, 0, 0) : new Vector3D(0, 1, 0);
        var cross = axis.Cross(away);
        var side = 1 / cross.Norm * cross;
        var other = axis.Cross(side);
        for (var i = 0; i < RimPoints; i++)
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * i / RimPoints);
            var spoke = cylinder.Radius.Millimetres * ((cos * side) + (sin * other));
            yield return cylinder.From + spoke;
            yield return cylinder.To + spoke;
        }
    }
}
