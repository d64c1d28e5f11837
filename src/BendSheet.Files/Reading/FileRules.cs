using BendSheet.Core.Findings;

namespace BendSheet.Files.Reading;

/// <summary>What can be wrong with the words and figures of a file that is sound YAML.</summary>
public static class FileRules
{
    /// <summary>The file, or one that it includes, is not there or may not be read.</summary>
    public static Rule CannotRead { get; } = File(
        "cannot-read", "If there is no such file, its name is mistyped or it is in another folder.");

    /// <summary>A word that the format does not have.</summary>
    public static Rule UnknownWord { get; } = File("unknown-word", "A misspelt word would otherwise be ignored, and nobody would know.");

    /// <summary>Something that must be said and is not.</summary>
    public static Rule MissingWord { get; } = File("missing-word", "What the file does not say is not guessed.");

    /// <summary>A list where a map belongs, and the like.</summary>
    public static Rule WrongKind { get; } = File("wrong-kind", "A value of the wrong kind means nothing here.");

    /// <summary>Not a length.</summary>
    public static Rule UnreadableLength { get; } = File("unreadable-length", "A length that could be read two ways is not guessed.");

    /// <summary>Not an angle or a rotation.</summary>
    public static Rule UnreadableAngle { get; } = File("unreadable-angle", "An angle that could be read two ways is not guessed.");

    /// <summary>Not a number.</summary>
    public static Rule UnreadableNumber { get; } = File("unreadable-number", "A number that could be read two ways is not guessed.");

    /// <summary>A figure that nothing real can have.</summary>
    public static Rule OutOfRange { get; } = File("out-of-range", "A figure that no real part can have is a slip of the finger.");

    /// <summary>A fraction without a unit in a metric file.</summary>
    public static Rule BareFraction { get; } = File(
        "bare-fraction", "Nobody measures fractions of a millimetre: a fraction without a unit was meant in inches.");

    /// <summary>A tube that is no brake tube.</summary>
    public static Rule UnusualTube { get; } = File(
        "unusual-tube", "Tube far from any car's sizes is a slip in the figure or its unit.");

    /// <summary>Not one of the words that may stand here.</summary>
    public static Rule NotAChoice { get; } = File("not-a-choice", "Only some words have a meaning here.");

    /// <summary>A tube, bender or fitting that the file does not have.</summary>
    public static Rule UnknownName { get; } = File("unknown-name", "A name must lead to something in the file.");

    /// <summary>A port that the part does not have, or one of several that is not said.</summary>
    public static Rule UnknownPort { get; } = File("unknown-port", "A line to a port that the part does not have goes nowhere.");

    /// <summary>Not a thread and a seat.</summary>
    public static Rule UnreadablePort { get; } = File(
        "unreadable-port", "A thread or seat that could be read two ways is not guessed.");

    /// <summary>Two words that say the same thing twice, or against each other.</summary>
    public static Rule SaidTwice { get; } = File("said-twice", "If one thing is said in two ways, nobody can tell which is meant.");

    /// <summary>A name that cannot be printed, or a line's that cannot be part of a file's name.</summary>
    public static Rule UnusableName { get; } = File(
        "unusable-name", "A name is printed on the sheet, and a line's name becomes part of a file's name.");

    /// <summary>More rows than <see cref="RowReader.MostRows"/>.</summary>
    public static Rule TooManyRows { get; } = File(
        "too-many-rows", "Templates that use one another soon come to more bends than any line has.");

    /// <summary>Something that is made of itself.</summary>
    public static Rule Circle { get; } = File("circle", "A thing made from itself has no beginning.");

    /// <summary>A word in a place where it would do nothing.</summary>
    public static Rule OutOfPlace { get; } = File("out-of-place", "A word that would do nothing here means something was misunderstood.");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        CannotRead, UnknownWord, MissingWord, WrongKind, UnreadableLength, UnreadableAngle, UnreadableNumber, OutOfRange,
        BareFraction, UnusualTube,
        NotAChoice, UnknownName, UnknownPort, UnreadablePort, SaidTwice, UnusableName, OutOfPlace, Circle, TooManyRows,
    ];

    private static Rule File(string name, string why) => new(name, RuleSubject.File, why);
}
