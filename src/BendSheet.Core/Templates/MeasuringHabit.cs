namespace BendSheet.Core.Templates;

/// <summary>What the ruler touched when a leg of the wire was measured.</summary>
public enum MeasuringHabit
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
public static class MeasuringHabits
{
    /// <summary>Every habit with its word.</summary>
    public static IReadOnlyList<(MeasuringHabit Habit, string Word)> All { get; } =
    [
        (MeasuringHabit.Corner, "corner"),
        (MeasuringHabit.Straight, "straight"),
        (MeasuringHabit.Outside, "outside"),
        (MeasuringHabit.Inside, "inside"),
        (MeasuringHabit.Along, "along"),
    ];

    /// <summary>The conversion uses the wire's own bend radius.</summary>
    public static bool NeedsWireRadius(this MeasuringHabit habit) => habit is MeasuringHabit.Straight or MeasuringHabit.Along;

    /// <summary>The conversion uses the wire's diameter.</summary>
    public static bool NeedsWireDiameter(this MeasuringHabit habit) => habit is MeasuringHabit.Outside or MeasuringHabit.Inside;
}
