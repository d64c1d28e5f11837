using System.Collections.Immutable;
using System.Globalization;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Sheet;
using BendSheet.Core.Stock;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Text → templates, with the place where everything was typed and with everything that is wrong, not only the first.</summary>
public static class TemplateReader
{
    /// <summary>What a file without lines is told.</summary>
    internal const string NoLines = "the file has no lines: add `lines:` with a name and the rows of its template";

    private const int DefaultFractions = 32;

    /// <summary>What bare numbers may be in.</summary>
    internal static readonly (LengthUnit Unit, string Word)[] UnitChoices =
        [.. Enum.GetValues<LengthUnit>().Select(unit => (unit, unit.Symbol()))];

    internal static readonly (int Fractions, string Word)[] FractionChoices =
        [.. new[] { 2, 4, 8, 16, 32, 64, 128 }.Select(part => (part, part.ToString(CultureInfo.InvariantCulture)))];

    private static TemplateFile Empty { get; } = new(
        string.Empty, new LengthNotation(Imperial: false, DefaultFractions), Paper.A4, [], [], new SourceLines(string.Empty, string.Empty));

    /// <summary>What is known of a file that could not even be opened: why.</summary>
    public static TemplateFile Nothing(Finding why) => Empty with { Findings = [why] };

    /// <summary>Reads a file.</summary>
    /// <param name="name">What findings call it; <c>-</c> for standard input.</param>
    /// <param name="content">Its bytes. Never more than the reader's limit are taken.</param>
    /// <param name="open">Opens the files that it includes; without it none can be.</param>
    /// <exception cref="IOException">The content cannot be read at all.</exception>
    public static TemplateFile Read(string name, Stream content, OpenIncluded? open = null)
    {
        var yaml = YamlDocument.Read(name, content);
        var context = new FileContext(LengthUnit.Millimetre);
        if (yaml.Root is not YamlMap top)
        {
            _ = yaml.Root is { } root ? FieldReader.Of(root, Vocabulary.File, context) : null;
            return Read(Empty, name, yaml.Source, yaml.Findings, context);
        }

        var (together, files, sources) = Inclusion.Of(top, open ?? OpensNone, context);
        var file = FieldReader.Of(together, Vocabulary.File, context) is { } map ? File(map, context) : Empty;
        return Scoped(Read(file, name, yaml.Source.With(sources), yaml.Findings, context), new(together, files));
    }

    private static IncludedFile OpensNone(string typed) => new(typed, null, "there is no folder to look for it in", IsItself: false);

    private static TemplateFile Read(
        TemplateFile file, string name, SourceLines source, IEnumerable<Finding> ofLayout, FileContext context)
    {
        ImmutableArray<Finding> findings = [.. NotTooMany(ofLayout.Select(Reported.Of).Concat(context.Findings))];
        return file with { FileName = name, Source = source, Findings = findings, FindingsOfTools = findings };
    }

    /// <summary>With what each finding concerns.</summary>
    private static TemplateFile Scoped(TemplateFile file, FindingScope scope) => file with
    {
        LineNames = scope.LineNames,
        FindingsByLine = scope.ByLine(file.Findings, file.Lines),
        FindingsOfTools = scope.OfTools(file.Findings),
    };

    /// <summary>In the order of the file; beyond a hundred the list would only hide its cause.</summary>
    private static IEnumerable<Finding> NotTooMany(IEnumerable<Reported> findings)
    {
        Reported[] all = [.. findings.InFileOrder(finding => finding.Position)];
        return all.Length <= YamlDocument.MostFindings + 1
            ? all.Select(finding => finding.Finding())
            : all.Take(YamlDocument.MostFindings).Select(finding => finding.Finding()).Append(YamlRules.TooManyMistakes.Error(
                all[YamlDocument.MostFindings].Position,
                $"{YamlDocument.MostFindings} mistakes up to here, and "
                    + $"{Counted.Large(all.Length - YamlDocument.MostFindings, "more mistake")} after them: put the first ones right "
                    + $"and look again"));
    }

