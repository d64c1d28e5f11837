using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>What every line says, with a template, a rough length or as a mirror image.</summary>
/// <param name="Tube">It is made of.</param>
/// <param name="From">End A.</param>
/// <param name="To">End B.</param>
/// <param name="Made">It exists already.</param>
internal sealed record LineHead(Tube Tube, LineEnd From, LineEnd To, bool Made);

/// <summary>Reads what every line says. Null after findings that leave the line incomplete.</summary>
/// <param name="tubes">Of the file.</param>
/// <param name="fittings">Of the file.</param>
/// <param name="ports">What the ends may lead to.</param>
/// <param name="context">For findings.</param>
internal sealed class LineHeadReader(NameTable<Tube> tubes, NameTable<Fitting> fittings, PortFinder ports, FileContext context)
{
    /// <summary>What a mirrored line cannot say for itself.</summary>
    private static readonly string[] HasFromOther = ["bender", .. RouteForm.AllWords, RouteForm.Rough, TapedReader.Word];

    /// <summary>The tube of a line that says nothing of it, or a finding at the line.</summary>
    public Tube? OnlyTube(SourcePosition line) => tubes.Only(line, context);

    /// <summary>Of a line that stands for itself.</summary>
    public LineHead? Read(FieldReader line, YamlEntry entry) => Head(line, entry, null);

    /// <summary>Of the mirror image of another line: it has what it does not say itself.</summary>
    /// <param name="line">The mirrored line.</param>
    /// <param name="entry">With its name.</param>
    /// <param name="other">The one it is the mirror image of.</param>
    public LineHead? Mirrored(FieldReader line, YamlEntry entry, LineHead other)
    {
        var nameIsUsable = NameCheck.CanNameFile(entry.Key, context);
        foreach (var word in HasFromOther.Where(line.Has))
        {
            context.Report(FileRules.OutOfPlace.Error(
                line.PositionOf(word),
                $"`{word}` does nothing beside `mirror`: a mirrored line has it from the other one; take it out, or take `mirror` out"));
        }

        var head = Head(line, entry, other);
        return nameIsUsable ? head : null;
    }

    private LineHead? Head(FieldReader line, YamlEntry entry, LineHead? other)
    {
        var tube = other is not null && !line.Has("tube") ? other.Tube : tubes.Chosen(line, entry, context);
        var from = End(line, "from", other?.From);
        var to = End(line, "to", other?.To);
        var made = line.Choice("made", YesOrNo.Choices);
        return line.HasUnknownWord || tube is null || from is null || to is null || (line.Has("made") && made is null)
            ? null
            : new(tube, from, to, made ?? false);
    }

    /// <summary>An end of a line.</summary>
    /// <param name="line">That may say it.</param>
    /// <param name="word"><c>from</c> or <c>to</c>.</param>
    /// <param name="other">The same end of the line that this one is the mirror image of: it has what is not said here, but for where it
    /// leads.</param>
    private LineEnd? End(FieldReader line, string word, LineEnd? other)
    {
        var unsaid = (other ?? LineEnd.Unknown) with { At = null, Port = null };
        if (!line.Has(word))
        {
            return unsaid;
        }

        if (ports.End(line, word, Vocabulary.End) is not { } end)
        {
            return null;
        }

        if (end.Map is not { } map)
        {
            return unsaid with { At = end.At, Port = end.Port };
        }

        var trim = map.Length("trim", Range.LengthOrZero);
        if (trim > Length.Zero && string.Equals(word, "from", StringComparison.Ordinal))
        {
            context.Report(FileRules.OutOfPlace.Error(
                map.PositionOf("trim"), "`trim` belongs to end B (`to`): end A is finished first and all marks count from it"));
        }

        var fitting = map.Text("fitting") is { } name ? fittings.Find(name, context) : null;
        var complete = (!map.Has("fitting") || fitting is not null) && (!map.Has("trim") || trim is not null);
        return complete ? new(end.At, fitting ?? unsaid.Fitting, trim ?? unsaid.Trim) { Port = end.Port } : null;
    }
}
