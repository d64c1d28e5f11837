using System.Globalization;
using System.Text;
using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Car;
using BendSheet.Core.Clearance;
using BendSheet.Core.Findings;
using BendSheet.Core.Placing;
using BendSheet.Core.Plumbing.Rules;
using BendSheet.Files.Reading;

namespace BendSheet.Files.Tests.OnCar;

/// <summary>Sixty lines, each in a lane of its own; then with one thing planted among them that has to be found, and named once.</summary>
public class CarOfSixtyLinesTests
{
    private const int Count = 60;

    [Fact]
    public void Nothing_is_said_of_the_car_as_it_should_be() => Assert.Empty(Found(Car()));

    [Fact]
    public void Two_lines_that_run_into_each_other_are_found_once()
    {
        // Line 7 four millimetres above line 6: a tube of 4.7625 mm less than its own thickness away.
        var finding = Assert.Single(Found(Car(moved: (7, "forward: 0, left: 600, up: 4"))));
        Assert.Equal(ClearanceRules.LinesTooNear, finding.Rule);
        Assert.Contains("lines l6 and l7 run into each other by 0.8 mm", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_through_a_zone_is_found_once()
    {
        // The nearer face is 40 mm aside of the line's middle: 40 less half of 4.7625 leaves 37.6 of the 60 wanted.
        const string Box = "{from: {forward: 20, left: 540, up: -10}, to: {forward: 90, left: 560, up: 10}}";
        var finding = Assert.Single(
            Found($"keep-clear: {{exhaust: {{box: {Box}, clearance: 60}}}}\n" + Car()),
            one => one.Message.Contains("line l6", StringComparison.Ordinal));
        Assert.Equal(ClearanceRules.NotClear, finding.Rule);
        Assert.Contains("passes exhaust with 37.6 mm", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hump_that_holds_air_is_found_once()
    {
        var finding = Assert.Single(Found(Car(rows: (9, "heading: forward, towards: up", Hump))));
        Assert.Equal(HoldsAir.Rule, finding.Rule);
        Assert.Contains("line l9", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hose_that_does_not_reach_is_found_once()
    {
        var finding = Assert.Single(Found(Car(hose: 320)));
        Assert.Equal(HoseTooShort.Rule, finding.Rule);

        // FAA-H-8083-30, p. 7-19: 5 to 8 % more than 330.
        Assert.Contains("346.5 mm", finding.Message, StringComparison.Ordinal);
        Assert.Contains("356.4 mm", finding.Message, StringComparison.Ordinal);
        Assert.Empty(Found(Car(hose: 347)));
    }

    [Fact]
    public void A_port_thirty_millimetres_from_where_the_template_ends_is_found_once()
    {
        // Line 3 goes 100 forward and 80 left: its B lies at 100, 380, 0. The port is typed 12 back of it and 27 further left.
        var finding = Assert.Single(Found(Car(port: "forward: 88, left: 407.5, up: 0")));
        Assert.Equal(PortRules.TemplateOffPort, finding.Rule);
        Assert.Contains("l3: template ends 30.0 mm", finding.Message, StringComparison.Ordinal);
        Assert.Contains("forward 12.0, left −27.5, up 0.0", finding.Message, StringComparison.Ordinal);
        Assert.Empty(Found(Car(port: "forward: 100, left: 380, up: 0")));
    }

    private const string Flat = "[{straight: 100, bend: 90}, {straight: 80}]";

    private const string Hump =
        "[{straight: 60, bend: 90}, {straight: 80, rotate: 180, bend: 90}, {straight: 60, bend: 90}, {straight: 80}]";

    private static List<Finding> Found(string text)
    {
        var file = TemplateReader.Read("car.yaml", new MemoryStream(Encoding.UTF8.GetBytes(text)));
        Assert.Empty(file.Findings);
        return
        [
            .. CarPlan.Of(file, []).Findings.Where(finding => finding.Rule == ClearanceRules.LinesTooNear
                || finding.Rule == ClearanceRules.NotClear
                || finding.Rule == HoldsAir.Rule
                || finding.Rule == HoseTooShort.Rule
                || finding.Rule == PortRules.TemplateOffPort),
        ];
    }

    private static string Car(
        (int Line, string Place)? moved = null, (int Line, string Start, string Rows)? rows = null, int hose = 350, string? port = null)
    {
        var text = new StringBuilder();
        text.Append(
            """
            units: mm
            tube: {od: 3/16 in}
            bender: {radius: 9/16 in}
            tolerance: {straight: 1, bend: 1, rotate: 2}
            pedal-switch: true
            parts:
              tee: {kind: other, ports: {a: {at: {forward: 0, left: 300, up: 0}, faces: forward}, b: }}
              end: {kind: other, ports: {a: {at: {PORT}, faces: right}}}
              bracket: {kind: other, ports: [a]}
            hoses:
              flex: {from: tee.b, to: bracket.a, length: HOSE, spans: {droop: 310, bump: 260, lock: 330}}
            lines:

            """
                .Replace("PORT", port ?? "forward: 100, left: 380, up: 0", StringComparison.Ordinal)
                .Replace("HOSE", hose.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal));
        for (var i = 0; i < Count; i++)
        {
            var number = i.ToString(CultureInfo.InvariantCulture);
            var start = rows?.Line == i ? rows.Value.Start : "heading: forward, towards: left";
            var place = moved?.Line == i ? moved.Value.Place : $"forward: 0, left: {100 * i}, up: 0";
            var ends = i == 3 ? "from: tee.a, to: end.a, " : string.Empty;
            var route = rows?.Line == i ? rows.Value.Rows : Flat;
            text.Append(CultureInfo.InvariantCulture, $"  l{number}: {{{ends}start: {{{start}, at: {{{place}}}}}, rows: {route}}}\n");
        }

        return text.ToString();
    }
}
