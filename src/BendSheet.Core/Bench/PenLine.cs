using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench;

/// <summary>
/// The line that is penned along the straight tube, so that every bend finds its plane. It is drawn where the first bend that is made has
/// its inside, and goes with the tube from then on.
/// </summary>
public static class PenLine
{
    /// <summary>
    /// Where the line stands at a bend: clockwise, 0° to below 360°, as one looks from the held end along the tube towards the tool, the
    /// former (inside of the bend) at 12 o'clock. It does not matter whether the tool is fixed or in the hand.
    /// </summary>
    /// <remarks>
    /// Looking from A towards B the inside of the bend lies clockwise of the line by the difference of the two dial readings; with the
    /// inside turned up to 12 the line lies as much the other way. From B the same is seen from behind, left and right exchanged.
    /// </remarks>
    /// <param name="dial">Dial reading of the bend.</param>
    /// <param name="penned">Dial reading of the line: that of the bend that has it on its inside.</param>
    /// <param name="held">The end whose side lies in the tool's grip.</param>
    public static Angle At(Angle dial, Angle penned, TubeEnd held)
    {
        var fromLine = dial + -penned;
        return (held == TubeEnd.A ? -fromLine : fromLine).OnDial();
    }
}
