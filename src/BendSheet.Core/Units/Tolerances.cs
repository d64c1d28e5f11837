namespace BendSheet.Core.Units;

/// <summary>Every tolerance of the program, each with its reason. Rounding is not here: it happens only in printing.</summary>
public static class Tolerances
{
    /// <summary>
    /// A turn below this is straight: twenty times finer than any hand bender's scale, far above what rounded figures add up to.
    /// </summary>
    public static Angle InLine => Angle.FromDegrees(0.05);

    /// <summary>
    /// Points and lengths nearer than this are the same: a millionth of a millimetre is far below what a ruler shows and far above what
    /// double arithmetic loses over the longest line.
    /// </summary>
    public static Length SamePoint => Length.FromMillimetres(1e-6);

    /// <summary>From this bend on the legs have no common corner (parallel at 180°), with room for the last digit of a typed 180.</summary>
    public static Angle NoCorner => Angle.FromDegrees(180 - 1e-9);

    /// <summary>
    /// Test bends no further apart than this count as one angle: a protractor on tube is read to half a degree, and a line through bends so
    /// near to one another would point anywhere.
    /// </summary>
    public static Angle SameTestBend => Angle.FromDegrees(5);

    /// <summary>What a tape reading between two corners may be out by without anybody noticing: half a division at each end.</summary>
    public static Length TapeReading => Length.FromMillimetres(1);

    /// <summary>More than this between a taped distance and the others is a slip, not the tape: three times its reading.</summary>
    public static Length TapeSlip => Length.FromMillimetres(3);

    /// <summary>
    /// Tube sizes and radii nearer than this go by one name: a builder types 4.75, 4.8 or 3/16 in for the same tube. Twice as much would
    /// take 5/16 in for 8 mm.
    /// </summary>
    public static Length SameTubeSize => Length.FromMillimetres(0.05);

    /// <summary>Walls nearer than this go by one name, half a thousandth of an inch: 0.7 mm, 0.71 mm and 0.028 in are one wall.</summary>
    public static Length SameWall => Length.FromInches(0.0005);
}
