using System.Globalization;
using BendSheet.Core.Findings;
using BendSheet.Core.Stock;
using BendSheet.Core.Tests.References;

namespace BendSheet.Core.Tests.Stock;

/// <summary>Published one-dimensional cutting-stock instances, each size a millimetre.</summary>
public class PublishedCuttingStockTests
{
    private const string Table = "cutting_stock.csv";

    public static TheoryData<string> All { get; } = [.. ReferenceTable.Confirmed(Table).Select(row => row["id"])];

    /// <summary>Those whose optimum was printed.</summary>
    public static TheoryData<string> Printed { get; } =
        [.. ReferenceTable.Confirmed(Table).Where(row => row["printed_as"].Contains("optimum", StringComparison.Ordinal)).Select(row => row["id"])];

    [Theory]
    [MemberData(nameof(Printed))]
    public void The_printed_optimum_is_found_and_proven(string id)
    {
        var plan = Plan(id);
        Assert.Equal(Number(Row(id)["printed"]), plan.Bought);
        Assert.True(plan.RollsAreProven);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void X(string id)
    {
        var w = System.Diagnostics.Stopwatch.StartNew();
        var plan = Plan(id);
        Assert.Fail($"{id} bought {plan.Bought} least {plan.BoughtAtLeast} left {plan.LongestLeft} most {plan.LongestLeftAtMost} {w.ElapsedMilliseconds} opt {Row(id)["computed_optimum"]}");
    }

    private static CuttingPlan Plan(string id)
    {
        var row = Row(id);
        var at = new SourcePosition("test.yaml", 1, 1);
        var roll = new Roll("roll", Lines.Tube, Lines.Mm(Number(row["stock_length"])), Lines.Mm(0), at);
        return CuttingPlan.Of([.. Sizes(row).Select(size => new Piece("piece", Lines.Mm(size), PieceUse.Line, at))], [roll], Lines.Mm(0));
    }

    internal static IReadOnlyDictionary<string, string> Row(string id) =>
        Assert.Single(ReferenceTable.Confirmed(Table), row => string.Equals(row["id"], id, StringComparison.Ordinal));

    internal static IEnumerable<int> Sizes(IReadOnlyDictionary<string, string> row) => row["demand (size:count)"].Split(';')
        .Select(demand => demand.Split(':')).SelectMany(demand => Enumerable.Repeat(Number(demand[0]), Number(demand[1])));

    internal static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
