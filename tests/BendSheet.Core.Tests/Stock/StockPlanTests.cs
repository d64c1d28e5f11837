using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Stock;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using static BendSheet.Core.Tests.Stock.Stocked;

namespace BendSheet.Core.Tests.Stock;

public class StockPlanTests
{
    [Fact]
    public void What_is_needed_is_lines_practice_cuts_and_spare()
    {
        var tube = Assert.Single(Of(
            [Straight("a", 1000), Straight("b", 500)],
            Stores([Roll(5000, 5000)]) with { Spare = 0.1, Practice = [new(3, Lines.Mm(60), Lines.Tube, At)], CuttingLoss = Lines.Mm(2) },
            Rough("c", 2500)).Tubes);
        Assert.Equal(1500, tube.Need.Of(PieceUse.Line).Millimetres, 1e-9);
        Assert.Equal(2500, tube.Need.Of(PieceUse.Rough).Millimetres, 1e-9);
        Assert.Equal(180, tube.Need.Of(PieceUse.Practice).Millimetres, 1e-9);
        Assert.Equal(12, tube.Need.CuttingLosses.Millimetres, 1e-9);
        Assert.Equal(400, tube.Need.Spare.Millimetres, 1e-9);
        Assert.Equal(4592, tube.Need.Total.Millimetres, 1e-9);
    }

    /// <summary>
    /// Three lines of 1000 from a roll of 3000: with the first made and what is left measured, the question is asked again.
    /// </summary>
    [Theory]
    [InlineData(3002, 0, true)]
    [InlineData(3001, 0, false)]
    [InlineData(2001, 1, true)]
    [InlineData(1990, 1, false)]
    [InlineData(1000, 2, true)]
    [InlineData(0, 3, true)]
    public void After_each_line_that_is_made_the_rest_is_held_against_what_is_left(double left, int made, bool fits)
    {
        var lines = Enumerable.Range(0, 3).Select(i => Made(Straight(FormattableString.Invariant($"line {i}"), 1000), i < made));
        var plan = Of(lines, Stores([Roll(7620, left)]));
        Assert.Equal(fits, Assert.Single(plan.Tubes).Plan!.Fits);
        Assert.Equal(fits ? [] : [StockRules.TooSmall], plan.Findings.Select(finding => finding.Rule));
    }

    [Fact]
    public void What_does_not_fit_is_said_with_its_figures_at_the_first_roll()
    {
        var finding = Assert.Single(Of([Straight("front", 1000), Straight("rear", 1500)], Stores([Roll(2000, 1700)])).Findings);
        Assert.Equal(At, finding.Position);
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.Equal(
            "tube main: 2502.0 mm (98.504 in) needed, 1700.0 mm (66.929 in) left: it is 802.0 mm (31.575 in) short; buy 1 roll of 2000.0 "
                + "mm (78.740 in) for front",
            finding.Message);
    }

