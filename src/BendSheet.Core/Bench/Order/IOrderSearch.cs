using System.Collections.Immutable;

namespace BendSheet.Core.Bench.Order;

/// <summary>Looks at the orders of work that the bends of a line can be made in.</summary>
internal interface IOrderSearch
{
    /// <summary>For each bend that an order can start with, the cost of the best one that does.</summary>
    IEnumerable<(int Bend, OrderCost Cost)> Starts();

    /// <summary>An order of the least cost, its swing left aside, of all that start with a certain bend.</summary>
    /// <param name="first">One of <see cref="Starts"/>.</param>
    ImmutableArray<BendStep> StartingWith(int first);
}
