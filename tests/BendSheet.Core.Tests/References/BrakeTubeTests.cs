using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Bench.Rules;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.References;

/// <summary>What publications say is and is not brake tube, through the findings.</summary>
public class BrakeTubeTests
{
    private const string Table = "brake_tube.csv";

    public static TheoryData<string> NotForBrakesRows { get; } = [.. ReferenceTable.Confirmed(Table)
        .Select(row => row["id"]).Where(id => id.StartsWith("not_for_brakes", StringComparison.Ordinal))];

    /// <summary>Classic-car brake plumbing article.</summary>
    [Theory]
    [MemberData(nameof(NotForBrakesRows))]
    public void Is_not_for_brakes(string id) => HasOne(NotForBrakes.Rule, Of(ReferenceTable.Printed(Table, id), null));

    /// <summary>Classic-car brake plumbing article: 0.028 in.</summary>
    [Fact]
    public void The_printed_wall_of_steel_tube_is_enough_and_a_gauge_less_is_not()
    {
        var thinnest = Length.FromInches(AssertGeometry.Number(ReferenceTable.Printed(Table, "thinnest_steel")));
        OneFinding.None(Of("steel", thinnest));
        HasOne(WallTooThin.Rule, Of("steel", thinnest - Length.FromInches(0.003)));
    }

    /// <summary>Truck service manual: 4.75 x 0.7 mm, a hundredth of a millimetre below the article's wall, is brake tube as well.</summary>
    [Fact]
    public void Brake_pipe_to_the_standard_is_silent()
    {
        var pipe = new Tube(
            "pipe",
            Lines.Mm(AssertGeometry.Number(ReferenceTable.Printed(Table, "din_size"))),
            Lines.Mm(AssertGeometry.Number(ReferenceTable.Printed(Table, "din_wall"))),
            "steel",
            null);
        OneFinding.None(Of(null, null) with { Tube = pipe });
    }

    /// <summary>SAE J512 (June 1990): the seats assume double-flared tube.</summary>
    [Fact]
    public void The_flare_that_inverted_seats_assume_is_silent_and_the_single_one_is_not()
    {
        var printed = ReferenceTable.Printed(Table, "inverted_seats");
        var assumed = Flares.All.Single(known => string.Equals(known.Words, printed, StringComparison.Ordinal)).Flare;
        OneFinding.None(Flared(assumed));
        HasOne(FlareAndSeat.Rule, Flared(Flare.Single45));
    }

    private static void HasOne(Rule rule, LineTemplate template) => Assert.Same(rule, OneFinding.Of(template).Rule);

    private static LineTemplate Of(string? material, Length? wall) =>
        Lines.Of(Lines.Bender(30), [100, 100], (0, 45)) with { Tube = Lines.Tube with { Material = material, Wall = wall } };

    private static LineTemplate Flared(Flare flare) =>
        Of(null, null) with { From = LineEnd.Unknown with { Fitting = new("inverted", flare, Length.Zero, [], Length.Zero) } };
}
