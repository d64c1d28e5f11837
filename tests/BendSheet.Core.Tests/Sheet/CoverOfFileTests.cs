using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Sheet;
using BendSheet.Core.Stock;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Stock;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Sheet;

public class CoverOfFileTests
{
    private static readonly LengthNotation Millimetres = new(Imperial: false, 32);

    [Fact]
    public void Every_line_stands_there_in_the_order_of_the_file_with_how_far_it_is()
    {
        var cover = Cover(Stocked.Roll(5000, 5000));
        Assert.Equal(
            "front: made, 1000.0 mm; rear: no template yet, 2000.0 mm; axle: to make, 600.0 mm; tight: cannot be made as typed, ",
            string.Join("; ", cover.Lines.Select(line => $"{line.Name}: {line.StateInWords}, {line.CutLength?.Main}")));
        Assert.Equal("1 of 4 lines made.", cover.Summary);
        Assert.Equal("Not counted, because it cannot be made as typed: tight.", cover.Remarks[0]);
    }

    [Fact]
    public void On_the_page_those_with_a_sheet_come_first_and_rough_ones_say_that_they_wait_for_a_template() => Assert.Equal(
            "front, A: end A → B: end B; axle, A: end A → B: end B; rear (no template yet), end A → end B",
            string.Join("; ", Cover(Stocked.Roll(5000, 5000)).LinesOnPage.Select(line => $"{line.NameOnPage}, {line.EndsOnPage}")));

    [Fact]
    public void The_plan_is_rounded_and_worded_once()
    {
        var tube = Assert.Single(Cover(Stocked.Roll(5000, 2700.3)).Tubes);
        Assert.Equal("3/16 in, copper-nickel", tube.Tube);
        Assert.Equal(
            "1 line 600.0 mm; 1 line without a template 2000.0 mm; lost in 2 cuts 2.0 mm; needed in all 2602.0 mm; left on rolls 2700.5 mm",
            string.Join("; ", tube.Amounts.Select(amount => $"{amount.Label} {amount.Length.Main}")));
        var roll = Assert.Single(tube.Rolls);
        Assert.Equal<StockCut>([new("600.0", "600.0", "2099.5", "axle")], roll.Cuts);
        Assert.Equal<StockRoom>([new("rear", "about 2000.0 mm")], roll.Planned);
        Assert.Equal("98.5 mm (3 7/8 in)", roll.Left);
        Assert.Equal("Fits what is there.", tube.Remarks[0]);
        Assert.Equal(
            "Longest piece left: 98.5 mm (3 7/8 in), and no other way to cut these rolls leaves a longer one.", tube.Remarks[1]);
    }

    [Fact]
    public void What_has_to_be_bought_stands_there_with_its_cost()
    {
        var cover = Cover(Stocked.Roll(5000, 1000) with { Price = 49.5m });
        Assert.Equal(
            "What is measured fits what is there, and lines without a template do not: buy 1 roll of 5000 mm, cost 49.50. Fewer cannot "
                + "do.",
            cover.Tubes[0].Remarks[0]);
        Assert.Equal("Cost of the tube to buy: 49.50.", cover.Cost);
        Assert.Equal(new StockItem(1, "tube", "3/16 in, copper-nickel, roll of 5000 mm", 1, 0, "rear"), Assert.Single(cover.Shopping));
    }

    /// <summary>A shop is walked with what to buy; what lies at home is to be laid out.</summary>
    [Fact]
    public void What_is_on_hand_is_not_among_what_to_buy()
    {
        var toBuy = Assert.Single((Cover(Stocked.Roll(5000, 5000)) with
        {
            Shopping =
            [
                new(2, "nut", "an3, 17 mm", 3, 1, "rear A, rear B, axle A"), new(0, "tee", string.Empty, 1, 1, "axle B"),
                new(0, "clip", "for 3/16 in tube", 4, 4, "rear (4)"),
            ],
        }).Sections, IsToBuy);
        Assert.Equal<CoverRow>([new("nut, an3, 17 mm: rear A, rear B, axle A (3 needed, 1 on hand)", "2")], toBuy.Rows);
        Assert.StartsWith("All on hand, nothing to buy: 1 × tee; 4 × clip, for 3/16 in tube. ", toBuy.Remark, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_all_is_on_hand_nothing_is_to_be_ticked()
    {
        var cover = Cover(Stocked.Roll(5000, 5000)) with { Shopping = [new(0, "tee", string.Empty, 1, 1, "axle B")] };
        var toBuy = Assert.Single(cover.Sections, IsToBuy);
        Assert.False(toBuy.ToTick);
        Assert.Equal<CoverRow>([new("Nothing.", string.Empty)], toBuy.Rows);
    }

    /// <summary>Nothing to tick, no place to cut at: a guess is not cut.</summary>
    [Fact]
    public void A_line_without_a_template_has_room_kept_behind_the_cuts_and_is_marked()
    {
        var sections = Cover(Stocked.Roll(5000, 2700.3)).Sections.ToList();
        var cuts = sections.FindIndex(section => section.ToTick);
        Assert.Equal("axle", Assert.Single(sections[cuts].Rows).What);
        Assert.Equal("cut at 600.0, left 2099.5", sections[cuts].Rows[0].Other);
        var planned = sections[cuts + 1];
        Assert.Equal("roll, planned – do not cut: no template yet", planned.Heading);
        Assert.Equal<CoverRow>([new("rear", "about 2000.0 mm")], planned.Rows);
        Assert.False(planned.ToTick);
    }

    [Fact]
    public void Only_the_spare_may_be_missing() => Assert.Equal(
        "The lines fit what is there, and the spare does not: buy 1 roll of 5000 mm. Fewer cannot do.",
        Cover(Stocked.Roll(5000, 2700), spare: 0.1).Tubes[0].Remarks[0]);

    private static bool IsToBuy(CoverSection section) => string.Equals(section.Heading, "To buy", StringComparison.Ordinal);

    private static CoverContent Cover(Roll roll, double spare = 0)
    {
        ImmutableArray<SolvedLine> lines =
        [
            CarPlan.Line(Lines.Of(Lines.Bender(15), [1000]) with { Name = "front", At = At(1), Made = true }),
            CarPlan.Line(Lines.Of(Lines.Bender(15), [600]) with { Name = "axle", At = At(3) }),
            CarPlan.Line(Lines.Of(Lines.Bender(50), [20, 20, 20], (0, 90), (0, 90)) with { Name = "tight", At = At(4) }),
        ];
        ImmutableArray<RoughLine> rough =
        [
            new("rear", At(2), Lines.Tube, LineEnd.Unknown, LineEnd.Unknown, Lines.Mm(2000), At(2), Made: false),
        ];
        var stock = StockPlan.Of(lines, rough, Stores.Empty with { Rolls = [roll], Spare = spare });
        return CoverWriter.OfFile("car", lines, rough, stock, ShoppingList.Of(lines, rough, stock, [], [], Millimetres), Millimetres);
    }

    private static SourcePosition At(int line) => new("test.yaml", line, 3);
}
