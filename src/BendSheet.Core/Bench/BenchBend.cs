using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench;

/// <summary>One bend as it is made at the bench. Places are distances along the still straight tube from the cut end of A.</summary>
/// <param name="Number">From 1, counted from end A.</param>
/// <param name="Layout">Radius, setback, arc and gain.</param>
/// <param name="Dial">Running sum of the rotations, 0° to below 360°, so that errors on the bench do not add up.</param>
/// <param name="Pull">What the tool is pulled to; the bend itself where no springback is known.</param>
/// <param name="Place">Start, middle and end of the bend.</param>
/// <param name="Mark">Where the pen goes.</param>
public sealed record BenchBend(int Number, BendLayout Layout, Angle Dial, Angle Pull, BendPlace Place, Length Mark)
{
    /// <summary>Its turn in the order of work, from 1.</summary>
    public required int Step { get; init; }

    /// <summary>The end whose side lies in the tool's grip.</summary>
    public required TubeEnd Held { get; init; }

    /// <summary>
    /// Where the pen line along the tube stands when the bend is made: clockwise, 0° to below 360°, as one looks from the held end along
    /// the tube towards the tool, the former (inside of the bend) at 12 o'clock.
    /// </summary>
    public required Angle LineAt { get; init; }

    /// <summary>How far the other side reaches from the former's axis while the bend is made, to the tube's centreline.</summary>
    public required Length Swing { get; init; }

    /// <summary>Straight tube to the next bend or to end B.</summary>
    public required Length StraightAfter { get; init; }

    /// <summary>How far end B moves for one degree more of this bend.</summary>
    public required Length Lever { get; init; }

    /// <summary>Start of the bend.</summary>
    public Length Start => Place.Start;

    /// <summary>Middle of the bend.</summary>
    public Length Middle => Place.Middle;

    /// <summary>End of the bend.</summary>
    public Length End => Place.End;

    /// <summary>The bend as it was measured.</summary>
    public Bend Bend => Layout.Bend;

    /// <summary>The tool it is made on.</summary>
    public Bender Bender => Bend.Bender;
}
