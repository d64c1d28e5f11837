using System.Globalization;
using BendSheet.Core.Car;
using BendSheet.Core.Fittings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Sheet;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Geometry;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using CsCheck;

namespace BendSheet.Core.Tests.Sheet;

public class SheetWriterTests
{
    [Theory]
    [InlineData(false, 32)]
    [InlineData(true, 16)]
    [InlineData(true, 32)]
    [InlineData(true, 64)]
    public void No_figure_differs_from_the_rounded_figure_of_the_plan(bool imperial, int fractions) => Shape.Roomy.Sample(
        shape =>
        {
            var notation = new LengthNotation(imperial, fractions);
            var template = shape.Template(Lines.Bender(shape.Radius) with { ArcFactor = 1.02 }, Length.FromMillimetres) with
            {
                From = new(null, FullLine.An3 with { Hardware = [], Straight = Lines.Mm(0) }, Length.Zero),
                To = new(null, null, Lines.Mm(13.3)),
            };
            var plan = template.Plan();
            var sheet = FullLine.Content(template, notation);
            Is(plan.CutLength, sheet.CutLength, notation);
            Is(plan.DevelopedLength, sheet.DevelopedLength, notation);
            Assert.Equal(plan.Bends.Length, sheet.Rows.Length);
            foreach (var (bend, row) in plan.InWorkingOrder.Zip(sheet.Rows))
            {
                PrintedFigure.Is(bend.Mark - plan.FlareFaceA, row.Mark, notation);
                PrintedFigure.IsWithUnit(bend.Mark - plan.FlareFaceA, row.MarkOther, notation.Other);
                PrintedFigure.Is(bend.StraightAfter, row.StraightAfter, notation);
                PrintedFigure.IsWithUnit(bend.Lever, row.Lever, notation);
                AssertGeometry.Printed(WithTenths(row.Bend), bend.Bend.Turn.Degrees, "bend");
                AssertGeometry.Printed(WithTenths(row.Pull), bend.Pull.Degrees, "pull");
                var line = AssertGeometry.Number(WithTenths(row.LineFigure));
                AssertGeometry.AtMost(AssertGeometry.HalfOf(0.1), Math.Abs(Math.IEEERemainder(line - bend.LineAt.Degrees, 360)), "line");
                var dial = AssertGeometry.Number(WithTenths(row.Dial));
                AssertGeometry.AtMost(AssertGeometry.HalfOf(0.1), Math.Abs(Math.IEEERemainder(dial - bend.Dial.Degrees, 360)), "dial");
            }
        },
        iter: 200);

    /// <summary>Backs of bends where trigonometry has them, not where the sheet's own geometry does.</summary>
    [Fact]
    public void Check_distances_are_those_between_ends_and_backs() => Shape.Roomy.Sample(
        shape =>
        {
            var template = shape.Template();
            var corners = CornerPoints.Build(shape.Legs, shape.Turns, shape.Rotations);
            Vector3D Touched(string place) => place switch
            {
                "A" => corners[0],
                "B" => corners[^1],
                _ => Back(int.Parse(place, CultureInfo.InvariantCulture)),
            };
            Vector3D Back(int bend)
            {
                var half = shape.Turns[bend - 1] * Math.PI / 360;
                var (before, after) = (corners[bend - 1] - corners[bend], corners[bend + 1] - corners[bend]);
                var bisector = (1 / before.Norm * before) + (1 / after.Norm * after);
                var inwards = (template.Bender.Radius.Millimetres * ((1 / Math.Cos(half)) - 1))
                    - (template.Tube.OutsideDiameter.Millimetres / 2);
                return corners[bend] + (inwards / bisector.Norm * bisector);
            }

            var checks = FullLine.Content(template).Checks.Where(check => check.Name.Contains('-', StringComparison.Ordinal)).ToList();
            Assert.Contains(checks, check => check.Name is "A-B");
            foreach (var check in checks)
            {
                var places = check.Name.Split('-');
                Assert.Equal(FullLine.Metric.Figure(Lines.Mm(Touched(places[0]).DistanceTo(Touched(places[1])))), check.Figure);
            }
        },
        iter: 200);

    [Fact]
    public void The_heading_says_what_and_of_what()
    {
        var sheet = FullLine.Content(FullLine.Template, FullLine.Metric.Other);
        Assert.Equal("front-left", sheet.Line);
        Assert.Equal("Finch", sheet.Project);
        Assert.Equal("A: front tee → B: left caliper hose", sheet.Ends);
        Assert.Equal("3/16 in × 0.028 in, copper-nickel", sheet.Tube);
        Assert.Equal("hand, radius 9/16 in", sheet.Bender);
        Assert.False(sheet.Made);
        Assert.True(FullLine.Content(FullLine.Template with { Made = true }).Made);
        Assert.Equal("A: end A → B: end B", FullLine.Content(Lines.Of(Lines.Bender(10), [50])).Ends);
        Assert.Equal("radius 10 mm", FullLine.Content(Lines.Of(Lines.Bender(10, name: string.Empty), [50])).Bender);
    }

