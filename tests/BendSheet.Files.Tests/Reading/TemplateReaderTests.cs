using System.Globalization;
using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Fittings;
using BendSheet.Core.Sheet;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

/// <summary>What a sound file means.</summary>
public class TemplateReaderTests
{
    private const double Same = 1e-9;

    private const string Smallest =
        """
        units: mm
        tube: {od: 3/16 in}
        bender: {radius: 9/16 in}
        lines:
          front-left:
            - {straight: 120, bend: 45}
            - {straight: 60, rotate: 90 cw, bend: 30}
            - {straight: 200, rotate: 45 ccw, bend: 90}
            - {straight: 80}

        """;

    private const string GrownUp =
        """
        project: Finch two-seater, brake lines
        units: mm
        paper: letter
        fractions: 64

        tubes:
          main: {od: 3/16 in, wall: 0.028 in, material: copper-nickel, smallest-radius: 9.5}
          fuel: {od: 8}

        benders:
          hand:
            radius: 9/16 in
            mark: middle
            offset: -2
            grip: 12
            follow: 10
            largest-bend: 180
            arc-factor: 1.02
          small: {radius: 10, room: 900, clear-below: 150, body: 40}

        fittings:
          an3:
            flare: single 37
            takes: 0.5
            slide-on: [{nut: 17}, {sleeve: 9}]
            straight: 35

        wire: {diameter: 2.4, radius: 4}
        tolerance: {straight: 1, bend: 1.5, rotate: 3}

        lines:
          rear:
            tube: main
            bender: hand
            from: {at: rear outlet, fitting: an3}
            to: {at: rear tee, fitting: an3, trim: 25}
            measured: outside
            rows:
              - {straight: 120, bend: 45}
              - {straight: 1450}
              - {straight: 25, rotate: 15 ccw, included: 150, bender: small, note: tight corner}
              - {straight: 80}
            made: true

        """;

    [Fact]
    public void The_smallest_useful_file_is_the_worked_example()
    {
        var file = Read(Smallest);
        Assert.Empty(file.Findings);
        var line = Assert.Single(file.Lines);
        Assert.Equal("front-left", line.Name);
        Assert.Equal([120, 60, 200, 80], Legs(line));
        Assert.Equal([45, 30, 90], line.Route.Bends.Select(bend => bend.Turn.Degrees));
        Assert.Equal([0, 90, -45], line.Route.Bends.Select(bend => bend.Rotation.Degrees));
        Assert.Equal(4.7625, line.Tube.OutsideDiameter.Millimetres, Same);
        Assert.Equal(14.2875, line.Bender.Radius.Millimetres, Same);
        Assert.Equal(MeasuredTo.Corner, line.Habit);
        Assert.Equal(LineEnd.Unknown, line.From);
        Assert.Equal(LineEnd.Unknown, line.To);
        Assert.False(line.Made);
        Assert.Null(line.Tolerance);
        Assert.Equal(453.0772, CarPlan.Line(line).Plan!.CentrelineLength.Millimetres, 1e-4);
    }

    [Fact]
    public void Wall_material_and_flare_know_where_they_were_typed()
    {
        var line = Read(GrownUp).Lines[0];
        Assert.Equal((7, 29), (line.Tube.WallAt.Line, line.Tube.WallAt.Column));
        Assert.Equal((7, 49), (line.Tube.MaterialAt.Line, line.Tube.MaterialAt.Column));
        Assert.Equal((23, 12), (line.From.Fitting!.FlareAt.Line, line.From.Fitting.FlareAt.Column));
    }

    [Fact]
    public void What_is_round_a_tool_is_read_with_it()
    {
        var line = Read(GrownUp).Lines[0];
        Assert.Equal(
            (900, 150, 40),
            line.Route.Bends[1].Bender is { ClearAround: { } room, ClearBelow: { } below, Body: { } body }
                ? (room.Millimetres, below.Millimetres, body.Millimetres) : default);
        Assert.Equal((null, null, null), (line.Bender.ClearAround, line.Bender.ClearBelow, line.Bender.Body));
    }

    [Fact]
    public void Every_figure_of_a_template_knows_where_it_was_typed()
    {
        var line = Assert.Single(Read(Smallest).Lines);
        Assert.Equal("car.yaml:5:3", line.At.ToString());
        Assert.Equal("car.yaml:3:18", line.Bender.RadiusAt.ToString());
        Assert.Equal(
            ["6:18", "7:18", "8:18", "9:18"], line.Route.Legs
                .Select(leg => leg.At.ToString()["car.yaml:".Length..]), StringComparer.Ordinal);
        Assert.Equal(
            ["6:29", "7:43", "8:45"], line.Route.Bends
                .Select(bend => bend.TurnAt.ToString()["car.yaml:".Length..]), StringComparer.Ordinal);
    }

