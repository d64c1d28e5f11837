using BendSheet.Sheets.Drawing;

namespace BendSheet.Cli.Output;

/// <summary>
/// Writes results without ever losing what was there: a file is written beside its target and moved into place when it is whole, and
/// only a printed sheet is replaced.
/// </summary>
public static class OutputFile
{
    /// <summary>A thousand sheets are smaller; what is larger is something else, and not worth reading.</summary>
    private const long LargestSheet = 256 * 1024 * 1024;

    /// <summary>Read at once, in bytes.</summary>
    private const int PieceSize = 16 * 1024;

    private static ReadOnlySpan<byte> PdfBegins => "%PDF-"u8;

    /// <summary>Stands in the description of every sheet, as the program that made it.</summary>
    private static ReadOnlySpan<byte> OurName => "BendSheet"u8;

    /// <summary>Writes a sheet, in the place of an older one.</summary>
    /// <returns>Null, or in words why nothing was written; the old sheet is then whole.</returns>
    public static string? ReplaceSheet(string path, ReadOnlySpan<byte> content) => Replace(path, content, IsSheet, "a printed sheet");

    /// <summary>Writes a drawing, in the place of an older one that nobody has changed since with another program.</summary>
    /// <returns>Null, or in words why nothing was written; the old drawing is then whole.</returns>
    public static string? ReplaceDrawing(string path, ReadOnlySpan<byte> content) =>
        Replace(path, content, IsDrawing, "a drawing of this program");

    /// <summary>Writes a file that must not be there yet.</summary>
    /// <returns>Null, or in words why nothing was written.</returns>
    public static string? WriteNew(string path, ReadOnlySpan<byte> content)
    {
        if (Path.Exists(path))
        {
            return "it is there already, and what you typed is never overwritten: choose another name";
        }

        try
        {
            WriteBeside(Path.GetFullPath(path), content, replace: false);
            return null;
        }
        catch (Exception failure) when (IsOfTheDisk(failure))
        {
            return Reason(failure);
        }
    }

    /// <summary>Why a disk did not take what was written, in words.</summary>
    public static string Reason(Exception failure) => failure switch
    {
        UnauthorizedAccessException => "this place may not be written to",
        DirectoryNotFoundException => "there is no such folder",
        FileNotFoundException => "no file can be made in this place",
        PathTooLongException => "the name is too long",
        // What the runtime makes of EFBIG, a limit on the size of files.
        ArgumentOutOfRangeException => "the file is larger than this place takes",
        ArgumentException or NotSupportedException => "this is no name for a file",
        _ => failure.Message,
    };

    private static string? Replace(string path, ReadOnlySpan<byte> content, Func<string, bool> isOurs, string what)
    {
        try
        {
            var target = Path.GetFullPath(path);
            if (Path.Exists(target))
            {
                // A link stays a link: what it leads to is replaced.
                target = File.ResolveLinkTarget(target, returnFinalTarget: true)?.FullName ?? target;
            }

            if (Directory.Exists(target))
            {
                return "this is a folder: name a file in it";
            }

            if (File.Exists(target) && !isOurs(target))
            {
                return $"there is something else by this name, not {what}: choose another name with -o";
            }

            WriteBeside(target, content);
            return null;
        }
        catch (Exception failure) when (IsOfTheDisk(failure))
        {
            return Reason(failure);
        }
    }

    private static bool IsOfTheDisk(Exception failure) =>
        failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException;

    /// <summary>Devices and pipes have no length, and are left alone as well.</summary>
    private static bool IsSheet(string path)
    {
        if (new FileInfo(path).Length is < 16 or > LargestSheet)
        {
            return false;
        }

        // The name stands near the start of a file that is written here; in other files it is looked for to the end.
        using var file = File.OpenRead(path);
        var piece = new byte[PieceSize];
        var length = file.ReadAtLeast(piece, piece.Length, throwOnEndOfStream: false);
        if (!piece.AsSpan(0, length).StartsWith(PdfBegins))
        {
            return false;
        }

        while (piece.AsSpan(0, length).IndexOf(OurName) < 0)
        {
            // What may be the beginning of the name at the end of a piece is looked at again with the next one.
            piece.AsSpan(length - OurName.Length, OurName.Length).CopyTo(piece);
            var next = file.ReadAtLeast(piece.AsSpan(OurName.Length), 1, throwOnEndOfStream: false);
            if (next == 0)
            {
                return false;
            }

            length = OurName.Length + next;
        }

        return true;
    }

    private static bool IsDrawing(string path)
    {
        if (new FileInfo(path).Length is < 64 or > LargestSheet)
        {
            return false;
        }

        Span<byte> begins = stackalloc byte[SvgFile.Begins.Length];
        using var file = File.OpenRead(path);
        return file.ReadAtLeast(begins, begins.Length, throwOnEndOfStream: false) == begins.Length && begins.SequenceEqual(SvgFile.Begins);
    }

    private static void WriteBeside(string target, ReadOnlySpan<byte> content, bool replace = true)
    {
        var beside = $"{target}.{Environment.ProcessId}.part";

        // Opened outside of the try: what somebody else has left by this name is not ours to delete.
        var file = new FileStream(beside, FileMode.CreateNew, FileAccess.Write);
        try
        {
            using (file)
            {
                file.Write(content);
                file.Flush(flushToDisk: true);
            }

            File.Move(beside, target, replace);
        }
        catch
        {
            File.Delete(beside);
            throw;
        }
    }
}
