using System.Globalization;
using BendSheet.Core.Bench;

namespace BendSheet.Core.Tests.Bench;

/// <summary>
/// Places worked out by hand by the guide: the first and the last where they are wanted, no way longer than the longest where
/// that can be, none on another, each alone on its straight near its middle. Free places as from-to, in millimetres from end A.
/// </summary>
public class ClipPlacesTests
{
    /// <summary>Common practice, no source.</summary>
    private const double Width = 12;

    [Theory]
    // One straight: the ends, and between them as few as can be, evenly; a way exactly as long as the longest is not too long.
    [InlineData("0-1000", 1000, 300, 50, "50 350 650 950")]
    [InlineData("0-1000", 1000, 299, 50, "50 275 500 725 950")]
    [InlineData("0-1000", 1000, 450, 50, "50 500 950")]
    [InlineData("0-1000", 1000, 900, 50, "50 950")]
    [InlineData("", 1000, 300, 50, "")]
    // The way to an end is no longer than the longest either.
    [InlineData("60-240", 300, 70, 80, "70 123.3 176.7 230")]
    [InlineData("0-1000", 1000, 300, 300, "300 500 700")]
    // Short tube: one in the middle does where both ends are in reach, two where they are not, and none on another.
    [InlineData("0-100", 100, 300, 50, "50")]
    [InlineData("0-60", 60, 300, 50, "30")]
    [InlineData("0-120", 120, 300, 50, "50 70")]
    [InlineData("0-112", 112, 300, 50, "50 62")]
    [InlineData("0-111", 111, 300, 50, "61")]
    [InlineData("50-50", 100, 300, 10, "50")]
    [InlineData("0-30 70-100", 100, 70, 80, "30")]
    [InlineData("0-30 70-100", 100, 69, 80, "30 70")]
    [InlineData("60-140", 200, 50, 110, "90 110")]
    // Nothing can stand on a coil: a clip at both sides of it, the nearest that can be.
    [InlineData("0-200 700-900", 900, 300, 50, "50 200 700 850")]
    [InlineData("0-70 370-900", 900, 300, 50, "50 70 370 610 850")]
    // Beside the coil one does as the first or the last as well, where that is less than half of the way to the end further.
    [InlineData("0-70 700-900", 900, 300, 50, "70 700 850")]
    [InlineData("0-75 700-900", 900, 300, 50, "50 75 700 850")]
    [InlineData("0-74.9 700-900", 900, 300, 50, "74.9 700 850")]
    [InlineData("0-70 700-900", 900, 70, 50, "70 700 750 800 850")]
    [InlineData("0-70 700-900", 900, 69, 50, "50 70 700 750 800 850")]
    [InlineData("0-200 830-900", 900, 300, 50, "50 200 830")]
    [InlineData("0-200 825-900", 900, 300, 50, "50 200 825 850")]
    [InlineData("0-200 825.1-900", 900, 300, 50, "50 200 825.1")]
    [InlineData("0-200 830-900", 900, 70, 50, "50 100 150 200 830")]
    [InlineData("0-200 830-900", 900, 69, 50, "50 100 150 200 830 850")]
    // Two on one another: the one goes that leaves no way too long; or one moves; or one stands between them.
    [InlineData("0-18 500-600", 600, 300, 10, "18 500 590")]
    [InlineData("0-100 482-500", 500, 300, 10, "10 100 482")]
    [InlineData("0-18 500-500", 510, 18, 10, "18 500")]
    [InlineData("0-18 500-500", 510, 17, 10, "14 500")]
    [InlineData("10-10 492-510", 510, 18, 10, "10 492")]
    [InlineData("10-10 492-510", 510, 17, 10, "10 496")]
    [InlineData("0-30 500-500", 510, 25, 22, "18 30 500")]
    [InlineData("10-10 480-510", 510, 25, 22, "10 480 492")]
    [InlineData("0-22 500-500", 510, 300, 10, "10 22 500")]
    // Alone on a straight: in its middle, or as near to it as the longest way allows.
    [InlineData("0-100 180-300 400-500", 500, 300, 20, "20 240 480")]
    [InlineData("0-100 180-300 400-500", 500, 235, 20, "20 245 480")]
    [InlineData("0-100 200-320 400-500", 500, 235, 20, "20 255 480")]
    [InlineData("0-100 180-260 300-400 480-600", 600, 200, 20, "20 220 380 580")]
    // Several on one straight, between others: evenly between their neighbours.
    [InlineData("0-40 100-400 460-500", 500, 160, 20, "20 173.3 326.7 480")]
    // However many: 12 ways of 240 from the middle of a short straight to the last one.
    [InlineData(
        "0-20 170-210 290-2990 3070-3100",
        3100,
        240,
        30,
        "20 190 430 670 910 1150 1390 1630 1870 2110 2350 2590 2830 3070")]
    // Several straights in reach of the one before: that which is nearest to where it would stand evenly, the third of five at 700.
    [InlineData(
        "200-220 510-520 580-590 650-660 720-730 790-800 880-900 1180-1200", 1400, 300, 210, "210 510 725 890 1190")]
    public void They_stand_where_a_hand_would_put_them(string free, double length, double every, double fromEnds, string places)
    {
        var found = ClipPlaces.Of(
            [.. free.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Free)], length, every, fromEnds, Width);
        Assert.Equal(places, string.Join(' ', found.Select(place => Math.Round(place, 1).ToString(CultureInfo.InvariantCulture))));
    }

    /// <summary>What is wanted at A is wanted at B: seen from the other end the places are the same.</summary>
    [Theory]
    [InlineData("0-70 370-900", 900, 300, 50)]
    [InlineData("0-200 700-830 845-900", 900, 150, 40)]
    [InlineData("20-60 90-300 320-330 600-980", 1000, 170, 50)]
    public void From_the_other_end_they_are_the_same(string free, double length, double every, double fromEnds)
    {
        List<FreePlace> typed = [.. free.Split(' ').Select(Free)];
        List<FreePlace> turned = [.. typed.AsEnumerable().Reverse().Select(place => new FreePlace(length - place.To, length - place.From))];
        Assert.Equal(
            ClipPlaces.Of(typed, length, every, fromEnds, Width).Select(place => Math.Round(place, 3)),
            ClipPlaces.Of(turned, length, every, fromEnds, Width).Select(place => Math.Round(length - place, 3)).Reverse());
    }

    /// <summary>A pen line is half a millimetre. From the short straight on the way is as long as may be, then all are alike.</summary>
    [Fact]
    public void A_hundred_on_one_straight_stand_evenly_within_a_pen_line()
    {
        var found = ClipPlaces.Of([Free("0-20"), Free("170-210"), Free("230-6100"), Free("6180-6200")], 6200, 60, 30, Width);
        var ways = found.Zip(found.Skip(1), (one, next) => next - one).Skip(2).SkipLast(1).ToList();
        Assert.True(ways.Count > 94);
        Assert.All(ways, way => Assert.Equal(ways[0], way, 0.5 / ways.Count));
    }

    private static FreePlace Free(string typed)
    {
        var ends = typed.Split('-').Select(end => double.Parse(end, CultureInfo.InvariantCulture)).ToArray();
        return new(ends[0], ends[1]);
    }
}
