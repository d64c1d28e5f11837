namespace BendSheet.Cli.Watching;

/// <summary>What tells one state of a file from the next without reading it.</summary>
/// <param name="IsThere">False also where its folder is gone, or nobody may look.</param>
/// <param name="WrittenAt">In ticks, as the disk counts them.</param>
/// <param name="Size">In bytes.</param>
public readonly record struct FileStamp(bool IsThere, long WrittenAt, long Size)
{
    /// <summary>Of a file that is not there.</summary>
    public static FileStamp Gone { get; } = new(IsThere: false, 0, 0);

    /// <summary>Nothing can be read from it now; an editor that writes in place empties it first.</summary>
    public bool IsEmpty => !IsThere || Size == 0;

    /// <summary>As the disk has it now.</summary>
    public static FileStamp Of(string path)
    {
        try
        {
            // Of what a link leads to: some keep the file elsewhere and a link in the folder.
            var file = new FileInfo(path);
            file = file.LinkTarget is null ? file : (FileInfo?)file.ResolveLinkTarget(returnFinalTarget: true) ?? file;
            return file.Exists ? new(IsThere: true, file.LastWriteTimeUtc.Ticks, file.Length) : Gone;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return Gone;
        }
    }
}
