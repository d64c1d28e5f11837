using System.Buffers;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>What a person may call a line, a tube, a bender, a fitting or a piece of hardware.</summary>
internal static class NameCheck
{
    private const int Longest = 100;

    /// <summary>What separates folders, or means something to a shell or a file system somewhere.</summary>
    private static readonly SearchValues<char> NotInFileNames = SearchValues.Create("/\\:*?\"<>|");

    /// <summary>Whether a name that is printed will do; a finding where it will not.</summary>
    /// <param name="name">As typed.</param>
    /// <param name="kind">What is called by it, in a sentence: <c>a tube</c>.</param>
    /// <param name="context">For the finding.</param>
    public static bool CanBePrinted(YamlText name, string kind, FileContext context) =>
        Report(name, WhyNotPrinted(name.Text, kind), context);

    /// <summary>Whether a line's name can be part of a file's name; a finding where it cannot.</summary>
    public static bool CanNameFile(YamlText name, FileContext context)
    {
        var text = name.Text;
        var wrong = WhyNotPrinted(text, "a line")
            ?? (text.AsSpan().IndexOfAny(NotInFileNames) is var at and >= 0
                ? $"the line's name has `{text[at]}` in it, and it becomes part of a file's name: use letters, figures, spaces and hyphens"
            : text[0] is '.' or '-'
                ? $"the line's name begins with `{text[0]}`, and it becomes part of a file's name: begin with a letter or a figure"
            : null);
        return Report(name, wrong, context);
    }

    private static string? WhyNotPrinted(string text, string kind) =>
        string.IsNullOrWhiteSpace(text) ? $"{kind} needs a name: type one in front of the colon"
        : text.Any(c => c == '\t' || InvisibleCharacter.Is(c))
            ? $"the name of {kind} has a character in it that cannot be seen: type it again"
        : InvisibleCharacter.IsAllOf(text) ? $"the name of {kind} has nothing in it that can be seen: type a letter or a figure"
        : text.Length > Longest ? $"the name of {kind} is longer than {Longest} characters: shorten it, it has to fit on a sheet"
        : null;

    private static bool Report(YamlText name, string? wrong, FileContext context)
    {
        if (wrong is not null)
        {
            context.Report(FileRules.UnusableName.Error(name.Position, wrong));
        }

        return wrong is null;
    }
}
