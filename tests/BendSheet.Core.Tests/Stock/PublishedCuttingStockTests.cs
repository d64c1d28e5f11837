using System.Globalization;
using BendSheet.Core.Stock;
using BendSheet.Core.Tests.References;

namespace BendSheet.Core.Tests.Stock;

/// <summary>Published one-dimensional cutting-stock instances, each unit a millimetre.</summary>
public class PublishedCuttingStockTests
{
    private const string Table = "cutting_stock.csv";

    /// <summary>Those whose optimum was printed.</summary>
    public static TheoryData<string> Optima { get; } = Ids("optimum");

    /// <summary>Those of which a lower bound was printed.</summary>
    public static TheoryData<string> Bounds { get; } = Ids("lower bound");

    /// <summary>Few enough sizes that a general solver can be given every way to cut a roll.</summary>
    public static TheoryData<string> FewSizes { get; } =
        [.. ReferenceTable.Confirmed(Table).Where(row => Sizes(row).Distinct().Count() < 15).Select(row => row["id"])];

    [Theory]
    [MemberData(nameof(Optima))]
    public void The_printed_optimum_is_found_and_proven(string id)
    {
        var plan = Plan(id);
        Assert.Equal(Number(Row(id)["printed"]), plan.Bought);
        Assert.True(plan.RollsAreProven);
    }

    [Theory]
    [MemberData(nameof(Bounds))]
    public void The_printed_lower_bound_is_reached(string id) => Assert.Equal(Number(Row(id)["printed"]), Plan(id).Bought);

    /// <summary>Nobody printed these optima; a general-purpose solver finds the same.</summary>
    [Theory]
    [MemberData(nameof(FewSizes))]
    public void As_few_rolls_as_a_general_solver_finds(string id)
    {
        var row = Row(id);
        var plan = Plan(id);
        var solved = GeneralSolver.FewestByPatterns([.. Sizes(row)], Number(row["stock_length"]));
        Assert.Equal(solved, plan.Bought);
        Assert.InRange(plan.BoughtAtLeast, 1, solved);
    }

    /// <summary>A roll less would be shorter than all pieces together.</summary>
    [Theory]
    [InlineData("PM_u020_01")]
    [InlineData("PM_u030_01")]
    public void As_few_rolls_as_the_pieces_alone_ask_for(string id)
    {
        var row = Row(id);
        var plan = Plan(id);
        Assert.InRange(Sizes(row).Sum(), ((plan.Bought - 1) * Number(row["stock_length"])) + 1, plan.Bought * Number(row["stock_length"]));
        Assert.True(plan.RollsAreProven && plan.LeftIsProven);
    }

    /// <summary>Of 1,313 pieces in 453 rolls the search cannot prove that 452 would not do, and says so.</summary>
    [Fact]
    public void Where_the_search_stops_early_it_says_how_far_from_proven_it_is()
    {
        var plan = Plan("gams_cutstock");
        Assert.False(plan.RollsAreProven);
        Assert.InRange(plan.BoughtAtLeast, Number(Row("gams_cutstock")["least"]), plan.Bought - 1);
    }

    private static CuttingPlan Plan(string id)
    {
        var row = Row(id);
        return Stocked.Plan(Sizes(row).Select(size => (double)size), [Stocked.Roll(Number(row["stock_length"]), 0)]);
    }

    private static TheoryData<string> Ids(string printed) =>
        [.. ReferenceTable.Confirmed(Table).Where(row => row["printed_as"].Contains(printed, StringComparison.Ordinal))
            .Select(row => row["id"])];

    private static IReadOnlyDictionary<string, string> Row(string id) =>
        Assert.Single(ReferenceTable.Confirmed(Table), row => string.Equals(row["id"], id, StringComparison.Ordinal));

    private static IEnumerable<int> Sizes(IReadOnlyDictionary<string, string> row) => row["demand (size:count)"].Split(';')
        .Select(demand => demand.Split(':')).SelectMany(demand => Enumerable.Repeat(Number(demand[0]), Number(demand[1])));

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
