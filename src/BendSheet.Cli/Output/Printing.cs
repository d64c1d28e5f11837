namespace BendSheet.Cli.Output;

/// <summary>How it went to print sheets or drawings of lines that can be made.</summary>
internal enum Printing
{
    /// <summary>All are written.</summary>
    Done,

    /// <summary>What was asked for does not go together, or not with this file.</summary>
    WrongInput,

    /// <summary>The file has no line to print.</summary>
    NothingToPrint,

    /// <summary>A file could not be written.</summary>
    NotWritten,
}
