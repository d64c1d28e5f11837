namespace BendSheet.Core.Geometry;

/// <summary>A box along the axes, in millimetres.</summary>
/// <param name="Low">Its corner with the least coordinates.</param>
/// <param name="High">The opposite one.</param>
internal readonly record struct Bounds(Vector3D Low, Vector3D High)
{
    /// <summary>The box between two opposite corners.</summary>
    public static Bounds Around(Vector3D one, Vector3D other) => new(
        new(Math.Min(one.X, other.X), Math.Min(one.Y, other.Y), Math.Min(one.Z, other.Z)),
        new(Math.Max(one.X, other.X), Math.Max(one.Y, other.Y), Math.Max(one.Z, other.Z)));

    /// <summary>The box of both.</summary>
    public static Bounds Around(Bounds one, Bounds other) => Around(Around(one.Low, other.Low).Low, Around(one.High, other.High).High);

    /// <summary>Larger by so much on every side.</summary>
    public Bounds Grown(double by) => new(Low - new Vector3D(by, by, by), High + new Vector3D(by, by, by));

    /// <summary>No point of one is nearer than this to a point of the other, in millimetres; zero where they overlap.</summary>
    public double GapTo(Bounds other) => new Vector3D(
        Gap(Low.X, High.X, other.Low.X, other.High.X),
        Gap(Low.Y, High.Y, other.Low.Y, other.High.Y),
        Gap(Low.Z, High.Z, other.Low.Z, other.High.Z)).Norm;

    /// <summary>From corner to corner.</summary>
    public double Size => (High - Low).Norm;

    private static double Gap(double low, double high, double otherLow, double otherHigh) =>
        Math.Max(0, Math.Max(otherLow - high, low - otherHigh));
}
