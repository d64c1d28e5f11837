using BendSheet.Core.Fittings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Order;

/// <summary>When an end is finished, and what that leaves of it for the tool.</summary>
/// <param name="FlaredFirst">Its hardware is slid on and its flare made before the first bend; otherwise after the last one.</param>
/// <param name="Taken">From the cut end: tube that the tool cannot use while the bends beside it are made.</param>
public readonly record struct FlareTiming(bool FlaredFirst, Length Taken)
{
    /// <summary>
    /// The ways an end can be finished, the better one first: A while the tube is still straight, B when the line has been offered up,
    /// because that is where errors gather (common practice, no source).
    /// </summary>
    /// <param name="which">The end.</param>
    /// <param name="end">What is put on it.</param>
    /// <param name="straight">What stays straight between the finished end and the bend next to it.</param>
    /// <returns>
    /// Only ways that can be made: after the bends the flaring bar must find its straight; before them nothing may be left to trim,
    /// and the hardware stays between flare and bend. Empty where neither holds.
    /// </returns>
    public static IEnumerable<FlareTiming> Choices(TubeEnd which, LineEnd end, Length straight)
    {
        var after = new FlareTiming(FlaredFirst: false, Length.Zero);
        if (!end.IsFlared)
        {
            return [after];
        }

        var fitting = end.Fitting!;
        IEnumerable<FlareTiming> first = end.Trim > Length.Zero
            ? []
            : [new(FlaredFirst: true, fitting.FlareAllowance + fitting.HardwareLength)];
        IEnumerable<FlareTiming> last = straight.FallsShortOf(fitting.StraightNeeded) ? [] : [after];
        return which == TubeEnd.A ? first.Concat(last) : last.Concat(first);
    }
}
