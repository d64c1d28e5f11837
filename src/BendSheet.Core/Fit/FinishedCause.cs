using BendSheet.Core.Centreline;
using BendSheet.Core.Units;

namespace BendSheet.Core.Fit;

/// <summary>One angle between two places on the finished piece that alone would explain what was measured.</summary>
/// <param name="Bend">The bend's number.</param>
/// <param name="IsRotation">The roll before the bend rather than the bend.</param>
/// <param name="Off">How far it is more than the sheet says: a bend turned further, a roll further clockwise.</param>
internal sealed record FinishedCause(int Bend, bool IsRotation, Angle Off)
{
    /// <summary>Further off the first-order motion is no longer near the truth, and nobody bends so wrongly.</summary>
    public static Angle Most => Angle.FromDegrees(15);

    /// <summary>In words: <c>bend 2 turned about 3.1° too little</c>.</summary>
    public string InWords
    {
        get
        {
            var by = AngleNotation.Figure(Angle.FromDegrees(Math.Abs(Off.Degrees)));
            return IsRotation
                ? FormattableString.Invariant($"the roll before bend {Bend} about {by} too far {(Off > Angle.Zero ? "cw" : "ccw")}")
                : FormattableString.Invariant($"bend {Bend} turned about {by} too {(Off > Angle.Zero ? "far" : "little")}");
        }
    }

    /// <summary>Every angle that lies between the two places, the likeliest, which has to be off least, first.</summary>
    /// <remarks>First-order motion of a rigid body, as in <see cref="Lever"/>: what lies beyond a bend turns about the bend's end, what lies beyond a
    /// roll about the straight before it. Only the part along the line between the two places changes their distance.</remarks>
    public static IEnumerable<FinishedCause> Of(FinishedCheck check, TubeCentreline centreline)
    {
        var corners = centreline.Corners;
        var (from, to) = (corners[check.Measured.From]!.Value, corners[check.Measured.To]!.Value);
        var along = 1 / Math.Max(from.DistanceTo(to), Tolerances.SamePoint.Millimetres) * (to - from);
        var causes = new List<FinishedCause>();
        for (var bend = check.Measured.From + 1; bend < check.Measured.To; bend++)
        {
            var arc = centreline.Arcs[bend - 1];
            Add(bend, isRotation: false, arc.End.Axis.Cross(to - arc.End.Position).Dot(along));
            if (bend > check.Measured.From + 1)
            {
                Add(bend, isRotation: true, arc.Start.Direction.Cross(to - arc.Start.Position).Dot(along));
            }
        }

        return causes.OrderBy(cause => Math.Abs(cause.Off.Degrees));

        void Add(int bend, bool isRotation, double mmForOneRadian)
        {
            // Where the distance does not depend on the angle this is infinite, or not a number where the distance is right as well.
            var degrees = check.Residual.Millimetres / (mmForOneRadian * Math.PI / 180);
            if (Math.Abs(degrees) <= Most.Degrees)
            {
                causes.Add(new(bend, isRotation, Angle.FromDegrees(degrees)));
            }
        }
    }
}
