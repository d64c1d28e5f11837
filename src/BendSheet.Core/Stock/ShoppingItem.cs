using System.Collections.Immutable;

namespace BendSheet.Core.Stock;

/// <summary>Something the car needs, with where it goes.</summary>
/// <param name="Sort">What sort of thing it is: <c>nut</c>, <c>clip</c>, <c>master-cylinder</c>.</param>
/// <param name="Kind">What comes after the sort in its name, such as the ports of a part; empty for none.</param>
/// <param name="Specification">What tells it from others of its name; empty where there is only one kind.</param>
/// <param name="Count">How many are needed from now on.</param>
/// <param name="UsedAt">Each place, <c>rear A</c>, or <c>rear (4)</c> where one line takes several.</param>
public sealed record ShoppingItem(string Sort, string Kind, string Specification, int Count, ImmutableArray<string> UsedAt)
{
    /// <summary>What people call it: <c>nut</c>, <c>tee, 3 × 3/8-24 flare 37</c>.</summary>
    public string Name => Kind.Length == 0 ? Sort : $"{Sort}, {Kind}";

    /// <summary>What it is by itself, without what it is for: <c>sealing washer</c>.</summary>
    public string Article { get; init; } = Sort;

    /// <summary>How many of them are on hand, at most <see cref="Count"/>.</summary>
    public int Have { get; init; }

    /// <summary>How many of them the lines that are made have used.</summary>
    public int Used { get; init; }

    /// <summary>How many have to be bought.</summary>
    public int ToBuy => Count - Have;
}
