using System.Runtime.InteropServices;
using BendSheet.Core.Units;

namespace BendSheet.Core.Stock;

/// <summary>
/// Whether pieces go into given rolls, by branch and bound: the longest piece left goes into each kind of roll in turn, which is then
/// filled up in every way that leaves no room for another piece, fullest first. (Filling a roll to the brim loses nothing: a piece that
/// would still go in can be moved there.) A branch ends where more is wasted than there is to spare, where the long pieces find no rolls,
/// and where the same pieces and rolls were left before. After S. Martello, P. Toth, Knapsack Problems (1990), chapter 8, and R. Korf, bin
/// completion (2002).
/// </summary>
internal sealed class PackingSearch
{
    /// <summary>Ways to fill one roll that are looked at; where there are more, a "no" is not proven.</summary>
    private const int MostFillings = 20_000;

    /// <summary>Ways that are looked at on a dive.</summary>
    private const int FewFillings = 300;

    /// <summary>
    /// Short searches before the long one: where the first rolls were filled badly it costs less to begin again than to come back to them.
    /// Each overlooks a little more waste than the one before and takes long pieces first instead, so that short ones are left for the end.
    /// </summary>
    private const int Dives = 32;

    /// <summary>Characters of the states kept: about ten megabytes.</summary>
    private const long MostKnown = 5_000_000;

    /// <summary>So many sizes and rolls are looked through in what counts as one step.</summary>
    private const int InOneStep = 64;

    /// <summary>Beyond this the search would be deeper than the program's stack; nobody cuts so many rolls by hand.</summary>
    private const int MostRolls = 1_000;

    private readonly PieceSizes _task;
    private readonly int[] _counts;
    private readonly int[] _rolls;
    private readonly SearchSteps _steps;
    private readonly int _mostFillings;
    private readonly long _overlooked;
    private readonly HashSet<string> _hopeless = new(StringComparer.Ordinal);
    private readonly List<(int Roll, int[] Pieces)> _filled = [];
    private readonly int _stepsToPlace;
    private long _known;
    private bool _isComplete = true;

    private PackingSearch(PieceSizes task, SearchSteps steps, int mostFillings, long overlooked)
    {
        _task = task;
        _counts = [.. task.Counts];
        _rolls = [.. task.RollCounts];
        _steps = steps;
        _mostFillings = mostFillings;
        _overlooked = overlooked;
        _stepsToPlace = 1 + ((_counts.Length + _rolls.Length) / InOneStep);
    }

    /// <summary>The answer; unknown where the steps are used up before.</summary>
    public static Answer Find(PieceSizes task, SearchSteps steps)
    {
        if (task.Need > task.Room)
        {
            return Answer.No;
        }

        // The plain ways look at every roll for every piece.
        steps.Take(1 + (task.Counts.Sum() * (long)task.RollCounts.Sum() / (InOneStep * InOneStep)));
        if (QuickFilling.Find(task) is { } quick)
        {
            return new(quick, IsCertain: true);
        }

        if (task.RollCounts.Sum() > MostRolls)
        {
            return Answer.Unknown;
        }

        for (var run = 0; run <= Dives; run++)
        {
            var isDive = run < Dives;
            var part = steps.Part(isDive ? 2 * Dives : 1);
            var slack = task.Room - task.Need;
            var search = new PackingSearch(
                task, part, isDive ? FewFillings : MostFillings, isDive ? run * slack / (8 * task.RollCounts.Sum()) : 0);
            var found = search.Place(slack);
            steps.Return(part);
            if (found)
            {
                return new(
                    [
                        .. search._filled.Select(
                            filled => new FilledRoll(task.Rolls[filled.Roll], [.. filled.Pieces.Select(piece => task.Sizes[piece])])),
                    ], IsCertain: true);
            }

            if (search._isComplete)
            {
                return Answer.No;
            }
        }

        return Answer.Unknown;
    }

    private bool Place(long slack)
    {
        var first = Array.FindIndex(_counts, count => count > 0);
        if (first < 0)
        {
            return true;
        }

        if (!_steps.Take(_stepsToPlace))
        {
            _isComplete = false;
            return false;
        }

        if (LongPiecesFindNoRolls(first) || !ShortRollsCanBeSpared(slack))
        {
            return false;
        }

        var state = State();
        if (_hopeless.Contains(state))
        {
            return false;
        }

        var wasComplete = _isComplete;
        _isComplete = true;
        foreach (var (roll, pieces, waste) in Fillings(first, slack))
        {
            Take(roll, pieces, -1);
            _filled.Add((roll, pieces));
            if (Place(slack - waste))
            {
                return true;
            }

            _filled.RemoveAt(_filled.Count - 1);
            Take(roll, pieces, 1);
            if (_steps.AreUsedUp)
            {
                _isComplete = false;
                return false;
            }
        }

        if (_isComplete && _known < MostKnown)
        {
            _known += state.Length;
            _hopeless.Add(state);
        }

        _isComplete &= wasComplete;
        return false;
    }

