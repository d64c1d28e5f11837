using BendSheet.Core.Commissioning;
using BendSheet.Files.Tests.Plumbing;

namespace BendSheet.Files.Tests.OnCar;

/// <summary>What the lines of a small car hold and how far it is to its bleed screws, reckoned by hand from the lengths that were typed.
/// </summary>
public class FillingTests
{
    /// <summary>Inside diameter: 3/16 in less two walls of 0.028 in.</summary>
    private const double BoreInches = 0.1875 - (2 * 0.028);

    /// <summary>NIST SP 811, appendix B.8: 1 cubic inch is 1.638 706 4 E-02 litres.</summary>
    private const double LitresOfCubicInch = 1.6387064e-2;

    [Fact]
    public void Each_circuit_holds_what_its_lines_hold()
    {
        var filling = TypedCars.Plan(SmallCar.Sound).Filling;
        Assert.Equal("master, circuit front; master, circuit rear", string.Join("; ", filling.Circuits.Select(one => one.Circuit.InWords)));

        // Front: 320 + 300 + 700. Rear: 1700 + 500 + 500.
        Assert.Equal([1320.0, 2700.0], filling.Circuits.Select(circuit => Math.Round(circuit.Tube.Millimetres, 6)));
        Assert.All(filling.Circuits, circuit =>
        {
            var inches = circuit.Tube.Millimetres / 25.4;
            Assert.Equal(Math.PI * BoreInches * BoreInches / 4 * inches * LitresOfCubicInch, circuit.Litres, 1e-9);
        });
        Assert.Equal("0.012 litres", CommissioningWriter.InLitres(filling.Circuits[0].Litres));
        Assert.Equal("hose left-hose, hose right-hose", string.Join(", ", filling.Circuits[0].NotCounted));
        Assert.Empty(filling.Circuits[1].NotCounted);
    }

    [Fact]
    public void The_longest_way_to_a_bleed_screw_stands_first()
    {
        // 1700 + 500 twice; 320 + 700 and a hose of 350; 320 + 300 and the same.
        Assert.Equal(
            "left-rear.bleeder 2200 + 0, right-rear.bleeder 2200 + 0, right-front.bleeder 1020 + 350, left-front.bleeder 620 + 350",
            string.Join(", ", TypedCars.Plan(SmallCar.Sound).Filling.Bleeders.Select(way =>
                FormattableString.Invariant($"{way.Bleeder} {way.Tube.Millimetres:0.###} + {way.Hose.Millimetres:0.###}"))));
    }

    [Fact]
    public void A_way_with_a_hose_that_nobody_measured_is_at_least_so_long()
    {
        var car = SmallCar.With(("is: M10x1 banjo}, length: 350}\n  right-hose", "is: M10x1 banjo}}\n  right-hose"));
        Assert.Equal(
            "left-front.bleeder", Assert.Single(TypedCars.Plan(car).Filling.Bleeders, way => way.IsAtLeast).Bleeder);
    }

    [Fact]
    public void Of_two_ways_the_shorter_counts()
    {
        var way = Assert.Single(TypedCars.Plan(
            TypedCars.Top
                + """
                parts:
                  master: {kind: master-cylinder, ports: [out]}
                  first: {kind: tee, ports: {in: , left: , right: }}
                  second: {kind: cross, ports: {in: , left: , right: }}
                  slave: {kind: slave-cylinder, ports: {inlet: , bleeder: bleed}}
                lines:
                  feed: {from: master.out, to: first.in, rows: [{straight: 100}]}
                  long: {from: first.left, to: second.left, rows: [{straight: 500}]}
                  short: {from: first.right, to: second.right, rows: [{straight: 300}]}
                  last: {from: second.in, to: slave.inlet, rows: [{straight: 50}]}

                """).Filling.Bleeders);
        Assert.Equal(450, way.Tube.Millimetres, 1e-9);
        Assert.Equal("line feed, line short, line last", string.Join(", ", way.Through));
    }

    [Fact]
    public void A_tube_whose_wall_nobody_typed_has_a_length_and_no_litres()
    {
        var circuit = TypedCars.Plan(SmallCar.With(("wall: 0.028 in, ", string.Empty))).Filling.Circuits[1];
        Assert.Equal((0.0, 2700.0), (circuit.Litres, Math.Round(circuit.Tube.Millimetres, 6)));
        Assert.Equal("line rear, line rear-left, line rear-right", string.Join(", ", circuit.NotCounted.Order(StringComparer.Ordinal)));
    }

    private const string Slave =
        """
        parts:
          slave: {kind: slave-cylinder, ports: {inlet: {at: {up: 300}}, bleeder: {is: bleed, BLEEDER}, upper: {is: bleed, UPPER}}}
        lines:
          feed: {to: slave.inlet, rows: [{straight: 100}]}

        """;

    [Theory]
    [InlineData("at: {up: 250}", "at: {up: 270}", "slave.upper lies 30.0 mm (1.181 in) lower than slave.inlet: air stays above it")]
    [InlineData("at: {up: 250}", "at: {up: 300}", null)]
    [InlineData("at: {up: 250}", "at: {up: 310}", null)]
    [InlineData("faces: up", "faces: down", null)]
    public void A_bleed_screw_below_the_line_is_named_once(string bleeder, string upper, string? said)
    {
        var car = TypedCars.Top + Slave.Replace("BLEEDER", bleeder, StringComparison.Ordinal)
            .Replace("UPPER", upper, StringComparison.Ordinal);
        var found = TypedCars.Found(car, BleederLow.Rule);
        if (said is null)
        {
            Assert.Empty(found);
        }
        else
        {
            Assert.StartsWith(said, Assert.Single(found).Message, StringComparison.Ordinal);
        }
    }
}
