using System.Text;

namespace BendSheet.Cli.Output;

/// <summary>What a command may touch of the world besides files, handed in so that tests can hand in their own.</summary>
/// <param name="Output">Results as text.</param>
/// <param name="Error">Findings, and what went wrong.</param>
/// <param name="StandardInput">Opened only where the file is <c>-</c>.</param>
/// <param name="StandardOutput">The bytes under <paramref name="Output"/>, opened only where a sheet goes there.</param>
/// <param name="Colour">Whether findings may be coloured.</param>
public sealed record Surroundings(
    TextWriter Output, TextWriter Error, Func<Stream> StandardInput, Func<Stream> StandardOutput, bool Colour)
{
    /// <summary>
    /// Whether the output is a terminal that shows drawings made of characters, which a file or another program never gets.
    /// </summary>
    public bool Drawing { get; init; }

    /// <summary>Whether the output is a terminal whose screen can be emptied and written anew.</summary>
    public bool Redraws { get; init; }

    /// <summary>Columns of the terminal that the output is; null where it is a file or another program.</summary>
    public int? OutputWidth { get; init; }

    /// <summary>The same of standard error.</summary>
    public int? ErrorWidth { get; init; }

    /// <summary>Says on standard error what went wrong, as a sentence of the program.</summary>
    public void Say(string sentence) => Error.WriteLine(Wrapped.Text($"bendsheet: {sentence}", ErrorWidth));

    /// <summary>
    /// The console of this process. Drawings only on a terminal in UTF-8. Colour only on a terminal, and off where NO_COLOR is set to
    /// anything.
    /// </summary>
    public static Surroundings OfProcess() => new(
        Console.IsOutputRedirected ? Utf8(Console.OpenStandardOutput()) : Console.Out,
        Console.IsErrorRedirected ? Utf8(Console.OpenStandardError()) : Console.Error,
        Console.OpenStandardInput,
        Console.OpenStandardOutput,
        !Console.IsErrorRedirected
            && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
            && Environment.GetEnvironmentVariable("TERM") is not "dumb")
    {
        Drawing = !Console.IsOutputRedirected
            && Console.OutputEncoding.CodePage == Encoding.UTF8.CodePage
            && Environment.GetEnvironmentVariable("TERM") is not "dumb",
        Redraws = !Console.IsOutputRedirected && Environment.GetEnvironmentVariable("TERM") is not "dumb",
        OutputWidth = Console.IsOutputRedirected ? null : Width(),
        ErrorWidth = Console.IsErrorRedirected ? null : Width(),
    };

    /// <summary>Says that there is nowhere to write a result to; with standard error closed as well only the exit code is left.</summary>
    public static void SayClosed()
    {
        try
        {
            using var error = Utf8(Console.OpenStandardError());
            error.WriteLine("bendsheet: the result could not be written: standard output or standard error is closed");
        }
        catch (Exception second) when (second is IOException or UnauthorizedAccessException)
        {
            // Both are closed.
        }
    }

    /// <summary>A terminal that does not say how wide it is counts as 80 columns, the usual width.</summary>
    private static int Width()
    {
        const int Usual = 80;
        try
        {
            return Console.WindowWidth is > 0 and var columns ? columns : Usual;
        }
        catch (Exception failure) when (failure is IOException or PlatformNotSupportedException)
        {
            return Usual;
        }
    }

    /// <summary>
    /// A terminal shows what its own encoding can; a file or another program gets UTF-8 wherever it runs, as JSON must be.
    /// </summary>
    private static StreamWriter Utf8(Stream stream) =>
        new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { AutoFlush = true };
}
