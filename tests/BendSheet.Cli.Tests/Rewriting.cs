namespace BendSheet.Cli.Tests;

/// <summary>
/// Whether what the program says is to be written down as right, instead of compared; the difference is then read in review.
/// </summary>
internal static class Rewriting
{
    public const string Switch = "BENDSHEET_REWRITE_EXPECTED";

    public static bool IsWanted => string.Equals(Environment.GetEnvironmentVariable(Switch), "1", StringComparison.Ordinal);
}
