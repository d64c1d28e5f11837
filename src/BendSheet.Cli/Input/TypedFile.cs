using BendSheet.Core.Findings;
using BendSheet.Files.Reading;

namespace BendSheet.Cli.Input;

/// <summary>Opens what was named on the command line.</summary>
public static class TypedFile
{
    /// <summary>Stands for standard input.</summary>
    public const string StandardInput = "-";

    /// <summary>The file is not there, or may not be read.</summary>
    public static Rule CannotRead { get; } = new(
        "cannot-read", RuleSubject.File, "A name that leads to no file is mistyped, or the file lies elsewhere.");

    /// <summary>Reads a file, or reports why it cannot be.</summary>
    public static TemplateFile Read(string name, Func<Stream> standardInput)
    {
        if (name.Length == 0 || name.Contains('\0', StringComparison.Ordinal))
        {
            return TemplateReader.Nothing(CannotRead.Error(SourcePosition.Whole(name), "no file can be called so: check its name"));
        }

        try
        {
            using var content = string.Equals(name, StandardInput, StringComparison.Ordinal) ? standardInput() : Open(name);
            return TemplateReader.Read(name, content);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            var why = Directory.Exists(name) ? "this is a folder: name the file in it"
                : failure is FileNotFoundException or DirectoryNotFoundException
                    ? "there is no such file: check its name, or write a new one with `bendsheet start`"
                : failure is UnauthorizedAccessException ? "this file may not be read: check whose it is"
                : "this file cannot be read";
            return TemplateReader.Nothing(CannotRead.Error(SourcePosition.Whole(name), why));
        }
    }

    private static FileStream Open(string name)
    {
        try
        {
            return new(name, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        }
        catch (Exception failure) when (failure is ArgumentException or NotSupportedException)
        {
            // A name that the system does not take.
            throw new IOException(failure.Message, failure);
        }
    }
}
