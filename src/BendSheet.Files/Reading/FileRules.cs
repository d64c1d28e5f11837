using BendSheet.Core.Findings;

namespace BendSheet.Files.Reading;

/// <summary>What can be wrong with the words and figures of a file that is sound YAML.</summary>
public static class FileRules
{
    /// <summary>The file, or one that it includes, is not there or may not be read.</summary>
    public static Rule CannotRead { get; } = File(
        "cannot-read", "A name that leads to no file is mistyped, or the file lies elsewhere.");

    /// <summary>A word that the format does not have.</summary>
    public static Rule UnknownWord { get; } = File("unknown-word", "A misspelt word would otherwise be left out in silence.");

    /// <summary>Something that must be said and is not.</summary>
    public static Rule MissingWord { get; } = File("missing-word", "What is not said is not guessed.");

    /// <summary>A list where a map belongs, and the like.</summary>
    public static Rule WrongKind { get; } = File("wrong-kind", "A value of the wrong kind has no meaning in its place.");

    /// <summary>Not a length.</summary>
    public static Rule UnreadableLength { get; } = File("unreadable-length", "A length that cannot be read for certain is not guessed.");

    /// <summary>Not an angle or a rotation.</summary>
    public static Rule UnreadableAngle { get; } = File("unreadable-angle", "An angle that cannot be read for certain is not guessed.");

    /// <summary>Not a number.</summary>
    public static Rule UnreadableNumber { get; } = File("unreadable-number", "A number that cannot be read for certain is not guessed.");

    /// <summary>A figure that nothing real can have.</summary>
    public static Rule OutOfRange { get; } = File("out-of-range", "A figure that nothing real can have is a slip of the finger.");

    /// <summary>A fraction without a unit in a metric file.</summary>
    public static Rule BareFraction { get; } = File(
        "bare-fraction", "Nobody measures fractions of a millimetre: a fraction without a unit was meant in inches.");

    /// <summary>A tube that is no brake tube.</summary>
    public static Rule UnusualTube { get; } = File(
        "unusual-tube", "Tube far from the sizes that cars have is a slip in the figure or its unit.");

    /// <summary>Not one of the words that may stand here.</summary>
    public static Rule NotAChoice { get; } = File("not-a-choice", "Only some words have a meaning here.");

    /// <summary>A tube, bender or fitting that the file does not have.</summary>
    public static Rule UnknownName { get; } = File("unknown-name", "A name must lead to something in the file.");

    /// <summary>A port that the part does not have, or one of several that is not said.</summary>
    public static Rule UnknownPort { get; } = File("unknown-port", "What leads to a port that the part does not have leads nowhere.");

    /// <summary>Not a thread and a seat.</summary>
    public static Rule UnreadablePort { get; } = File(
        "unreadable-port", "A thread or a seat that cannot be read for certain is not guessed.");

    /// <summary>Two words that say the same thing twice, or against each other.</summary>
    public static Rule SaidTwice { get; } = File("said-twice", "Of two ways to say one thing nobody can tell which was meant.");

    /// <summary>A name that cannot be printed, or a line's that cannot be part of a file's name.</summary>
    public static Rule UnusableName { get; } = File(
        "unusable-name", "A name is printed on the sheet, and a line's name becomes part of a file's name.");

    /// <summary>More rows than <see cref="RowReader.MostRows"/>.</summary>
    public static Rule TooManyRows { get; } = File(
        "too-many-rows", "Templates that use one another come to more bends than any line has, faster than anybody sees.");

    /// <summary>Something that is made of itself.</summary>
    public static Rule Circle { get; } = File("circle", "What is made of itself has no beginning.");

    /// <summary>A word in a place where it would do nothing.</summary>
    public static Rule OutOfPlace { get; } = File("out-of-place", "A word that would do nothing where it stands is a misunderstanding.");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        CannotRead, UnknownWord, MissingWord, WrongKind, UnreadableLength, UnreadableAngle, UnreadableNumber, OutOfRange,
        BareFraction, UnusualTube,
        NotAChoice, UnknownName, UnknownPort, UnreadablePort, SaidTwice, UnusableName, OutOfPlace, Circle, TooManyRows,
    ];

    private static Rule File(string name, string why) => new(name, RuleSubject.File, why);
}
