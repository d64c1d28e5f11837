using System.Runtime.InteropServices;
using System.Runtime.Versioning;

namespace BendSheet.Cli.Output;

/// <summary>
/// A file on its way to its target: written beside it, given its name when it is whole, and taken away when it never will be, also where
/// the program is told to stop. Its name cannot come twice, and while it is written it is locked; when a program is killed, the system
/// releases the lock, and that is how the next run knows what was left behind.
/// </summary>
public sealed class PartFile : IDisposable
{
    private const string Begins = "bendsheet-";
    private const string Ends = ".part";
    private const string Format = "N";

    private readonly Lock _gate = new();
    private readonly string _path;
    private readonly PosixSignalRegistration[] _signals;
    private FileStream? _file;
    private bool _isStopped;

    private PartFile(string path)
    {
        _path = path;
        _signals =
        [
            PosixSignalRegistration.Create(PosixSignal.SIGINT, _ => Stop()),
            PosixSignalRegistration.Create(PosixSignal.SIGTERM, _ => Stop()),
            PosixSignalRegistration.Create(PosixSignal.SIGHUP, _ => Stop()),
        ];
    }

    /// <summary>Opens a new file, locked, in the folder of its target.</summary>
    /// <param name="target">Where it is to go; a full path.</param>
    /// <param name="mode">The rights that it gets; null for those that the folder and the umask give.</param>
    /// <exception cref="IOException">The disk does not take it.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    public static PartFile Beside(string target, UnixFileMode? mode)
    {
        var part = new PartFile(Path.Combine(Path.GetDirectoryName(target) ?? target, Begins + Guid.NewGuid().ToString(Format) + Ends));
        try
        {
            part.Open(mode);
            return part;
        }
        catch
        {
            part.Dispose();
            throw;
        }
    }

    /// <summary>Writes all of it, down to the disk.</summary>
    /// <exception cref="IOException">The disk does not take it.</exception>
    public void Write(ReadOnlySpan<byte> content)
    {
        _file!.Write(content);
        _file.Flush(flushToDisk: true);
    }

    /// <summary>Gives it the target's name.</summary>
    /// <param name="target">A full path.</param>
    /// <param name="replace">Whether something by this name is replaced; otherwise, of several who ask for it at once, one wins.</param>
    /// <exception cref="IOException">There is something by this name, or the disk does not take it.</exception>
    /// <exception cref="OperationCanceledException">The program was told to stop.</exception>
    public void MoveTo(string target, bool replace)
    {
        lock (_gate)
        {
            if (_isStopped)
            {
                throw new OperationCanceledException();
            }

            // Only Windows needs it closed before it is moved; elsewhere it stays locked until it has its name.
            if (OperatingSystem.IsWindows())
            {
                _file!.Dispose();
            }

            if (replace)
            {
                File.Move(_path, target, overwrite: true);
            }
            else
            {
                MoveToNew(target);
            }

            _isStopped = true;
        }
    }

    /// <summary>
    /// Takes the name first, which the system gives to one only; a move without replacing looks first and then moves, and in between
    /// another file may come.
    /// </summary>
    private void MoveToNew(string target)
    {
        new FileStream(target, FileMode.CreateNew, FileAccess.Write).Dispose();
        try
        {
            File.Move(_path, target, overwrite: true);
        }
        catch
        {
            File.Delete(target);
            throw;
        }
    }

    /// <summary>Takes the file away, where it was not moved before; it cannot be moved any more.</summary>
    public void Stop()
    {
        lock (_gate)
        {
            if (_isStopped)
            {
                return;
            }

            _isStopped = true;
            if (_file is not null)
            {
                if (OperatingSystem.IsWindows())
                {
                    _file.Dispose();
                }

                File.Delete(_path);
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Stop();
        _file?.Dispose();
        foreach (var signal in _signals)
        {
            signal.Dispose();
        }
    }

    /// <summary>Takes away what killed runs have left in a folder. What cannot be taken away stays.</summary>
    /// <param name="folder">A full path.</param>
    /// <param name="isOurs">Whether a beginning is of something that this program writes; what is empty needs no asking.</param>
    /// <param name="length">How many bytes of a beginning it needs.</param>
    public static void RemoveLeftOvers(string folder, Func<byte[], bool> isOurs, int length)
    {
        try
        {
            foreach (var path in Directory.EnumerateFiles(folder, $"{Begins}*{Ends}").Where(IsName))
            {
                RemoveLeftOver(path, isOurs, length);
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // A folder that may be written to and not be read.
        }
    }

    private static bool IsName(string path) => Path.GetFileName(path.AsSpan()) is var name
        && name.Length > Begins.Length + Ends.Length
        && Guid.TryParseExact(name[Begins.Length..^Ends.Length], Format, out _)
        && !File.GetAttributes(path).HasFlag(FileAttributes.ReparsePoint);

    private static void RemoveLeftOver(string path, Func<byte[], bool> isOurs, int length)
    {
        try
        {
            // Refused where somebody is still writing it. Opened for reading only, a pipe would wait for its other end.
            using var file = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
            if (!file.CanSeek)
            {
                return;
            }

            var begins = new byte[length];
            var read = file.ReadAtLeast(begins, length, throwOnEndOfStream: false);
            if (read == 0 || isOurs(begins[..read]))
            {
                if (OperatingSystem.IsWindows())
                {
                    file.Dispose();
                }

                File.Delete(path);
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // In use, gone already, or somebody else's.
        }
    }

    private void Open(UnixFileMode? mode)
    {
        lock (_gate)
        {
            if (_isStopped)
            {
                throw new OperationCanceledException();
            }

            // Without a buffer: what a full disk refused is not tried again when the file is closed.
            var options = new FileStreamOptions
            {
                Mode = FileMode.CreateNew,
                Access = FileAccess.Write,
                Share = FileShare.Read,
                BufferSize = 0,
            };
            if (mode is { } asked && !OperatingSystem.IsWindows())
            {
                options.UnixCreateMode = asked;
            }

            _file = new(_path, options);
            if (mode is { } wanted && !OperatingSystem.IsWindows())
            {
                GiveBack(wanted);
            }
        }
    }

    /// <summary>Gives back the rights that the umask took off when the file was made. A disk without rights has none to give.</summary>
    [UnsupportedOSPlatform("windows")]
    private void GiveBack(UnixFileMode mode)
    {
        try
        {
            File.SetUnixFileMode(_file!.SafeFileHandle, mode);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // It has fewer rights than before, never more.
        }
    }
}
