using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.References;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Bench.Rules;

public class ClipsFarApartTests
{
    private static readonly SourcePosition EveryAt = new("test.yaml", 9, 20);

    public static TheoryData<string, string> Published
    {
        get
        {
            var sizes = new TheoryData<string, string>();
            foreach (var row in ReferenceTable.Confirmed("support_spacing.csv"))
            {
                sizes.Add(row["tube_od_in"], row["printed"]);
            }

            return sizes;
        }
    }

    [Theory]
    [MemberData(nameof(Published))]
    public void Up_to_the_published_spacing_it_is_silent_and_beyond_it_names_the_source(string size, string spacing)
    {
        var diameter = AssertGeometry.Number(size);
        var largest = AssertGeometry.Number(spacing);
        OneFinding.None(Line(Length.FromInches(diameter), Length.FromInches(largest)));
        var finding = OneFinding.Of(Line(Length.FromInches(diameter), Length.FromInches(largest + 0.01)));
        Assert.Same(ClipsFarApart.Rule, finding.Rule);
        Assert.Contains("MIL-H-8891A, Table II, gives for steel tube of", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("memory", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_only_remembered_says_so() => OneFinding.Is(
        Line(Length.FromInches(3.0 / 16), Lines.Mm(400)),
        Severity.Warning,
        ClipsFarApart.Rule,
        EveryAt,
        "line front-left asks for a clip every 400.0 mm (15.748 in), further apart than the 355.6 mm (14.000 in) that FAA-H-8083-30, "
        + "Table 7-5 (from memory, check), gives for steel tube of 4.8 mm (0.188 in): "
        + "make `every` at most 355.6 mm (14.000 in)");

    [Theory]
    [InlineData(4.75, 355)] // sold for 3/16 in
    [InlineData(6, 355)] // below 1/4 in
    [InlineData(6.35, 406)]
    [InlineData(3, 5000)] // below every size that is known
    public void A_size_between_two_is_held_to_the_smaller_one(double diameter, double silent)
    {
        OneFinding.None(Line(Lines.Mm(diameter), Lines.Mm(silent)));
        if (diameter > 3.1)
        {
            Assert.Same(ClipsFarApart.Rule, OneFinding.Of(Line(Lines.Mm(diameter), Lines.Mm(silent + 1))).Rule);
        }
    }

    private static LineTemplate Line(Length diameter, Length every) => Lines.Of(Lines.Bender(60), [9000, 9000], (0, 30)) with
    {
        Tube = Lines.Tube with { OutsideDiameter = diameter },
        Clips = new(every, EveryAt, 0.5 * every, null),
    };
}
