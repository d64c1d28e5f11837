namespace BendSheet.Core.Findings;

/// <summary>Where in a typed file something stands.</summary>
/// <param name="File">The file's name as it was given on the command line, or <c>-</c> for standard input.</param>
/// <param name="Line">Counted from 1.</param>
/// <param name="Column">Counted from 1, in UTF-16 units, as editors do.</param>
public readonly record struct SourcePosition(string File, int Line, int Column)
{
    /// <summary><c>file:line:column</c>, which editors turn into a link.</summary>
    public override string ToString() => FormattableString.Invariant($"{File}:{Line}:{Column}");
}
