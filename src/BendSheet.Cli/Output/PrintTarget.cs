using BendSheet.Cli.Input;

namespace BendSheet.Cli.Output;

/// <summary>Where a print goes: a name that was asked for, or else beside the typed file and by its name.</summary>
/// <param name="Named">As typed behind -o; null where nothing was.</param>
/// <param name="Beside">The typed file without its ending.</param>
internal sealed record PrintTarget(string? Named, string Beside)
{
    /// <summary>Stands for standard output.</summary>
    public const string StandardOutput = "-";

    internal const string Ending = ".pdf";

    /// <summary>It was named as a drawing is, and a PDF by that name would open nowhere.</summary>
    public bool IsForDrawings => Named?.EndsWith(DrawingFiles.Ending, StringComparison.OrdinalIgnoreCase) == true;

    /// <summary>Null where measurements from standard input leave no name.</summary>
    public static PrintTarget? Of(string file, string? named) =>
        named is null && string.Equals(file, TypedFile.StandardInput, StringComparison.Ordinal) ? null : new(named, Path.ChangeExtension(file, null));

    /// <summary>The file for all lines; those that were asked for by name are in its name.</summary>
    public string OfSet(IEnumerable<string> lines) =>
        Named ?? Beside + string.Concat(lines.Distinct(StringComparer.Ordinal).Select(line => "-" + line)) + Ending;

    /// <summary>The file for one line of several. Its name can be part of a file's name.</summary>
    public string OfLine(string line) => Named is null
        ? $"{Beside}-{line}{Ending}"
        : $"{(Named.EndsWith(Ending, StringComparison.OrdinalIgnoreCase) ? Named[..^Ending.Length] : Named)}-{line}{Ending}";
}
