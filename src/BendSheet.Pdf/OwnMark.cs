using System.Text;
using BendSheet.Core.Sheet;

namespace BendSheet.Pdf;

/// <summary>
/// Tells a sheet of this program from every other file: a comment near its beginning (ISO 32000-1, 7.2.3), which a program that writes the
/// file anew does not keep, and in the identifier at its end the hash of all that stands before it, which no longer holds once a program
/// has added something.
/// </summary>
public static class OwnMark
{
    /// <summary>The version of PDF and the comment that calls the file binary stand before the mark, and are no longer than this.</summary>
    private const int FarthestStart = 64;

    private static ReadOnlySpan<byte> PdfBegins => "%PDF-"u8;

    private static ReadOnlySpan<byte> TrailerBegins => "trailer\n<<"u8;

    private static ReadOnlySpan<byte> End => "%%EOF\n"u8;

    /// <summary>A line of its own after the file's header.</summary>
    internal static ReadOnlySpan<byte> Line => "% A sheet of BendSheet: printed again, it is replaced\n"u8;

    /// <summary>How many bytes of a file's beginning are enough for <see cref="IsOn"/>.</summary>
    public static int Length => FarthestStart + Line.Length;

    /// <summary>The file was begun by this program.</summary>
    /// <param name="file">Its first <see cref="Length"/> bytes, or all of it.</param>
    public static bool IsOn(ReadOnlySpan<byte> file) =>
        file.StartsWith(PdfBegins) && file[..Math.Min(file.Length, Length)].IndexOf(Line) >= 0;

    /// <summary>The file has the mark, is whole, and nothing in it has changed since it was printed.</summary>
    /// <param name="file">All of it.</param>
    public static bool IsUntouched(ReadOnlySpan<byte> file)
    {
        var trailer = file.LastIndexOf(TrailerBegins);
        return trailer >= 0
            && IsOn(file)
            && file[trailer..].IndexOf(End) + End.Length == file.Length - trailer
            && file[trailer..].IndexOf(Encoding.ASCII.GetBytes($"/ID[<{ContentHash.Of(file[..trailer])}>")) >= 0;
    }
}
