namespace BendSheet.Core.Workshop;

/// <summary>What the ruler touched when a leg of the wire was measured.</summary>
public enum MeasuredTo
{
    /// <summary>Centreline corner to centreline corner.</summary>
    Corner,

    /// <summary>Only the flat part between two bends.</summary>
    Straight,

    /// <summary>Over the outside faces of the bends.</summary>
    Outside,

    /// <summary>Between the inside faces of the bends.</summary>
    Inside,

    /// <summary>Following the wire, bend middle to bend middle.</summary>
    Along,
}

/// <summary>The words a file has for the habits, and what each needs to know of the wire.</summary>
public static class MeasuredToWords
{
    /// <summary>Every habit with its word.</summary>
    public static IReadOnlyList<(MeasuredTo Habit, string Word)> All { get; } =
    [
        (MeasuredTo.Corner, "corner"),
        (MeasuredTo.Straight, "straight"),
        (MeasuredTo.Outside, "outside"),
        (MeasuredTo.Inside, "inside"),
        (MeasuredTo.Along, "along"),
    ];

    /// <summary>The conversion uses the wire's own bend radius.</summary>
    public static bool NeedsWireRadius(this MeasuredTo habit) => habit is MeasuredTo.Straight or MeasuredTo.Along;

    /// <summary>The conversion uses the wire's diameter.</summary>
    public static bool NeedsWireDiameter(this MeasuredTo habit) => habit is MeasuredTo.Outside or MeasuredTo.Inside;
}
