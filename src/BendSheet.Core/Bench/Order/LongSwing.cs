using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Order;

/// <summary>
/// A swing that is worse than turning the tube round, whether or not the file says what is round the tool. Bent tube does not swing in one
/// plane, and the hand that pulls the tool cannot guide it beyond half a metre. Straight tube stays in the plane of the bend, but its own
/// weight bends it: brake tube of 3/16 in × 0.028 in of C70600 (8.94 g/cm³; yields at about 110 MPa) held at one end comes to that at
/// 1.5 m. Both limits are common practice, no source.
/// </summary>
internal static class LongSwing
{
    private static readonly Length MostOfBent = Length.FromMillimetres(500);

    private static readonly Length MostOfStraight = Length.FromMillimetres(1500);

    /// <summary>Whether a swing is too long.</summary>
    /// <param name="swing">From the former's axis to the tube's centreline.</param>
    /// <param name="isBent">There are bends on the swept side already.</param>
    public static bool Is(Length swing, bool isBent) => (isBent ? MostOfBent : MostOfStraight).FallsShortOf(swing);
}
