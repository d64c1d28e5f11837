using System.CommandLine;
using System.CommandLine.Parsing;
using BendSheet.Core.Findings;

namespace BendSheet.Cli.Commands;

/// <summary>What is wrong with a command line, in sentences that say what would make it right.</summary>
internal static class UsageErrors
{
    /// <summary>One sentence for each mistake; of words that fit nowhere, only the first: the others follow from it.</summary>
    public static IEnumerable<string> Of(ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;
        if (command is RootCommand && parsed.UnmatchedTokens is [var typed, ..])
        {
            return [LooksLikeOption(typed) ? OptionAlone(typed, command) : UnknownCommand(typed, command)];
        }

        return Slip(parsed) is { } slip ? [UnknownOption(slip, command)]
            : parsed.UnmatchedTokens is [var more, ..] ? [TooMany(more, command)]
            : parsed.Errors.Select(error => Sentence(error, parsed)).Distinct(StringComparer.Ordinal);
    }

    /// <summary>A mistyped option is not taken for a file's name; a file by such a name is typed with its folder, <c>./-name</c>.</summary>
    public static void RefuseOption(ArgumentResult file)
    {
        if (file.Tokens.FirstOrDefault(token => LooksLikeOption(token.Value)) is { } slip)
        {
            file.AddError(slip.Value);
        }
    }

    private static bool LooksLikeOption(string word) => word.Length > 1 && word[0] == '-';

    /// <summary>The first word that looks like an option and is none, wherever it landed.</summary>
    private static string? Slip(ParseResult parsed) => parsed.CommandResult.Children.OfType<ArgumentResult>()
        .SelectMany(argument => argument.Tokens.Select(token => token.Value))
        .Concat(parsed.UnmatchedTokens)
        .FirstOrDefault(LooksLikeOption);

    private static string UnknownOption(string typed, Command command) =>
        $"`{command.Name}` has no option `{Word(typed)}`{Cure(typed, command.Options)}";

    private static string OptionAlone(string typed, Command root)
    {
        var owner = root.Subcommands.FirstOrDefault(
            command => command.Options.Any(option => option.Name.Equals(Word(typed), StringComparison.Ordinal)));
        return owner is null
            ? $"there is no option `{Word(typed)}`{Cure(typed, root.Options)}"
            : $"`{Word(typed)}` goes after a command and its file: `bendsheet {owner.Name} FILE {Word(typed)}`.";
    }

    private static string Word(string typed) => typed.Split('=')[0];

    private static string Cure(string typed, IEnumerable<Option> options) =>
        NearestWord.Among(Word(typed), [.. options.Select(option => option.Name), "--help"]) is { } nearest
            ? $": did you mean `{nearest}`?"
            : ".";

    private static string UnknownCommand(string typed, Command root)
    {
        if (typed.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || typed.EndsWith(".yml", StringComparison.OrdinalIgnoreCase)
            || File.Exists(typed))
        {
            return $"`{typed}` is a file, and a command has to stand before it: did you mean `bendsheet show {typed}`?";
        }

        var nearest = NearestWord.Among(typed, root.Subcommands.Select(command => command.Name));
        return $"there is no command `{typed}`{(nearest is null ? "." : $": did you mean `{nearest}`?")}";
    }

    private static string TooMany(string typed, Command command) => Wanted(command) switch
    {
        null => $"`{typed}` is one word too many: `{command.Name}` takes none.",
        "file" => $"`{typed}` is one word too many: `{command.Name}` takes one file, and a name with spaces in it goes in quotes.",
        var other => $"`{typed}` is one word too many: `{command.Name}` takes one {other}.",
    };

    /// <summary>What stands after a command, as a word of a sentence; null for nothing.</summary>
    private static string? Wanted(Command command) => command.Arguments is [var one, ..] ? one.Name.ToLowerInvariant() : null;

    private static string Sentence(ParseError error, ParseResult parsed) => error.SymbolResult switch
    {
        OptionResult option => OfOption(option, error),
        ArgumentResult { Parent: OptionResult option } => OfOption(option, error),
        ArgumentResult { Tokens.Count: 0 } => OfNoFile(parsed.CommandResult.Command),

        // Said by a command of ours.
        _ => error.Message,
    };

    private static string OfNoFile(Command command) =>
        $"`{command.Name}` needs a {Wanted(command)}: type its name after it, such as "
            + $"`{(command as ExampleCommand)?.Examples[0].Line}`.";

    private static string OfOption(OptionResult typed, ParseError error)
    {
        var (option, name) = (typed.Option, typed.IdentifierToken?.Value ?? typed.Option.Name);
        if (option.Arity.MaximumNumberOfValues == 1 && typed.IdentifierTokenCount > 1)
        {
            return $"`{name}` is there more than once, and counts once: leave all but one out.";
        }

        if (typed.Tokens is [])
        {
            return $"`{name}` has nothing after it: type `{name} {option.HelpName}`.";
        }

        if (option.HelpName?.Split('|') is not { Length: > 1 } words)
        {
            return error.Message;
        }

        var wrong = typed.Tokens.Select(token => token.Value).First(value => !words.Contains(value, StringComparer.Ordinal));
        var cure = NearestWord.Among(wrong, words) is { } nearest ? $"did you mean `{nearest}`?" : $"it takes {Listed(words)}.";
        return $"`{name}` does not know `{wrong}`: {cure}";
    }

    private static string Listed(string[] words) => $"`{string.Join("`, `", words[..^1])}` or `{words[^1]}`";
}
