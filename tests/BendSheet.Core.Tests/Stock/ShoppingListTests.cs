using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Stock;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Stock;

/// <summary>
/// A small car, counted by hand. Both front lines: an3 at A, inverted at B, 1000 long, clips 300 apart from 150 in: at 150 to 850 there are
/// 700 to cover, so four clips each. The axle line: inverted at both ends, 600 long, no clips. The rear line is rough: an3 at A. One line
/// is made.
/// </summary>
public class ShoppingListTests
{
    private static readonly LengthNotation Millimetres = new(Imperial: false, 32);

    private static readonly Fitting An3 = new(
        "an3", Flare.Single37, Length.Zero, [new("nut", Lines.Mm(17)), new("sleeve", Lines.Mm(9))], Length.Zero);

    private static readonly Fitting Inverted = new("inverted", Flare.Double45, Length.Zero, [new("nut", Lines.Mm(20))], Length.Zero);

    [Fact]
    public void Everything_is_counted_with_where_it_is_used() => Assert.Equal(
        """
        3 nut [an3, 17 mm] front-left A, front-right A, rear A
        3 sleeve [an3, 9 mm] front-left A, front-right A, rear A
        4 nut [inverted, 20 mm] front-left B, front-right B, axle (2)
        8 clip [for 3/16 in tube, hole 5.5 mm] front-left (4), front-right (4)
        1 tube [3/16 in, copper-nickel, 4604.0 mm in all] front-left, front-right, rear, axle
        """,
        Text(Car([], [])));

    [Fact]
    public void What_lies_in_the_drawer_is_taken_off() => Assert.Equal(
        "1 0 4 3 1",
        string.Join(
            ' ', Car([], [Left("an3 nuts", 2), Left("sleeve", 5), Left("clips", 5)]).Items.Select(item => item.ToBuy)));

    /// <summary>The line that is made has two nuts, two sleeves and three clips: of 3, 5 and 5 there are 1, 3 and 2 left.</summary>
    [Fact]
    public void What_the_made_lines_used_is_not_on_hand_any_more()
    {
        var list = Car([], [new("an3 nuts", 3, Stocked.At), new("sleeve", 5, Stocked.At), new("clips", 5, Stocked.At)]);
        Assert.Equal("2 0 4 6 1", string.Join(' ', list.Items.Select(item => item.ToBuy)));
        Assert.All(list.Findings, finding => Assert.Equal((OnHand.UsedSince, Severity.Note), (finding.Rule, finding.Severity)));
        Assert.Equal(
            "`an3 nuts: 3` in `have`: lines that are made used 2, so 1 is counted as left; once you have counted them, write "
                + "`an3 nuts: {left: 1}`",
            list.Findings[0].Message);
        Assert.Equal(3, list.Findings.Length);
    }

    /// <summary>Nobody needs a sleeve any more: those that were there are in the made line.</summary>
    [Fact]
    public void What_only_made_lines_used_is_no_unknown_name()
    {
        var made = CarPlan.Line(Line("made", 1, 900, An3, An3) with { Made = true });
        var list = ShoppingList.Of([made], [], StockPlan.Of([made], [], Stores.Empty), [new("sleeve", 2, Stocked.At)], [], Millimetres);
        Assert.Empty(list.Items);
        Assert.Same(OnHand.UsedSince, Assert.Single(list.Findings).Rule);
    }

    [Fact]
    public void Tube_is_bought_in_rolls_where_rolls_are_typed() => Assert.Equal(
        "1 tube [3/16 in, copper-nickel, roll of 5000 mm] rear",
        Text(Car([Stocked.Roll(5000, 2700)], [])).Split('\n')[^1]);

    [Fact]
    public void Where_the_tube_will_do_none_is_bought() =>
        Assert.DoesNotContain(Car([Stocked.Roll(5000, 5000)], []).Items, item => item.Name is "tube");

    [Fact]
    public void What_the_car_needs_beside_its_lines_stands_at_the_end_and_may_lie_in_the_drawer()
    {
        var list = Car(
            [], [new("tee", 1, Stocked.At)], new ShoppingItem("tee", string.Empty, "3/8-24 inverted", 2, ["front tee", "rear tee"]));
        Assert.Equal(("tee", 2, 1), (list.Items[^1].Name, list.Items[^1].Count, list.Items[^1].ToBuy));
    }

    private static ShoppingList Car(ImmutableArray<Roll> rolls, ImmutableArray<InTheDrawer> have, params ShoppingItem[] more)
    {
        var held = new Clipping(Lines.Mm(300), Lines.NameAt, Lines.Mm(150), Lines.Mm(5.5));
        ImmutableArray<SolvedLine> lines =
        [
            CarPlan.Line(Line("front-left", 1, 1000, An3, Inverted) with { Clips = held }),
            CarPlan.Line(Line("front-right", 2, 1000, An3, Inverted) with { Clips = held }),
            CarPlan.Line(Line("axle", 4, 600, Inverted, Inverted)),
            CarPlan.Line(Line("made", 5, 900, An3, An3) with { Made = true, Clips = held }),
        ];
        ImmutableArray<RoughLine> rough =
            [new("rear", At(3), Lines.Tube, LineEnd.Unknown with { Fitting = An3 }, LineEnd.Unknown, Lines.Mm(2000), At(3), Made: false)];
        var stock = StockPlan.Of(lines, rough, Stores.Empty with { Rolls = rolls });
        return ShoppingList.Of(lines, rough, stock, have, more, Millimetres);
    }

    private static LineTemplate Line(string name, int line, double length, Fitting from, Fitting to) =>
        Lines.Of(Lines.Bender(15), [length]) with
        {
            Name = name,
            At = At(line),
            From = LineEnd.Unknown with { Fitting = from },
            To = LineEnd.Unknown with { Fitting = to },
        };

    private static InTheDrawer Left(string name, int count) => new(name, count, Stocked.At) { IsLeft = true };

    private static SourcePosition At(int line) => new("test.yaml", line, 3);

    private static string Text(ShoppingList list) =>
        string.Join(
            '\n',
            list.Items.Select(
                item => FormattableString.Invariant($"{item.ToBuy} {item.Name} [{item.Specification}] {string.Join(", ", item.UsedAt)}")));
}
