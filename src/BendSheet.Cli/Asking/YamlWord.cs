using System.Buffers;

namespace BendSheet.Cli.Asking;

/// <summary>An answer as a value of the file, wherever it stands: as it was typed where that says the same, or else in quotes.</summary>
internal static class YamlWord
{
    /// <summary>
    /// Characters that mean something to a reader of YAML, at the beginning or anywhere inside braces (YAML 1.2.2, 7.3.3).
    /// </summary>
    private const string First = "-?:,[]{}#&*!|>'\"%@`~";

    /// <inheritdoc cref="First"/>
    private static readonly SearchValues<char> Anywhere = SearchValues.Create(",[]{}");

    /// <summary>On one line, whatever was answered.</summary>
    public static string Of(string answer)
    {
        var isNegative = answer is ['-', >= '0' and <= '9', ..];
        var plain = answer.Length > 0 && (isNegative || !First.Contains(answer[0], StringComparison.Ordinal))
            && !answer.AsSpan().ContainsAny(Anywhere)
            && !answer.Contains(": ", StringComparison.Ordinal) && !answer.Contains(" #", StringComparison.Ordinal)
            && !answer.EndsWith(':') && answer.Trim().Length == answer.Length;
        return plain ? answer : $"'{answer.Replace("'", "''", StringComparison.Ordinal)}'";
    }
}
