using BendSheet.Core.Findings;
using BendSheet.Files.Reading;

namespace BendSheet.Cli.Input;

/// <summary>Opens what was named on the command line.</summary>
public static class TypedFile
{
    /// <summary>Stands for standard input.</summary>
    public const string StandardInput = "-";

    private const string NoName = "no file can be called so: check its name";

    /// <summary>Reads a file, or reports why it cannot be.</summary>
    public static TemplateFile Read(string name, Func<Stream> standardInput)
    {
        if (!CanBeCalled(name))
        {
            return Nothing(name, NoName);
        }

        try
        {
            using var content = IsStandardInput(name) ? standardInput() : Open(name);
            return TemplateReader.Read(name, content, typed => Included(typed, name));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return Nothing(name, Problem(failure, name, ", or write a new one with `bendsheet start`"));
        }
    }

    private static TemplateFile Nothing(string name, string why) =>
        TemplateReader.Nothing(FileRules.CannotRead.Error(SourcePosition.Whole(name), why));

    private static bool IsStandardInput(string name) => string.Equals(name, StandardInput, StringComparison.Ordinal);

    private static bool CanBeCalled(string name) => name.Length > 0 && !name.Contains('\0', StringComparison.Ordinal);

    /// <summary>Looked for beside the file that includes it; from standard input, in the folder that the program is started in.</summary>
    private static IncludedFile Included(string typed, string including)
    {
        var folder = IsStandardInput(including) ? null : Path.GetDirectoryName(including);
        if (!CanBeCalled(typed))
        {
            return new(typed, null, NoName, IsItself: false);
        }

        var name = Path.Combine(folder ?? string.Empty, typed);
        try
        {
            return IsSame(name, including)
                ? new(name, null, null, IsItself: true)
                : new(name, Open(name), null, IsItself: false);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            var where = string.IsNullOrEmpty(folder) ? "this folder" : $"`{folder}`";
            return new(name, null, Problem(failure, name, $"; it is looked for in {where}"), IsItself: false);
        }
    }

    private static bool IsSame(string name, string including) => !IsStandardInput(including)
        && string.Equals(Path.GetFullPath(name), Path.GetFullPath(including), StringComparison.Ordinal);

    private static string Problem(Exception failure, string name, string orElse) =>
        Directory.Exists(name) ? "this is a folder: name the file in it"
        : failure is FileNotFoundException or DirectoryNotFoundException ? $"there is no such file: check its name{orElse}"
        : failure is UnauthorizedAccessException ? "this file may not be read: check whose it is"
        : "this file cannot be read";

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