    [Fact]
    public void Everything_that_a_grown_up_file_says_is_understood()
    {
        var file = Read(GrownUp);
        Assert.Empty(file.Findings);
        Assert.Equal("Finch two-seater, brake lines", file.Project);
        Assert.Equal(Paper.Letter, file.Paper);
        Assert.Equal(new LengthNotation(Imperial: false, 64), file.Notation);

        var line = Assert.Single(file.Lines);
        Assert.Equal(("main", "copper-nickel", Mm(9.5)), (line.Tube.Name, line.Tube.Material, line.Tube.SmallestRadius));
        Assert.Equal(4.7625, line.Tube.OutsideDiameter.Millimetres, Same);
        Assert.Equal(0.7112, line.Tube.Wall!.Value.Millimetres, Same);
        var hand = line.Bender;
        Assert.Equal(("hand", MarkPlace.Middle, (double?)1.02), (hand.Name, hand.Mark, hand.ArcFactor));
        Assert.Equal((Mm(-2), Mm(12), Mm(10)), (hand.Offset, hand.Grip, hand.Follow));
        Assert.Equal(Angle.FromDegrees(180), hand.LargestBend);
        Assert.Equal(MeasuredTo.Outside, line.Habit);
        Assert.Equal(new Wire(Mm(2.4), Mm(4)), line.Wire);
        Assert.Equal(new MeasuringTolerance(Mm(1), Angle.FromDegrees(1.5), Angle.FromDegrees(3)), line.Tolerance);
        Assert.True(line.Made);

        Assert.Equal(("rear outlet", Length.Zero), (line.From.At, line.From.Trim));
        Assert.Equal(("rear tee", Mm(25)), (line.To.At, line.To.Trim));
        Assert.Same(line.From.Fitting, line.To.Fitting);
        var an3 = line.From.Fitting!;
        Assert.Equal(("an3", Flare.Single37, Mm(0.5), Mm(35)), (an3.Name, an3.Flare, an3.FlareAllowance, an3.Straight));
        Assert.Equal<EndHardware>([new("nut", Mm(17)), new("sleeve", Mm(9))], an3.Hardware);

        Assert.Equal([120, 1475, 80], Legs(line));
        Assert.Equal(["hand", "small"], line.Route.Bends.Select(bend => bend.Bender.Name), StringComparer.Ordinal);
        Assert.Equal([null, "tight corner"], line.Route.Bends.Select(bend => bend.Note), StringComparer.Ordinal);
        Assert.Equal([45, 30], line.Route.Bends.Select(bend => bend.Turn.Degrees));
    }

    [Fact]
    public void The_short_and_the_long_form_of_a_file_agree()
    {
        var brief = Read(Smallest);
        var full = Read(Smallest
            .Replace("tube: {", "tubes: {only: {", StringComparison.Ordinal).Replace("3/16 in}", "3/16 in}}", StringComparison.Ordinal)
            .Replace("bender: {", "benders: {only: {", StringComparison.Ordinal).Replace("9/16 in}", "9/16 in}}", StringComparison.Ordinal)
            .Replace("front-left:\n", "front-left:\n    measured: corner\n    rows:\n", StringComparison.Ordinal));
        Assert.Empty(full.Findings);
        var (a, b) = (brief.Lines[0], full.Lines[0]);
        Assert.Equal(Figures(a), Figures(b));
        Assert.Equal(a.Tube, b.Tube with { Name = a.Tube.Name });
        Assert.Equal(a.Bender, b.Bender with { Name = a.Bender.Name, RadiusAt = a.Bender.RadiusAt });
        Assert.Equal((a.Habit, a.From, a.To, a.Wire, a.Made), (b.Habit, b.From, b.To, b.Wire, b.Made));
    }

    [Fact]
    public void Line_ends_and_a_byte_order_mark_change_nothing()
    {
        var plain = Assert.Single(Read(Smallest).Lines);
        foreach (var typed in new[]
        {
            Smallest.ReplaceLineEndings("\r\n"),
            "\uFEFF" + Smallest,
            "\uFEFF" + Smallest.ReplaceLineEndings("\r\n"),
        })
        {
            var file = Read(Encoding.UTF8.GetBytes(typed));
            Assert.Empty(file.Findings);
            Assert.Equal(Figures(plain), Figures(file.Lines[0]));
            Assert.Equal(plain.At.Line, file.Lines[0].At.Line);
        }
    }

    [Fact]
    public void Sound_lines_are_read_beside_one_that_is_not()
    {
        var file = Read(Top + Line + "  bad:\n    - {straight: x}\n  rear:\n    - {straight: 10}\n");
        Assert.Equal(["fl", "rear"], file.Lines.Select(line => line.Name), StringComparer.Ordinal);
    }

    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);

    private static IEnumerable<double> Legs(LineTemplate line) => line.Route.Legs.Select(leg => leg.Measured.Millimetres);

    private static string Figures(LineTemplate line) => string.Join(' ', [
        .. Legs(line).Select(leg => leg.ToString("R", CultureInfo.InvariantCulture)),
        .. line.Route.Bends.Select(bend => $"{bend.Turn}/{bend.Rotation}/{bend.Note}"),
    ]);
}