    [Fact]
    public void Rows_are_in_working_order_with_line_rotation_dial_pull_and_note()
    {
        var rows = FullLine.Content(FullLine.Template).Rows;
        Assert.Equal([3, 2, 1], rows.Select(row => row.Number));
        Assert.Equal(["A →", "A →", "A →"], rows.Select(row => row.Held), StringComparer.Ordinal);
        Assert.Equal(["12:00", "10:30", "1:30"], rows.Select(row => row.LineClock), StringComparer.Ordinal);
        Assert.Equal(["0°", "315°", "45°"], rows.Select(row => row.LineFigure), StringComparer.Ordinal);
        Assert.Equal([SheetWriter.Dash, "45° cw", "90° ccw"], rows.Select(row => row.Rotate), StringComparer.Ordinal);
        Assert.Equal(["45°", "90°", "0°"], rows.Select(row => row.Dial), StringComparer.Ordinal);
        Assert.Equal(["90°", "30°", "45°"], rows.Select(row => row.Pull), StringComparer.Ordinal);
        Assert.Equal(["90°", "30°", "45°"], rows.Select(row => row.Bend), StringComparer.Ordinal);
        Assert.Equal([string.Empty, string.Empty, "clear of the tank"], rows.Select(row => row.Remark), StringComparer.Ordinal);
        Assert.All(rows, row => Assert.Null(row.Tool));
    }

    [Fact]
    public void Where_A_is_flared_and_takes_something_all_marks_count_from_its_face()
    {
        // Start of bend 1 at 0.5 + 114.0819, the tool's offset 1.3 behind it: 115.8819 from the cut end, 115.3819 from the flare face.
        var sheet = FullLine.Content(FullLine.Template);
        Assert.Equal("115.5", sheet.Rows[2].Mark);
        Assert.DoesNotContain(BendColumn.Of(sheet), column => sheet.Rows.Any(row => column.Text(row) is "116.0"));
        Assert.Equal("Marks count from the finished flare face of A. +/−: a little more/less.", sheet.Datum);
    }

    [Fact]
    public void Elsewhere_only_the_cut_end_is_the_datum()
    {
        var template = FullLine.Template;
        OneDatum(template with { From = template.From with { Fitting = null } });
        OneDatum(template with { From = template.From with { Fitting = FullLine.An3 with { FlareAllowance = Length.Zero } } });
        OneDatum(template with { From = template.From with { Fitting = FullLine.An3 with { Flare = Flare.None } } });
    }

    [Fact]
    public void A_turn_round_stands_before_the_bend_that_needs_it()
    {
        var tool = Lines.Bender(10) with { Grip = Lines.Mm(20), Follow = Lines.Mm(5) };
        var rows = FullLine.Content(Lines.Of(tool, [16, 300, 16], (0, 90), (90, 90))).Rows;
        Assert.Equal([null, WorkOrder.TurnRound(TubeEnd.A)], rows.Select(row => row.TurnRound), StringComparer.Ordinal);
        Assert.Equal(["← B", "A →"], rows.Select(row => row.Held), StringComparer.Ordinal);
    }

    [Fact]
    public void A_swing_is_rounded_up_over_the_outside_of_the_tube()
    {
        // √(300² + 10²) and half of 4.7625: 302.55.
        var line = Lines.Of(Lines.Bender(10), [500, 300 - (10 * Math.PI / 2) + 10], (0, 90));
        Assert.Equal("310 mm", FullLine.Content(line).Rows[0].Swing);
        Assert.Equal("12 in", FullLine.Content(line, FullLine.Metric.Other).Rows[0].Swing);
    }

    [Fact]
    public void A_bend_on_another_tool_than_the_lines_names_it()
    {
        var big = Lines.Bender(20, "big");
        var template = FullLine.Template.WithBends(bend => bend.Turn == Lines.Deg(90) ? bend with { Bender = big } : bend);
        var sheet = FullLine.Content(template);
        Assert.Equal(["big", null, null], sheet.Rows.Select(row => row.Tool), StringComparer.Ordinal);
        Assert.Equal("clear of the tank", sheet.Rows[2].Remark);
        Assert.Equal("tool: big", sheet.Rows[0].Remark);
        Assert.Equal("hand, radius 9/16 in; big, radius 20 mm", sheet.Bender);
    }

