using BendSheet.Core.Stock;
using static BendSheet.Core.Tests.Stock.Stocked;

namespace BendSheet.Core.Tests.Stock;

public class CuttingPlanTests
{
    private const int Seed = 2604;

    [Fact]
    public void A_plan_for_a_car_is_as_good_as_a_general_solver_finds()
    {
        var random = new Random(Seed);
        for (var i = 0; i < 12; i++)
        {
            var (pieces, there, bought, loss) = Case(random, mostPieces: 14, mostRolls: 3);
            var plan = Plan(pieces.Select(size => (double)size), Rolls(there, bought), loss);
            var best = GeneralSolver.Best(pieces, there, bought, loss);
            Assert.Equal((i, best.Bought, best.Left), (i, plan.Bought, (int)Math.Round(plan.LongestLeft.Millimetres)));
            Assert.True(plan.RollsAreProven && plan.LeftIsProven);
        }
    }

    [Fact]
    public void The_order_in_which_lines_are_typed_changes_nothing_but_which_of_two_equal_ones_comes_first()
    {
        var random = new Random(Seed);
        for (var i = 0; i < 50; i++)
        {
            var (pieces, there, bought, loss) = Case(random, mostPieces: 12, mostRolls: 3);
            var one = Plan(pieces.Select(size => (double)size), Rolls(there, bought), loss);
            random.Shuffle(pieces);
            var other = Plan(pieces.Select(size => (double)size), Rolls(there, bought), loss);
            Assert.Equal(Lengths(one), Lengths(other));
        }
    }

    [Fact]
    public void A_piece_that_is_as_long_as_the_roll_needs_no_cut() =>
        Assert.Equal(0, Plan([500], [Roll(1000, 500)], loss: 2).Bought);

    [Fact]
    public void Two_pieces_lose_one_cut_between_them()
    {
        Assert.Equal(0, Plan([250, 248], [Roll(1000, 500)], loss: 2).Bought);
        Assert.Equal(1, Plan([250, 248.1], [Roll(1000, 500)], loss: 2).Bought);
    }

    [Fact]
    public void A_short_rest_is_used_up_before_a_long_roll_is_cut_into()
    {
        var plan = Plan([480], [Roll(2000, 2000, "long"), Roll(2000, 500, "rest")]);
        Assert.Equal("rest", Assert.Single(plan.Rolls, roll => !roll.Cuts.IsEmpty).Name);
        Assert.Equal(2000, plan.LongestLeft.Millimetres);
    }

    [Fact]
    public void No_roll_is_cut_into_that_can_be_left_whole()
    {
        var plan = Plan([300, 300], [Roll(2000, 700, "a"), Roll(2000, 650, "b"), Roll(2000, 2000, "c")]);
        Assert.Single(plan.Rolls, roll => !roll.Cuts.IsEmpty);
    }

    [Fact]
    public void The_longest_piece_is_cut_first() =>
        Assert.Equal([900, 500, 100], Plan([100, 900, 500], [Roll(2000, 2000)]).Rolls[0].Cuts.Select(cut => cut.Piece.Length.Millimetres));

    [Fact]
    public void Flares_are_tried_before_the_first_line_is_cut()
    {
        var practice = Piece(60, "practice") with { Use = PieceUse.Practice };
        var plan = CuttingPlan.Of([Piece(900, "line"), practice], [Roll(2000, 2000)], Lines.Mm(1), Lines.Mm(0));
        Assert.Equal("practice line", string.Join(' ', plan.Rolls[0].Cuts.Select(cut => cut.Piece.Name)));
    }

    [Fact]
    public void A_line_longer_than_any_roll_is_left_out_of_the_plan_and_named()
    {
        var plan = Plan([2100, 300], [Roll(2000, 2000)]);
        Assert.Equal("p0", Assert.Single(plan.TooLong).Name);
        Assert.False(plan.Fits);
    }

