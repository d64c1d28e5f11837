using BendSheet.Core.Bench;
using BendSheet.Core.Geometry;
using BendSheet.Core.Tests.References;
using BendSheet.Core.Tests.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using static BendSheet.Core.Tests.Bench.TestBends;

namespace BendSheet.Core.Tests.Bench;

public class ToolGainTests
{
    private const double Radius = Lines.NineSixteenths;
    private const double Diameter = 4.7625;

    public static TheoryData<MeasuredTo, double, double> HabitsAndBends
    {
        get
        {
            var data = new TheoryData<MeasuredTo, double, double>();
            foreach (var habit in Enum.GetValues<MeasuredTo>())
            {
                foreach (var factor in new[] { 0.93, 1.0, 1.04 })
                {
                    data.Add(habit, 30, factor);
                    data.Add(habit, 90, factor);
                    data.Add(habit, 135, factor);
                }
            }

            return data;
        }
    }

    /// <summary>
    /// NAVEDTRA 14119 Hull Maintenance Technician, chapter 16, Figure 16-3: pipe of 112.26 in bent by 90° on 18 in has legs of 48 and 72
    /// in. The print has 1.57 for π/2, 0.015 in of 28.27.
    /// </summary>
    [Fact]
    public void A_published_bend_as_a_test_piece_has_arc_factor_1()
    {
        var (printed, inch) = (AssertGeometry.Number(
            ReferenceTable.Printed("worked_examples.csv", "tdl90_total")), Length.MillimetresPerInch);
        var gain = Of(18 * inch, Piece(90, printed * inch, 48 * inch, 72 * inch));
        Assert.InRange(gain.ArcFactor, 1 - (0.02 / 28.26), 1 + (0.02 / 28.26));
        AssertGeometry.PrintedFromRounded(
            ReferenceTable.Printed("worked_examples.csv", "tdl90_arc"), gain.ArcFactor * 18 * Math.PI / 2, 0.005, "tube in the bend");
    }

    /// <summary>
    /// FAA AC 43.13-1B, Table 4-7: setback is K times the radius. A piece whose gain is reckoned with the printed K (mostly cut off after
    /// four decimals) and the arc R·b.
    /// </summary>
    [Theory]
    [InlineData("45")]
    [InlineData("90")]
    [InlineData("120")]
    public void A_piece_with_the_published_setback_has_arc_factor_1(string bend)
    {
        var printed = ReferenceTable.Confirmed("k_chart.csv")
            .Single(row => string.Equals(row["bend_angle_deg"], bend, StringComparison.Ordinal))["k_printed"];
        var (k, turn) = (AssertGeometry.Number(printed), Lines.Deg(AssertGeometry.Number(bend)).Radians);
        var gain = Of(Radius, Piece(turn * 180 / Math.PI, 200 - (Radius * ((2 * k) - turn)), 100, 100));
        var allowed = 2 * AssertGeometry.LastUnit(printed) / turn;
        Assert.InRange(gain.ArcFactor, 1 - allowed, 1 + allowed);
    }

    /// <summary>The ruler's readings come from where faces and tangent points lie, by another route than the conversion.</summary>
    [Theory]
    [MemberData(nameof(HabitsAndBends))]
    public void All_habits_of_one_piece_give_the_same_arc_factor(MeasuredTo habit, double bend, double factor)
    {
        var turn = Lines.Deg(bend).Radians;
        var corners = new Vector3D[] { new(0, 0, 0), new(100, 0, 0), new(100 + (90 * Math.Cos(turn)), 90 * Math.Sin(turn), 0) };
        var legs = new BentWire(corners, Diameter, Radius).Read(habit);
        var flats = new BentWire(corners, Diameter, Radius).Read(MeasuredTo.Straight);
        var gain = Of(Radius, Piece(bend, flats[0] + flats[1] + (factor * Radius * turn), legs[0], legs[1], habit, Diameter));
        AssertGeometry.Equal(factor, gain.ArcFactor, "arc factor");
    }

    [Theory]
    [InlineData(MeasuredTo.Corner)]
    [InlineData(MeasuredTo.Outside)]
    [InlineData(MeasuredTo.Inside)]
    public void A_tool_of_another_radius_than_it_says_shows_the_one_it_has(MeasuredTo habit)
    {
        const double Real = 15.2;
        var corners = new Vector3D[] { new(0, 0, 0), new(100, 0, 0), new(100, 90, 0) };
        var legs = new BentWire(corners, Diameter, Real).Read(habit);
        var flats = new BentWire(corners, Diameter, Real).Read(MeasuredTo.Straight);
        var gain = Of(Radius, Piece(90, flats[0] + flats[1] + (Real * Math.PI / 2), legs[0], legs[1], habit, Diameter));
        AssertGeometry.Equal(Real, gain.EffectiveRadius!.Value.Millimetres, "effective radius");
        AssertGeometry.Equal(Real * (2 - (Math.PI / 2)), gain.Gain(Lines.Deg(90)).Millimetres, "gain");
        AssertGeometry.Equal(Radius * (2 - (Math.PI / 2)), gain.GainByRadius(Lines.Deg(90)).Millimetres, "gain by radius");
    }