    [Fact]
    public void What_must_be_read_first_are_the_warnings_the_springback_and_the_measuring_error()
    {
        var template = FullLine.Template;
        var measured = Lines.Of(template.Bender, [120, 60, 200, 80], (0, 45), (90, 30), (-45, 90)).Route;
        var tight = template with { Tube = template.Tube with { SmallestRadius = Lines.Mm(15) }, Route = measured };
        var (warning, sheet) = (Assert.Single(CarPlan.Line(tight).Findings), FullLine.Content(tight));
        Assert.Equal(2, sheet.ReadFirst.Length);
        Assert.Equal("L" + warning.Message[1..] + ".", sheet.ReadFirst[0]);
        Assert.Contains("not corrected for springback", sheet.ReadFirst[1], StringComparison.Ordinal);
        Assert.Equal("End B may miss its port by 9.0 mm, 4° askew (2 times in 3 within that).", sheet.HowSure);
        Assert.Equal(
            "End B may miss its port by 12.0 mm, 5.4° askew (no tolerance typed).",
            FullLine.Content(tight with { Tolerance = null }).HowSure);

        // Less sure than wanted is to be read first.
        var unsure = FullLine.Content(tight with { Wanted = WantedFit.CommonPractice });
        Assert.Equal((sheet.HowSure, (string?)null), (unsure.ReadFirst[2], unsure.HowSure));
    }

    [Fact]
    public void A_straight_tube_has_a_sheet_without_rows_and_without_springback()
    {
        var sheet = FullLine.Content(Lines.Of(Lines.Bender(10), [321]));
        Assert.Empty(sheet.Rows);
        Assert.Empty(sheet.ReadFirst);
        Assert.Equal("321.0 mm", sheet.CutLength.Main);
        Assert.Equal("A-B", Assert.Single(sheet.Checks).Name);
        Assert.Equal("321.0 mm × 5.0 mm × 5.0 mm", sheet.Envelope);
    }

    [Fact]
    public void A_U_bend_has_a_back_to_measure_to()
    {
        var template = Lines.Of(Lines.Bender(10), [50, 50, 50], (0, 180), (90, 45)) with
        {
            Habit = MeasuredTo.Straight,
            Wire = new(null, Lines.Mm(10)),
        };
        Assert.Contains(FullLine.Content(template).Checks, check => check.Name.Contains('1', StringComparison.Ordinal));
    }

    [Fact]
    public void Sixty_bends_are_sixty_rows()
    {
        var bends = Enumerable.Range(0, 60).Select(i => (Rotate: i * 37.0 % 360, Turn: 20.0 + i)).ToArray();
        var sheet = FullLine.Content(Lines.Of(Lines.Bender(10), [.. Enumerable.Repeat(100.0, 61)], bends));
        Assert.Equal(60, sheet.Rows.Length);
        Assert.Equal(60, sheet.Rows.Select(row => row.Number).Distinct().Count());
    }

    [Fact]
    public void The_envelope_and_the_shape_are_those_of_the_centreline()
    {
        var solved = CarPlan.Line(FullLine.Template);
        var sheet = SheetWriter.Of(solved, "Finch", FullLine.Metric);
        var box = Envelope.Of(solved.Centreline!, FullLine.Template.Tube.OutsideDiameter);
        var printed = sheet.Envelope.Split(" × ");
        PrintedFigure.IsWithUnit(box.X, printed[0], FullLine.Metric);
        PrintedFigure.IsWithUnit(box.Y, printed[1], FullLine.Metric);
        PrintedFigure.IsWithUnit(box.Z, printed[2], FullLine.Metric);
        Assert.Same(solved.Centreline, sheet.Shape);
        Assert.Equal(FullLine.Template.Tube.OutsideDiameter, sheet.TubeDiameter);
        Assert.Equal(FullLine.Metric, sheet.Notation);
    }

    [Fact]
    public void A_line_that_cannot_be_made_has_no_sheet() => Assert.Throws<ArgumentException>(
        () => FullLine.Content(Lines.Of(Lines.Bender(10), [5, 50], (0, 90))));

    private static void OneDatum(LineTemplate template)
    {
        var sheet = FullLine.Content(template);
        Assert.Equal("Marks count from the cut end of A. +/−: a little more/less.", sheet.Datum);
    }

    private static void Is(Length exact, Figure figure, LengthNotation notation)
    {
        PrintedFigure.IsWithUnit(exact, figure.Main, notation);
        PrintedFigure.IsWithUnit(exact, figure.Other, notation.Other);
    }

    private static string WithTenths(string angle)
    {
        Assert.EndsWith("°", angle, StringComparison.Ordinal);
        return angle.Contains('.', StringComparison.Ordinal) ? angle[..^1] : angle[..^1] + ".0";
    }
}
