using System.Globalization;
using BendSheet.Core.Fittings;

namespace BendSheet.Files.Typed;

/// <summary>Threads as people type them: <c>3/8-24</c>, <c>1 1/16-12</c>, <c>.375-24 UNF</c>, <c>M10x1</c>, <c>M10 x 1.0</c>.</summary>
public static class ThreadText
{
    private static readonly string[] Series = ["unf", "unc", "unef", "unjf", "unj", "un"];

    /// <summary>The thread; null where the text is none.</summary>
    public static ScrewThread? Read(string text)
    {
        var typed = text.Trim().ToLowerInvariant();
        foreach (var series in Series)
        {
            if (typed.EndsWith(series, StringComparison.Ordinal))
            {
                typed = typed[..^series.Length].TrimEnd();
                break;
            }
        }

        return typed.StartsWith('m') ? Metric(typed[1..]) : Inch(typed);
    }

    private static ScrewThread? Metric(string typed)
    {
        var at = typed.IndexOfAny(['x', '×', '*']);
        return at > 0 && Number(typed[..at]) is { } size and >= 1 and <= 100 && Number(typed[(at + 1)..]) is { } pitch and >= 0.1 and <= 10
            ? ScrewThread.Metric(size, pitch)
            : null;
    }

    private static ScrewThread? Inch(string typed)
    {
        var at = typed.LastIndexOf('-');
        return at > 0
            && Inches(typed[..at]) is { } size and >= 0.05 and <= 6
            && Number(typed[(at + 1)..]) is { } perInch and >= 1 and <= 100
            ? ScrewThread.Inch(size, perInch)
            : null;
    }

    /// <summary>A decimal figure, a fraction or a whole number with a fraction.</summary>
    private static double? Inches(string typed)
    {
        var words = typed.TrimEnd('"', ' ').Replace('-', ' ').Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words switch
        {
            [var one] => Fraction(one) ?? Number(one),
            [var whole, var part] => Number(whole) is { } ones && Fraction(part) is { } rest ? ones + rest : null,
            _ => null,
        };
    }

    private static double? Fraction(string typed) =>
        typed.Split('/') is [var top, var bottom] && Number(top) is { } over && Number(bottom) is { } under and > 0 ? over / under : null;

    private static double? Number(string typed) =>
        double.TryParse(typed.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;
}
