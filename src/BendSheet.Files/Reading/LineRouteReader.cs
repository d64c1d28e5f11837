using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads a line's route, in the one form that it was typed in. Null after findings.</summary>
/// <param name="file">What the file says for all lines.</param>
/// <param name="context">For findings.</param>
internal sealed class LineRouteReader(FileDefaults file, FileContext context)
{
    /// <summary>The route of a line.</summary>
    public LineRoute? Read(FieldReader line, YamlText name, Bender? bender)
    {
        var said = RouteForm.All.Where(form => line.Has(form.Word)).ToList();
        if (said.Count > 1)
        {
            context.Report(FileRules.SaidTwice.Error(
                line.PositionOf(said[1].Word), $"`{said[0].Word}` and `{said[1].Word}` both say the route of this line: keep one of them"));
        }

        if (said.Count == 0 && !line.HasUnknownWord && !line.Has(RouteForm.Mirror) && !line.Has(RouteForm.Rough))
        {
            ReportNoRoute(name);
        }

        var isClear = !SaysWhatCornersSay(line, said) && said.Count == 1;
        var routes = said.ConvertAll(
            form => line.Value(form.Word) is { } value ? form.Read(this, new(line, value, bender, isClear)) : null);
        return isClear ? routes[0] : null;
    }

    /// <summary>Straights and bends, with how they lie.</summary>
    public LineRoute? OfRows(TypedRoute typed)
    {
        var route = new RowReader(typed.Bender, file.Benders, file.Templates, context).Route(typed.Value);
        var start = typed.Line.Value("start") is { } said ? StartReader.Read(said, context) : Frame.Default;
        var hasPlace = typed.Line.Typed("start") is YamlMap map
            && map.Entries.Any(entry => string.Equals(entry.Key.Text, "at", StringComparison.Ordinal));
        return route is null || start is null
            ? null
            : new(route, start.Value, typed.Line.Has("start")) { HasPlace = hasPlace };
    }

    /// <summary>Corner points of the car.</summary>
    public LineRoute? OfCorners(TypedRoute typed, Func<YamlValue, FileContext, IReadOnlyList<CornerPoint>?> read) =>
        Through(read(typed.Value, context), typed);

    /// <summary>Corner points that follow from distances between them: where they lie on the car is not known.</summary>
    public LineRoute? OfDistances(TypedRoute typed) => DistancesReader.Read(typed, file, context) is var (corners, fit)
        && Through(corners, typed) is { } route ? route with { LiesOnCar = false, HasWire = true, Corners = [], Taped = fit } : null;

    private LineRoute? Through(IReadOnlyList<CornerPoint>? points, TypedRoute typed)
    {
        if (points is null || typed.Bender is null || !typed.IsClear)
        {
            return null;
        }

        var (line, findings) = CornerRoute.Read(points, typed.Bender);
        foreach (var finding in findings)
        {
            context.Report(finding);
        }

        return line is null || RouteRange.Checked(line.Route, context) is null
            ? null
            : new(line.Route, line.Start, LiesOnCar: true) { HasWire = false, Corners = line.Corners };
    }

    private void ReportNoRoute(YamlText name)
    {
        var words = RouteForm.All.Select(form => $"`{form.Word}`").ToList();
        context.Report(FileRules.MissingWord.Error(
            name.Position,
            $"line {AsTyped.Show(name.Text)} has no route: add `{RouteForm.Rows.Word}:` with the template's straights and bends, "
            + $"or {string.Join(", ", words[1..^1])} or {words[^1]}; or `{RouteForm.Rough}: 2.4 m`, about its length, until there is a "
            + "template"));
    }

    /// <summary>Reports words that belong to another form; true where some of them say what corner points say already.</summary>
    private bool SaysWhatCornersSay(FieldReader line, List<RouteForm> said)
    {
        var saysIt = false;
        foreach (var form in RouteForm.All.Where(form => form.IsElsewhere(said)))
        {
            foreach (var word in form.WordsBeside.Where(line.Has))
            {
                context.Report(
                    FileRules.OutOfPlace.Error(line.PositionOf(word), $"`{word}` belongs to `{form.Word}`: {form.Elsewhere}; take it out"));
                saysIt |= !form.IsCorners;
            }
        }

        return saysIt;
    }
}
