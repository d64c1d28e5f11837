using System.Collections.Immutable;
using BendSheet.Core.Clearance;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads what lines keep clear of. A zone that is wrong is left out after a finding.</summary>
internal static class KeepClearReader
{
    private const string Word = "keep-clear";

    /// <summary>What the file says of the room about its lines.</summary>
    public static KeepClear Read(FieldReader file, FileContext context) =>
        new(Zones(file, context), file.Length("clearance", Range.LengthOrZero) ?? KeepClear.UsualBetween);

    private static ImmutableArray<KeepClearZone> Zones(FieldReader file, FileContext context)
    {
        if (file.Value(Word) is not { } value)
        {
            return [];
        }

        if (value is not YamlMap { Entries: { Count: > 0 } entries })
        {
            context.Report(FileRules.WrongKind.Error(
                value.Position,
                $"`{Word}` has a name for each part of the car that lines keep away from, such as `{Word}: {{exhaust: "
                    + $"{Vocabulary.Zone.Example}}}`, and this is {FieldReader.Kind(value)}"));
            return [];
        }

        if (entries.Count > KeepClearZone.Most)
        {
            context.Report(FileRules.OutOfRange.Error(
                entries[KeepClearZone.Most].Key.Position,
                $"a file has at most {KeepClearZone.Most} zones to keep clear: put some together"));
            return [];
        }

        return [.. entries.Select(entry => Zone(entry, context)).OfType<KeepClearZone>()];
    }

    private static KeepClearZone? Zone(YamlEntry entry, FileContext context)
    {
        var isNamed = NameCheck.CanBePrinted(entry.Key, "a zone", context);
        if (FieldReader.Of(entry.Value, Vocabulary.Zone, context) is not { } map)
        {
            return null;
        }

        var clearance = map.Length("clearance", Range.LengthOrZero);
        var why = map.FreeText("why");
        if (map.Has("box") == map.Has("cylinder"))
        {
            if (map.Has("box"))
            {
                context.Report(FileRules.SaidTwice.Error(
                    map.PositionOf("cylinder"), "`box` and `cylinder` both say where this zone is: keep one, and make two zones of both"));
            }
            else
            {
                map.ReportMissing(
                    $"zone {AsTyped.Show(entry.Key.Text)} has no shape: add `box` or `cylinder`, such as `{Vocabulary.Zone.Example}`");
            }

            return null;
        }

        Solid? shape = map.Has("box") ? Box(map, context) : Cylinder(map, context);
        return isNamed && shape is not null && map.Has("clearance") == clearance.HasValue
            ? new(entry.Key.Text, shape, clearance ?? KeepClearZone.UsualClearance, why, entry.Key.Position)
            : null;
    }

    private static SolidBox? Box(FieldReader zone, FileContext context) =>
        zone.Value("box") is { } value && FieldReader.Of(value, Vocabulary.ZoneBox, context) is { } map
            && Ends(map, "two opposite corners", context) is var (from, to) ? new(from, to) : null;

    private static SolidCylinder? Cylinder(FieldReader zone, FileContext context)
    {
        if (zone.Value("cylinder") is not { } value || FieldReader.Of(value, Vocabulary.ZoneCylinder, context) is not { } map)
        {
            return null;
        }

        var radius = map.Length("radius", Range.PositiveLength);
        if (!map.Has("radius"))
        {
            map.ReportMissing($"a cylinder needs its `radius`, such as `cylinder: {Vocabulary.ZoneCylinder.Example}`");
        }

        if (Ends(map, "the middles of its two ends", context) is not var (from, to) || radius is not { } round)
        {
            return null;
        }

        if (from.DistanceTo(to) > Tolerances.SamePoint.Millimetres)
        {
            return new(from, to, round);
        }

        context.Report(FileRules.OutOfRange.Error(
            map.PositionOf("to"), "a cylinder from a point to itself has no length: write the middles of its two ends"));
        return null;
    }

    private static (Vector3D From, Vector3D To)? Ends(FieldReader map, string what, FileContext context)
    {
        var from = map.Value("from") is { } first ? SpotReader.Place(first, context) : null;
        var to = map.Value("to") is { } second ? SpotReader.Place(second, context) : null;
        if (!map.Has("from") || !map.Has("to"))
        {
            map.ReportMissing($"`from` and `to` are {what}: add `{(map.Has("from") ? "to" : "from")}`, such as "
                + $"`from: {Vocabulary.Spot.Example}`");
        }

        return from is { } one && to is { } other ? (one, other) : null;
    }
}
