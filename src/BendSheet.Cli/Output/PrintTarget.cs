using BendSheet.Cli.Input;

namespace BendSheet.Cli.Output;

/// <summary>Where a print goes: a name that was asked for, or else beside the typed file and by its name.</summary>
/// <param name="Named">As typed after -o; null where nothing was.</param>
/// <param name="Beside">The typed file without its ending; null where it came from standard input, and then a name was asked for.</param>
internal sealed record PrintTarget(string? Named, string? Beside)
{
    /// <summary>Stands for standard output.</summary>
    public const string StandardOutput = "-";

    internal const string Ending = ".pdf";

    /// <summary>It goes to standard output.</summary>
    public bool IsStandardOutput => string.Equals(Named, StandardOutput, StringComparison.Ordinal);

    /// <summary>It was named as a drawing is, and a PDF by that name would open nowhere.</summary>
    public bool IsForDrawings => Named?.EndsWith(DrawingFiles.Ending, StringComparison.OrdinalIgnoreCase) == true;

    /// <summary>Null where measurements from standard input leave no name.</summary>
    public static PrintTarget? Of(string file, string? named) =>
        !string.Equals(file, TypedFile.StandardInput, StringComparison.Ordinal) ? new(named, Path.ChangeExtension(file, null))
        : named is null ? null
        : new(named, Beside: null);

    /// <summary>The file for all lines; those that were asked for by name are in its name.</summary>
    public string OfSet(IEnumerable<string> lines) =>
        Named ?? Beside + string.Concat(lines.Distinct(StringComparer.Ordinal).Select(line => "-" + line)) + Ending;

    /// <summary>The file for one line of several. Its name can be part of a file's name.</summary>
    public string OfLine(string line) => Begins(Named, Beside, Ending) + line + Ending;

    /// <summary>What the names of several files begin with: in a folder that was named, the typed file's own name.</summary>
    /// <param name="named">As typed after -o: a folder, or what the names are to begin with; null puts them beside the typed file.</param>
    /// <param name="beside">The typed file without its ending; null where it came from standard input.</param>
    /// <param name="ending">The ending that one file would have.</param>
    public static string Begins(string? named, string? beside, string ending) => named switch
    {
        null => $"{beside}-",
        _ when Directory.Exists(named) || Path.EndsInDirectorySeparator(named) =>
            Path.TrimEndingDirectorySeparator(named) + Path.DirectorySeparatorChar
                + (beside is null ? string.Empty : $"{Path.GetFileName(beside)}-"),
        _ when named.EndsWith(ending, StringComparison.OrdinalIgnoreCase) => $"{named[..^ending.Length]}-",
        _ => $"{named}-",
    };
}
