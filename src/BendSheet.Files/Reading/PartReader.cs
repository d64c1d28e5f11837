using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Files.Typed;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads a part with its ports. Null after findings that leave it incomplete.</summary>
internal static class PartReader
{
    /// <summary>Where a wheel's part can be fixed instead of its usual place.</summary>
    internal static readonly (bool OnChassis, string Word)[] Mountings = [(true, "chassis")];

    /// <summary>One part.</summary>
    /// <param name="name">What it is called; empty where the name cannot be printed.</param>
    /// <param name="at">Where its name was typed.</param>
    /// <param name="value">What follows the name.</param>
    /// <param name="context">For findings.</param>
    public static Part? Part(string name, SourcePosition at, YamlValue value, FileContext context)
    {
        if (FieldReader.Of(value, Vocabulary.Part, context) is not { } map)
        {
            return null;
        }

        var kind = map.Choice("kind", PartKinds.All);
        var mounted = map.Choice("mounted", Mountings);
        var have = map.Count("have");
        var lie = SpotReader.Lie(map, null, context);
        if (!map.Has("kind"))
        {
            map.ReportMissing($"part {AsTyped.Show(name)} does not say what it is: add `kind`, one of "
                + $"{string.Join(", ", PartKinds.All.Select(known => $"`{known.Word}`"))}");
        }

        var ports = map.Has("ports")
            ? (map.Value("ports") is { } typed ? Ports(typed, kind, lie, context) : null)
            : Usual(kind, PortSpec.Unknown, lie);
        if (kind is null || ports is not { } all || (map.Has("have") && have is null))
        {
            return null;
        }

        if (all.IsEmpty)
        {
            map.ReportMissing($"part {AsTyped.Show(name)} has no ports: add them by name, such as `ports: {{front: 3/8-24 inverted 45, "
                + $"rear: 3/8-24 inverted 45}}`");
            return null;
        }

        if (map.Has("mounted") && !kind.Value.IsWheel())
        {
            context.Report(FileRules.OutOfPlace.Error(
                map.PositionOf("mounted"),
                $"`mounted: chassis` is for a caliper or a wheel cylinder that does not move with its wheel, and {AsTyped.Show(name)} is a "
                    + $"{kind.Value.Word()}: take it out"));
        }

        return new(name, kind.Value, all, have ?? 0, at) { IsOnChassis = mounted is not null };
    }

    /// <summary>What follows <c>is</c>, or alone in its place; null after a finding.</summary>
    public static PortSpec? Spec(YamlText text, FileContext context)
    {
        var wrong = PortText.Read(text.Text, out var port);
        if (wrong is not null)
        {
            context.Report(FileRules.UnreadablePort.Error(text.Position, $"{AsTyped.Show(text.Text)} {wrong}"));
        }

        return wrong is null ? port : null;
    }

    /// <summary>
    /// A map of names, a list of names whose threads are not known yet, or one text for all the ports that such a part has.
    /// </summary>
    private static ImmutableArray<Port>? Ports(YamlValue value, PartKind? kind, PortLie? lie, FileContext context)
    {
        if (value is YamlText same)
        {
            var spec = Spec(same, context);
            if (spec is not null && kind is { } known && known.UsualPorts().IsEmpty)
            {
                context.Report(FileRules.WrongKind.Error(
                    value.Position,
                    $"the ports of a {known.Word()} have no usual names: name each, such as `ports: {{front: "
                        + $"{AsTyped.Show(same.Text).Trim('`')}}}`"));
                return null;
            }

            return spec is null ? null : Usual(kind, spec, lie);
        }

        var entries = value switch
        {
            YamlMap map => map.Entries,
            YamlList { Items: var items } when items.All(item => item is YamlText) =>
                [.. items.Cast<YamlText>().Select(item => new YamlEntry(item, new YamlText(string.Empty, IsPlain: true, item.Position)))],
            _ => [],
        };
        if (entries.Count == 0)
        {
            context.Report(FileRules.WrongKind.Error(
                value.Position,
                $"`ports` has a name for each port, such as `ports: {{in: 3/8-24 flare 37, left: an-3, right: an-3}}`, and this is "
                    + $"{FieldReader.Kind(value)}"));
            return null;
        }

        var ports = ImmutableArray.CreateBuilder<Port>();
        var sound = true;
        foreach (var entry in entries)
        {
            var port = Port(entry, lie, context);
            sound &= port is not null;
            if (port is null)
            {
                continue;
            }

            if (ports.Any(known => string.Equals(known.Name, port.Name, StringComparison.Ordinal)))
            {
                context.Report(
                    FileRules.SaidTwice.Error(
                        entry.Key.Position, $"port {AsTyped.Show(port.Name)} stands here twice: give each port a name of its own"));
                sound = false;
                continue;
            }

            ports.Add(port);
        }

        return sound ? ports.ToImmutable() : null;
    }

    private static Port? Port(YamlEntry entry, PortLie? lie, FileContext context)
    {
        var name = entry.Key.Text.Trim();
        var isNamed = NameCheck.CanBePrinted(entry.Key, "a port", context);
        if (entry.Value is YamlText { IsEmpty: true })
        {
            return isNamed ? new(name, Usually(name), null) { Lie = lie } : null;
        }

        if (entry.Value is YamlText text)
        {
            return Spec(text, context) is { } spec && isNamed ? new(name, spec, null) { Lie = lie } : null;
        }

        if (FieldReader.Of(entry.Value, Vocabulary.Port, context) is not { } map)
        {
            return null;
        }

        var known = map.Has("is") ? (map.Text("is") is { } typed ? Spec(typed, context) : null) : Usually(name);
        var circuit = map.FreeText("circuit");
        var own = SpotReader.Lie(map, lie, context);
        return known is null || !isNamed || map.HasUnknownWord ? null : new(name, known, circuit) { Lie = own };
    }

    private static ImmutableArray<Port> Usual(PartKind? kind, PortSpec spec, PortLie? lie) =>
    [
        .. (kind?.UsualPorts() ?? [])
            .Select(name => new Port(name, Usually(name) is { Seat: { } } bleed ? bleed : spec, null) { Lie = lie }),
    ];

    /// <summary>Of a port that is only named: a bleeder takes a bleed screw.</summary>
    private static PortSpec Usually(string name) =>
        string.Equals(name, PartKinds.Bleeder, StringComparison.Ordinal) ? PortSpec.Bleed : PortSpec.Unknown;
}
