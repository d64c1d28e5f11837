using BendSheet.Core.Centreline;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench;

/// <summary>One bend as it is made at the bench. Places are distances along the still straight tube from the cut end of A.</summary>
/// <param name="Number">From 1, counted from end A.</param>
/// <param name="Layout">Radius, setback, arc and gain.</param>
/// <param name="Dial">Running sum of the rotations, 0° to below 360°, so that errors on the bench do not add up.</param>
/// <param name="Pull">What the tool is pulled to; the bend itself where no springback is known.</param>
/// <param name="Start">Start of the bend.</param>
/// <param name="Middle">Middle of the bend.</param>
/// <param name="End">End of the bend.</param>
/// <param name="Mark">Where the pen goes.</param>
/// <param name="StraightAfter">Straight tube to the next bend or to end B.</param>
/// <param name="Lever">How far end B moves for one degree more of this bend.</param>
/// <param name="RotationLever">How far end B moves for one degree more of the rotation before it.</param>
public sealed record BenchBend(
    int Number,
    BendLayout Layout,
    Angle Dial,
    Angle Pull,
    Length Start,
    Length Middle,
    Length End,
    Length Mark,
    Length StraightAfter,
    Length Lever,
    Length RotationLever)
{
    /// <summary>The bend as it was measured.</summary>
    public Bend Bend => Layout.Bend;

    /// <summary>The tool it is made on.</summary>
    public Bender Bender => Bend.Bender;
}
