using System.Collections.Immutable;

namespace BendSheet.Cli.Watching;

/// <summary>
/// Tells from a row of looks at some files when somebody has saved. A save is over when two looks in a row agree: editors write a file in
/// pieces, write another one and rename it, or take the file away for a moment. One that is gone or empty is waited for longer, because
/// most often it is about to come back. Looks are counted, not seconds: it knows no clock.
/// </summary>
/// <param name="seen">The state of each file when it was read last.</param>
public sealed class Saves(ImmutableArray<FileStamp> seen)
{
    /// <summary>So many looks in a row agree before a save counts as over.</summary>
    public const int Quiet = 2;

    /// <summary>The same where a file is gone or empty.</summary>
    public const int QuietWithout = 8;

    private ImmutableArray<FileStamp> _last = [];
    private int _alike;

    /// <summary>Takes one more look into account.</summary>
    /// <param name="now">The state of each file, in the same order.</param>
    /// <returns>Whether the files are to be read again.</returns>
    public bool Takes(ImmutableArray<FileStamp> now)
    {
        _alike = now.SequenceEqual(_last) ? _alike + 1 : 1;
        _last = now;
        return !now.SequenceEqual(seen) && _alike >= (now.Any(file => file.IsEmpty) ? QuietWithout : Quiet);
    }
}
