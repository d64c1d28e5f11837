using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Geometry;
using CsCheck;

namespace BendSheet.Core.Tests.Templates;

public class RouteTests
{
    [Fact]
    public void Straights_in_a_row_add_up_and_keep_the_first_place()
    {
        var template = Lines.OfRows(
            Lines.Bender(10), Straight(0, 30), Straight(1, 40), Bent(2, 50, 90), Straight(3, 60), Straight(4, 70));
        Assert.Equal([120.0, 130.0], template.Route.Legs.Select(leg => leg.Measured.Millimetres));
        Assert.Equal([Lines.StraightAt(0), Lines.StraightAt(3)], template.Route.Legs.Select(leg => leg.At));
        Assert.Equal(Lines.TurnAt(2), Assert.Single(template.Route.Bends).TurnAt);
    }

    [Fact]
    public void A_line_that_ends_in_a_bend_is_one_finding_at_that_bend()
    {
        var (route, findings) = Route.OfRows([Bent(0, 50, 45), Bent(1, 60, 90)]);
        Assert.Null(route);
        var finding = Assert.Single(findings);
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.Same(Route.EndsInBend, finding.Rule);
        Assert.Equal(RuleSubject.File, finding.Rule.Subject);
        Assert.Equal(Lines.TurnAt(1), finding.Position);
        Assert.Equal("the line ends in a bend: add a last row with the straight up to end B, such as `- {straight: 80}`", finding.Message);
    }

    [Fact]
    public void A_last_row_that_goes_straight_as_the_finding_says_is_silent()
    {
        var (route, findings) = Route.OfRows([Bent(0, 50, 45), Bent(1, 60, 90), Straight(2, 80)]);
        Assert.Empty(findings);
        Assert.Equal(3, route!.Legs.Length);
        Assert.Equal(2, route.Bends.Length);
    }

    [Fact]
    public void No_rows_is_a_slip_of_the_program() => Assert.Throws<ArgumentException>(() => Route.OfRows([]));

    [Fact]
    public void Reversed_hands_each_rotation_to_the_bend_on_the_other_side_of_its_straight()
    {
        var reversed = Lines.Of(Lines.Bender(10), [10, 20, 30, 40], (5, 45), (90, 30), (-45, 60)).Route.Reversed();
        Assert.Equal([40.0, 30.0, 20.0, 10.0], reversed.Legs.Select(leg => leg.Measured.Millimetres));
        Assert.Equal([60.0, 30.0, 45.0], reversed.Bends.Select(bend => bend.Turn.Degrees));
        Assert.Equal([5.0, -45.0, 90.0], reversed.Bends.Select(bend => bend.Rotation.Degrees));
    }

    [Fact]
    public void Reversed_twice_and_mirrored_twice_are_the_same() => Shape.Any.Sample(
        shape =>
        {
            var route = shape.Template().Route;
            Assert.Equal(route.Legs.AsEnumerable(), route.Reversed().Reversed().Legs);
            Assert.Equal(route.Bends.AsEnumerable(), route.Reversed().Reversed().Bends);
            Assert.Equal(route.Legs.AsEnumerable(), route.Mirrored().Mirrored().Legs);
            Assert.Equal(route.Bends.AsEnumerable(), route.Mirrored().Mirrored().Bends);
        },
        iter: 500);

    [Fact]
    public void Reversed_and_mirrored_keep_legs_and_lengths() => Shape.Roomy.Sample(
        shape =>
        {
            var template = shape.Template();
            var plan = template.Plan();
            var reversed = template with { Route = template.Route.Reversed() };
            var mirrored = template with { Route = template.Route.Mirrored() };
            Assert.Equal(template.Route.Legs.AsEnumerable(), mirrored.Route.Legs);
            Assert.Equal(template.Route.Legs.Reverse(), reversed.Route.Legs);
            foreach (var other in new[] { reversed.Plan(), mirrored.Plan() })
            {
                AssertGeometry.Equal(plan.CutLength, other.CutLength, "cut length");
                AssertGeometry.Equal(plan.DevelopedLength, other.DevelopedLength, "developed length");
                AssertGeometry.Equal(plan.CentrelineLength, other.CentrelineLength, "centreline");
            }
        },
        iter: 500);

    private static Row Straight(int row, double length) => new(Lines.Mm(length), Lines.StraightAt(row), null);

    private static Row Bent(int row, double length, double turn) => new(
        Lines.Mm(length), Lines.StraightAt(row), new(Lines.Deg(turn), Lines.Deg(0), Lines.Bender(10), null, Lines.TurnAt(row)));
}
