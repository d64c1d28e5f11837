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
        "not-utf8", "In another encoding the sign for degrees and letters with accents come out as something else.");

    /// <summary>A picture, a sheet, a program.</summary>
    public static Rule NotText { get; } = File("not-text", "A picture, a printed sheet or a program holds no measurements.");

    /// <summary>Nothing but blanks and comments.</summary>
    public static Rule FileEmpty { get; } = File("file-empty", "There is nothing to make a sheet from.");

    /// <summary>A tab, or a wide or no-break space, before the first character of a line.</summary>
    public static Rule TabInIndent { get; } = File("tab-in-indent",
        "A tab is as wide as each editor likes, so it cannot say which line belongs to which.");

    /// <summary>A character that no editor shows.</summary>
    public static Rule ControlCharacter { get; } = File("control-character", "What nobody can see would change what the file says.");

    /// <summary>A line that begins between the lines above it.</summary>
    public static Rule UnevenIndent { get; } = File("uneven-indent", "How far a line stands in says what it belongs to.");

    /// <summary>An opening bracket without its closing one.</summary>
    public static Rule BracketNotClosed { get; } = File("bracket-not-closed",
        "Without the closing bracket the lines below would be taken for a part of it.");

    /// <summary>A closing bracket without its opening one.</summary>
    public static Rule BracketNotOpened { get; } = File(
        "bracket-not-opened", "A closing bracket with no partner means that something was lost before it.");

    /// <summary>An opening quote without its closing one.</summary>
    public static Rule QuoteNotClosed { get; } = File(
        "quote-not-closed", "Without the closing quote the lines below would be taken for text.");

    /// <summary>Something typed directly behind a closing quote.</summary>
    public static Rule TextAfterQuote { get; } = File("text-after-quote",
        "Signs for feet and inches, and apostrophes, end a quoted text earlier than it looks.");

    /// <summary>Two values side by side.</summary>
    public static Rule CommaMissing { get; } = File("comma-missing", "Between brackets only a comma tells where one value ends.");

    /// <summary>A comma with nothing before it, or at the end of a line outside of brackets.</summary>
    public static Rule StrayComma { get; } = File("stray-comma", "A comma where none belongs may stand for a value that was forgotten.");

    /// <summary>A word and its value with no colon.</summary>
    public static Rule ColonMissing { get; } = File("colon-missing", "Only the colon makes a value belong to its word.");

    /// <summary>A word that has two values.</summary>
    public static Rule ColonTwice { get; } = File("colon-twice", "A second colon on a line leaves open which word the value belongs to.");

    /// <summary><c>straight:120</c>.</summary>
    public static Rule BlankAfterColon { get; } = File("blank-after-colon", "Without a blank the colon is taken for a part of the word.");

    /// <summary><c>-{straight: 120}</c>.</summary>
    public static Rule BlankAfterDash { get; } = File("blank-after-dash", "Without a blank the dash is taken for a minus sign.");

    /// <summary><c>straight: 1,5</c> inside brackets.</summary>
    public static Rule DecimalComma { get; } = File("decimal-comma", "Between brackets a comma ends the value, so 1,5 would be read as 1.");

    /// <summary><c>note: heat, then bend</c> inside brackets.</summary>
    public static Rule CommaInText { get; } = File(
        "comma-in-text", "Between brackets a comma ends the text, and the rest of it would be lost.");

    /// <summary>The same word twice in one place.</summary>
    public static Rule DuplicateWord { get; } = File("duplicate-word", "Of two values for one word nobody can tell which was meant.");

    /// <summary>A list or a map where a word is wanted.</summary>
    public static Rule WordExpected { get; } = File("word-expected", "Only a word or a number can have a value.");

    /// <summary><c>&amp;</c>, <c>*</c> and <c>&lt;&lt;</c>.</summary>
    public static Rule AnchorOrAlias { get; } = File("anchor-or-alias",
        "References inside the file make a finding point at the wrong line; `templates:` and `use:` do the same job.");

    /// <summary><c>!</c>.</summary>
    public static Rule Tag { get; } = File("tag", "Marks for programs have no meaning in a file of measurements.");

    /// <summary>A line that begins with <c>%</c>.</summary>
    public static Rule Directive { get; } = File("directive", "Orders to the reading program would be ignored in silence.");

    /// <summary>A second line of three dashes.</summary>
    public static Rule SecondDocument { get; } = File("second-document", "What stands behind a second `---` would be ignored in silence.");

    /// <summary>More levels than <see cref="YamlDocument.DeepestNesting"/>.</summary>
    public static Rule NestedTooDeep { get; } = File(
        "nested-too-deep", "A car needs five levels; more come from brackets that were never closed.");

    /// <summary>More values than <see cref="YamlDocument.MostValues"/>.</summary>
    public static Rule TooManyValues { get; } = File("too-many-values", "More values than anybody types mean that it is the wrong file.");

    /// <summary>More findings than <see cref="YamlDocument.MostFindings"/>.</summary>
    public static Rule TooManyMistakes { get; } = File(
        "too-many-mistakes", "Behind a hundred mistakes there is one cause; the rest of the list would hide it.");

    /// <summary>Whatever else cannot be read.</summary>
    public static Rule YamlBroken { get; } = File("yaml-broken", "What cannot be read for certain is not guessed.");

    /// <summary>All of them, in the order of a file's way in.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        FileTooLarge, NotUtf8, NotText, FileEmpty, TabInIndent, ControlCharacter, UnevenIndent,
        BracketNotClosed, BracketNotOpened, QuoteNotClosed, TextAfterQuote,
        CommaMissing, StrayComma, ColonMissing, ColonTwice, BlankAfterColon, BlankAfterDash, DecimalComma, CommaInText,
        DuplicateWord, WordExpected, AnchorOrAlias, Tag, Directive, SecondDocument,
        NestedTooDeep, TooManyValues, TooManyMistakes, YamlBroken,
    ];

    private static Rule File(string name, string why) => new(name, RuleSubject.File, why);
}