    [Fact]
    public void The_spare_has_to_be_left_in_one_piece()
    {
        Roll[] rolls = [Roll(2000, 1000, "a"), Roll(2000, 1000, "b")];
        Assert.Equal((0, 0), Spare(Plan([700, 700], rolls, spare: 300)));
        Assert.Equal((1, 1), Spare(Plan([700, 700], rolls, spare: 301)));
    }

    [Fact]
    public void A_spare_longer_than_a_roll_may_be_in_several_pieces()
    {
        Assert.Equal((0, 0), Spare(Plan([500], [Roll(1000, 1000, "a"), Roll(1000, 1000, "b")], spare: 1500)));
        Assert.Equal((1, 1), Spare(Plan([500], [Roll(1000, 1000, "a"), Roll(1000, 1000, "b")], spare: 1501)));
    }

    [Fact]
    public void Of_several_lengths_the_one_is_bought_of_which_fewest_are_needed_and_then_the_cheapest()
    {
        Roll[] rolls = [Roll(1000, 0) with { Price = 5 }, Roll(3000, 0) with { Price = 20 }, Roll(4000, 0) with { Price = 15 }];
        var plan = Plan([900, 900, 900], rolls);
        Assert.Equal((4000, 1, 15m), (plan.ToBuy!.Length.Millimetres, plan.Bought, plan.Cost));
    }

    [Fact]
    public void Where_nothing_is_left_to_make_every_roll_stays_as_it_is()
    {
        var plan = Plan([], [Roll(1000, 400)]);
        Assert.True(plan.Fits);
        Assert.Equal(400, plan.LongestLeft.Millimetres);
    }

    [Fact]
    public void Ten_thousand_lines_are_planned_in_the_plain_way_and_not_called_proven()
    {
        var random = new Random(Seed);
        var plan = Plan(Enumerable.Range(0, 10_000).Select(_ => 300.0 + random.Next(3000)), [Roll(7620, 0)]);
        Assert.InRange(plan.Bought, plan.BoughtAtLeast, plan.BoughtAtLeast * 11 / 9);
        Assert.False(plan.LeftIsProven);
    }

    [Fact]
    public void A_shorter_length_is_bought_where_the_long_piece_goes_into_what_is_there()
    {
        Roll[] rolls = [Roll(5000, 1500) with { Price = 50 }, Roll(1000, 0) with { Price = 10 }];
        var plan = Plan([1400, 900], rolls);
        Assert.Equal((1000, 1, 10m), (plan.ToBuy!.Length.Millimetres, plan.Bought, plan.Cost));
    }

    /// <summary>By itself the new roll is what is left: 1000. Cut into, it leaves 300 and the old one 1400.</summary>
    [Fact]
    public void A_roll_bought_for_the_spare_is_planned_with_the_others()
    {
        var plan = Plan([700, 600], [Roll(1400, 1400) with { Price = 20 }, Roll(1000, 0) with { Price = 10 }], spare: 800);
        Assert.Equal((1, 1), Spare(plan));
        Assert.Equal((1000, 1000), (plan.ToBuy!.Length.Millimetres, plan.LongestLeft.Millimetres));
        var longer = Plan([700, 200], [Roll(1400, 1400) with { Price = 20 }, Roll(1000, 0) with { Price = 10 }], spare: 1300);
        Assert.Equal((1, 1), Spare(longer));
        Assert.Equal((1000, 1400), (longer.ToBuy!.Length.Millimetres, longer.LongestLeft.Millimetres));
    }

    [Fact]
    public void What_is_left_as_long_is_left_with_as_few_rolls_cut_into_as_can_be()
    {
        // The longest first, each into the first roll that it goes into: three rolls cut into. Two do.
        var plan = Plan([600, 500, 400], [Roll(3000, 600, "a"), Roll(3000, 1000, "b"), Roll(3000, 950, "c"), Roll(3000, 3000, "d")]);
        Assert.Equal((2, 2, 3000), (plan.Cut, plan.CutAtLeast, plan.LongestLeft.Millimetres));
        Assert.Equal(2, plan.Rolls.Count(roll => !roll.Cuts.IsEmpty));
    }

