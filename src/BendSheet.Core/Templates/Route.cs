using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Templates;

/// <summary>A template's rows as legs and bends, walked from end A to end B: one leg more than bends.</summary>
public sealed record Route
{
    private Route(ImmutableArray<Leg> legs, ImmutableArray<Bend> bends)
    {
        Legs = legs;
        Bends = bends;
    }

    /// <summary>A row ends with a bend and nothing follows it.</summary>
    public static Rule EndsInBend { get; } = new(
        "ends-in-bend", RuleSubject.File, "The last row is the straight after the last bend: without it nobody knows where the tube ends.");

    /// <summary>The legs as measured, from end A.</summary>
    public ImmutableArray<Leg> Legs { get; }

    /// <summary>The bends, from end A; bend i lies between leg i and leg i + 1.</summary>
    public ImmutableArray<Bend> Bends { get; }

    /// <summary>The route of a list of rows. Rows that only go straight add up with the next one.</summary>
    /// <param name="rows">At least one.</param>
    /// <returns>No route, but a finding, where the last row ends with a bend.</returns>
    /// <exception cref="ArgumentException">No rows.</exception>
    public static (Route? Route, ImmutableArray<Finding> Findings) OfRows(IReadOnlyList<Row> rows)
    {
        if (rows.Count == 0)
        {
            throw new ArgumentException("A route has at least one row.", nameof(rows));
        }

        return rows[^1].Bend is { } last
            ? (null,
            [
                EndsInBend.Error(
                    last.TurnAt, "the line ends in a bend: add a last row with the straight up to end B, such as `- {straight: 80}`"),
            ])
            : (OfPiece(rows), []);
    }

    /// <summary>A piece of a route, to be joined to others: it may end in a bend, and then has a last leg of nothing.</summary>
    /// <param name="rows">At least one.</param>
    public static Route OfPiece(IReadOnlyList<Row> rows)
    {
        var legs = ImmutableArray.CreateBuilder<Leg>();
        var bends = ImmutableArray.CreateBuilder<Bend>();
        Leg? open = null;
        foreach (var row in rows)
        {
            open = open is null
                ? new Leg(row.Straight, row.StraightAt, row.Habit) { Inner = row.Inner, From = row.StraightFrom }
                : open with { Measured = open.Measured + row.Straight, From = Together(open, row) };
            if (row.Bend is { } bend)
            {
                legs.Add(open);
                bends.Add(bend);
                open = null;
            }
        }

        legs.Add(open ?? new Leg(Length.Zero, rows[^1].StraightAt));
        return new(legs.ToImmutable(), bends.ToImmutable());
    }

    /// <summary>A route whose legs and bends are known already: one leg more than bends.</summary>
    /// <exception cref="ArgumentException">Not one leg more than bends.</exception>
    public static Route Of(ImmutableArray<Leg> legs, ImmutableArray<Bend> bends) => legs.Length == bends.Length + 1
        ? new(legs, bends)
        : throw new ArgumentException("A route has one leg more than bends.", nameof(legs));

    /// <summary>The same as rows: one for each bend, and a last one that only goes straight.</summary>
    public IEnumerable<Row> ToRows() => Legs.Select((leg, i) =>
        new Row(leg.Measured, leg.At, i < Bends.Length ? Bends[i] : null)
        {
            Habit = leg.Habit,
            Inner = leg.Inner,
            StraightFrom = leg.From,
        });

    /// <summary>The same with its first bend, where it has one, rolled further: what joins it to the bend before.</summary>
    /// <param name="rotation">How much further.</param>
    /// <param name="from">What that follows from; null where it is not measured but known.</param>
    public Route Joined(Angle rotation, Term? from = null) => Bends.IsEmpty
        ? this
        : new(Legs, Bends.SetItem(0, Bends[0] with
        {
            Rotation = Bends[0].Rotation + rotation,

            // A piece whose first bend is not rolled in itself has only the roll of the joint.
            RotationFrom = Bends[0].Rotation == Angle.Zero
                ? from
                : Sum(Bends[0].RotationFrom, Bends[0].Rotation.Radians, from, rotation.Radians),
        }));

    /// <summary>
    /// The same piece read from end B: legs and bends in reverse, and each rotation handed to the bend on the other side of its straight.
    /// The first rotation, which only sets the starting plane, stays the first.
    /// </summary>
    public Route Reversed()
    {
        var count = Bends.Length;
        var bends = Bends.Select((_, i) => Bends[count - 1 - i] with
        {
            Rotation = Bends[i == 0 ? 0 : count - i].Rotation,
            RotationFrom = Bends[i == 0 ? 0 : count - i].RotationFrom,
        });
        return new([.. Legs.Reverse()], [.. bends]);
    }

    /// <summary>The left-hand piece of a right-hand one: every rotation changes its sign.</summary>
    public Route Mirrored() => new(Legs,
    [
        .. Bends.Select(bend => bend with
        {
            Rotation = -bend.Rotation,
            RotationFrom = bend.RotationFrom is { } from ? Term.Negative(from) : null,
        }),
    ]);

    private static Term? Together(Leg leg, Row row) =>
        Sum(leg.From, leg.Measured.Millimetres, row.StraightFrom, row.Straight.Millimetres);

    private static Term? Sum(Term? one, double oneValue, Term? other, double otherValue) => one is null && other is null
        ? null
        : Term.Sum(one ?? Term.Exactly(oneValue), other ?? Term.Exactly(otherValue));
}
