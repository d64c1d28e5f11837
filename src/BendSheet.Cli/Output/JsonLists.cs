using System.Text.Json;

namespace BendSheet.Cli.Output;

/// <summary>Lists in JSON.</summary>
internal static class JsonLists
{
    /// <summary>A property that is a list of objects.</summary>
    /// <param name="json">Inside an object.</param>
    /// <param name="name">Of the property.</param>
    /// <param name="all">One for each object.</param>
    /// <param name="properties">Writes those of one object.</param>
    public static void WriteObjects<T>(this Utf8JsonWriter json, string name, IEnumerable<T> all, Action<T> properties) =>
        json.WriteValues(name, all, one =>
        {
            json.WriteStartObject();
            properties(one);
            json.WriteEndObject();
        });

    /// <summary>A property that is a list.</summary>
    /// <param name="json">Inside an object.</param>
    /// <param name="name">Of the property.</param>
    /// <param name="all">One for each value.</param>
    /// <param name="value">Writes one value.</param>
    public static void WriteValues<T>(this Utf8JsonWriter json, string name, IEnumerable<T> all, Action<T> value)
    {
        json.WriteStartArray(name);
        foreach (var one in all)
        {
            value(one);
        }

        json.WriteEndArray();
    }
}
