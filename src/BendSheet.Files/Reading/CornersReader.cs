using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads corner points, typed as coordinates or as moves from one corner to the next. Null after findings.</summary>
internal static class CornersReader
{
    /// <summary>A list of <c>[forward, left, up]</c>.</summary>
    public static IReadOnlyList<CornerPoint>? Coordinates(YamlValue value, FileContext context)
    {
        if (value is not YamlList { Items.Count: >= 2 } list)
        {
            context.Report(FileRules.WrongKind.Error(
                value.Position,
                "`corners` is a list of at least two points, end A first, each forward, left and up: `[[0, 0, 0], [120, 0, 0], [160, "
                    + "40, 0]]`"));
            return null;
        }

        return TooMany(list, context) ? null : Complete(list.Items.Select(item => Coordinate(item, context)));
    }

    /// <summary>A list of moves from end A, such as <c>{up: 40, left: 15}</c>.</summary>
    public static IReadOnlyList<CornerPoint>? Moves(YamlValue value, FileContext context)
    {
        if (value is not YamlList { Items.Count: > 0 } list)
        {
            context.Report(FileRules.WrongKind.Error(
                value.Position, "`legs` is a list of moves from corner to corner, end A first: `[{forward: 120}, {up: 40, left: 15}]`"));
            return null;
        }

        if (TooMany(list, context))
        {
            return null;
        }

        var moves = list.Items.Select(item => (Move: Move(item, context), item.Position)).ToList();
        if (moves.Exists(move => move.Move is null))
        {
            return null;
        }

        var points = new List<CornerPoint> { new(default, value.Position) };
        foreach (var (move, position) in moves)
        {
            var observed = Observed(move!.Value, position);
            points.Add(new(points[^1].Position + move.Value, position)
            {
                From = points[^1].From is { } before ? [.. before.Zip(observed, Term.Sum)] : observed,
            });
        }

        return points;
    }

    private static bool TooMany(YamlList corners, FileContext context)
    {
        if (corners.Items.Count <= RowReader.MostRows)
        {
            return false;
        }

        context.Report(FileRules.TooManyRows.Error(
            corners.Items[RowReader.MostRows].Position,
            $"a line has at most {Counted.Large(RowReader.MostRows, "corner")}: nothing on a car has so many; divide the line"));
        return true;
    }

    private static List<CornerPoint>? Complete(IEnumerable<CornerPoint?> points)
    {
        var all = points.ToList();
        return all.TrueForAll(point => point is not null) ? all.ConvertAll(point => point!.Value) : null;
    }

    private static CornerPoint? Coordinate(YamlValue item, FileContext context)
    {
        if (item is not YamlList { Items: { Count: 3 } figures })
        {
            context.Report(
                FileRules.WrongKind.Error(
                    item.Position,
                    $"a corner is three figures, forward, left and up, such as `[120, 0, 40]`, and this is {FieldReader.Kind(item)}"));
            return null;
        }

        var lengths = figures.Select(figure => FigureReader.Length(figure, "corner", Range.SignedLength, context)).ToList();
        return lengths is [{ } x, { } y, { } z]
            ? new(new(x.Millimetres, y.Millimetres, z.Millimetres), item.Position)
            {
                From = Observed(new(x.Millimetres, y.Millimetres, z.Millimetres), item.Position),
            }
            : null;
    }

    /// <summary>Each of the three ways is observed: one that is not typed was seen to be zero.</summary>
    private static ImmutableArray<Term> Observed(Vector3D way, SourcePosition at) =>
    [
        new Observation(ObservationKind.Forward, way.X, at),
        new Observation(ObservationKind.Left, way.Y, at),
        new Observation(ObservationKind.Up, way.Z, at),
    ];

    private static Vector3D? Move(YamlValue item, FileContext context) =>
        FieldReader.Of(item, Vocabulary.Move, context) is { } map ? SpotReader.Sum(map, Range.LengthOrZero, "one move", context) : null;
}
