using BendSheet.Core.Bench;
using BendSheet.Core.Workshop;
using static BendSheet.Core.Tests.Bench.TestBends;

namespace BendSheet.Core.Tests.Bench;

public class SpringbackTests
{
    private static readonly BenderTest[] Three = [Pulled(32, 30), Pulled(47.5, 45), Pulled(93, 90)];

    [Fact]
    public void Without_tests_the_pull_is_the_bend()
    {
        var springback = Springback.Of([Piece(90, 200, 103, 103)]);
        Assert.Equal(SpringbackLaw.Unknown, springback.Law);
        Assert.Equal(Lines.Deg(60), springback.Pull(Lines.Deg(60)));
        Assert.False(springback.Covers(Lines.Deg(60)));
        Assert.Null(springback.Uncertainty(Lines.Deg(60)));
    }

    /// <summary>10° and a quarter of the bend: common practice, no source.</summary>
    [Theory]
    [InlineData(104.9, 76, false)]
    [InlineData(105.1, 76, true)]
    [InlineData(14.9, 4, false)]
    [InlineData(15.1, 4, true)]
    [InlineData(234.9, 180, false)]
    [InlineData(235.1, 180, true)]
    public void A_pull_is_doubtful_beyond_ten_degrees_and_a_quarter_of_the_bend(double pull, double bend, bool doubtful) =>
        Assert.Equal(doubtful, Springback.IsDoubtful(Lines.Deg(pull), Lines.Deg(bend)));

    [Fact]
    public void One_test_is_taken_in_proportion()
    {
        var springback = Springback.Of([Pulled(93, 90)]);
        Assert.Equal(SpringbackLaw.Proportion, springback.Law);
        AssertGeometry.Equal(Lines.Deg(93), springback.Pull(Lines.Deg(90)));
        AssertGeometry.Equal(Lines.Deg(31), springback.Pull(Lines.Deg(30)));
        Assert.Null(springback.Uncertainty(Lines.Deg(90)));
    }

    [Fact]
    public void Tests_of_one_angle_are_taken_in_proportion_too()
    {
        var springback = Springback.Of([Pulled(93, 90), Pulled(94, 90), Pulled(95, 90)]);
        Assert.Equal(SpringbackLaw.Proportion, springback.Law);
        AssertGeometry.Equal(Lines.Deg(94), springback.Pull(Lines.Deg(90)));
    }

    /// <summary>A line through (90, 93) and (91, 92) would fall.</summary>
    [Fact]
    public void Tests_too_near_to_one_another_for_a_line_count_as_one_angle()
    {
        var springback = Springback.Of([Pulled(93, 90), Pulled(92, 91)]);
        Assert.Equal(SpringbackLaw.Proportion, springback.Law);
        AssertGeometry.Equal(Lines.Deg(45 * ((93.0 * 90) + (92 * 91)) / ((90 * 90) + (91 * 91))), springback.Pull(Lines.Deg(45)));
        Assert.Equal(SpringbackLaw.Line, Springback.Of([Pulled(93, 90), Pulled(98.5, 95.001)]).Law);
        Assert.Equal(SpringbackLaw.Proportion, Springback.Of([Pulled(93, 90), Pulled(98.5, 95)]).Law);
    }

    /// <summary>Slope (93 − 47.5) / 45 = 1.0111, so 60° needs 47.5 + 15 · 1.0111 = 62.6667.</summary>
    [Fact]
    public void Two_tests_give_a_line_through_both()
    {
        var springback = Springback.Of([Pulled(93, 90), Pulled(47.5, 45)]);
        AssertGeometry.Equal(Lines.Deg(93), springback.Pull(Lines.Deg(90)));
        AssertGeometry.Equal(Lines.Deg(47.5), springback.Pull(Lines.Deg(45)));
        AssertGeometry.Equal(Lines.Deg(47.5 + (15 * 45.5 / 45)), springback.Pull(Lines.Deg(60)));
    }

    /// <summary>
    /// By hand: means 55 and 57.5, Σ(x − 55)² = 1950, Σ(x − 55)(y − 57.5) = 1980; slope 1980/1950, residuals −0.1154, 0.1538, −0.0385,
    /// their deviation 0.1961 with one degree of freedom, and ± at 60° 12.7062 · 0.1961 · √(1 + 1/3 + 25/1950) = 2.891.
    /// </summary>
    [Fact]
    public void Three_tests_show_how_far_to_trust_the_line()
    {
        var springback = Springback.Of(Three);
        var slope = 1980.0 / 1950;
        AssertGeometry.Equal(Lines.Deg(57.5 + (5 * slope)), springback.Pull(Lines.Deg(60)));
        AssertGeometry.Printed("-0.1154", springback.Residual(Three[0]).Degrees);
        AssertGeometry.Printed("0.1538", springback.Residual(Three[1]).Degrees);
        AssertGeometry.Printed("-0.0385", springback.Residual(Three[2]).Degrees);
        AssertGeometry.Printed("2.891", springback.Uncertainty(Lines.Deg(60))!.Value.Degrees);
        Assert.True(springback.UncertaintyWithOneMore(Lines.Deg(60)) < Lines.Deg(1.2));
        Assert.True(springback.Uncertainty(Lines.Deg(180)) > springback.Uncertainty(Lines.Deg(60)));
    }

    /// <summary>The line through these falls below pull = bend under 20°.</summary>
    [Fact]
    public void The_pull_is_never_less_than_the_bend()
    {
        var springback = Springback.Of([Pulled(41, 40), Pulled(94, 90)]);
        Assert.Equal(Lines.Deg(10), springback.Pull(Lines.Deg(10)));
        Assert.True(springback.Pull(Lines.Deg(50)) > Lines.Deg(50));
    }

    [Theory]
    [InlineData(24.9, false)]
    [InlineData(25, true)]
    [InlineData(60, true)]
    [InlineData(95, true)]
    [InlineData(95.1, false)]
    public void A_bend_near_the_tested_ones_is_covered(double bend, bool covered) =>
        Assert.Equal(covered, Springback.Of(Three).Covers(Lines.Deg(bend)));

    [Fact]
    public void Only_tests_that_were_pulled_count() =>
        Assert.Same(Three[1], Assert.Single(Springback.Of([Piece(90, 200, 103, 103), Three[1]]).Tests));
}
