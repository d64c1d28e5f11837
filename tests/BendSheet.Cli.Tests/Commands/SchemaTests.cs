using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using BendSheet.Cli.Explain;
using BendSheet.Cli.Output;
using BendSheet.Core.Findings;
using BendSheet.Files.Reading;
using BendSheet.Files.Yaml;
using Json.Schema;
using Vocabulary = BendSheet.Files.Reading.Vocabulary;

namespace BendSheet.Cli.Tests.Commands;

/// <summary>
/// The schema that editors get, read by a library of its own. It is wider than the reader: what it refuses, the reader refuses as well.
/// </summary>
[Collection(FromTheRepository.Name)]
public partial class SchemaTests : AtTheTerminal
{
    private const string Head = "units: mm\ntube: {od: 3/16 in}\nbender: {radius: 14}\n";

    /// <summary>Where a text may stand, so that every notation is tried as everything.</summary>
    private static readonly string[] Slots =
    [
        "lines: {a: [{straight: 120, bend: 45}, {straight: @}]}",
        "lines: {a: [{straight: {length: @, within: 1}, bend: 45}, {straight: 60}]}",
        "lines: {a: [{straight: 120, bend: @}, {straight: 300}]}",
        "lines: {a: [{straight: 120, included: @}, {straight: 300}]}",
        "lines: {a: [{straight: 120, bend: 45}, {straight: 120, rotate: @, bend: 45}, {straight: 60}]}",
        "lines: {a: [{straight: 120, bend: 45, note: @}, {straight: 60}]}",
        "lines: {a: {measured: @, rows: [{straight: 120, bend: 45}, {straight: 60}]}}\nwire: {diameter: 2, radius: 4}",
        "lines: {a: {made: @, rows: [{straight: 120, bend: 45}, {straight: 60}]}}",
        "lines: {a: {from: @, rows: [{straight: 120, bend: 45}, {straight: 60}]}}",
        "lines: {a: {distances: {A-1: 120, 1-2: 100, A-2: 190, 2-B: 90, 1-B: 165}, side: @}}",
        "lines: {a: {rough: @}}\nspare: 10 %",
        "lines: {a: {rough: 420}}\nspare: @",
        "lines: {a: {rough: 420}}\npractice: @",
        "lines: {a: {rough: 420}}\nstock: [{length: 5 m, count: @}]",
        "lines: {a: {rough: 420}}\nfittings: {f: {flare: @}}",
        "lines: {a: {rough: 420}}\nfittings: {f: {flare: single 37, thread: @}}",
        "lines: {a: {rough: 420}}\nparts: {p: {kind: tee, ports: @}}",
        "lines: {a: {rough: 420}}\nparts: {p: {kind: @, ports: an-3}}",
        "lines: {a: {rough: 420}}\nproject: @",
        "lines: {a: {rough: 420}}\npaper: @",
        "lines: {a: {rough: 420}}\nfractions: @",
        "lines: {a: {rough: 420}}\nclips: @",
    ];

    private static JsonSchema Schema { get; } = JsonSchema.FromText(FormatSchema.Write());

