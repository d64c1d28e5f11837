using BendSheet.Core.Sheet;
using BendSheet.Core.Units;

namespace BendSheet.Sheets.FullSize;

/// <summary>A piece of the full-size strip, from one joint to the next.</summary>
/// <param name="Number">From 1, at end A.</param>
/// <param name="Count">How many there are.</param>
/// <param name="Start">From the cut end of A.</param>
/// <param name="End">From the cut end of A.</param>
internal sealed record StripTile(int Number, int Count, Length Start, Length End)
{
    /// <summary>A mark this near to a joint would be lost in the cut.</summary>
    private const double LeastFromMark = 4;

    /// <summary>How many places are tried for a joint, from the furthest back, to find one without a mark.</summary>
    private const int Tries = 6;

    /// <summary>It begins at the cut end of A.</summary>
    public bool First => Number == 1;

    /// <summary>It runs to the end of B.</summary>
    public bool Last => Number == Count;

    /// <summary>Whether a place is drawn on this tile and on no other.</summary>
    public bool Has(Length place) => (First || place >= Start) && (Last || place < End);

    /// <summary>
    /// As few tiles as will do. Joints lie at round figures from where the marks count, so that each can be measured, and not at a mark.
    /// </summary>
    /// <param name="strip">The straight tube.</param>
    /// <param name="room">On the paper.</param>
    public static IReadOnlyList<StripTile> Spread(Strip strip, TileRoom room) => Spread(
        strip.Length,
        strip.Datum,
        joint => strip.Bends.All(bend => Math.Abs((bend.Mark - joint).Millimetres) >= LeastFromMark),
        room);

    /// <summary>The same for anything that is long.</summary>
    /// <param name="length">Of it.</param>
    /// <param name="datum">Where its figures count from.</param>
    /// <param name="isFree">Whether nothing is in the way of a joint there.</param>
    /// <param name="room">On the paper.</param>
    public static IReadOnlyList<StripTile> Spread(Length length, Length datum, Func<Length, bool> isFree, TileRoom room)
    {
        var joints = new List<int>();
        for (var reached = Length.Zero; length - reached > room.LongestLast; reached = Place(joints[^1]))
        {
            var furthest = (int)Math.Floor(((reached + room.Longest - datum) / room.Step) + 1e-9);
            var most = furthest - (joints.Count == 0 ? 0 : joints[^1]);
            var free = Enumerable.Range(0, Math.Min(Tries, most)).Select(back => furthest - back)
                .FirstOrDefault(joint => isFree(Place(joint)), furthest);
            joints.Add(free);
        }

        return [.. Enumerable.Range(0, joints.Count + 1).Select(i => new StripTile(
            i + 1,
            joints.Count + 1,
            i == 0 ? Length.Zero : Place(joints[i - 1]),
            i == joints.Count ? length : Place(joints[i])))];

        Length Place(int joint) => datum + (joint * room.Step);
    }
}
