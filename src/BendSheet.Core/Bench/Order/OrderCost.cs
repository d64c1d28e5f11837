using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Order;

/// <summary>What an order of work asks of the hands. Of two the first figure that differs decides: fewer is better.</summary>
/// <param name="Cramped">Bends that swing into what is round the tool.</param>
/// <param name="LongSwings">Bends that swing tube further than can be guided: see <see cref="LongSwing"/>.</param>
/// <param name="TurnRounds">How often the tube is turned round.</param>
/// <param name="SwingMm">The largest swing, in millimetres.</param>
internal readonly record struct OrderCost(int Cramped, int LongSwings, int TurnRounds, double SwingMm) : IComparable<OrderCost>
{
    /// <summary>Whether the first is better.</summary>
    public static bool operator <(OrderCost one, OrderCost other) => one.CompareTo(other) < 0;

    /// <summary>Whether the second is better.</summary>
    public static bool operator >(OrderCost one, OrderCost other) => one.CompareTo(other) > 0;

    /// <summary>Whether the second is not better.</summary>
    public static bool operator <=(OrderCost one, OrderCost other) => one.CompareTo(other) <= 0;

    /// <summary>Whether the first is not better.</summary>
    public static bool operator >=(OrderCost one, OrderCost other) => one.CompareTo(other) >= 0;

    /// <summary>More than any order takes.</summary>
    public static OrderCost Impossible { get; } = new(int.MaxValue, int.MaxValue, int.MaxValue, double.PositiveInfinity);

    /// <summary>The same, whatever it swings.</summary>
    public OrderCost WithoutSwing => this with { SwingMm = 0 };

    /// <summary>With one bend made before.</summary>
    public OrderCost After(bool isCramped, bool isLong, bool isTurned, Length swing) => new(
        Cramped + (isCramped ? 1 : 0),
        LongSwings + (isLong ? 1 : 0),
        TurnRounds + (isTurned ? 1 : 0),
        Math.Max(SwingMm, swing.Millimetres));

    /// <inheritdoc/>
    public int CompareTo(OrderCost other) =>
        Cramped != other.Cramped ? Cramped.CompareTo(other.Cramped)
        : LongSwings != other.LongSwings ? LongSwings.CompareTo(other.LongSwings)
        : TurnRounds != other.TurnRounds ? TurnRounds.CompareTo(other.TurnRounds)
        : SwingMm.CompareTo(other.SwingMm);
}