    /// <summary>
    /// The guide's piece, by hand: corners at 106 + 105.5 − 4.7625 = 206.7375, gain 6.7375, tube in the bend 28.575 − 6.7375 = 21.8375.
    /// </summary>
    [Fact]
    public void A_piece_by_hand()
    {
        var gain = Of(Radius, Piece(90, 200, 106, 105.5, MeasuredTo.Outside, Diameter));
        AssertGeometry.Equal(21.8375 / (Radius * Math.PI / 2), gain.ArcFactor);
        AssertGeometry.Printed("0.973", gain.ArcFactor);
        AssertGeometry.Equal(6.7375, gain.Gain(Lines.Deg(90)).Millimetres);
        AssertGeometry.Equal(6.7375 / (2 - (Math.PI / 2)), gain.EffectiveRadius!.Value.Millimetres);
        AssertGeometry.Equal(Length.Zero, Assert.Single(gain.Pieces).Residual);
        Assert.Null(gain.Scatter);
        Assert.Null(gain.ArcFactorError);
        Assert.Null(gain.ErrorWithOneMore(Lines.Deg(90)));
    }

    /// <summary>
    /// Radius 10, flat parts: arcs 10π/2 and 10π by the radius, 16 and 31 taken. f = (5π·16 + 10π·31) / (125π²), residuals e = y − 5πf and
    /// y − 10πf, deviation √(Σe²/1), standard error deviation / √(125π²).
    /// </summary>
    [Fact]
    public void Two_pieces_by_hand()
    {
        var gain = Of(10, Piece(90, 100, 42, 42, MeasuredTo.Straight), Piece(180, 100, 34, 35, MeasuredTo.Straight));
        var factor = ((5 * 16) + (10 * 31)) / (125 * Math.PI);
        var (first, second) = (16 - (5 * Math.PI * factor), 31 - (10 * Math.PI * factor));
        var scatter = Math.Sqrt((first * first) + (second * second));
        AssertGeometry.Equal(factor, gain.ArcFactor);
        AssertGeometry.Equal(first, gain.Pieces[0].Residual.Millimetres);
        AssertGeometry.Equal(second, gain.Pieces[1].Residual.Millimetres);
        AssertGeometry.Equal(scatter, gain.Scatter!.Value.Millimetres);
        AssertGeometry.Equal(scatter / (Math.PI * Math.Sqrt(125)), gain.ArcFactorError!.Value);
        AssertGeometry.Equal(scatter / (Math.PI * Math.Sqrt(150)), gain.ErrorWithOneMore(Lines.Deg(90))!.Value);
        AssertGeometry.Equal(
            10 * factor, gain.EffectiveRadius!.Value.Millimetres, "flat parts alone tell the radius as the arc factor does");
    }

    /// <summary>
    /// Bends of 60°, flat parts, radius 10: x = 10π/3 each, 10, 11 and 12 taken. The mean is 11, so that e = −1, 0, 1 and the deviation of
    /// three is √(2/2) = 1. A bend of 60° gains 2R/√3 − fπR/3: half of it is the angle of a triangle with sides 1, √3 and 2.
    /// </summary>
    [Fact]
    public void Three_pieces_by_hand()
    {
        BenderTest Taken(double taken) => Piece(60, 80 + taken, 40, 40, MeasuredTo.Straight);
        var gain = Of(10, Taken(10), Taken(11), Taken(12));
        AssertGeometry.Equal(11 * 3 / (10 * Math.PI), gain.ArcFactor);
        AssertGeometry.Equal(1, gain.Scatter!.Value.Millimetres);
        AssertGeometry.Equal((20 / Math.Sqrt(3)) - 11, gain.Gain(Lines.Deg(60)).Millimetres);
        AssertGeometry.Equal((20 / Math.Sqrt(3)) - (10 * Math.PI / 3), gain.GainByRadius(Lines.Deg(60)).Millimetres);
    }

    /// <summary>The same bend between corners: its gain of 2R/√3 − πR/3 tells the radius.</summary>
    [Fact]
    public void A_bend_of_60_between_corners_shows_its_radius() => AssertGeometry.Equal(
        12, Of(10, Piece(60, 100 - (24 / Math.Sqrt(3)) + (4 * Math.PI), 50, 50)).EffectiveRadius!.Value.Millimetres);

    /// <summary>As much tube as the way over the corner, or more: no radius does that.</summary>
    [Theory]
    [InlineData(100)]
    [InlineData(101)]
    public void A_piece_no_shorter_than_its_legs_shows_no_radius(double tube) =>
        Assert.Null(Of(10, Piece(90, tube, 50, 50)).EffectiveRadius);

    [Fact]
    public void Least_squares_leave_residuals_square_to_the_arcs()
    {
        var tests = new[]
        {
            Piece(45, 150, 76, 75.5),
            Piece(90, 200, 106, 105.5, MeasuredTo.Outside, Diameter),
            Piece(120, 200, 85, 85.5, MeasuredTo.Straight),
            Piece(60, 150, 75, 75.4, MeasuredTo.Along),
        };
        var gain = Of(Radius, tests);
        AssertGeometry.Equal(0, gain.Pieces.Sum(piece => piece.Residual.Millimetres * piece.Test.Got.Radians));
        Assert.Equal(4, gain.Pieces.Length);
    }

    [Fact]
    public void Pieces_measured_along_tell_nothing_of_the_radius()
    {
        var along = Piece(90, 200, 101, 99.5, MeasuredTo.Along);
        Assert.Null(Of(Radius, along).EffectiveRadius);
        var corner = Piece(90, 200, 103, 103.5);
        AssertGeometry.Equal(Of(Radius, corner).EffectiveRadius!.Value, Of(Radius, corner, along).EffectiveRadius!.Value);
    }

    [Fact]
    public void Without_a_piece_there_is_no_gain() => Assert.Null(ToolGain.Of([Pulled(93, 90)], Lines.Mm(Radius)));

    private static ToolGain Of(double radius, params BenderTest[] tests) => ToolGain.Of(tests, Lines.Mm(radius))!;
}
