using BendSheet.Core.Findings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Templates;

/// <summary>
/// A coil, wound on a former: a helix as short arcs, each rolled a little against the one before. Its tube length is exactly the helix's,
/// n·√((2πR)² + p²).
/// </summary>
/// <remarks>
/// A helix of radius R and rise c for each radian has curvature R / (R² + c²) and torsion c / (R² + c²) (any text on space curves). Arcs of
/// that curvature, rolled by torsion times their length, follow it more closely the shorter they are.
/// </remarks>
/// <param name="Turns">Above zero.</param>
/// <param name="Radius">Of the helix, to the centreline.</param>
/// <param name="Pitch">From turn to turn, centreline to centreline; zero or more.</param>
/// <param name="RightHanded">Winds clockwise while it goes away from the eye.</param>
public sealed record Coil(double Turns, Length Radius, Length Pitch, bool RightHanded)
{
    /// <summary>A quarter of a turn, so that a coil has four marks to a turn.</summary>
    private const double LargestArcDegrees = 90;

    /// <summary>Radius of curvature of the helix: a little more than its own radius where it rises.</summary>
    public Length CurveRadius => Length.FromMillimetres(Radius.Millimetres + (Rise * Rise / Radius.Millimetres));

    /// <summary>Of the whole coil, along its centreline.</summary>
    public Length TubeLength => Length.FromMillimetres(Turns * 2 * Math.PI * Math.Sqrt(Squared));

    /// <summary>All that the tube turns: a little less than it goes round where it rises.</summary>
    public Angle Turn => Angle.FromRadians(TubeLength.Millimetres * Radius.Millimetres / Squared);

    /// <summary>How many bends it stands for.</summary>
    public int Arcs => Math.Max(1, (int)Math.Ceiling((Turn.Radians * 180 / Math.PI / LargestArcDegrees) - 1e-9));

    /// <summary>For each radian, in millimetres.</summary>
    private double Rise => Pitch.Millimetres / (2 * Math.PI);

    private double Squared => (Radius.Millimetres * Radius.Millimetres) + (Rise * Rise);

    /// <summary>The rows of the coil.</summary>
    /// <param name="straight">Up to the coil, as the rest of the line was measured.</param>
    /// <param name="rotation">The way the first turn goes, since the bend before.</param>
    /// <param name="former">What it is wound on: a tool that bends to <see cref="CurveRadius"/>.</param>
    /// <param name="at">Where the coil was typed.</param>
    /// <param name="note">Printed at its first mark.</param>
    public IEnumerable<Row> Rows(Row straight, Angle rotation, Bender former, SourcePosition at, string? note)
    {
        var arcs = Arcs;
        var turn = Angle.FromRadians(Turn.Radians / arcs);
        var roll = Angle.FromRadians((RightHanded ? 1 : -1) * Rise / Squared * TubeLength.Millimetres / arcs);
        for (var i = 0; i < arcs; i++)
        {
            var bend = new Bend(turn, i == 0 ? rotation : roll, former, i == 0 ? note : null, at) { FromTangent = true };
            yield return i == 0 ? straight with { Bend = bend } : new(Length.Zero, at, bend);
        }
    }
}