    private static TemplateFile File(FieldReader map, FileContext context)
    {
        var unit = Units(map, context);
        context.Unit = unit ?? LengthUnit.Millimetre;
        var imperial = context.Unit.IsImperial();
        var notation = new LengthNotation(imperial, map.Choice("fractions", FractionChoices) ?? DefaultFractions);
        var paper = map.Choice("paper", Papers.All) ?? (imperial ? Paper.Letter : Paper.A4);
        var project = map.FreeText("project") ?? string.Empty;
        var parts = CarPartsReader.ReadParts(map, context);
        var room = KeepClearReader.Read(map, context);
        var read = Lines(map, Empty with { Project = project, Notation = notation, Paper = paper }, parts.Ports, context) with
        {
            Parts = parts.Car(),
            Room = room,
        };

        // Without its unit a bare number may mean anything: everything else is checked, but no line is made of it.
        return unit is null ? read with { Lines = [], Benders = [], RoughLines = [], Stores = Stores.Empty } : read;
    }

    private static LengthUnit? Units(FieldReader map, FileContext context)
    {
        if (!map.Has("units"))
        {
            context.Report(FileRules.MissingWord.Error(
                map.Position, "the file does not say in which unit bare numbers are: add `units: mm` (or cm, m, in, ft) at the top"));
        }

        return map.Choice("units", UnitChoices);
    }

    private static TemplateFile Lines(FieldReader map, TemplateFile file, PortFinder ports, FileContext context)
    {
        var tubes = new NameTable<Tube>("tube", "tubes", Vocabulary.Tube);
        var benders = new NameTable<Bender>("bender", "benders", Vocabulary.Bender);
        var fittings = new NameTable<Fitting>("fitting", "fittings", Vocabulary.Fitting);
        tubes.Read(map, WorkshopReader.Tube, shortForm: true, context);
        benders.Read(map, (name, value, of) => WorkshopReader.Bender(name, value, tubes, of), shortForm: true, context);
        fittings.Read(map, WorkshopReader.Fitting, shortForm: false, context);
        var templates = TemplateLibrary.Read(map, benders, context);
        var wire = MeasuringReader.Wire(map, context);
        var tolerance = MeasuringReader.Tolerance(map, context);
        var wanted = MeasuringReader.Wanted(map, context);
        var clips = ClipsReader.Read(map, context);
        RequireOne(map, tubes.Any || context.IsPartUnread, "tube", Vocabulary.Tube, context);
        RequireOne(map, benders.Any || OnlyRough(map) || context.IsPartUnread, "bender", Vocabulary.Bender, context);
        file = file with { Benders = benders.All, Stores = new StoresReader(tubes, context).Read(map) };

        if (!map.Has("lines"))
        {
            context.Report(
                FileRules.MissingWord.Error(map.Position, NoLines));
            return file;
        }

        if (map.Value("lines") is not { } value)
        {
            return file;
        }

        if (value is not YamlMap { Entries: { Count: > 0 } entries })
        {
            context.Report(FileRules.WrongKind.Error(
                value.Position,
                $"`lines` has a name for each line, such as `front-left:` with its rows below it, and this is {FieldReader.Kind(value)}"));
            return file;
        }

        var (lines, rough) = LinesReader.Read(
            entries, new(tubes, fittings, ports, context), new(benders, templates, wire, tolerance, wanted, clips), context);
        return file with { Lines = lines, RoughLines = rough };
    }

    /// <summary>On the first evening no line may have a template yet, and then no tool is needed.</summary>
    private static bool OnlyRough(FieldReader map) =>
        map.Typed("lines") is YamlMap { Entries.Count: > 0 } lines && lines.Entries.All(RoughLineReader.IsRough);

    private static void RequireOne(FieldReader map, bool any, string word, Vocabulary vocabulary, FileContext context)
    {
        if (!any && !map.Has(word) && !map.Has(word + "s"))
        {
            context.Report(
                FileRules.MissingWord.Error(
                    map.Position, $"the file has no {word}: add one at the top, such as `{word}: {vocabulary.Example}`"));
        }
    }
}