    [Fact]
    public async Task I_can_print_it_or_have_it_written_beside_my_file_but_never_over_another()
    {
        var printed = await Run("schema");
        Assert.Equal(0, printed.Code);
        Assert.Equal(FormatSchema.Write(), printed.Output);
        var place = Place(FormatSchema.FileName);
        var written = await Run("schema", "-o", place);
        Assert.Equal(0, written.Code);
        Assert.Contains($"`{FormatSchema.Modeline}`", written.Output, StringComparison.Ordinal);
        Assert.Equal(printed.Output, await File.ReadAllTextAsync(place));
        var again = await Run("schema", "-o", place);
        Assert.Equal(3, again.Code);
        Assert.Contains("it is there already", again.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_can_start_with_a_schema_beside_the_file_and_the_line_that_names_it()
    {
        Assert.Equal(0, (await Run("start", Place("car.yaml"), "--schema")).Code);
        Assert.Equal(0, (await Run("start", Place("van.yaml"), "--schema")).Code);
        Assert.Equal("bendsheet.schema.json car.yaml van.yaml", InTheFolder());
        Assert.Equal(FormatSchema.Write(), await File.ReadAllTextAsync(Place(FormatSchema.FileName)));
        var typed = await File.ReadAllTextAsync(Place("car.yaml"));
        Assert.StartsWith("# yaml-language-server: $schema=bendsheet.schema.json\n", typed, StringComparison.Ordinal);
        Assert.Equal((await Run("start", "-")).Output, typed[(typed.IndexOf('\n', StringComparison.Ordinal) + 2)..]);
        Assert.Equal(0, (await Run("check", Place("car.yaml"))).Code);
    }

    [Fact]
    public void It_is_a_schema_of_the_2020_12_draft()
    {
        var result = MetaSchemas.Draft202012.Evaluate(JsonDocument.Parse(FormatSchema.Write()).RootElement);
        Assert.True(result.IsValid);
    }

    [Fact]
    public void Every_word_of_the_format_has_its_kind_and_no_kind_is_of_a_word_that_is_not()
    {
        // What is included is a part of what the top of the file may say.
        Assert.Equal(
            Vocabulary.All.Where(place => place != Vocabulary.Included).Select(place => place.Place),
            FormatKinds.All.Select(one => one.Place.Place),
            StringComparer.Ordinal);
        Assert.Subset(Vocabulary.File.Known.ToHashSet(StringComparer.Ordinal), Vocabulary.Included.Known.ToHashSet(StringComparer.Ordinal));
        Assert.All(FormatKinds.All, one =>
        {
            Assert.Equal(
                one.Place.Known.Order(StringComparer.Ordinal), one.Kinds.Keys.Order(StringComparer.Ordinal), StringComparer.Ordinal);
            Assert.Subset(
                one.Place.Known.ToHashSet(StringComparer.Ordinal), FormatKinds.Required(one.Place).ToHashSet(StringComparer.Ordinal));
        });
    }

    [Fact]
    public void Every_sample_and_every_right_example_passes()
    {
        // Those of the guide too: one of them has every word of the workshop and of a line.
        string[] samples =
        [
            .. Directory.GetFiles("samples", "*.yaml", SearchOption.AllDirectories)
                .Where(path => !path.Contains("broken", StringComparison.Ordinal)),
        ];
        Assert.True(samples.Length >= 20);
        Assert.Contains(Path.Combine("samples", "guide", "file.yaml"), samples, StringComparer.Ordinal);
        Assert.All(samples, path => Passes(File.ReadAllText(path), path));
        Assert.All(Explanations.All.Select(one => one.Example).OfType<RuleExample>(), example => Passes(example.Right, example.Right));
    }

    [Theory]
    [InlineData("unknown-word")]
    [InlineData("wrong-kind")]
    [InlineData("not-a-choice")]
    [InlineData("unreadable-number")]
    public void What_an_editor_can_know_is_marked(string rule) =>
        Assert.False(Schema.Evaluate(Element(Json(Explanations.Of(rule)!.Example!.Failing)!)).IsValid);

    [Fact]
    public void An_unknown_word_fails_in_every_place() => Assert.All(FormatKinds.All, one =>
    {
        var place = JsonNode.Parse(FormatSchema.Write())!.AsObject();
        place["$ref"] = $"#/$defs/{one.Name}";
        place["$defs"]![one.Name]!.AsObject().Remove("required");
        var schema = JsonSchema.FromText(place.ToJsonString());
        Assert.True(schema.Evaluate(Element(new JsonObject())).IsValid, one.Name);
        Assert.False(schema.Evaluate(Element(new JsonObject { ["xyzzy"] = 1 })).IsValid, one.Name);
    });

    /// <summary>Every short text of the reader's own tests, in every slot.</summary>
    [Fact]
    public void What_the_reader_takes_is_never_refused()
    {
        var texts = Directory.GetFiles("tests/BendSheet.Files.Tests/Typed", "*.cs")
            .Concat(Directory.GetFiles("tests/BendSheet.Files.Tests/Reading", "*.cs"))
            .SelectMany(path => Literals().Matches(File.ReadAllText(path)).Select(match => Unescaped(match.Groups["text"].Value)))
            .Where(text => text.Length is > 0 and < 20 && !text.Contains('\n', StringComparison.Ordinal))
            .Distinct(StringComparer.Ordinal).ToList();
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (text, slot) in texts.SelectMany(text => Slots, (text, slot) => (text, slot)))
        {
            var file = Head + slot.Replace("@", text, StringComparison.Ordinal) + "\n";
            if (IsTaken(file))
            {
                taken.Add(text);
                Passes(file, file);
            }
        }

        Assert.True(taken.Count > 300, $"{taken.Count}");
    }

    /// <summary>Words deleted and renamed at random: where the schema refuses, so does the reader; an unknown word both refuse.</summary>
    [Fact]
    public void Whatever_is_changed_the_schema_refuses_nothing_that_the_reader_takes()
    {
        var random = new Random(7);
        var sample = File.ReadAllText("samples/finch.yaml");
        var (refused, taken, unknown) = (0, 0, 0);
        for (var run = 0; run < 400; run++)
        {
            var json = Json(sample)!;
            var objects = Objects(json).Where(one => one.Count > 0).ToList();
            var one = objects[random.Next(objects.Count)];
            var key = one.ElementAt(random.Next(one.Count)).Key;
            var value = one[key];
            one.Remove(key);
            if (run % 2 == 1)
            {
                one["xyzzy"] = value;
            }

            var findings = TemplateReader.Read("f", new MemoryStream(Encoding.UTF8.GetBytes(json.ToJsonString(Plainly)))).Findings;
            var isValid = Schema.Evaluate(Element(json)).IsValid;
            if (findings.Any(finding => finding.Message.StartsWith("`xyzzy` is not a word for", StringComparison.Ordinal)))
            {
                unknown++;
                Assert.False(isValid, $"{key}: {findings[0]}");
            }
            else if (findings.All(finding => finding.Severity != Severity.Error))
            {
                taken++;
                Assert.True(isValid, key);
            }

            refused += isValid ? 0 : 1;
        }

        Assert.True(refused > 50 && taken > 50 && unknown > 50, $"{refused} {taken} {unknown}");
    }

    private static readonly JsonSerializerOptions Plainly =
        new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static bool IsTaken(string file) => TemplateReader.Read("f", new MemoryStream(Encoding.UTF8.GetBytes(file))).Findings
        .All(finding => finding.Severity != Severity.Error);

    private static void Passes(string yaml, string what)
    {
        var result = Schema.Evaluate(Element(Json(yaml)!), new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, $"{what}\n{string.Join('\n', (result.Details ?? []).Where(one => one.Errors is not null)
            .Select(one => $"{one.InstanceLocation}: {string.Join("; ", one.Errors!.Values)}"))}");
    }

