namespace BendSheet.Sheets.Labels;

/// <summary>A place that a label may take.</summary>
/// <param name="AtLeast">Neither this place nor one that is offered after it costs less.</param>
/// <param name="Cost">Of this place, without what it crosses.</param>
/// <param name="Label">As it would lie there.</param>
internal readonly record struct Candidate<TLabel>(double AtLeast, double Cost, TLabel Label);

/// <summary>Places labels one after another, each where it costs least of all places that are offered and free.</summary>
/// <param name="isFree">Whether a label meets nothing, given the labels placed before.</param>
/// <param name="crossingCost">What a label costs beyond its place because of what it crosses, given the labels placed before.</param>
internal sealed class LabelPlacer<TLabel>(
    Func<TLabel, IReadOnlyList<TLabel>, bool> isFree, Func<TLabel, IReadOnlyList<TLabel>, double> crossingCost)
    where TLabel : class
{
    private readonly List<TLabel> _placed = [];

    /// <summary>Places a label; null, and nothing placed, where none of its places is free. Of equal ones it takes the first.</summary>
    public TLabel? Place(IEnumerable<Candidate<TLabel>> candidates)
    {
        TLabel? best = null;
        var least = double.PositiveInfinity;
        foreach (var (atLeast, cost, label) in candidates)
        {
            if (atLeast >= least)
            {
                break;
            }

            if (cost < least && isFree(label, _placed) && cost + crossingCost(label, _placed) is var whole && whole < least)
            {
                (best, least) = (label, whole);
            }
        }

        if (best is not null)
        {
            _placed.Add(best);
        }

        return best;
    }
}
