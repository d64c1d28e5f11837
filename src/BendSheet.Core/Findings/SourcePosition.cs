namespace BendSheet.Core.Findings;

/// <summary>Where in a typed file something stands.</summary>
/// <param name="File">The file's name as it was given on the command line, or <c>-</c> for standard input.</param>
/// <param name="Line">Counted from 1; 0 where the file as a whole is meant.</param>
/// <param name="Column">Counted from 1, in UTF-16 units, as editors do; 0 where the file as a whole is meant.</param>
public readonly record struct SourcePosition(string File, int Line, int Column)
{
    /// <summary>Which of several files it is: 0 for the one that was asked for, then those that it includes, in their order.</summary>
    public int FileNumber { get; init; }

    /// <summary>The file as a whole.</summary>
    public static SourcePosition Whole(string file) => new(file, 0, 0);

    /// <summary><c>file:line:column</c>, which editors turn into a link; only the file where it is meant as a whole.</summary>
    public override string ToString() => Line == 0 ? File : FormattableString.Invariant($"{File}:{Line}:{Column}");
}
