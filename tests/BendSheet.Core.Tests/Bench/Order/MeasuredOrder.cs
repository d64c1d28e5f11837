using BendSheet.Core.Bench;

namespace BendSheet.Core.Tests.Bench.Order;

/// <summary>What an order of work costs, counted from its steps.</summary>
internal static class MeasuredOrder
{
    /// <summary>How often the tube is turned round end for end between two bends.</summary>
    public static int TurnRounds(this OrderOfWork order) =>
        order.Steps.Skip(1).Zip(order.Steps, (next, last) => next.Held != last.Held).Count(turned => turned);
}
