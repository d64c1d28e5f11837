namespace BendSheet.Files.Reading;

/// <summary>What a row does, by the word that says it, and the other words that have a meaning beside it.</summary>
/// <param name="Word">The word; empty for a row that only goes straight.</param>
/// <param name="Words">All words that may stand in such a row.</param>
internal sealed record RowKind(string Word, IReadOnlyList<string> Words)
{
    /// <summary>A template, an offset, a saddle or a coil may follow the row before without a straight between.</summary>
    public bool NeedsStraight => this == Straight || this == Bend || this == Included;

    /// <summary>Only goes straight.</summary>
    public static RowKind Straight { get; } = new(string.Empty, ["straight"]);

    /// <summary>A bend, by what the tube turns.</summary>
    public static RowKind Bend { get; } = new("bend", ["straight", "rotate", "bend", "bender", "note"]);

    /// <summary>A bend, by the angle between its legs.</summary>
    public static RowKind Included { get; } = new("included", ["straight", "rotate", "included", "bender", "note"]);

    /// <summary>A template that is put in here.</summary>
    public static RowKind Use { get; } = new("use", ["straight", "rotate", "use", "reverse", "mirror"]);

    /// <summary>Two bends to a parallel run.</summary>
    public static RowKind Offset { get; } = new("offset", ["straight", "rotate", "offset", "bend", "run", "bender", "note"]);

    /// <summary>Three or four bends over an obstacle.</summary>
    public static RowKind Saddle { get; } = new("saddle", ["straight", "rotate", "saddle", "bends", "bend", "width", "bender", "note"]);

    /// <summary>Turns on a former.</summary>
    public static RowKind Coil { get; } = new("coil", ["straight", "rotate", "coil", "radius", "pitch", "winds", "note"]);

    private static readonly RowKind[] Expanded = [Use, Offset, Saddle, Coil, Included, Bend];

    /// <summary>What a row is made for; null after a finding where it says two things.</summary>
    public static RowKind? Of(FieldReader row, FileContext context)
    {
        RowKind? kind = null;
        foreach (var candidate in Expanded)
        {
            if (!row.Has(candidate.Word))
            {
                continue;
            }

            // `bend` beside a word that stands for several bends is the bend of these.
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

        foreach (var word in row.Words)
        {
            if (kind.Words.Contains(word, StringComparer.Ordinal))
            {
                continue;
            }

            context.Report(FileRules.OutOfPlace.Error(row.PositionOf(word), kind == Straight
                ? $"`{word}` does nothing in a row without a bend: put it into the row of the bend it belongs to"
                : $"`{word}` does nothing beside `{kind.Word}`: take it out, or put it into a row of its own"));
        }

        return kind;
    }

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
