using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Plumbing;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads the car's parts, and what connects them beside the lines.</summary>
internal sealed class CarPartsReader
{
    private readonly NameTable<Part> _parts = new("part", "parts", Vocabulary.Part);
    private readonly FieldReader _file;
    private readonly FileContext _context;

    private CarPartsReader(FieldReader file, FileContext context)
    {
        _file = file;
        _context = context;
        Ports = new PortFinder(_parts, context);
    }

    /// <summary>For whatever leads to a port.</summary>
    public PortFinder Ports { get; }

    /// <summary>Reads the parts; what connects them is read when all of them are known.</summary>
    public static CarPartsReader ReadParts(FieldReader file, FileContext context)
    {
        var reader = new CarPartsReader(file, context);
        var places = (file.Typed("parts") as YamlMap)?.Entries
            .ToDictionary<YamlEntry, YamlValue, SourcePosition>(
                entry => entry.Value, entry => entry.Key.Position, ReferenceEqualityComparer.Instance);
        reader._parts.Read(
            file,
            (name, value, of) => PartReader.Part(name, places?.GetValueOrDefault(value, value.Position) ?? value.Position, value, of),
            shortForm: false, context);
        return reader;
    }

    /// <summary>Everything that could be read.</summary>
    public CarParts Car() => new(
        _parts.All, Hoses(), [.. ScrewedIns()], _file.Choice("pedal-switch", YesOrNo.Choices) ?? false);

    private ImmutableArray<Hose> Hoses()
    {
        if (_file.Value("hoses") is not { } value)
        {
            return [];
        }

        if (value is not YamlMap { Entries: { Count: > 0 } entries })
        {
            _context.Report(FileRules.WrongKind.Error(
                value.Position,
                $"`hoses` has a name for each hose, such as `hoses: {{left: {Vocabulary.Hose.Example}}}`, and this is "
                    + $"{FieldReader.Kind(value)}"));
            return [];
        }

        return [.. entries.Select(Hose).OfType<Hose>()];
    }

    private Hose? Hose(YamlEntry entry)
    {
        var isNamed = NameCheck.CanBePrinted(entry.Key, "a hose", _context);
        if (FieldReader.Of(entry.Value, Vocabulary.Hose, _context) is not { } map)
        {
            return null;
        }

        var (from, to) = (End(map, "from"), End(map, "to"));
        var length = map.Length("length", Range.PositiveLength);
        var bentTo = map.Length("bent-to", Range.PositiveLength);
        var have = map.Count("have");
        var spans = map.Value("spans") is { } typed ? Spans(typed) : null;
        if (!map.Has("from") || !map.Has("to"))
        {
            map.ReportMissing($"hose {AsTyped.Show(entry.Key.Text)} needs both ends: add `{(map.Has("from") ? "to" : "from")}`, such as "
                + $"`{Vocabulary.Hose.Example}`");
        }

        return isNamed && from is not null && to is not null
            ? new(entry.Key.Text, from, to, length, have ?? 0, entry.Key.Position)
            {
                BentTo = bentTo,
                BentToAt = map.PositionOfValue("bent-to"),
                Spans = spans,
            }
            : null;
    }

    private HoseSpans? Spans(YamlValue typed)
    {
        if (FieldReader.Of(typed, Vocabulary.Spans, _context) is not { } map)
        {
            return null;
        }

        if (map.Words.Count == 0)
        {
            map.ReportMissing($"`spans` has no length in it: write it like `spans: {Vocabulary.Spans.Example}`");
            return null;
        }

        var spans = new HoseSpans(
            map.Length("droop", Range.PositiveLength),
            map.Length("bump", Range.PositiveLength),
            map.Length("lock", Range.PositiveLength),
            map.Position);
        return spans.All.Any() ? spans with { At = map.PositionOfValue(spans.Longest.Word) } : null;
    }

    private HoseEnd? End(FieldReader hose, string word)
    {
        if (Ports.End(hose, word, Vocabulary.HoseEnd) is not { } end)
        {
            return null;
        }

        if (end.Map is not { } map)
        {
            return new(end.At, end.Port, PortSpec.Unknown);
        }

        var spec = map.Has("is") ? (map.Text("is") is { } what ? PartReader.Spec(what, _context) : null) : PortSpec.Unknown;
        if (!map.Has("at"))
        {
            map.ReportMissing("an end of a hose needs what it connects to: add `at`, such as `{at: left-caliper.inlet, is: M10x1 banjo}`");
        }

        return spec is null ? null : new(end.At, end.Port, spec);
    }

    private IEnumerable<ScrewedIn> ScrewedIns()
    {
        foreach (var entry in (_file.Typed("parts") as YamlMap)?.Entries ?? [])
        {
            var typed = (entry.Value as YamlMap)?.Entries.FirstOrDefault(
                word => string.Equals(word.Key.Text, "screws-into", StringComparison.Ordinal));
            if (typed is null || !_parts.TryFind(entry.Key.Text, out var part) || part is null)
            {
                continue;
            }

            foreach (var (own, into) in Targets(part, typed))
            {
                if (Target(part, into) is { } place)
                {
                    yield return new(own, place);
                }
            }
        }
    }

    /// <summary>What a part sits in: the place of its only port, or a place for each of its ports that sits in another part.</summary>
    private IEnumerable<(PortPlace Own, YamlText Into)> Targets(Part part, YamlEntry typed)
    {
        switch (typed.Value)
        {
            case YamlText { IsEmpty: false } into:
                if (part.Ports is [var only])
                {
                    yield return (new(part, only, typed.Key.Position), into);
                }
                else
                {
                    _context.Report(FileRules.UnknownPort.Error(
                        into.Position,
                        $"part {AsTyped.Show(part.Name)} has several ports: say which of them screws in, such as `screws-into: "
                            + $"{{{part.Ports[0].Name}: tee.left}}`"));
                }

                break;
            case YamlMap { Entries.Count: > 0 } map:
                foreach (var entry in map.Entries)
                {
                    if (Ports.PortOf(part, entry.Key.Text, entry.Key) is { } own && entry.Value is YamlText { IsEmpty: false } target)
                    {
                        yield return (own, target);
                    }
                    else if (entry.Value is not YamlText { IsEmpty: false })
                    {
                        _context.Report(
                            FileRules.WrongKind.Error(
                                entry.Key.Position,
                                $"after {AsTyped.Show(entry.Key.Text)} type the port it screws into, such as `tee.left`"));
                    }
                }

                break;
            default:
                _context.Report(
                    FileRules.WrongKind.Error(
                        typed.Key.Position,
                        "`screws-into` is the port that the part sits in, such as `screws-into: tee.left`, and this is "
                            + $"{FieldReader.Kind(typed.Value)}"));
                break;
        }
    }

    /// <summary>Unlike a line, a part sits in another part and in nothing else.</summary>
    private PortPlace? Target(Part part, YamlText into)
    {
        if (Ports.Find(into, isOnlyPort: true) is not { } place)
        {
            return null;
        }

        if (!string.Equals(place.Part.Name, part.Name, StringComparison.Ordinal))
        {
            return place;
        }

        _context.Report(
            FileRules.Circle.Error(into.Position, $"part {AsTyped.Show(part.Name)} cannot sit in itself: name a port of another part"));
        return null;
    }
}
