using BendSheet.Core.Sheet;

namespace BendSheet.Core.Tests.Sheet;

public class CautionsTests
{
    [Theory]
    [InlineData("a brake line is a safety part")]
    [InlineData("sold for hydraulic brakes")]
    [InlineData("of the right size")]
    [InlineData("never plain copper")]
    [InlineData("never compression fittings")]
    [InlineData("match flare and seat: 37° and 45° do not mix")]
    [InlineData("single flares only where the fitting's standard calls for them")]
    [InlineData("nuts and sleeves go on before the flare")]
    [InlineData("nothing goes on flare seats")]
    [InlineData("sealant only on taper threads whose maker allows it")]
    [InlineData("deburr, clean and blow out")]
    [InlineData("with eye protection")]
    [InlineData("lubricate and wash with brake fluid or denatured alcohol only, never mineral oil or solvent")]
    [InlineData("support the line")]
    [InlineData("clear of heat, edges and moving parts through full steering and suspension travel")]
    [InlineData("leak-test under pressure, and check every joint again, before driving")]
    [InlineData("local rules, the makers' instructions and a licensed mechanic's inspection come first")]
    [InlineData("this sheet gives geometry: it does not approve a brake system")]
    public void Each_subject_is_there(string words) =>
        Assert.Contains(Cautions.All, caution => caution.Contains(words, StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void Each_caution_is_whole_sentences() => Assert.All(Cautions.All.Append(Cautions.Rotation), caution =>
    {
        Assert.True(char.IsUpper(caution[0]));
        Assert.EndsWith(".", caution, StringComparison.Ordinal);
    });

    [Theory]
    [InlineData("the pen line, seen from the held end, the former (inside of the bend) at 12")]
    [InlineData("Held: the side in the grip")]
    [InlineData("Swing: reach from the former")]
    [InlineData("dial: from A; cw: clockwise seen from A")]
    public void Each_column_that_needs_it_is_explained_by_where_one_stands(string words) =>
        Assert.Contains(words, Cautions.Rotation, StringComparison.Ordinal);
}
