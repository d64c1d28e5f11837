using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Files.Reading;

/// <summary>A row as it was typed, for the reader of its kind.</summary>
/// <param name="Map">The row with all its words.</param>
/// <param name="Straight">Up to what the row is made for.</param>
/// <param name="Rotation">Since the bend before.</param>
/// <param name="Tool">Of its bends.</param>
/// <param name="Note">Printed beside its first mark.</param>
/// <param name="Reader">Of the rows that it stands among.</param>
internal sealed record TypedRow(FieldReader Map, Row Straight, Angle Rotation, Bender Tool, string? Note, RowReader Reader)
{
    /// <summary>For findings.</summary>
    public FileContext Context => Reader.Context;

    /// <summary>Its figures are known, not measured.</summary>
    public bool IsExact { get; init; }

    /// <summary>One standard deviation of each figure that was typed with its own, by its word, in millimetres or radians.</summary>
    public required IReadOnlyDictionary<string, double> Deviations { get; init; }

    /// <summary>What the rotation follows from: where none was typed, somebody saw that there is none. Null where it is exact.</summary>
    public Term? RotationFrom => Observed(ObservationKind.Rotation, Rotation.Radians, "rotate");

    /// <summary>What a figure of the row follows from; null where the row is exact.</summary>
    /// <param name="kind">What it is of.</param>
    /// <param name="value">In millimetres or radians.</param>
    /// <param name="word">The word after which it was typed; where there is none, somebody saw what it is.</param>
    public Term? Observed(ObservationKind kind, double value, string word)
    {
        if (IsExact)
        {
            return null;
        }

        double? within = Deviations.TryGetValue(word, out var deviation) ? deviation : null;
        return within == 0
            ? Term.Exactly(value)
            : new Observation(kind, value, Map.Has(word) ? Map.PositionOfValue(word) : Map.Position) { Within = within };
    }
}

/// <summary>
/// What a row does, by the word that says it: its words, how it is read, and the rows it stands for. A new one is an entry here and in
/// <see cref="All"/>: which words a row may have and which of them go together follow from it.
/// </summary>
/// <param name="Word">The word; empty for a row that only goes straight.</param>
/// <param name="Own">That word and those that mean something only beside it, in the order in which the format lists them.</param>
/// <param name="Beside">Other words that may stand in such a row.</param>
/// <param name="Read">From what was typed to the rows it stands for, a single null after findings.</param>
internal sealed record RowKind(string Word, IReadOnlyList<string> Own, IReadOnlyList<string> Beside, Func<TypedRow, IEnumerable<Row?>> Read)
{
    /// <summary>Its figures are known, not measured, and are not adjusted.</summary>
    public const string Exact = "exact";

    private const string Tool = "bender";

    /// <summary>Only goes straight.</summary>
    public static RowKind Straight { get; } = new(string.Empty, [], ["straight", Exact], row => [row.Straight]);

    /// <summary>A bend, by what the tube turns.</summary>
    public static RowKind Bend { get; } = new("bend", ["bend"], ["straight", "rotate", Tool, "note", Exact], BendRowReader.Bend);

    /// <summary>A bend, by the angle between its legs.</summary>
    public static RowKind Included { get; } = new(
        "included", ["included"], ["straight", "rotate", Tool, "note", Exact], BendRowReader.Included);

    /// <summary>A template that is put in here.</summary>
    public static RowKind Use { get; } = new("use", ["use", "reverse", "mirror"], ["straight", "rotate"], row => row.Reader.Used(row))
    {
        StandsForSeveral = true,
        CountsItself = true,
    };

    /// <summary>Two bends to a parallel run.</summary>
    public static RowKind Offset { get; } = new(
        "offset", ["offset", "run"], ["straight", "rotate", "bend", Tool, "note", Exact], BendRowReader.Offset)
    {
        StandsForSeveral = true,
    };

    /// <summary>Three or four bends over an obstacle.</summary>
    public static RowKind Saddle { get; } = new(
        "saddle", ["saddle", "bends", "width"], ["straight", "rotate", "bend", Tool, "note", Exact], BendRowReader.Saddle)
    {
        StandsForSeveral = true,
    };

    /// <summary>Turns on a former.</summary>
    public static RowKind Coil { get; } = new(
        "coil", ["coil", "radius", "pitch", "winds"], ["straight", "rotate", "note"], BendRowReader.Coil)
    {
        StandsForSeveral = true,
        CountsItself = true,
    };

    /// <summary>All of them, in the order in which the format lists their words.</summary>
    public static IReadOnlyList<RowKind> All { get; } = [Straight, Bend, Included, Use, Offset, Saddle, Coil];

    /// <summary>The words that tell a row without its dash from a line.</summary>
    public static IReadOnlyList<string> WordsOfOneBend { get; } =
        ["straight", "rotate", .. All.Where(kind => !kind.StandsForSeveral).SelectMany(kind => kind.Own)];

    /// <summary>The words of all rows.</summary>
    public static IReadOnlyList<string> AllWords { get; } =
        [.. WordsOfOneBend, Tool, "note", Exact, .. All.Where(kind => kind.StandsForSeveral).SelectMany(kind => kind.Own)];

    /// <summary>`bend` comes last: beside a word that stands for several bends it is the bend of these.</summary>
    private static readonly RowKind[] ByWord = [.. All.Where(kind => kind.StandsForSeveral), Included, Bend];

    /// <summary>It stands for ordinary rows, and may follow the row before without a straight between.</summary>
    public bool StandsForSeveral { get; private init; }

    /// <summary>How many rows it stands for depends on what was typed, and its reader counts them.</summary>
    public bool CountsItself { get; private init; }

    /// <summary>It is bent on the tool that the row or the line names.</summary>
    public bool NeedsTool { get; } = Beside.Contains(Tool, StringComparer.Ordinal);

    /// <summary>What a row is made for; null after a finding where it says two things.</summary>
    public static RowKind? Of(FieldReader row, FileContext context)
    {
        RowKind? kind = null;
        foreach (var candidate in ByWord.Where(candidate => row.Has(candidate.Word)))
        {
            if (kind is null)
            {
                kind = candidate;
            }
            else if (candidate != Bend || kind == Included)
            {
                return SaidTwice(row, kind, candidate, context);
            }
        }

        kind ??= Straight;
        if (kind == Straight && row.HasUnknownWord)
        {
            // The word that nobody knows may be what the row is made for.
            return kind;
        }

        foreach (var word in row.Words.Where(word => !kind.May(word)))
        {
            context.Report(FileRules.OutOfPlace.Error(row.PositionOf(word), kind == Straight
                ? $"`{word}` does nothing in a row without a bend: put it into the row of the bend it belongs to"
                : $"`{word}` does nothing beside `{kind.Word}`: take it out, or put it into a row of its own"));
        }

        return kind;
    }

    private bool May(string word) => Own.Contains(word, StringComparer.Ordinal) || Beside.Contains(word, StringComparer.Ordinal);

    private static RowKind? SaidTwice(FieldReader row, RowKind first, RowKind second, FileContext context)
    {
        context.Report(FileRules.SaidTwice.Error(
            row.PositionOf(first == Included ? first.Word : second.Word),
            first == Included
                ? "`bend` and `included` are two ways to say one corner (bend = 180 − included): keep one of them"
                : $"`{first.Word}` and `{second.Word}` in one row: give each a row of its own"));
        return null;
    }
}
