using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench;

/// <summary>Where the pen mark of a bend goes.</summary>
public static class Mark
{
    /// <summary>
    /// The place that the tool's own line stands over, plus the tool's offset. With the tube held from the far side everything is turned
    /// round: the tool's start of the bend is the bend's end, and its offset counts towards A.
    /// </summary>
    /// <param name="bender">The tool.</param>
    /// <param name="held">The end whose side lies in the tool's grip.</param>
    /// <param name="place">Of the bend along the straight tube.</param>
    public static Length Of(Bender bender, TubeEnd held, BendPlace place)
    {
        var offset = ToolLine.Of(bender).Offset;
        return (bender.Mark, held) switch
        {
            (MarkPlace.Start, TubeEnd.A) => place.Start + offset,
            (MarkPlace.Start, _) => place.End - offset,
            (_, TubeEnd.A) => place.Middle + offset,
            _ => place.Middle - offset,
        };
    }
}
