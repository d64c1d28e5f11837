using System.Collections.Immutable;
using System.Globalization;
using BendSheet.Core.Sheet;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

public class UnitsOfAFileTests
{
    private const double Same = 1e-9;

    [Theory]
    [InlineData("mm", 1)]
    [InlineData("cm", 10)]
    [InlineData("m", 1000)]
    [InlineData("in", 25.4)]
    [InlineData("ft", 304.8)]
    public void The_same_file_in_any_unit_gives_the_same_templates(string unit, double millimetres)
    {
        var inUnit = Assert.Single(Read(InUnit(unit, millimetres)).Lines);
        var inMillimetres = Assert.Single(Read(InUnit("mm", 1)).Lines);
        Assert.Equal(AllLengths(inMillimetres), AllLengths(inUnit), (a, b) => Math.Abs(a - b) < Same);
    }

    [Theory]
    [InlineData("mm", false, Paper.A4)]
    [InlineData("cm", false, Paper.A4)]
    [InlineData("m", false, Paper.A4)]
    [InlineData("in", true, Paper.Letter)]
    [InlineData("ft", true, Paper.Letter)]
    public void Paper_and_notation_follow_the_unit_unless_the_file_says_otherwise(string unit, bool imperial, Paper paper)
    {
        var typed = (Top + Line).Replace("units: mm", $"units: {unit}", StringComparison.Ordinal)
            .Replace("120", "12", StringComparison.Ordinal);
        Assert.Equal((new LengthNotation(imperial, 32), paper), (Read(typed).Notation, Read(typed).Paper));
        var said = Read("paper: A4\nfractions: 8\n" + typed);
        Assert.Equal((new LengthNotation(imperial, 8), Paper.A4), (said.Notation, said.Paper));
        Assert.Empty(said.Findings);
    }

    [Fact]
    public void Without_its_unit_a_file_has_no_lines() =>
        Assert.Empty(Read((Top + Line).Replace("units: mm\n", "", StringComparison.Ordinal)).Lines);

    /// <summary>A file in which every length is a bare number in the unit.</summary>
    private static string InUnit(string unit, double millimetres)
    {
        string Bare(double length) => (length / millimetres).ToString("0.#################", CultureInfo.InvariantCulture);
        return
            $$"""
            units: {{unit}}
            tube: {od: {{Bare(4.7625)}}, wall: {{Bare(0.7112)}}, smallest-radius: {{Bare(9.5)}} }
            bender: {radius: {{Bare(14.2875)}}, offset: {{Bare(-2)}}, grip: {{Bare(12)}}, follow: {{Bare(10)}} }
            fittings: {x: {flare: bubble, takes: {{Bare(1.5)}}, straight: {{Bare(35)}}, slide-on: [{nut: {{Bare(17)}} }] } }
            wire: {diameter: {{Bare(2.4)}}, radius: {{Bare(4)}} }
            tolerance: {straight: {{Bare(1)}}, bend: 1.5, rotate: 3}
            lines:
              rear:
                to: {fitting: x, trim: {{Bare(25)}} }
                rows: [{straight: {{Bare(312.7375)}}, bend: 45}, {straight: {{Bare(80)}} }]

            """;
    }

    private static ImmutableArray<double> AllLengths(LineTemplate line)
    {
        var (tube, bender, fitting) = (line.Tube, line.Bender, line.To.Fitting!);
        Length?[] lengths =
        [
            tube.OutsideDiameter,
            tube.Wall,
            tube.SmallestRadius,
            bender.Radius,
            bender.Offset,
            bender.Grip,
            bender.Follow,
            fitting.FlareAllowance,
            fitting.Straight, fitting.Hardware[0].Length, line.Wire.Diameter, line.Wire.Radius, line.Tolerance!.Straight, line.To.Trim,
            .. line.Route.Legs.Select(leg => (Length?)leg.Measured),
        ];
        return [.. lengths.Select(length => length!.Value.Millimetres)];
    }
}
