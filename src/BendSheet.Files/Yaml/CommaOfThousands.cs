namespace BendSheet.Files.Yaml;

/// <summary>
/// Three figures after a comma: a thousand in one country and a thousandth in another, which nobody can tell from here.
/// </summary>
internal static class CommaOfThousands
{
    private const int FiguresBehind = 3;

    /// <summary>Whether a text begins with such a figure.</summary>
    public static bool IsIn(string text)
    {
        var comma = text.IndexOf(',', StringComparison.Ordinal);
        return comma is > 0 and <= FiguresBehind && text[0] != '0' && Digits(text.AsSpan(0, comma)) == comma
            && Digits(text.AsSpan(comma + 1)) == FiguresBehind;
    }

    /// <summary>What to ask of such a text, in a sentence.</summary>
    public static string InWords(string text)
    {
        var comma = text.IndexOf(',', StringComparison.Ordinal);
        var (whole, behind) = (text[..comma], text.Substring(comma + 1, FiguresBehind));
        return $"{AsTyped.Show(text)} may be {whole}{behind} or {whole}.{behind}: write `{whole}{behind}` or `{whole}.{behind}`, without "
            + "the comma";
    }

    private static int Digits(ReadOnlySpan<char> text)
    {
        var count = 0;
        while (count < text.Length && char.IsAsciiDigit(text[count]))
        {
            count++;
        }

        return count;
    }
}
