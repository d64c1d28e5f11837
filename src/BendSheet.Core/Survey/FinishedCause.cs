using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>One angle between two places on the finished piece that alone would explain what was measured.</summary>
/// <param name="Bend">The bend's number.</param>
/// <param name="IsRotation">The roll before the bend rather than the bend.</param>
/// <param name="Off">How far it is more than the sheet says: a bend turned further, a roll further clockwise.</param>
internal sealed record FinishedCause(int Bend, bool IsRotation, Angle Off)
{
    /// <summary>Nobody bends more wrongly without seeing it.</summary>
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
    /// <remarks>Motion of a rigid body: what lies beyond a bend turns about the bend's end, as in <see cref="Lever"/>, and what lies beyond
    /// a roll about the straight before it.</remarks>
    public static IEnumerable<FinishedCause> Of(FinishedCheck check, TubeCentreline centreline)
    {
        var corners = centreline.Corners;
        var (from, to) = (corners[check.Measured.From]!.Value, corners[check.Measured.To]!.Value);
        var causes = new List<FinishedCause>();
        for (var bend = check.Measured.From + 1; bend < check.Measured.To; bend++)
        {
            var arc = centreline.Arcs[bend - 1];
            Add(bend, isRotation: false, arc.End.Axis, arc.End.Position);
            if (bend > check.Measured.From + 1)
            {
                Add(bend, isRotation: true, arc.Start.Direction, arc.Start.Position);
            }
        }

        return causes.OrderBy(cause => Math.Abs(cause.Off.Degrees));

        void Add(int bend, bool isRotation, Vector3D axis, Vector3D pivot)
        {
            if (Turned(from - pivot, to - pivot, axis, check.Measured.Distance.Millimetres) is { } off
                && Math.Abs(off.Degrees) <= Most.Degrees)
            {
                causes.Add(new(bend, isRotation, off));
            }
        }
    }

    /// <summary>
    /// By how much a point has to be turned to lie at a distance from another one; null where no turn does. Of two turns the smaller.
    /// </summary>
    /// <remarks>
    /// Rodrigues: the turned point is u∥ + u⊥·cos δ + (k × u)·sin δ, so that its distance from v depends on v·u⊥·cos δ + v·(k × u)·sin δ
    /// alone.
    /// </remarks>
    private static Angle? Turned(Vector3D fixedPoint, Vector3D turned, Vector3D axis, double distance)
    {
        var along = turned.Dot(axis) * axis;
        var (cosine, sine) = (fixedPoint.Dot(turned - along), fixedPoint.Dot(axis.Cross(turned)));
        var wanted = ((turned.Dot(turned) + fixedPoint.Dot(fixedPoint) - (distance * distance)) / 2) - fixedPoint.Dot(along);
        var most = Math.Sqrt((cosine * cosine) + (sine * sine));
        if (most == 0 || Math.Abs(wanted) > most)
        {
            return null;
        }

        var (middle, aside) = (Math.Atan2(sine, cosine), Math.Acos(wanted / most));
        return Angle.FromRadians(
            new[] { middle + aside, middle - aside }.Select(turn => Math.IEEERemainder(turn, 2 * Math.PI)).MinBy(Math.Abs));
    }
}
