using BendSheet.Core.Findings;

namespace BendSheet.Cli.Output;

/// <summary>What the program ends with.</summary>
public static class ExitCodes
{
    /// <summary>Done; warnings and notes are allowed.</summary>
    public const int Done = 0;

    /// <summary>The file was read, but something in it cannot be made.</summary>
    public const int CannotBeMade = 1;

    /// <summary>The file or the command line is wrong.</summary>
    public const int WrongInput = 2;

    /// <summary>The result could not be written.</summary>
    public const int NotWritten = 3;

    /// <summary>A mistake of the program itself.</summary>
    public const int OwnDefect = 4;

    /// <summary>Stopped by the person, as shells count it.</summary>
    public const int Interrupted = 130;

    /// <summary>The code that a verdict asks for.</summary>
    public static int For(Verdict verdict) => verdict switch
    {
        Verdict.WrongFile => WrongInput,
        Verdict.CannotBeMade => CannotBeMade,
        _ => Done,
    };

    /// <summary>The code for how printing went; of a file that is printed, the one that its verdict asks for.</summary>
    internal static int For(Printing printing, Verdict verdict) => printing switch
    {
        Printing.WrongInput => WrongInput,
        Printing.NothingToPrint => CannotBeMade,
        Printing.NotWritten => NotWritten,
        _ => For(verdict),
    };
}
