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
    };

    /// <summary>
    /// A terminal shows what its own encoding can; a file or another program gets UTF-8 wherever it runs, as JSON must be.
    /// </summary>
    private static StreamWriter Utf8(Stream stream) =>
        new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { AutoFlush = true };
}
