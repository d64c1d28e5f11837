namespace BendSheet.Core.Sheet;

/// <summary>Paper to print on, upright.</summary>
public enum Paper
{
    /// <summary>210 × 297 mm (ISO 216).</summary>
    A4,

    /// <summary>8.5 × 11 in (ANSI A).</summary>
    Letter,
}

/// <summary>How paper is written in files and on the command line.</summary>
public static class Papers
{
    /// <summary>Every paper with its word.</summary>
    public static IReadOnlyList<(Paper Paper, string Word)> All { get; } = [(Paper.A4, "a4"), (Paper.Letter, "letter")];
}
