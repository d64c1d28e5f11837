using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench;

/// <summary>Where the pen mark of a bend goes.</summary>
public static class Mark
{
    /// <summary>The place that the tool's own line stands over, plus the tool's offset.</summary>
    /// <param name="bender">Held on the side of end A.</param>
    /// <param name="start">Start of the bend along the straight tube.</param>
    /// <param name="middle">Middle of the bend along the straight tube.</param>
    public static Length Of(Bender bender, Length start, Length middle) =>
        (bender.Mark == MarkPlace.Start ? start : middle) + bender.Offset;
}
