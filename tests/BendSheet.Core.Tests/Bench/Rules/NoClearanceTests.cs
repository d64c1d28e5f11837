using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Bench.Rules;

public class NoClearanceTests
{
    [Fact]
    public void A_swing_further_than_the_room_round_the_tool_says_both_figures()
    {
        // 300 of tube from the start of the bend and the former's middle 10 beside it: 300.17, and half the tube's 4.7625.
        var line = Lines.Of(Lines.Bender(10) with { ClearAround = Lines.Mm(302) }, [500, 300 - (10 * Math.PI / 2) + 10], (0, 90));
        OneFinding.Is(
            line,
            Severity.Warning,
            NoClearance.Rule,
            Lines.TurnAt(0),
            "bend 1, held at A, swings tube 302.6 mm (11.912 in) from the middle of the former and there is room for 302.0 mm (11.890 "
                + "in): move bender hand where it is free all round, or hold it in the hand");
        OneFinding.None(line.OnTool(Lines.Bender(10) with { ClearAround = Lines.Mm(302.6) }));
    }

    [Theory]
    [InlineData(90)]
    [InlineData(-90)]
    public void Tube_that_stands_out_of_the_plane_to_one_side_only_is_turned_up(double roll) =>
        OneFinding.None(Lines.Of(Lines.Bender(10) with { ClearBelow = Lines.Mm(60) }, [110, 100, 100], (0, 90), (roll, 90)));

    /// <summary>The mirror image lies on the bench as the line does, with the tool's other face down.</summary>
    [Theory]
    [InlineData(90)]
    [InlineData(-90)]
    public void Tube_that_stands_out_to_both_sides_needs_its_smaller_depth_below_the_tool(double roll)
    {
        // While bend 4 is made, the tube behind it goes up 270, over the tool, and down 510: 240 below, and half the tube's 4.7625.
        OneFinding.Is(
            UpAndOver(roll, clearBelow: 242),
            Severity.Warning,
            NoClearance.Rule,
            Lines.TurnAt(3),
            "bend 4, held at A: bent tube reaches 242.4 mm (9.543 in) below the tube in bender 4, with its better face down, and the "
                + "bench is 242.0 mm (9.528 in) below: let it hang over the edge of the bench, or raise the tool");
        OneFinding.None(UpAndOver(roll, clearBelow: 242.5));
    }

    [Fact]
    public void Tube_that_comes_back_beside_the_tool_hits_its_body()
    {
        // A flat U of two square bends. Beside the second one the first begins 25 along the tube from it, 10 beside the former's middle.
        var near = Math.Sqrt((25 * 25) + (10 * 10));
        OneFinding.None(Lines.Of(Lines.Bender(10) with { Body = Lines.Mm(near) }, [200, 45, 200], (0, 90), (0, 90)));
        var message = OneFinding.Of(
            Lines.Of(Lines.Bender(10) with { Body = Lines.Mm(near + 0.1) }, [200, 45, 200], (0, 90), (0, 90))).Message;
        Assert.EndsWith(
            "tube that is bent already comes within 26.9 mm (1.060 in) of the former's middle, where bender hand itself is (its body "
                + "reaches 27.0 mm (1.064 in)), whichever face is down: move the bends apart, or use a smaller tool",
            message,
            StringComparison.Ordinal);
    }

    /// <summary>
    /// A hook that comes back past the tool and slants out of the plane of bend 2: bend 1 has tan 71.565° = 3 and its tool needs more
    /// straight than lies between the two. Seen along the former's axis the hook begins 90 along and 10 beside the former's middle and goes
    /// back 4 for every 3 towards it: 46 from it after 78, there 78 · 0.6 · sin(roll) out of the plane. Half of the tube is 2.38.
    /// </summary>
    [Theory]
    [InlineData(1.9, 47, true)] // 1.55 out of the plane
    [InlineData(1.9, 45.9, false)]
    [InlineData(3.8, 47, false)] // 3.1: it lies over the tool with one face down
    public void Tube_within_half_its_diameter_of_the_plane_is_level_with_the_tool(double roll, double body, bool isHit)
    {
        var turn = 2 * Math.Atan(3) * 180 / Math.PI;
        var line = Lines.Of(Lines.Bender(10) with { Body = Lines.Mm(body) }, [100, 100, 200], (0, turn), (roll, 90))
            .FirstBendOn(Lines.Bender(10, "first") with { Follow = Lines.Mm(150) });
        if (isHit)
        {
            Assert.Contains("comes within 46.0 mm", OneFinding.Of(line).Message, StringComparison.Ordinal);
        }
        else
        {
            OneFinding.None(line);
        }
    }

    [Fact]
    public void Tube_that_passes_over_the_tool_does_not_hit_it() =>
        OneFinding.None(Lines.Of(Lines.Bender(10) with { Body = Lines.Mm(60) }, [200, 90, 200], (0, 90), (90, 90)));

    [Fact]
    public void Where_the_file_says_nothing_of_the_bench_nothing_is_found() => OneFinding.None(
        Lines.Of(Lines.Bender(10), [500, 100, 500, 400], (0, 90), (90, 90), (90, 90)));

    /// <summary>
    /// Each bend on a tool of its own that needs less than the one before, so that only the order 1, 2, 3, 4 is possible.
    /// </summary>
    private static LineTemplate UpAndOver(double roll, double clearBelow)
    {
        double[] needs = [400, 300, 200, 0];
        var line = Lines.Of(Lines.Bender(10), [510, 370, 270, 120, 110], (0, 90), (0, 90), (0, 90), (roll, 90));
        return line with
        {
            Route = Route.Of(line.Route.Legs, [.. line.Route.Bends.Select((bend, i) => bend with { Bender = Tool(i) })]),
        };

        Bender Tool(int bend) => Lines.Bender(10, $"{bend + 1}") with
        {
            Grip = Lines.Mm(needs[bend]),
            Follow = Lines.Mm(needs[bend]),
            ClearBelow = Lines.Mm(clearBelow),
        };
    }
}
