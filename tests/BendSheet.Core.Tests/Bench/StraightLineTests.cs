using BendSheet.Core.Bench;

namespace BendSheet.Core.Tests.Bench;

public class StraightLineTests
{
    /// <summary>
    /// NIST Statistical Reference Datasets, linear regression, Norris (calibration of an ozone monitor): y and x of 36 observations. Data
    /// and certified values as other projects' tests have copied them, four of them alike; the dataset's own page was not seen.
    /// </summary>
    private static readonly (double X, double Y)[] Norris =
    [
        (0.2, 0.1),
        (337.4, 338.8),
        (118.2, 118.1),
        (884.6, 888.0),
        (10.1, 9.2),
        (226.5, 228.1),
        (666.3, 668.5),
        (996.3, 998.5),
        (448.6, 449.1),
        (777.0, 778.9),
        (558.2, 559.2),
        (0.4, 0.3),
        (0.6, 0.1),
        (775.5, 778.1),
        (666.9, 668.8),
        (338.0, 339.3),
        (447.5, 448.9),
        (11.6, 10.8),
        (556.0, 557.7),
        (228.1, 228.3),
        (995.8, 998.0),
        (887.6, 888.8),
        (120.2, 119.6),
        (0.3, 0.3),
        (0.3, 0.6),
        (556.8, 557.6),
        (339.1, 339.3),
        (887.2, 888.0),
        (999.0, 998.5),
        (779.0, 778.9),
        (11.1, 10.2),
        (118.3, 117.6),
        (229.2, 228.9),
        (669.1, 668.4),
        (448.9, 449.2),
        (0.5, 0.2),
    ];

    private const double CertifiedDeviation = 0.884796396144373;
    private const double CertifiedErrorOfIntercept = 0.232818234301152;

    [Fact]
    public void Certified_values_of_a_published_data_set()
    {
        var line = StraightLine.Through(Norris);
        AssertGeometry.Equal(-0.262323073774029, line.Intercept, "B0");
        AssertGeometry.Equal(1.00211681802045, line.Slope, "B1");
        AssertGeometry.Equal(CertifiedDeviation, line.ResidualDeviation!.Value, "residual standard deviation");
        AssertGeometry.Equal(0.429796848199937e-3, line.ResidualDeviation.Value / Math.Sqrt(line.SpreadX), "standard error of B1");
    }

    /// <summary>
    /// At x = 0 the mean of y is known to the certified standard error of B0, and a new y scatters about it. Student's t of 34 degrees of
    /// freedom as tables print it, 2.032 (from memory).
    /// </summary>
    [Fact]
    public void A_prediction_interval_from_certified_values()
    {
        var root = Math.Sqrt((CertifiedDeviation * CertifiedDeviation) + (CertifiedErrorOfIntercept * CertifiedErrorOfIntercept));
        var t = StraightLine.Through(Norris).PredictionHalfWidth(0, 0.95)!.Value / root;
        AssertGeometry.Printed("2.032", t, "t");
    }

    /// <summary>
    /// With one degree of freedom t is Cauchy's, tan(π·(p − 1/2)); with two it is 2·(p − 1/2)·√(2 / (4p(1 − p))): closed forms.
    /// </summary>
    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    public void With_few_points_Students_t_has_a_closed_form(int points)
    {
        const double Upper = 0.975;
        var t = points == 3 ? Math.Tan(Math.PI * (Upper - 0.5)) : 2 * (Upper - 0.5) * Math.Sqrt(2 / (4 * Upper * (1 - Upper)));
        var line = StraightLine.Through(Norris[..points]);
        var root = Math.Sqrt(1 + (1.0 / points) + ((100 - line.MeanX) * (100 - line.MeanX) / line.SpreadX));
        Assert.Equal(t * line.ResidualDeviation!.Value * root, line.PredictionHalfWidth(100, 0.95)!.Value, 1e-7);
    }

    [Theory]
    [InlineData(3, 60)]
    [InlineData(3, 300)]
    [InlineData(12, 500)]
    public void One_more_point_brings_what_a_point_on_the_line_with_the_same_scatter_would(int points, double x)
    {
        var line = StraightLine.Through(Norris[..points]);
        var more = StraightLine.Through([.. Norris[..points], (x, line.At(x))]);
        var sameScatter = Math.Sqrt((points - 1) / (points - 2.0));
        AssertGeometry.Equal(line.Slope, more.Slope);
        AssertGeometry.Equal(more.PredictionHalfWidth(x, 0.95)!.Value * sameScatter, line.HalfWidthWithOneMore(x, 0.95)!.Value);
    }

    [Fact]
    public void Two_points_lie_on_their_line_and_show_no_scatter()
    {
        var line = StraightLine.Through([(45, 47.5), (90, 93)]);
        AssertGeometry.Equal(47.5, line.At(45));
        AssertGeometry.Equal(93, line.At(90));
        Assert.Null(line.ResidualDeviation);
        Assert.Null(line.PredictionHalfWidth(60, 0.95));
        Assert.Null(line.HalfWidthWithOneMore(60, 0.95));
    }

    [Fact]
    public void Points_at_one_place_have_no_line() => Assert.Throws<ArgumentException>(() => StraightLine.Through([(90, 93), (90, 94)]));
}
