namespace BendSheet.Core.Units;

/// <summary>How much more a search may do. Steps, not seconds: every machine finds the same plan.</summary>
internal sealed class SearchSteps(long most)
{
    private long _left = most;

    /// <summary>Nothing is left.</summary>
    public bool AreUsedUp => _left <= 0;

    /// <summary>Takes one, or as many as the work is worth; false where none is left.</summary>
    public bool Take(long count = 1)
    {
        _left -= count;
        return _left > 0;
    }

    /// <summary>Takes a part of what is left for a search of its own.</summary>
    public SearchSteps Part(int of)
    {
        var part = Math.Max(0, _left) / of;
        _left -= part;
        return new(part);
    }

    /// <summary>Gives back what a part did not need; what it took beyond its share is taken off.</summary>
    public void Return(SearchSteps part) => _left += part._left;
}
