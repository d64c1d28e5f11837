using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Bench.Rules;

/// <summary>What does not go together in the workshop, whatever the line's shape.</summary>
public class TubeAndFittingTests
{
    private static SourcePosition WallAt { get; } = new("test.yaml", 2, 27);

    private static SourcePosition MaterialAt { get; } = new("test.yaml", 2, 42);

    private static SourcePosition FlareAt { get; } = new("test.yaml", 5, 12);

    [Fact]
    public void Plain_copper_is_a_warning_at_the_material() => OneFinding.Is(
        Line("plain copper", 0.71),
        Severity.Warning,
        NotForBrakes.Rule,
        MaterialAt,
        "tube main is plain copper, which is not for brake lines (a classic-car brake plumbing article): use tube that is sold for "
            + "hydraulic brakes");

    [Fact]
    public void A_tube_without_a_name_is_the_tube()
    {
        var template = Line("aluminum", 0.71);
        Assert.StartsWith(
            "the tube is aluminium, which",
            OneFinding.Of(template with { Tube = template.Tube with { Name = string.Empty } }).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Steel_with_a_thin_wall_is_a_warning_at_the_wall() => OneFinding.Is(
        Line("steel", 0.65),
        Severity.Warning,
        WallTooThin.Rule,
        WallAt,
        "tube main has a wall of 0.65 mm (0.026 in), and steel brake tube of 3/16 in has at least 0.71 mm (0.028 in) "
        + "(a classic-car brake plumbing article): use tube that is sold for hydraulic brakes, or measure the wall again");

    [Fact]
    public void A_wall_too_thick_for_the_flares_is_one_warning_at_the_wall() => OneFinding.Is(
        Line("copper-nickel", 0.9, Flare.Double45, Flare.Double45),
        Severity.Warning,
        FlareAndWall.Rule,
        WallAt,
        "tube main has a wall of 0.90 mm (0.035 in), and the 45° double flare on tube of this size is for at most 0.71 mm (0.028 in) "
        + "(SAE J533, second-hand: check): use tube with a thinner wall, or ask the fitting's maker which flare goes with this one");

    [Fact]
    public void A_single_flare_of_45_degrees_at_both_ends_is_one_warning_at_the_flare()
    {
        var fitting = Fitting(Flare.Single45);
        OneFinding.Is(
            Line("copper-nickel", 0.71) with { From = End(fitting), To = End(fitting) },
            Severity.Warning,
            FlareAndSeat.Rule,
            FlareAt,
            "fitting inverted has a 45° single flare, and inverted-flare seats are made for double-flared tube (SAE J512): "
            + "make it `double 45`, or ask the fitting's maker whether single flares may be used");
    }

    [Theory]
    [InlineData("copper-nickel", 0.7112, Flare.Double45)]
    [InlineData("copper-nickel", 0.9, Flare.Single37)]
    [InlineData("copper-nickel", 0.9, Flare.Bubble)]
    [InlineData("copper-nickel", 0.9, Flare.None)]
    [InlineData("copper-nickel", 0.5, Flare.Double45)]
    [InlineData("steel", 0.7, Flare.Double45)]
    [InlineData("steel", null, Flare.Double45)]
    [InlineData("stainless steel", 0.5, Flare.Single37)]
    [InlineData(null, 0.5, Flare.Double45)]
    public void What_goes_together_is_silent(string? material, double? wall, Flare flare) =>
        OneFinding.None(Line(material, wall, flare, flare));

    [Fact]
    public void Steel_of_another_size_may_have_a_thinner_wall()
    {
        var template = Line("steel", 0.65);
        OneFinding.None(template with { Tube = template.Tube with { OutsideDiameter = Lines.Mm(4) } });
    }

    private static LineTemplate Line(string? material, double? wall, Flare atA = Flare.None, Flare atB = Flare.None) =>
        Lines.Of(Lines.Bender(30), [100, 100], (0, 45)) with
        {
            Tube = new("main", Length.FromInches(3.0 / 16), wall is { } mm ? Lines.Mm(mm) : null, material, null)
            {
                WallAt = WallAt,
                MaterialAt = MaterialAt,
            },
            From = End(Fitting(atA)),
            To = End(Fitting(atB)),
        };

    private static LineEnd End(Fitting fitting) => LineEnd.Unknown with { Fitting = fitting };

    private static Fitting Fitting(Flare flare) => new("inverted", flare, Lines.Mm(0.5), [], Length.Zero) { FlareAt = FlareAt };
}
