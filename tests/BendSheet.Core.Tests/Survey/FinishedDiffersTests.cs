using System.Globalization;
using System.Text.RegularExpressions;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Bench.Rules;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Survey;

public class FinishedDiffersTests
{
    private static readonly SourcePosition At = new("test.yaml", 20, 40);

    private static LineTemplate Line { get; } = Lines.Of(Lines.Bender(15), [120, 100, 200, 80], (0, 45), (90, 30), (-45, 90));

    [Fact]
    public void What_is_out_by_no_more_than_a_tape_is_silent()
    {
        OneFinding.None(Checked(0, 4, 0));
        OneFinding.None(Checked(0, 4, 2.9));
        OneFinding.None(Checked(1, 3, -2.9));
    }

    [Fact]
    public void A_leg_that_is_out_is_a_mark_that_was_out() => OneFinding.Is(
        Checked(1, 2, 5),
        Severity.Warning,
        FinishedDiffers.Rule,
        At,
        "corner 1 to corner 2 is 105.0 mm (4.134 in) on the finished piece, 5.0 mm (0.197 in) more than the sheet's 100.0 mm (3.937 in): "
        + "no bend lies between, so a mark or an end was that far out, or the tape was misread");

    /// <summary>
    /// By the law of cosines: 200 and 80 round 90° are 215.4 apart. With the same mark but 86° the corner comes 15·(tan 45° − tan 43°) =
    /// 1.01 nearer, and the arc that was not bent, 15·4°, lies in the straight beyond.
    /// </summary>
    [Fact]
    public void Over_one_bend_it_is_said_how_far_that_bend_is_off()
    {
        var nearer = 15 * (1 - Math.Tan(43 * Math.PI / 180));
        var (before, after) = (200 - nearer, 80 - nearer + (15 * 4 * Math.PI / 180));
        var open = Math.Sqrt((before * before) + (after * after) + (2 * before * after * Math.Cos(86 * Math.PI / 180)));
        var sheet = Math.Sqrt((200 * 200) + (80 * 80));
        var message = OneFinding.Of(Checked(2, 4, open - sheet)).Message;
        var off = Regex.Match(
            message, @": bend 3 turned about (?<off>[0-9.]+)° too little, if its mark was right$", RegexOptions.NonBacktracking);
        Assert.True(off.Success, message);
        Assert.InRange(double.Parse(off.Groups["off"].Value, CultureInfo.InvariantCulture), 3.7, 4.3);
        Assert.Contains("bend 3 turned about ", OneFinding.Of(Checked(2, 4, sheet - open)).Message, StringComparison.Ordinal);
        Assert.Contains(" too far, if its mark", OneFinding.Of(Checked(2, 4, sheet - open)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Over_several_bends_the_likeliest_angles_come_first_and_the_way_to_find_the_right_one()
    {
        var message = OneFinding.Of(Checked(0, 4, -8)).Message;
        Assert.EndsWith(" would do that alone: measure over one bend at a time to see which", message, StringComparison.Ordinal);
        var off = Regex.Matches(message, "about (?<off>[0-9.]+)°", RegexOptions.NonBacktracking)
            .Select(match => double.Parse(match.Groups["off"].Value, CultureInfo.InvariantCulture)).ToList();
        Assert.InRange(off.Count, 2, 3);
        Assert.Equal(off.Order(), off);
    }

    /// <summary>
    /// Two legs of 300 and 596 between their ends: the law of cosines gives a bend of 2·acos(596/600) = 13.24° instead of 5°. A small bend
    /// hardly changes the distance at first.
    /// </summary>
    [Fact]
    public void At_a_shallow_bend_the_angle_is_that_of_the_triangle()
    {
        var line = Lines.Of(Lines.Bender(15), [300, 300], (0, 5)) with { Checks = [new(0, 2, Lines.Mm(596), At)] };
        var message = OneFinding.Of(line).Message;
        var off = Regex.Match(message, ": bend 1 turned about (?<off>[0-9.]+)° too far", RegexOptions.NonBacktracking);
        Assert.True(off.Success, message);
        Assert.InRange(double.Parse(off.Groups["off"].Value, CultureInfo.InvariantCulture), 8.1, 8.4);
    }

    /// <summary>
    /// A slip at one angle, walked with frames: beyond a bend the length comes off the straight, so the tube's own length stays.
    /// </summary>
    [Theory]
    [InlineData(0, 1, false, 1)]
    [InlineData(0, 2, false, 1)]
    [InlineData(0, 3, false, 1)]
    [InlineData(0, 2, true, 1)]
    [InlineData(1, 3, true, 1)]
    [InlineData(0, 1, false, 9)]
    [InlineData(0, 3, false, -9)]
    [InlineData(1, 3, true, -9)]
    public void The_angle_that_was_off_is_among_the_causes_and_by_as_much(int from, int bend, bool isRotation, double slip)
    {
        var end = Walk(bend, isRotation, slip);
        var check = FinishedCheck.Of(Checked(from, 4, 0), Line.Centreline())[0];
        var slipped = check with
        {
            Measured = check.Measured with { Distance = Lines.Mm(end.DistanceTo(Line.Centreline().CornerPoints()[from])) },
        };
        var cause = Assert.Single(
            FinishedCause.Of(slipped, Line.Centreline()), cause => cause.Bend == bend && cause.IsRotation == isRotation);
        Assert.InRange(cause.Off.Degrees / slip, 0.9, 1.1);
    }

    [Fact]
    public void Where_no_angle_explains_it_none_is_named() => Assert.EndsWith(
        ": no single angle off by up to 15° explains it, so a mark, an end, the tape or several angles were out: measure again, over one "
            + "bend at a time", OneFinding.Of(Checked(0, 4, 500)).Message, StringComparison.Ordinal);

    [Fact]
    public void The_piece_itself_and_its_mirror_image_are_measured_alike() =>
        Assert.Equal(
            FinishedCheck.Of(Checked(0, 4, 1), Line.Centreline())[0].Residual.Millimetres,
            FinishedCheck.Of(Checked(0, 4, 1), Line.Mirrored().Centreline())[0].Residual.Millimetres, 9);

    private static LineTemplate Checked(int from, int to, double off)
    {
        var corners = Line.Centreline().CornerPoints();
        return Line with { Checks = [new(from, to, Lines.Mm(corners[from].DistanceTo(corners[to]) + off), At)] };
    }

    private static Vector3D Walk(int slipped, bool isRotation, double degrees)
    {
        var layout = CarPlan.Line(Line).Layout!;
        var frame = Frame.Default;
        var lost = Length.Zero;
        for (var i = 0; i < layout.Bends.Length; i++)
        {
            var extra = Lines.Deg(i + 1 == slipped ? degrees : 0);
            var bend = layout.Bends[i];
            frame = frame.Advanced(layout.Legs[i].StraightLeft - lost).Rolled(bend.Bend.Rotation + (isRotation ? extra : Angle.Zero));
            var further = isRotation ? Angle.Zero : extra;
            lost = further.Radians * bend.Radius;
            frame = frame.Bent(bend.Radius, bend.Bend.Turn + further);
        }

        return frame.Advanced(layout.Legs[^1].StraightLeft - lost).Position;
    }
}
