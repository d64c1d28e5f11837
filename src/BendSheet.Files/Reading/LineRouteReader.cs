using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>A route and how it lies.</summary>
/// <param name="Route">Legs and bends.</param>
/// <param name="Start">End A, in the car's axes where somebody said so.</param>
/// <param name="LiesOnCar">Somebody said how it lies.</param>
/// <param name="Taped">What the taped distances came to, where the route was measured so.</param>
internal sealed record LineRoute(Route Route, Frame Start, bool LiesOnCar, TapedFit? Taped = null);

/// <summary>Reads a line's route, in the one of several ways that it was typed. Null after findings.</summary>
/// <param name="benders">All tools of the file.</param>
/// <param name="pieces">The templates that rows may use.</param>
/// <param name="context">For findings.</param>
internal sealed class LineRouteReader(NameTable<Bender> benders, Pieces pieces, FileContext context)
{
    private static readonly string[] Forms = ["rows", "corners", "legs", "distances"];

    private static readonly string[] SaidByPoints = ["start", "measured"];

    /// <summary>The route of a line.</summary>
    public LineRoute? Read(FieldReader line, YamlText name, Bender? bender)
    {
        var said = Forms.Where(line.Has).ToList();
        if (said.Count > 1)
        {
            context.Report(
                FileRules.SaidTwice.Error(
                    line.PositionOf(said[1]), $"`{said[0]}` and `{said[1]}` both say the route of this line: keep one of them"));
        }

        if (said.Count == 0 && !line.HasUnknownWord && !line.Has("mirror") && !line.Has("rough"))
        {
            context.Report(FileRules.MissingWord.Error(
                name.Position,
                $"line {AsTyped.Show(name.Text)} has no route: add `rows:` with the template's straights and bends, or `corners`, `legs` "
                    + "or `distances`; or `rough: 2.4 m`, about its length, until there is a template"));
        }

        var rows = line.Value("rows") is { } typedRows ? Rows(line, typedRows, bender) : null;
        var corners = line.Value("corners") is { } typedCorners ? CornersReader.Coordinates(typedCorners, context) : null;
        var moves = line.Value("legs") is { } typedMoves ? CornersReader.Moves(typedMoves, context) : null;
        var taped = line.Value("distances") is { } typedDistances ? DistancesReader.Read(line, typedDistances, context) : null;
        if (line.Has("side") && !line.Has("distances"))
        {
            context.Report(
                FileRules.OutOfPlace.Error(
                    line.PositionOf("side"), "`side` belongs to `distances`: other ways to say a route leave no side open; take it out"));
        }

        if (said.Any(form => !string.Equals(form, "rows", StringComparison.Ordinal)) && SaysWhatPointsSay(line))
        {
            return null;
        }

        return said.Count > 1 ? null
            : taped is { } measured
                ? Points(measured.Corners, bender) is { } route
                ? route with { LiesOnCar = false, Taped = measured.Fit } : null
            : rows ?? Points(corners ?? moves, bender);
    }

    private LineRoute? Rows(FieldReader line, YamlValue value, Bender? bender)
    {
        var route = new RowReader(bender, benders, pieces, context).Route(value);
        var start = line.Value("start") is { } typed ? StartReader.Read(typed, context) : Frame.Default;
        return route is null || start is null ? null : new(route, start.Value, line.Has("start"));
    }

    private LineRoute? Points(IReadOnlyList<CornerPoint>? points, Bender? bender)
    {
        if (points is null || bender is null)
        {
            return null;
        }

        var (route, start, findings) = CornerRoute.Read(points, bender);
        foreach (var finding in findings)
        {
            context.Report(finding);
        }

        return route is null ? null : new(route, start, LiesOnCar: true);
    }

    private bool SaysWhatPointsSay(FieldReader line)
    {
        var twice = SaidByPoints.Where(line.Has).ToList();
        foreach (var word in twice)
        {
            context.Report(FileRules.OutOfPlace.Error(
                line.PositionOf(word),
                $"`{word}` belongs to `rows`: corner points say already how the line lies and where its corners are; take it out"));
        }

        return twice.Count > 0;
    }
}
