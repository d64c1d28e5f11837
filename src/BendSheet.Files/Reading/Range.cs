using BendSheet.Core.Units;

namespace BendSheet.Files.Reading;

/// <summary>What a figure may be, and how a finding says so.</summary>
/// <param name="AtLeast">Smallest value, in millimetres or degrees.</param>
/// <param name="AtMost">Largest value.</param>
/// <param name="WithoutLeast">The smallest value itself is not allowed.</param>
/// <param name="Words">As the rest of a sentence: <c>must be above 0 and at most 100 m</c>.</param>
internal sealed record Range(double AtLeast, double AtMost, bool WithoutLeast, string Words)
{
    /// <summary>Nothing on a car is longer than 100 m; a figure beyond it is in another unit than the person thinks.</summary>
    public const double Longest = 100_000;

    /// <summary>Less cannot be made or measured on a tube.</summary>
    private const double LeastBendDegrees = 0.1;

    /// <summary>Less cannot be made or measured on a tube.</summary>
    public static Angle LeastBend { get; } = Angle.FromDegrees(LeastBendDegrees);

    /// <summary>A length that may be nothing.</summary>
    public static Range LengthOrZero { get; } = new(0, Longest, false, "must be 0 or more, and at most 100 m");

    /// <summary>A length of something that is there.</summary>
    public static Range PositiveLength { get; } = new(0, Longest, true, "must be above 0 and at most 100 m");

    /// <summary>Clips nearer to each other than this would touch.</summary>
    public static Range ClipSpacing { get; } = new(20, Longest, false, "must be at least 20 mm, and at most 100 m");

    /// <summary>What a clip takes of the tube.</summary>
    public static Range ClipWidth { get; } = new(0, 200, false, "must be 0 or more, and at most 200 mm");

    /// <summary>Nobody buys tube in shorter pieces; a figure below it is in another unit than the person thinks.</summary>
    public static Range RollLength { get; } = new(50, Longest, false, "must be at least 50 mm, and at most 100 m");

    /// <summary>A length to either side.</summary>
    public static Range SignedLength { get; } = new(-Longest, Longest, false, "must be at most 100 m, either way");

    /// <summary>What a tube turns.</summary>
    public static Range Turn { get; } = new(
        LeastBendDegrees,
        360,
        false,
        "must be from 0.1° (less is no bend) to 360° (a row without a bend leaves it out; a bend to the other side is a rotation of 180)");

    /// <summary>What a tube turned, or was pulled to, on a test.</summary>
    public static Range TestBend { get; } = new(1, 360, false, "must be from 1° (less cannot be measured on tube) to 360°");

    /// <summary>The angle between the legs of a test.</summary>
    public static Range TestIncluded { get; } = new(
        0, 179, false, "must be from 0° to 179° (a bend of less than 1° cannot be measured on tube)");

    /// <summary>The angle between two legs.</summary>
    public static Range Included { get; } = new(
        0, 180 - LeastBendDegrees, false, "must be from 0° to 179.9° (180° is no bend at all)");

    /// <summary>The bend of an offset or a saddle.</summary>
    public static Range OffsetBend { get; } = new(LeastBendDegrees, 90, false, "must be from 0.1° (less is no bend) to 90°");

    /// <summary>Turns of a coil.</summary>
    public static Range CoilTurns { get; } = new(0, 100, true, "must be above 0 and at most 100 turns");

    /// <summary>A rotation to either side.</summary>
    public static Range Rotation { get; } = new(-360, 360, false, "must be at most one whole turn, 360°, either way");

    /// <summary>An angle that something may be off by.</summary>
    public static Range PositiveAngle { get; } = new(0, 180, true, "must be above 0° and at most 180°");

    /// <summary>How well an angle was measured.</summary>
    public static Range AngleOrZero { get; } = new(0, 180, false, "must be from 0° to 180°");

    /// <summary>What a saw takes; more is a slip in the unit.</summary>
    public static Range CuttingLoss { get; } = new(0, 50, false, "must be 0 or more, and at most 50 mm");

    /// <summary>A part that is held back.</summary>
    public static Range PerCent { get; } = new(0, 100, false, "must be from 0 % to 100 %");

    /// <summary>Money for a roll.</summary>
    public static Range Price { get; } = new(0, 1_000_000, false, "must be 0 or more, and at most 1000000");

    /// <summary>Equal rolls.</summary>
    public static Range Rolls { get; } = new(1, 1000, false, "must be from 1 to 1000");

    /// <summary>Small pieces on hand, or practice pieces.</summary>
    public static Range Pieces { get; } = new(0, 1000, false, "must be from 0 to 1000");

    /// <summary>Arcs use up a little less or a little more tube than their centreline; a factor beyond this is a slip.</summary>
    public static Range ArcFactor { get; } = new(0.5, 1.5, false, "must be from 0.5 to 1.5 (1 unless the tool was calibrated)");

    /// <summary>Pieces of one sort.</summary>
    public static Range Count { get; } = new(0, 1000, false, "must be from 0 to 1000");

    /// <summary>Whether the figure is allowed.</summary>
    public bool Allows(double value) => value <= AtMost && (WithoutLeast ? value > AtLeast : value >= AtLeast);
}
