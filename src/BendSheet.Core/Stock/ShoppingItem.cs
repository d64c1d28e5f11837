using System.Collections.Immutable;

namespace BendSheet.Core.Stock;

/// <summary>Something the car needs, with where it goes.</summary>
/// <param name="Name">What people call it: <c>nut</c>, <c>clip</c>, <c>tube</c>.</param>
/// <param name="Specification">What tells it from others of its name; empty where there is only one kind.</param>
/// <param name="Count">How many are needed from now on.</param>
/// <param name="UsedAt">Each place, <c>rear A</c>, or <c>rear (4)</c> where one line takes several.</param>
public sealed record ShoppingItem(string Name, string Specification, int Count, ImmutableArray<string> UsedAt)
{
    /// <summary>How many of them lie in the drawer, at most <see cref="Count"/>.</summary>
    public int Have { get; init; }

    /// <summary>How many have to be bought.</summary>
    public int ToBuy => Count - Have;
}
