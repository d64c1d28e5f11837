using System.Text;
using BendSheet.Cli.Output;

namespace BendSheet.Cli.Tests;

/// <summary>
/// A person at a terminal of their own, with a folder of their own: types files and commands, and sees what comes of them.
/// </summary>
public abstract class AtTheTerminal : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("bendsheet-").FullName;

    /// <summary>What stands on standard input.</summary>
    protected string Piped { get; set; } = string.Empty;

    /// <summary>Whether the terminal shows colours.</summary>
    protected bool Colour { get; set; }

    /// <summary>Whether the terminal shows drawings made of characters.</summary>
    protected bool Drawing { get; set; }

    /// <summary>Columns of the terminal; null where the outputs are no terminal.</summary>
    protected int? Width { get; set; }

    public void Dispose()
    {
        Directory.Delete(_folder, recursive: true);
        GC.SuppressFinalize(this);
    }

    /// <summary>A place in the person's folder.</summary>
    protected string Place(string name) => Path.Combine(_folder, name);

    /// <summary>Puts a file into the folder.</summary>
    /// <returns>Its path.</returns>
    protected string Typed(string text, string name = "car.yaml")
    {
        File.WriteAllText(Place(name), text);
        return Place(name);
    }

    /// <summary>Prints a sheet of a car that is gone since.</summary>
    /// <returns>The bytes of the file.</returns>
    protected async Task<byte[]> OldSheet(string name = "car.pdf")
    {
        Assert.Equal(0, (await Run("print", Typed(CarFiles.Sound, "old.yaml"), "--line", "rear", "-o", Place(name))).Code);
        File.Delete(Place("old.yaml"));
        return await File.ReadAllBytesAsync(Place(name));
    }

    /// <summary>The names in the folder, sorted, with blanks between them.</summary>
    protected string InTheFolder() =>
        string.Join(' ', Directory.EnumerateFileSystemEntries(_folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));

    /// <summary>Runs one command to its end.</summary>
    protected async Task<Ran> Run(params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        using var bytes = new MemoryStream();
        var surroundings = new Surroundings(output, error, () => new MemoryStream(Encoding.UTF8.GetBytes(Piped)), () => bytes, Colour)
        {
            Drawing = Drawing,
            OutputWidth = Width,
            ErrorWidth = Width,
        };
        var code = await CommandLine.RunAsync(args, surroundings);
        return new(code, output.ToString(), error.ToString(), bytes.ToArray());
    }
}

/// <summary>What a command left behind.</summary>
/// <param name="Code">It ended with.</param>
/// <param name="Output">Text on standard output.</param>
/// <param name="Error">Text on standard error.</param>
/// <param name="Bytes">Bytes on standard output.</param>
public sealed record Ran(int Code, string Output, string Error, byte[] Bytes);
