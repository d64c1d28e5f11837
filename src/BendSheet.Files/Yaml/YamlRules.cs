using BendSheet.Core.Findings;

namespace BendSheet.Files.Yaml;

/// <summary>What can be wrong with a typed file before its words are looked at.</summary>
public static class YamlRules
{
    /// <summary>More bytes than <see cref="YamlDocument.MostBytes"/>.</summary>
    public static Rule FileTooLarge { get; } = File(
        "file-too-large", "A file of more than 4 MiB is the wrong file, and would only cost time.");

    /// <summary>Another encoding.</summary>
    public static Rule NotUtf8 { get; } = File(
        "not-utf8", "In another encoding, degree signs and accented letters turn into something else.");

    /// <summary>A picture, a sheet, a program.</summary>
    public static Rule NotText { get; } = File("not-text", "A picture, a printed sheet or a program has no measurements to read.");

    /// <summary>Nothing but spaces and comments.</summary>
    public static Rule FileEmpty { get; } = File("file-empty", "There is nothing to make a sheet from.");

    /// <summary>A tab, or a wide or no-break space, before the first character of a line.</summary>
    public static Rule TabInIndent { get; } = File("tab-in-indent",
        "A tab is as wide as each editor likes, so it cannot say which line belongs to which.");

    /// <summary>A character that no editor shows.</summary>
    public static Rule ControlCharacter { get; } = File("control-character", "A hidden character would change what the file says.");

    /// <summary>A line that begins between the lines above it.</summary>
    public static Rule UnevenIndent { get; } = File("uneven-indent", "The indent of a line says what it belongs to.");

    /// <summary>An opening bracket without its closing one.</summary>
    public static Rule BracketNotClosed { get; } = File("bracket-not-closed",
        "Without its closing bracket, the lines below would count as part of it.");

    /// <summary>A closing bracket without its opening one.</summary>
    public static Rule BracketNotOpened { get; } = File(
        "bracket-not-opened", "A closing bracket without its partner means that something before it was lost.");

    /// <summary>An opening quote without its closing one.</summary>
    public static Rule QuoteNotClosed { get; } = File(
        "quote-not-closed", "Without its closing quote, the lines below would count as text.");

    /// <summary>Something typed directly after a closing quote.</summary>
    public static Rule TextAfterQuote { get; } = File("text-after-quote",
        "Foot and inch marks, and apostrophes, can end a quoted text earlier than it looks.");

    /// <summary>Two values side by side.</summary>
    public static Rule CommaMissing { get; } = File("comma-missing", "Between brackets, only a comma shows where one value ends.");

    /// <summary>A comma with nothing before it, or at the end of a line outside of brackets.</summary>
    public static Rule StrayComma { get; } = File("stray-comma", "A stray comma may stand for a value that was forgotten.");

    /// <summary>A word and its value with no colon.</summary>
    public static Rule ColonMissing { get; } = File("colon-missing", "Only the colon makes a value belong to its word.");

    /// <summary>A word that has two values.</summary>
    public static Rule ColonTwice { get; } = File("colon-twice", "With two colons on a line, nobody can tell whose value it is.");

    /// <summary><c>straight:120</c>.</summary>
    public static Rule SpaceAfterColon { get; } = File("space-after-colon", "Without a space after it, the colon is part of the word.");

    /// <summary><c>-{straight: 120}</c>.</summary>
    public static Rule SpaceAfterDash { get; } = File("space-after-dash", "Without a space after it, the dash counts as a minus sign.");

    /// <summary><c>straight: 1,5</c> inside brackets.</summary>
    public static Rule DecimalComma { get; } = File("decimal-comma", "Between brackets a comma ends the value, so 1,5 would be read as 1.");

    /// <summary><c>note: heat, then bend</c> inside brackets.</summary>
    public static Rule CommaInText { get; } = File(
        "comma-in-text", "Between brackets a comma ends the text; the rest would be lost.");

    /// <summary>The same word twice in one place.</summary>
    public static Rule DuplicateWord { get; } = File("duplicate-word", "With two values for one word, nobody can tell which is meant.");

    /// <summary>A list or a map where a word is wanted.</summary>
    public static Rule WordExpected { get; } = File("word-expected", "Only a word or a number can have a value.");

    /// <summary><c>&amp;</c>, <c>*</c> and <c>&lt;&lt;</c>.</summary>
    public static Rule AnchorOrAlias { get; } = File("anchor-or-alias",
        "References inside the file make findings point at the wrong line; `templates:` and `use:` do the same job.");

    /// <summary><c>!</c>.</summary>
    public static Rule Tag { get; } = File("tag", "Marks for programs have no meaning in a file of measurements.");

    /// <summary>A line that begins with <c>%</c>.</summary>
    public static Rule Directive { get; } = File("directive",
        "Lines that begin with % are meant for programs: here they would be ignored, and nobody would know.");

    /// <summary>A second line of three dashes.</summary>
    public static Rule SecondDocument { get; } = File("second-document", "What comes after a second `---` would be ignored.");

    /// <summary>More levels than <see cref="YamlDocument.DeepestNesting"/>.</summary>
    public static Rule NestedTooDeep { get; } = File(
        "nested-too-deep", "A car needs five levels; more come from brackets left open.");

    /// <summary>More values than <see cref="YamlDocument.MostValues"/>.</summary>
    public static Rule TooManyValues { get; } = File("too-many-values", "More values than anybody types mean that this is the wrong file.");

    /// <summary>More findings than <see cref="YamlDocument.MostFindings"/>.</summary>
    public static Rule TooManyMistakes { get; } = File(
        "too-many-mistakes", "A hundred mistakes usually have one cause; the rest of the list would hide it.");

    /// <summary>Whatever else cannot be read.</summary>
    public static Rule YamlBroken { get; } = File("yaml-broken", "What could be read two ways is not guessed.");

    /// <summary>All of them, in the order of a file's way in.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        FileTooLarge, NotUtf8, NotText, FileEmpty, TabInIndent, ControlCharacter, UnevenIndent,
        BracketNotClosed, BracketNotOpened, QuoteNotClosed, TextAfterQuote,
        CommaMissing, StrayComma, ColonMissing, ColonTwice, SpaceAfterColon, SpaceAfterDash, DecimalComma, CommaInText,
        DuplicateWord, WordExpected, AnchorOrAlias, Tag, Directive, SecondDocument,
        NestedTooDeep, TooManyValues, TooManyMistakes, YamlBroken,
    ];

    private static Rule File(string name, string why) => new(name, RuleSubject.File, why);
}
