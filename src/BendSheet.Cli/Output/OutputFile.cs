using BendSheet.Pdf;
using BendSheet.Sheets.Drawing;

namespace BendSheet.Cli.Output;

/// <summary>
/// Writes results without ever losing what was there: a file is written beside its target and moved into place when it is whole, and
/// only what was printed, and has not been changed since, is replaced.
/// </summary>
public static class OutputFile
{
    /// <summary>A thousand sheets are smaller; what is larger is something else, and not worth reading.</summary>
    private const long LargestSheet = 256 * 1024 * 1024;

    /// <summary>Another run may take a part file for one that was left behind, in the moment between its making and its locking.</summary>
    private const int MostAttempts = 5;

    /// <summary>What Unix and Windows say of a disk without room: ENOSPC, ERROR_DISK_FULL, ERROR_HANDLE_DISK_FULL.</summary>
    private static readonly int[] DiskFull = [28, unchecked((int)0x80070070), unchecked((int)0x80070027)];

    /// <summary>What they say of a file that somebody else has locked: EWOULDBLOCK on Linux and macOS, ERROR_SHARING_VIOLATION.</summary>
    private static readonly int[] Locked = [11, 35, unchecked((int)0x80070020)];

    /// <summary>Why a file that is there is not written.</summary>
    public const string There = "it is there already, and what you typed is never overwritten: choose another name";

    private const UnixFileMode MayWrite = UnixFileMode.UserWrite | UnixFileMode.GroupWrite | UnixFileMode.OtherWrite;

    /// <summary>What <c>start</c> writes begins so, without a schema and with one; the rest is the person's.</summary>
    private static readonly byte[][] StarterBegins =
        [System.Text.Encoding.UTF8.GetBytes(StarterFile.FirstLine), System.Text.Encoding.UTF8.GetBytes(FormatSchema.Modeline)];

    /// <summary>Writes a sheet, in the place of an older one.</summary>
    /// <returns>Null, or in words why nothing was written; the old sheet is then whole.</returns>
    public static string? ReplaceSheet(string path, ReadOnlySpan<byte> content) => Replace(path, content, WhyNoSheet);

    /// <summary>Writes a drawing, in the place of an older one that nobody has changed since with another program.</summary>
    /// <returns>Null, or in words why nothing was written; the old drawing is then whole.</returns>
    public static string? ReplaceDrawing(string path, ReadOnlySpan<byte> content) => Replace(path, content, WhyNoDrawing);

    /// <summary>Writes a file that must not be there yet.</summary>
    /// <returns>Null, or in words why nothing was written.</returns>
    public static string? WriteNew(string path, ReadOnlySpan<byte> content)
    {
        if (Path.Exists(path))
        {
            return There;
        }

        try
        {
            WriteBeside(Path.GetFullPath(path), content, mode: null, replace: false);
            return null;
        }
        catch (Exception failure) when (IsOfTheDisk(failure))
        {
            return Path.Exists(path) ? There : Reason(failure);
        }
    }

    /// <summary>Why a disk did not take what was written, in words; never the name of a file that nobody asked for.</summary>
    public static string Reason(Exception failure) => failure switch
    {
        UnauthorizedAccessException => "this place may not be written to",
        DirectoryNotFoundException => "there is no such folder",
        FileNotFoundException => "no file can be made in this place",
        PathTooLongException => "the name is too long",
        // What the runtime makes of EFBIG, a limit on the size of files.
        ArgumentOutOfRangeException => "the file is larger than this place takes",
        ArgumentException or NotSupportedException => "this is no name for a file",
        IOException when DiskFull.Contains(failure.HResult) => "the disk is full",
        _ => Visible.Text(WithoutName(failure.Message)),
    };

    /// <summary>The runtime puts the file's name after what the system says: <c>Input/output error : 'car.pdf'</c>.</summary>
    private static string WithoutName(string message) => message.IndexOf(" : '", StringComparison.Ordinal) is > 0 and var name
        ? message[..name]
        : message;

    private static string? Replace(string path, ReadOnlySpan<byte> content, Func<string, string?> whyNot)
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

            UnixFileMode? mode = null;
            if (File.Exists(target))
            {
                if ((whyNot(target) ?? WhyReadOnly(target)) is { } why)
                {
                    return why;
                }

                mode = OperatingSystem.IsWindows() ? null : File.GetUnixFileMode(target);
            }

            WriteBeside(target, content, mode, replace: true);
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
    private static string? WhyNoSheet(string path)
    {
        if (new FileInfo(path).Length is < 16 or > LargestSheet)
        {
            return SomethingElse("a printed sheet");
        }

        var file = File.ReadAllBytes(path);
        return !OwnMark.IsOn(file) ? SomethingElse("a printed sheet")
            : OwnMark.IsUntouched(file) ? null
            : "another program has changed this sheet since it was printed, and what was put on it would be lost: choose another name "
                + "with -o";
    }

    private static string? WhyNoDrawing(string path)
    {
        if (new FileInfo(path).Length is < 64 or > LargestSheet)
        {
            return SomethingElse("a drawing of this program");
        }

        Span<byte> begins = stackalloc byte[SvgFile.Begins.Length];
        using var file = File.OpenRead(path);
        return file.ReadAtLeast(begins, begins.Length, throwOnEndOfStream: false) == begins.Length && begins.SequenceEqual(SvgFile.Begins)
            ? null
            : SomethingElse("a drawing of this program");
    }

    private static string SomethingElse(string what) => $"there is something else by this name, not {what}: choose another name with -o";

    /// <summary>What somebody has made read-only is not replaced, even by a person who may write to everything.</summary>
    private static string? WhyReadOnly(string path)
    {
        const string ReadOnly = "it is read-only, and stays as it is: choose another name with -o, or let it be written to";
        if (!OperatingSystem.IsWindows() && (File.GetUnixFileMode(path) & MayWrite) == UnixFileMode.None)
        {
            return ReadOnly;
        }

        try
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete);
            return null;
        }
        catch (UnauthorizedAccessException)
        {
            return ReadOnly;
        }
    }

    private static void WriteBeside(string target, ReadOnlySpan<byte> content, UnixFileMode? mode, bool replace)
    {
        for (var attempt = 1; !IsWritten(target, content, mode, replace, isLast: attempt == MostAttempts); attempt++)
        {
        }

        PartFile.RemoveLeftOvers(Path.GetDirectoryName(target) ?? target, IsOurs, OwnMark.Length);
    }

    /// <summary>False where another run has taken the part file away.</summary>
    private static bool IsWritten(string target, ReadOnlySpan<byte> content, UnixFileMode? mode, bool replace, bool isLast)
    {
        try
        {
            using var part = PartFile.Beside(target, mode);
            part.Write(content);
            part.MoveTo(target, replace);
            return true;
        }
        catch (IOException failure) when (!isLast && (failure is FileNotFoundException || Locked.Contains(failure.HResult)))
        {
            return false;
        }
    }

    private static bool IsOurs(byte[] begins) =>
        OwnMark.IsOn(begins) || begins.AsSpan().StartsWith(SvgFile.Begins)
            || Array.Exists(StarterBegins, start => begins.AsSpan().StartsWith(start));
}