    private static JsonElement Element(JsonNode json) => JsonDocument.Parse(json.ToJsonString()).RootElement;

    private static JsonNode? Json(string yaml) =>
        Json(YamlDocument.Read("f", Encoding.UTF8.GetBytes(yaml)).Root!);

    /// <summary>As an editor takes it: YAML 1.2.2, chapter 10.3.2, the core schema.</summary>
    private static JsonNode? Json(YamlValue value) => value switch
    {
        YamlMap map => new JsonObject(map.Entries.Select(entry => KeyValuePair.Create(entry.Key.Text, Json(entry.Value)))),
        YamlList list => new JsonArray([.. list.Items.Select(Json)]),
        YamlText { IsPlain: true, Text: "" or "~" or "null" or "Null" or "NULL" } => null,
        YamlText { IsPlain: true, Text: "true" or "True" or "TRUE" } => true,
        YamlText { IsPlain: true, Text: "false" or "False" or "FALSE" } => false,
        YamlText { IsPlain: true } text when Numbers().IsMatch(text.Text) =>
            double.Parse(text.Text, NumberStyles.Float, CultureInfo.InvariantCulture),
        YamlText text => text.Text,
        _ => null,
    };

    private static IEnumerable<JsonObject> Objects(JsonNode? json) => json switch
    {
        JsonObject map => [map, .. map.SelectMany(entry => Objects(entry.Value))],
        JsonArray list => list.SelectMany(Objects),
        _ => [],
    };

    private static string Unescaped(string literal)
    {
        try
        {
            return Regex.Unescape(literal);
        }
        catch (RegexParseException)
        {
            return literal;
        }
    }

    [GeneratedRegex(@"""(?<text>(\\.|[^""\\\n])*)""", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Literals();

    [GeneratedRegex(@"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Numbers();
}
