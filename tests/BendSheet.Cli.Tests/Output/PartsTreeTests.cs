using System.Text;
using System.Text.Json;

namespace BendSheet.Cli.Tests.Output;

public class PartsTreeTests : AtTheTerminal
{
    private const string Car = """
        project: small car
        units: mm
        tube: {od: 3/16 in}
        bender: {radius: 15}
        fittings: {an3: {flare: single 37, thread: 3/8-24}}
        pedal-switch: true
        parts:
          master: {kind: master-cylinder, ports: {front: {is: 1/8-27 taper, circuit: front}, rear: {is: an-3, circuit: rear}}}
          adapter: {kind: adapter, ports: {in: 1/8 npt, out: an-3}, screws-into: {in: master.front}}
          tee: {kind: tee, ports: an-3}
          left: {kind: caliper}
          right: {kind: caliper}
          rear: {kind: wheel-cylinder}
          tank: {kind: reservoir, ports: [outlet]}
        hoses:
          left-hose: {from: tee.left, to: left.inlet, length: 350}
          right-hose: {from: tee.right, to: right.inlet}
        lines:
          front: {from: {at: adapter.out, fitting: an3}, to: {at: tee.in, fitting: an3}, rows: [{straight: 120, bend: 90}, {straight: 100}]}
          rear-line: {from: {at: master.rear, fitting: an3}, to: the rear axle, rows: [{straight: 1500}]}
          fuel: {from: tank.outlet, to: carburettor, rows: [{straight: 900}]}
        wanted: {miss: 1 m, askew: 90}

        """;

    [Fact]
    public async Task A_hose_with_a_lines_name_keeps_its_own_length()
    {
        var ran = await Run("show", Typed(Car.Replace("left-hose:", "front:", StringComparison.Ordinal)), "--parts");
        Assert.Contains("line front, 213.5 mm, to tee.in", ran.Output, StringComparison.Ordinal);
        Assert.Contains("hose front, 350.0 mm, to left.inlet", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_see_the_way_from_the_master_cylinder_to_each_wheel_and_what_hangs_on_none()
    {
        var ran = await Run("show", Typed(Car), "--parts");
        Assert.Equal(1, ran.Code);
        Assert.Contains("no master cylinder reaches wheel-cylinder rear", ran.Error, StringComparison.Ordinal);
        Assert.Equal(
            """
            master: master-cylinder
              front (circuit front): screwed to adapter.in
                adapter: adapter
                  out: line front, 213.5 mm, to tee.in
                    tee: tee
                      left: hose left-hose, 350.0 mm, to left.inlet
                        left: caliper
                      right: hose right-hose to right.inlet
                        right: caliper
              rear (circuit rear): line rear-line, 1500.0 mm, to the rear axle

            On no master cylinder:
            tank: reservoir
              outlet: line fuel, 900.0 mm, to carburettor
            rear: wheel-cylinder
              inlet: open

            Ends that lead to no part of the file:
              end B of line rear-line: the rear axle
              end B of line fuel: carburettor

            In the lines, by circuit (parts and hoses hold fluid too):
              master, circuit front: 213.5 mm of tube; litres need the `wall` of the tube; not counted: line front, hose left-hose, hose right-hose
              master, circuit rear: 1500.0 mm of tube; litres need the `wall` of the tube; not counted: line rear-line

            Ways to the bleed screws, longest first (the car maker's order rules where there is one):
              left.bleeder: 213.5 mm of tube and 350.0 mm of hose from master, circuit front
              right.bleeder: at least 213.5 mm of tube from master, circuit front

            """,
            ran.Output);
    }

    [Fact]
    public async Task Another_program_gets_parts_ports_connections_and_needs()
    {
        var ran = await Run("show", Typed(Car), "--parts", "--format", "json");
        using var json = JsonDocument.Parse(ran.Output);
        var root = json.RootElement;
        Assert.Equal("small car", root.GetProperty("project").GetString());
        Assert.Equal(7, root.GetProperty("parts").GetArrayLength());
        var tee = root.GetProperty("parts")[2];
        Assert.Equal(
            ("tee", "tee", "master, circuit front"),
            (tee.GetProperty("name").GetString(), tee.GetProperty("kind").GetString(), tee.GetProperty("pressureFrom").GetString()));
        var left = tee.GetProperty("ports")[1];
        Assert.Equal(
            ("left", "3/8-24", "flare 37", "hose left-hose"),
            (left.GetProperty("name").GetString(), left.GetProperty("thread").GetString(), left.GetProperty("seat").GetString(), left
                .GetProperty("connectedTo").GetString()));
        Assert.Equal(
            "screwed-into adapter, hose left-hose, hose right-hose, line front, line rear-line, line fuel",
            string.Join(
                ", ", root.GetProperty("connections").EnumerateArray()
                    .Select(one => $"{one.GetProperty("kind").GetString()} {one.GetProperty("name").GetString()}")));
        var front = root.GetProperty("connections")[3];
        Assert.InRange(front.GetProperty("length").GetDouble(), 213, 214);
        Assert.Equal("an3", front.GetProperty("from").GetProperty("fitting").GetString());
        Assert.Equal(
            "thread sealant that stands the fluid, for a taper thread 1/8-27", root.GetProperty("needs").EnumerateArray().Last()
                .GetProperty("name").GetString());
        Assert.Equal(2, root.GetProperty("findings").GetArrayLength());
    }

    [Fact]
    public async Task A_file_without_parts_is_told_how_to_have_some()
    {
        var ran = await Run("show", Typed(CarFiles.Sound), "--parts");
        Assert.Equal(
            (0, "The file has no parts: add `parts:` at the top, and lead the lines' ends to their ports, "
                + "such as `from: {at: tee.left}`.\n"),
            (ran.Code, ran.Output));
    }

    [Fact]
    public async Task Parts_are_not_shown_as_rows()
    {
        var ran = await Run("show", Typed(Car), "--parts", "--format", "rows");
        Assert.Equal(2, ran.Code);
        Assert.StartsWith("bendsheet: --parts is shown as table or json, not as rows.", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_ring_of_parts_comes_to_an_end()
    {
        var ran = await Run(
            "show",
            Typed(Car.Replace(
                "right-hose: {from: tee.right, to: right.inlet}", "right-hose: {from: tee.right, to: tee.left}", StringComparison.Ordinal)),
                "--parts");
        Assert.Contains("right: hose right-hose to tee.left\n            tee: see above\n", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_chain_of_thousands_of_parts_is_shown_to_its_end()
    {
        const int Parts = 4000;
        var text = new StringBuilder("units: mm\ntube: {od: 6}\nbender: {radius: 15}\nlines: {a: [{straight: 100}]}\nparts:\n  p0: "
            + "{kind: master-cylinder, ports: [out]}\n");
        for (var number = 1; number < Parts; number++)
        {
            text.Append(
                System.Globalization.CultureInfo.InvariantCulture,
                $"  p{number}: {{kind: union, screws-into: {{in: p{number - 1}.out}}}}\n");
        }

        var ran = await Run("show", Typed(text.ToString()), "--parts");
        Assert.Contains("p3999: union\n", ran.Output, StringComparison.Ordinal);
        Assert.InRange(ran.Output.Length, 100_000, 1_000_000);
    }
}
