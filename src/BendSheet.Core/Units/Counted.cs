using System.Globalization;

namespace BendSheet.Core.Units;

/// <summary>Counts with their nouns: <c>1 line</c>, <c>3 lines</c>.</summary>
public static class Counted
{
    /// <summary>The count and its noun.</summary>
    /// <param name="count">Zero or more.</param>
    /// <param name="one">The noun for one.</param>
    /// <param name="several">The noun for any other count; null where it only takes an s.</param>
    public static string Words(int count, string one, string? several = null) => Words(count, "D", one, several);

    /// <summary>The same with a comma between thousands, where counts can be large: <c>100,000 values</c>.</summary>
    public static string Large(int count, string one, string? several = null) => Words(count, "N0", one, several);

    /// <summary>The noun alone, where the count stands elsewhere or is not said.</summary>
    public static string Noun(int count, string one, string? several = null) => count == 1 ? one : several ?? one + "s";

    private static string Words(int count, string format, string one, string? several) =>
        $"{count.ToString(format, CultureInfo.InvariantCulture)} {Noun(count, one, several)}";
}
