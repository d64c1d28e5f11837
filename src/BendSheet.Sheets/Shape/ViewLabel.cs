using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Shape;

/// <summary>A letter or number beside a drawn tube, in a circle or, where it is longer, in a circle drawn out sideways.</summary>
/// <param name="Text">Printable.</param>
/// <param name="Place">Its middle.</param>
/// <param name="HalfWidth">At least <see cref="Radius"/>.</param>
/// <param name="Leaders">From what it belongs to up to its middle; the label covers their ends.</param>
internal sealed record ViewLabel(string Text, PagePoint Place, double HalfWidth, IReadOnlyList<Segment> Leaders)
{
    /// <summary>Half of its height, in millimetres.</summary>
    public const double Radius = 2.3;

    /// <summary>Between it and another label, in millimetres.</summary>
    public const double Clearance = 0.7;

    /// <summary>Between it and a leader line that is not its own.</summary>
    private const double FromLeader = 0.4;

    /// <summary>What is at most the radius away from this piece lies in the label.</summary>
    public Segment Core => CoreAt(Place, HalfWidth);

    /// <summary>The same for a label that is not there yet.</summary>
    public static Segment CoreAt(PagePoint place, double halfWidth)
    {
        var reach = new PagePoint(halfWidth - Radius, 0);
        return new(place - reach, place + reach);
    }

    /// <summary>Whether it touches another one, or a leader line of one passes under the other.</summary>
    public bool Meets(ViewLabel other) =>
        Core.IsNear(other.Core, (2 * Radius) + Clearance)
        || Core.IsNearAny(other.Leaders, Radius + FromLeader)
        || other.Core.IsNearAny(Leaders, Radius + FromLeader);
}
