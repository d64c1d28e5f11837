using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Findings;
using BendSheet.Core.Plumbing.Rules;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Bench.Rules;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.References;

/// <summary>Published smallest radii, copied beside the program, against what the program has and says.</summary>
public class SmallestRadiusTests
{
    private const string Table = "smallest_radius.csv";

    private static List<IReadOnlyDictionary<string, string>> Rows { get; } =
        [.. ReferenceTable.Read(Table).Where(row => row["tube"].Length > 0)];

    public static TheoryData<int> Numbers { get; } = [.. Enumerable.Range(0, Rows.Count)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void The_program_has_the_row_and_says_how_sure_it_is(int number)
    {
        var row = Rows[number];
        var size = PublishedValue.Length(row["tube"], row["unit"]);
        var own = Assert.Single(
            PublishedRadius.All, own => own.Material == TubeMaterials.Recognize(row["material"]) && own.TubeSize == size);
        AssertGeometry.Equal(PublishedValue.Length(row["smallest"], row["unit"]), own.Smallest);
        Assert.Equal(PublishedValue.Confidence(row["mark"]), own.Source.Confidence);
    }

    [Fact]
    public void The_program_has_no_others() => Assert.Equal(Rows.Count, PublishedRadius.All.Length);

    /// <summary>Truck service manual on DIN 74234 brake pipe, 4.75 x 0.7 mm: 25 mm.</summary>
    [Fact]
    public void Brake_pipe_stands_its_printed_radius_and_a_millimetre_less_is_a_warning()
    {
        var row = Assert.Single(ReferenceTable.Confirmed(Table), row => string.Equals(row["tube"], "4.75", StringComparison.Ordinal));
        var smallest = PublishedValue.Length(row["smallest"], row["unit"]);
        var pipe = new Tube("pipe", Lines.Mm(4.75), Lines.Mm(0.7), "steel", null);
        OneFinding.None(On(pipe, smallest));
        Assert.Same(TighterThanPublished.Rule, OneFinding.Of(On(pipe, smallest - Lines.Mm(1))).Rule);
    }

    /// <summary>NAVEDTRA 14105, p. 5-4, Figure 5-2: 2.5 times the inside diameter, and 5 in for a hole of 2 in.</summary>
    [Fact]
    public void The_ideal_is_two_and_a_half_holes()
    {
        var rows = ReferenceTable.Confirmed(Table).Where(row => row["source"].StartsWith("NAVEDTRA 14105", StringComparison.Ordinal))
            .ToList();
        Assert.Equal(2, rows.Count);
        AssertGeometry.Equal(AssertGeometry.Number(rows[0]["smallest"]), PublishedRadius.IdealInsideDiameters);

        var ideal = PublishedValue.Length(rows[1]["smallest"], rows[1]["unit"]);
        var pipe = new Tube("pipe", Length.FromInches(2.2), Length.FromInches(0.1), null, null);
        OneFinding.None(On(pipe, ideal));
        Assert.Equal(Severity.Warning, OneFinding.Of(On(pipe, ideal - Lines.Mm(1))).Severity);
    }

    private static LineTemplate On(Tube tube, Length radius) =>
        Lines.Of(new Bender("hand", radius, Lines.RadiusAt), [1000, 1000], (0, 45)) with { Tube = tube };

    /// <summary>FAA AC 43.13-1B, Table 9-3, p. 9-22: hose for tube of 3/16 in.</summary>
    [Fact]
    public void Hose_for_brake_tube_is_bent_to_the_published_radius() => AssertGeometry.Printed(
        ReferenceTable.Printed("worked_examples.csv", "hose_316"), HoseTooTight.Smallest.Inches, "smallest radius of hose");
}