    [Fact]
    public void What_is_a_guess_is_cut_after_what_is_measured_however_long_it_is()
    {
        var plan = CuttingPlan.Of(
            [Piece(900, "guess") with { Use = PieceUse.Rough }, Piece(300, "line")], [Roll(2000, 2000)], Lines.Mm(1), Lines.Mm(0));
        Assert.Equal("line guess", string.Join(' ', plan.Rolls[0].Cuts.Select(cut => cut.Piece.Name)));
    }

    [Fact]
    public void No_measured_line_waits_for_new_tube_because_a_guess_takes_its_place()
    {
        // One new stick is enough either way. The longest piece would be left with the guess on the old one.
        var plan = CuttingPlan.Of(
            [Piece(900, "line"), Piece(1000, "guess") with { Use = PieceUse.Rough }],
            [Roll(2000, 1000, "old")],
            Lines.Mm(0),
            Lines.Mm(0));
        Assert.Equal(("line", "guess"), (plan.Rolls[0].Cuts[0].Piece.Name, plan.Rolls[1].Cuts[0].Piece.Name));
        Assert.True(plan.MeasuredFirst);
        Assert.Equal(1000, plan.LongestLeft.Millimetres);
    }

    [Fact]
    public void Rolls_that_are_alike_and_left_whole_are_one_entry()
    {
        var plan = Plan([500], [Roll(1000, 1000, "stick") with { Count = 1000 }], spare: 3_000_000);
        Assert.Equal(
            "stick (1 of 1000) 1; stick (2 to 1000 of 1000) 999; new rolls 1 to 2001 2001",
            string.Join("; ", plan.Rolls.Select(roll => FormattableString.Invariant($"{roll.Name} {roll.Count}"))));
    }

    /// <summary>No list grows with what a roll of next to nothing would have to be bought of.</summary>
    [Fact]
    public void A_roll_of_next_to_nothing_ends_in_a_plan()
    {
        var plan = Plan([500], [Roll(1e-7, 0), Roll(600, 0)], spare: 1_000_000);
        Assert.Equal(600, plan.ToBuy!.Length.Millimetres);
        Assert.Equal(2, plan.Rolls.Count(roll => roll.IsBought));
    }

    /// <summary>Work is counted for the whole plan: counted for each length that can be bought, this would take minutes.</summary>
    [Theory]
    [InlineData(300, 1)]
    [InlineData(300, 1000)]
    [InlineData(5000, 1)]
    public void Two_hundred_lines_and_hundreds_of_different_rolls_are_planned_in_the_steps_of_a_car(int rolls, int count)
    {
        var random = new Random(Seed);
        var stock = Enumerable.Range(0, rolls).Select(i => Roll(3200 + random.Next(5000), random.Next(3200)) with { Count = count });
        var pieces = Enumerable.Range(0, 200).Select(_ => 100.0 + random.Next(3000));
        var plan = Plan(pieces, stock, loss: 1, spare: 500);
        Assert.InRange(plan.Bought, plan.BoughtAtLeast, plan.BoughtAtLeast + 2);
    }

    private static (int Bought, int ForSpare) Spare(CuttingPlan plan) => (plan.Bought, plan.ForSpare);

    private static (int[] Pieces, int[] There, int Bought, int Loss) Case(Random random, int mostPieces, int mostRolls)
    {
        var bought = random.Next(60, 120);
        int[] pieces = [.. Enumerable.Range(0, random.Next(1, mostPieces + 1)).Select(_ => random.Next(5, 60))];
        int[] there = [.. Enumerable.Range(0, random.Next(1, mostRolls + 1)).Select(_ => random.Next(0, bought + 1))];
        return (pieces, there, bought, random.Next(0, 3));
    }

    private static IEnumerable<Roll> Rolls(int[] there, int bought) =>
        there.Select((left, i) => Roll(bought, left, FormattableString.Invariant($"roll {i}")));

    private static string Lengths(CuttingPlan plan) =>
        string.Join("; ", plan.Rolls.Select(roll => string.Join(' ', roll.Cuts.Select(cut => cut.Piece.Length.Millimetres))));
}
