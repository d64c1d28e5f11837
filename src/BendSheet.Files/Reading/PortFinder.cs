using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>An end of a line or of a hose as it was typed: a map, or only the name of what it leads to.</summary>
/// <param name="At">The words for what it leads to.</param>
/// <param name="Port">The port that they name.</param>
/// <param name="Map">With what else is said of it; null where only the name stands there.</param>
internal sealed record TypedEnd(string? At, PortPlace? Port, FieldReader? Map);

/// <summary>
/// Finds the port that words like <c>tee.left</c> lead to. Words that name no part are a person's own and lead to nothing.
/// </summary>
/// <param name="parts">Of the file.</param>
/// <param name="context">For findings.</param>
internal sealed class PortFinder(NameTable<Part> parts, FileContext context)
{
    /// <summary>A mistyped name is compared with no more than this.</summary>
    private const int MostCompared = 100;

    /// <summary>The port; null where the words are only words, and after a finding.</summary>
    /// <param name="at">As typed.</param>
    /// <param name="isOnlyPort">Mere words are an error here.</param>
    public PortPlace? Find(YamlText at, bool isOnlyPort = false)
    {
        if (!parts.Any)
        {
            return null;
        }

        var typed = at.Text.Trim();
        if (parts.TryFind(typed, out var whole))
        {
            return whole is null ? null : OnlyPort(whole, at);
        }

        var dot = typed.LastIndexOf('.');
        var (name, port) = dot <= 0 ? (typed, string.Empty) : (typed[..dot].Trim(), typed[(dot + 1)..].Trim());
        if (!parts.TryFind(name, out var part))
        {
            ReportWords(name, at, isOnlyPort, mayBeMeant: dot > 0);
            return null;
        }

        return part is null ? null : PortOf(part, port, at);
    }

    /// <summary>Where an end leads; null where it is not said, and after a finding.</summary>
    /// <param name="owner">The line or hose.</param>
    /// <param name="word"><c>from</c> or <c>to</c>.</param>
    /// <param name="vocabulary">Of such an end.</param>
    public TypedEnd? End(FieldReader owner, string word, Vocabulary vocabulary)
    {
        if (owner.Value(word) is not { } value)
        {
            return null;
        }

        if (value is YamlText place)
        {
            return new(owner.FreeText(word), Find(place), null);
        }

        if (FieldReader.Of(value, vocabulary, context) is not { } map)
        {
            return null;
        }

        var at = map.FreeText("at");
        return new(at, at is not null && map.Text("at") is { } typed ? Find(typed) : null, map);
    }

    /// <summary>A part of which only one port can be meant.</summary>
    private PortPlace? OnlyPort(Part part, YamlText at)
    {
        var ports = part.Ports.Where(port => !port.IsBleeder).ToList();
        if (ports is [var only])
        {
            return new(part, only, at.Position);
        }

        context.Report(
            FileRules.UnknownPort.Error(
                at.Position, $"{AsTyped.Show(part.Name)} has several ports: say which one, such as {AsTyped.Show(Example(part))}"));
        return null;
    }

    /// <summary>A port of a part that is known.</summary>
    public PortPlace? PortOf(Part part, string name, YamlText at)
    {
        if (part.Ports.FirstOrDefault(port => string.Equals(port.Name, name, StringComparison.Ordinal)) is { } port)
        {
            return new(part, port, at.Position);
        }

        var nearest = NearestWord.Among(name, part.Ports.Select(known => known.Name).Take(MostCompared));
        var cure = nearest is not null ? $"did you mean {AsTyped.Show($"{part.Name}.{nearest}")}?"
            : $"it has {string.Join(", ", part.Ports.Take(8).Select(known => AsTyped.Show(known.Name)))}"
                + $"{(part.Ports.Length > 8 ? " and others" : string.Empty)}";
        context.Report(FileRules.UnknownPort.Error(at.Position, $"{AsTyped.Show(part.Name)} has no port {AsTyped.Show(name)}: {cure}"));
        return null;
    }

    /// <summary>Words that lead to no part: a slip only where they look like a part and its port.</summary>
    private void ReportWords(string name, YamlText at, bool isOnlyPort, bool mayBeMeant)
    {
        var nearest = isOnlyPort || mayBeMeant ? NearestWord.Among(name, parts.Names.Take(MostCompared)) : null;
        if (isOnlyPort)
        {
            var cure = nearest is null ? "write part and port, such as `tee.left`" : $"did you mean {AsTyped.Show(nearest)}?";
            context.Report(FileRules.UnknownName.Error(at.Position, $"there is no part called {AsTyped.Show(name)}: {cure}"));
        }
        else if (nearest is not null)
        {
            context.Report(FileRules.UnknownName.Warning(
                at.Position,
                $"there is no part called {AsTyped.Show(name)}, so that {AsTyped.Show(at.Text)} is taken for words only: did you mean "
                    + $"{AsTyped.Show(nearest)}?"));
        }
    }

    private static string Example(Part part) => part.Ports is [var first, ..] ? $"{part.Name}.{first.Name}" : part.Name;
}
