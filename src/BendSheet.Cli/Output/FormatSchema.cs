using System.Globalization;
using System.Text;
using System.Text.Json;
using BendSheet.Files.Reading;

namespace BendSheet.Cli.Output;

/// <summary>The file's format as a JSON Schema (draft 2020-12), by which an editor completes words and marks wrong ones.</summary>
public static class FormatSchema
{
    /// <summary>What the schema is called by default, beside the file.</summary>
    public const string FileName = "bendsheet.schema.json";

    /// <summary>The first line of a file by which editors find its schema: an open convention of their YAML plug-ins.</summary>
    public const string Modeline = $"# yaml-language-server: $schema={FileName}";

    /// <summary>What a file that names the schema begins with.</summary>
    public const string Head = $"{Modeline}\n\n";

    /// <summary>Writes the schema beside a file; several files of a folder share one.</summary>
    /// <param name="path">Of the file.</param>
    /// <param name="surroundings">To say what went wrong.</param>
    /// <returns>The exit code.</returns>
    public static int WriteBeside(string path, Surroundings surroundings)
    {
        var schema = Path.Combine(Path.GetDirectoryName(path) ?? string.Empty, FileName);
        return Path.Exists(schema) ? ExitCodes.Done : NewFile.Write(schema, Write(), next: null, surroundings);
    }

    /// <summary>A digit, or a fraction that is one character: what every figure of the file has.</summary>
    private const string HasDigit = "[0-9¼-¾⅐-⅞]";

    /// <summary>The whole schema, with a line end after it.</summary>
    public static string Write()
    {
        using var bytes = new MemoryStream();
        var options = new JsonWriterOptions
        {
            Indented = true,
            NewLine = "\n",
            Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };
        using (var json = new Utf8JsonWriter(bytes, options))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", "BendSheet file");
            WriteReference(json, FormatKinds.NameOf(Vocabulary.File));
            json.WriteStartObject("$defs");
            foreach (var (name, place, kinds) in FormatKinds.All)
            {
                json.WritePropertyName(name);
                WritePlace(json, place, kinds);
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static void WritePlace(Utf8JsonWriter json, Vocabulary place, IReadOnlyDictionary<string, ValueKind> kinds)
    {
        json.WriteStartObject();
        json.WriteString("type", "object");
        json.WriteString("description", $"{char.ToUpperInvariant(place.Place[0])}{place.Place[1..]}, such as {place.Example}");
        json.WriteBoolean("additionalProperties", false);
        if (FormatKinds.Required(place) is { Count: > 0 } required)
        {
            WriteWords(json, "required", required);
        }

        json.WriteStartObject("properties");
        foreach (var word in place.Known)
        {
            json.WritePropertyName(word);
            Write(json, kinds[word]);
        }

        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, ValueKind kind)
    {
        json.WriteStartObject();
        switch (kind)
        {
            case ValueKind.Figure figure:
                json.WriteString("description", figure.Meaning);
                WriteWords(json, "type", ["number", "string"]);
                json.WriteString("pattern", HasDigit);
                break;
            case ValueKind.Text text:
                json.WriteString("description", text.Meaning);
                WriteWords(json, "type", ["string", "number", "boolean"]);
                break;
            case ValueKind.Choice choice:
                WriteChoice(json, choice);
                break;
            case ValueKind.Words words:
                WriteReference(json, FormatKinds.NameOf(words.Place));
                break;
            case ValueKind.Named named:
                json.WriteString("type", "object");
                json.WriteNumber("minProperties", 1);
                json.WritePropertyName("additionalProperties");
                Write(json, named.Of);
                break;
            case ValueKind.Several several:
                json.WriteString("type", "array");
                json.WritePropertyName("items");
                Write(json, several.Of);
                break;
            case ValueKind.Either either:
                json.WriteStartArray("anyOf");
                foreach (var one in either.Kinds)
                {
                    Write(json, one);
                }

                json.WriteEndArray();
                break;
            default:
                json.WriteString("type", "null");
                break;
        }

        json.WriteEndObject();
    }

    /// <summary>
    /// The words themselves for the editor to offer; beside them the same in upper case, and what an editor has already made of them: a
    /// number of 32, a truth of true.
    /// </summary>
    private static void WriteChoice(Utf8JsonWriter json, ValueKind.Choice choice)
    {
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        json.WriteStartArray("enum");
        foreach (var word in choice.Known)
        {
            if (bool.TryParse(word, out var truth))
            {
                json.WriteBooleanValue(truth);
            }
            else if (int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            {
                json.WriteNumberValue(number);
            }
            else
            {
                json.WriteStringValue(word);
            }
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("type", "string");
        json.WriteString("pattern", $"^({string.Join('|', choice.Known.Select(InAnyCase))})$");
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static string InAnyCase(string word) => string.Concat(word.Select(letter => char.IsAsciiLetter(letter)
        ? $"[{char.ToUpperInvariant(letter)}{char.ToLowerInvariant(letter)}]"
        : letter.ToString()));

    private static void WriteReference(Utf8JsonWriter json, string name) => json.WriteString("$ref", $"#/$defs/{name}");

    private static void WriteWords(Utf8JsonWriter json, string property, IEnumerable<string> words)
    {
        json.WriteStartArray(property);
        foreach (var word in words)
        {
            json.WriteStringValue(word);
        }

        json.WriteEndArray();
    }
}