    [Fact]
    public void Enough_in_all_that_is_too_short_in_each_roll_is_told_from_too_little()
    {
        var finding = Assert.Single(Of([Straight("rear", 1500)], Stores([Roll(2000, 1000), Roll(2000, 1000)])).Findings);
        Assert.Contains(
            "it is enough in all and the pieces do not go into it whole; buy 1 roll of 2000.0 mm (78.740 in) for rear",
            finding.Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Practice_flares_that_are_tried_need_no_tube()
    {
        var practice = new Practice(3, Lines.Mm(60), Lines.Tube, At) { Done = 2 };
        var tube = Assert.Single(Of([Straight("a", 1000)], Stores([Roll(5000, 5000)]) with { Practice = [practice] }).Tubes);
        Assert.Equal(60, tube.Need.Of(PieceUse.Practice).Millimetres, 1e-9);
        Assert.Equal("practice flare 3, a", string.Join(", ", tube.Plan!.Rolls[0].Cuts.Select(cut => cut.Piece.Name)));
    }

    [Fact]
    public void Where_only_the_spare_is_missing_that_is_a_warning()
    {
        var finding = Assert.Single(Of([Straight("a", 1000)], Stores([Roll(2000, 1050)]) with { Spare = 0.1 }).Findings);
        Assert.Equal((StockRules.TooSmall, Severity.Warning), (finding.Rule, finding.Severity));
        Assert.EndsWith("buy 1 roll of 2000.0 mm (78.740 in) for the spare", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_longer_than_every_roll_is_an_error_at_the_line()
    {
        var finding = Assert.Single(Of([Straight("rear", 2500)], Stores([Roll(2000, 2000)])).Findings);
        Assert.Equal((StockRules.PieceTooLong, Lines.NameAt), (finding.Rule, finding.Position));
    }

    [Fact]
    public void Lines_that_are_made_and_a_roll_that_nobody_measured_since_is_a_warning()
    {
        var roll = Roll(7620, 7620) with { LeftIsTyped = false };
        Assert.Empty(Of([Straight("a", 1000)], Stores([roll])).Findings);
        var finding = Assert.Single(Of([Made(Straight("a", 1000), true), Straight("b", 1000)], Stores([roll])).Findings);
        Assert.Equal((StockRules.LeftNotTyped, Severity.Warning), (finding.Rule, finding.Severity));
    }

    [Fact]
    public void A_tube_with_two_names_is_called_by_both()
    {
        var brake = Lines.Tube with { Name = "brake" };
        var roll = Roll(7620, 7620) with { LeftIsTyped = false };
        var finding = Assert.Single(Of([Made(Straight("a", 1000, brake), true), Straight("b", 1000)], Stores([roll])).Findings);
        Assert.Equal(
            "1 line of tubes main and brake (one tube under 2 names) is made and no roll of it says what is left: it is taken as whole; "
                + "measure it and add `left`",
            finding.Message);
        var onlyMade = Assert.Single(Of([Made(Straight("a", 1000, brake), true)], Stores([roll])).Findings);
        Assert.Equal(finding.Message, onlyMade.Message);
        var small = Of([Straight("a", 1000, brake)], Stores([Roll(500, 500)])).Findings;
        Assert.All(small, error => Assert.DoesNotContain("tube brake", error.Message, StringComparison.Ordinal));
        Assert.Contains(Of([Straight("a", 1000, brake), Straight("b", 1000)], Stores([Roll(1500, 1500)])).Findings, error =>
            error.Message.StartsWith("tubes brake and main (one tube under 2 names): 2002.0 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void Tubes_of_one_size_wall_and_material_are_one_whatever_they_are_called()
    {
        Tube[] tubes =
        [
            new("a", Length.FromInches(3.0 / 16), Length.FromInches(0.028), "copper-nickel", null),
            new("b", Lines.Mm(4.75), Lines.Mm(0.71), "Cu Ni: cuni", null),
            new("c", Lines.Mm(4.75), Lines.Mm(0.71), "steel", null),
            new("d", Lines.Mm(4.75), Lines.Mm(0.9), "copper-nickel", null),
            new("e", Lines.Mm(6), Lines.Mm(0.71), "copper-nickel", null),
        ];
        var plan = Of(tubes.Select(tube => Straight(tube.Name, 100, tube)), Stores([]));
        Assert.Equal(
            "a b; c; d; e", string.Join("; ", plan.Tubes.Select(tube => string.Join(' ', tube.Need.Pieces.Select(piece => piece.Name)))));
    }

    [Fact]
    public void A_line_that_cannot_be_made_is_named_and_not_counted()
    {
        var impossible = CarPlan.Line(Lines.Of(Lines.Bender(50), [20, 20, 20], (0, 90), (0, 90)));
        var plan = Of([impossible, Straight("b", 100)], Stores([]));
        Assert.Equal(impossible.Template.Name, Assert.Single(plan.NotCounted));
        Assert.Equal("b", Assert.Single(Assert.Single(plan.Tubes).Need.Pieces).Name);
    }

    private static StockPlan Of(IEnumerable<SolvedLine> lines, Stores stores, params ImmutableArray<RoughLine> rough) =>
        StockPlan.Of([.. lines], rough, stores);

    private static Stores Stores(ImmutableArray<Roll> rolls) => Core.Stock.Stores.Empty with { Rolls = rolls };

    private static SolvedLine Straight(string name, double length, Tube? tube = null) =>
        CarPlan.Line(Lines.Of(Lines.Bender(15), [length]) with { Name = name, Tube = tube ?? Lines.Tube });

    private static SolvedLine Made(SolvedLine line, bool made) => line with { Template = line.Template with { Made = made } };

    private static RoughLine Rough(string name, double length) =>
        new(name, Lines.NameAt, Lines.Tube, LineEnd.Unknown, LineEnd.Unknown, Lines.Mm(length), Lines.NameAt, Made: false);

    [Fact]
    public void Practice_bends_are_cut_between_practice_flares_and_lines()
    {
        var practice = new Practice(1, Lines.Mm(60), Lines.Tube, At) { Bends = 2 };
        var tube = Assert.Single(Of([Straight("a", 1000)], Stores([Roll(5000, 5000)]) with { Practice = [practice] }).Tubes);
        Assert.Equal(400, tube.Need.Of(PieceUse.PracticeBend).Millimetres, 1e-9);
        Assert.Equal(
            ["practice flare 1", "practice bend 1", "practice bend 2", "a"],
            Assert.Single(tube.Plan!.Rolls).Cuts.Select(cut => cut.Piece.Name),
            StringComparer.Ordinal);
        Assert.Equal([true, true, true, false], tube.Plan.Rolls[0].Cuts.Select(cut => cut.Piece.IsPractice));
    }
}
