namespace BendSheet.Cli.Tests.Commands;

/// <summary>What the commands say of a car whose plumbing is wrong, and what they still print.</summary>
public class PlumbingTests : AtTheTerminal
{
    private const string Sound = """
        units: mm
        tube: {od: 3/16 in}
        bender: {radius: 15}
        fittings:
          an3: {flare: single 37}
          inverted: {flare: double 45}
        parts:
          master: {kind: master-cylinder, ports: {front: {is: an-3, circuit: front}, rear: {is: an-3, circuit: rear}}}
          switch: {kind: switch, ports: an-3, screws-into: tee.right}
          tee: {kind: tee, ports: an-3}
          left: {kind: caliper, mounted: chassis, ports: an-3}
          rear: {kind: caliper, mounted: chassis, ports: an-3}
        lines:
          front: {from: {at: master.front, fitting: an3}, to: {at: tee.in, fitting: an3}, rows: [{straight: 60, bend: 9}, {straight: 60}]}
          left: {from: {at: tee.left, fitting: an3}, to: {at: left.inlet, fitting: an3}, rows: [{straight: 100, bend: 9}, {straight: 100}]}
          rear: {from: {at: master.rear, fitting: an3}, to: {at: rear.inlet, fitting: an3}, rows: [{straight: 750, bend: 9}, {straight: 750}]}
        wanted: {miss: 1 m, askew: 90}

        """;

    private static readonly string WrongSeat = Sound.Replace(
        "left.inlet, fitting: an3", "left.inlet, fitting: inverted", StringComparison.Ordinal);

    private static readonly string Joined = Sound.Replace("at: rear.inlet", "at: tee.right", StringComparison.Ordinal)
        .Replace(", screws-into: tee.right", ", screws-into: rear.inlet", StringComparison.Ordinal);

    [Fact]
    public async Task A_sound_car_has_no_findings()
    {
        var ran = await Run("check", Typed(Sound));
        Assert.Equal((0, string.Empty), (ran.Code, ran.Error));
    }

    [Fact]
    public async Task I_am_told_that_a_flare_of_45_degrees_leaks_on_a_cone_of_37()
    {
        var file = Typed(WrongSeat);
        var ran = await Run("check", file);
        Assert.Equal(1, ran.Code);
        Assert.StartsWith(
            $"{file}:15:55: error: end B of line left has a 45° double flare, and left.inlet has a 37° cone: cones of different angles "
            + $"touch only on a line and leak; "
            + "use a fitting with `flare: single 37` in the place of inverted, or an adapter between them [seats-differ]\n",
            ran.Error,
            StringComparison.Ordinal);
        Assert.EndsWith(": 3 lines, cut length in all 1820.0 mm (71 21/32 in); 1 error\n", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_wrong_seat_stops_its_own_line_and_no_other()
    {
        var file = Typed(WrongSeat);
        Assert.Equal(1, (await Run("print", file, "--line", "left")).Code);
        Assert.Equal("car.yaml", InTheFolder());
        var all = await Run("print", file);
        Assert.Equal(1, all.Code);
        Assert.EndsWith("\nbendsheet: no sheet of left: see above what is wrong with it.\n", all.Error, StringComparison.Ordinal);
        var other = await Run("print", file, "--line", "rear");
        Assert.Equal((0, string.Empty), (other.Code, other.Error));
        Assert.Equal("car-rear.pdf car.pdf car.yaml", InTheFolder());
    }

    [Fact]
    public async Task Joined_circuits_stop_no_sheet_but_end_with_1()
    {
        var file = Typed(Joined);
        var check = await Run("check", file);
        Assert.Equal(1, check.Code);
        Assert.Contains(
            ":16:3: error: line rear joins two circuits that must stay apart, master, circuit rear and master, circuit front: lead it to "
                + "a port of its own circuit [circuits-joined]", check.Error, StringComparison.Ordinal);
        Assert.Equal(1, (await Run("print", file)).Code);
        Assert.Equal("car.pdf car.yaml", InTheFolder());
        Assert.Equal(0, (await Run("check", file, "--line", "front")).Code);
    }

    [Fact]
    public async Task A_wrong_file_says_nothing_of_what_would_be_open_because_of_it()
    {
        var ran = await Run("check", Typed(Sound.Replace("straight: 750, bend", "straigt: 750, bend", StringComparison.Ordinal)));
        Assert.Equal(2, ran.Code);
        Assert.DoesNotContain("open-port", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("wheel-not-reached", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_figures_of_a_line_have_what_is_wrong_with_its_ends()
    {
        var ran = await Run("show", Typed(WrongSeat), "--line", "left", "--format", "json");
        Assert.Equal(2, ran.Output.Split("\"rule\": \"seats-differ\"").Length - 1);
    }
}