    private void Take(int roll, int[] pieces, int sign)
    {
        _rolls[roll] += sign;
        foreach (var piece in pieces)
        {
            _counts[piece] += sign;
        }
    }

    /// <summary>Pieces of more than half of the longest roll need a roll each that is long enough.</summary>
    private bool LongPiecesFindNoRolls(int first)
    {
        var roll = Array.FindLastIndex(_rolls, count => count > 0);
        if (roll < 0)
        {
            return true;
        }

        var longest = _task.Rolls[roll];
        var here = _rolls[roll];
        for (var piece = first; piece < _counts.Length && _task.Sizes[piece] * 2 > longest; piece++)
        {
            for (var wanted = _counts[piece]; wanted > 0;)
            {
                if (here == 0)
                {
                    roll = roll == 0 ? -1 : Array.FindLastIndex(_rolls, roll - 1, count => count > 0);
                    if (roll < 0)
                    {
                        return true;
                    }

                    here = _rolls[roll];
                }

                if (_task.Rolls[roll] < _task.Sizes[piece])
                {
                    return true;
                }

                var taken = Math.Min(wanted, here);
                wanted -= taken;
                here -= taken;
            }
        }

        return false;
    }

    /// <summary>Rolls that are shorter than the shortest piece hold nothing.</summary>
    private bool ShortRollsCanBeSpared(long slack)
    {
        var shortest = _task.Sizes[Array.FindLastIndex(_counts, count => count > 0)];
        for (var roll = 0; roll < _rolls.Length && _task.Rolls[roll] < shortest; roll++)
        {
            slack -= _task.Rolls[roll] * _rolls[roll];
        }

        return slack >= 0;
    }

    private string State() => string.Concat(
        new string(MemoryMarshal.Cast<int, char>(_counts)), new string(MemoryMarshal.Cast<int, char>(_rolls)));

    /// <summary>Every way to fill a roll round the longest piece that wastes no more than may be, fullest first.</summary>
    private List<(int Roll, int[] Pieces, long Waste)> Fillings(int first, long slack)
    {
        var fillings = new List<(int Roll, int[] Pieces, long Waste)>();
        var behind = new long[_counts.Length + 1];
        for (var piece = _counts.Length - 1; piece >= 0; piece--)
        {
            behind[piece] = behind[piece + 1] + (_task.Sizes[piece] * _counts[piece]);
        }

        for (var roll = 0; roll < _rolls.Length; roll++)
        {
            if (_rolls[roll] > 0 && _task.Rolls[roll] >= _task.Sizes[first])
            {
                _counts[first]--;
                Fill(roll, first, _task.Rolls[roll] - _task.Sizes[first], slack, [first], behind, fillings);
                _counts[first]++;
            }
        }

        // Stable, so that the same file has the same plan on every machine.
        return [.. fillings.OrderBy(filling => Math.Max(filling.Waste, _overlooked))];
    }

    private void Fill(
        int roll, int from, long left, long slack, List<int> pieces, long[] behind, List<(int Roll, int[] Pieces, long Waste)> fillings)
    {
        if (left - behind[from] > slack)
        {
            return;
        }

        if (fillings.Count >= _mostFillings || !_steps.Take(1 + ((_counts.Length - from + pieces.Count) / InOneStep)))
        {
            _isComplete = false;
            return;
        }

        for (var piece = from; piece < _counts.Length; piece++)
        {
            if (_counts[piece] == 0 || _task.Sizes[piece] > left)
            {
                continue;
            }

            _counts[piece]--;
            pieces.Add(piece);
            Fill(roll, piece, left - _task.Sizes[piece], slack, pieces, behind, fillings);
            pieces.RemoveAt(pieces.Count - 1);
            _counts[piece]++;
        }

        var shortest = Array.FindLastIndex(_counts, count => count > 0);
        if (left <= slack && (shortest < 0 || _task.Sizes[shortest] > left))
        {
            fillings.Add((roll, [.. pieces], left));
        }
    }
}
