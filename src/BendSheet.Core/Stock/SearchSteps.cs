namespace BendSheet.Core.Stock;

/// <summary>How much more a search may do. Steps, not seconds: every machine finds the same plan.</summary>
internal sealed class SearchSteps(long most)
{
    private long _left = most;

    /// <summary>Nothing is left.</summary>
    public bool AreUsedUp => _left <= 0;

    /// <summary>Takes one; false where none is left.</summary>
    public bool Take() => --_left > 0;

    /// <summary>Takes a part of what is left for a search of its own.</summary>
    public SearchSteps Part(int of)
    {
        var part = Math.Max(0, _left) / of;
        _left -= part;
        return new(part);
    }

    /// <summary>Gives back what a part did not need.</summary>
    public void Return(SearchSteps part) => _left += Math.Max(0, part._left);
}
