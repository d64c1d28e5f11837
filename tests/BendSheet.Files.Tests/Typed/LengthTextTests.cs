using BendSheet.Core.Units;
using BendSheet.Files.Typed;

namespace BendSheet.Files.Tests.Typed;

/// <summary>
/// Lengths as they are typed at the bench. A bare number is in centimetres here, which no other word can be mistaken for.
/// </summary>
public class LengthTextTests
{
    private const string NoLength = "is not a length: write a number, such as `310`, `310 mm` or `12 5/16 in`";
    private const string NoFraction = "has a fraction that cannot be: write it like `3/16` or `12 5/16`";
    private const string NoInches = "has something after the feet that is not inches: write it like `2 ft 3 1/2 in`";
    private const string BarePoint = "has a point and no figure after it: type the figure, or leave the point out";

    [Theory]
    [InlineData("310", 3100)]
    [InlineData("310 mm", 310)]
    [InlineData("310mm", 310)]
    [InlineData("310 MM", 310)]
    [InlineData("  310   mm  ", 310)]
    [InlineData("1 cm", 10)]
    [InlineData("1.5 m", 1500)]
    [InlineData("3/16 in", 4.7625)]
    [InlineData("3/16in", 4.7625)]
    [InlineData("3/16", 1.875)] // a fraction without a unit is in the file's unit
    [InlineData("3⁄16 in", 4.7625)] // the fraction slash
    [InlineData("12 5/16 in", 312.7375)]
    [InlineData("12-5/16\"", 312.7375)]
    [InlineData("12 - 5/16 in", 312.7375)]
    [InlineData("12–5/16 in", 312.7375)] // a hyphen that an editor made longer
    [InlineData("12  5/16 inches", 312.7375)]
    [InlineData("12 5/16", 123.125)]
    [InlineData("1 0/4 in", 25.4)]
    [InlineData("5/4 in", 31.75)] // on its own a fraction may be larger than one
    [InlineData("1 inch", 25.4)]
    [InlineData("0.028in", 0.7112)]
    [InlineData(".028\"", 0.7112)]
    [InlineData(".5", 5)]
    [InlineData("1″", 25.4)]
    [InlineData("1”", 25.4)] // as phones bend the inch mark
    [InlineData("1 ft", 304.8)]
    [InlineData("1 foot", 304.8)]
    [InlineData("2 feet", 609.6)]
    [InlineData("1/2 ft", 152.4)]
    [InlineData("2 ft 3 1/2 in", 698.5)]
    [InlineData("2ft3in", 685.8)]
    [InlineData("2 ft - 3 in", 685.8)]
    [InlineData("2 ft 14 in", 965.2)]
    [InlineData("2' 3-1/2\"", 698.5)]
    [InlineData("2'3\"", 685.8)]
    [InlineData("2′ 3″", 685.8)]
    [InlineData("2’ 3”", 685.8)]
    [InlineData("2'-3\"", 685.8)]
    [InlineData("2' .5\"", 622.3)]
    [InlineData("-5 mm", -5)]
    [InlineData("- 5 mm", -5)]
    [InlineData("−5 mm", -5)] // the minus sign itself
    [InlineData("–5 mm", -5)]
    [InlineData("+5 mm", 5)]
    [InlineData("-2 ft 3 in", -685.8)]
    [InlineData("007 mm", 7)]
    public void A_length_is_read(string typed, double millimetres)
    {
        Assert.Null(LengthText.Read(typed, LengthUnit.Centimetre, out var read));
        Assert.Equal(millimetres, read, 1e-9);
    }

    [Theory]
    [InlineData("", NoLength)]
    [InlineData("   ", NoLength)]
    [InlineData("mm", NoLength)] // only a unit
    [InlineData("/", NoLength)]
    [InlineData(".", NoLength)]
    [InlineData("-", NoLength)]
    [InlineData("--5", NoLength)]
    [InlineData("+-5", NoLength)]
    [InlineData("NaN", NoLength)]
    [InlineData(".nan", NoLength)]
    [InlineData("inf", NoLength)]
    [InlineData("-.inf", NoLength)]
    [InlineData("∞", NoLength)]
    [InlineData("mm 310", NoLength)]
    [InlineData("~310", NoLength)]
    [InlineData("'3 ft", NoLength)]
    [InlineData("٣", NoLength)] // digits of another script
    [InlineData("5.", BarePoint)]
    [InlineData("5. mm", BarePoint)]
    [InlineData("1/0", NoFraction)]
    [InlineData("1/0 in", NoFraction)]
    [InlineData("0/0", NoFraction)]
    [InlineData("3/", NoFraction)]
    [InlineData("3 / 16 in", NoFraction)]
    [InlineData("12 5/4 in", NoFraction)] // a slip for 12 3/4, or for 12.5/4?
    [InlineData("12-5/4", NoFraction)]
    [InlineData("12 1/0 in", NoFraction)]
    [InlineData("1.5/16 in", NoFraction)]
    [InlineData("1e308", "has `e` where a unit belongs: write mm, cm, m, in or ft")]
    [InlineData("5 yards", "has `yards` where a unit belongs: write mm, cm, m, in or ft")]
    [InlineData("3 16ths", "has `16ths` left over: write one length, such as `310 mm` or `12 5/16 in`")]
    [InlineData("3/16 in in", "has `in` left over: write one length, such as `310 mm` or `12 5/16 in`")]
    [InlineData("1 m 20 cm", "has `20 cm` left over: write one length, such as `310 mm` or `12 5/16 in`")]
    [InlineData("3 in 2 ft", "has `2 ft` left over: write one length, such as `310 mm` or `12 5/16 in`")]
    [InlineData("1.2.3", "has `.3` left over: write one length, such as `310 mm` or `12 5/16 in`")]
    [InlineData("1_000", "has `_000` left over: write one length, such as `310 mm` or `12 5/16 in`")]
    [InlineData("1 000", "has `000` left over: write one length, such as `310 mm` or `12 5/16 in`")]
    [InlineData("310 mm?", "has `?` left over: write one length, such as `310 mm` or `12 5/16 in`")]
    [InlineData("12½ in", "has `½ in` left over: write one length, such as `310 mm` or `12 5/16 in`")]
    [InlineData("2 ft 3 in 1", "has `1` left over: write one length, such as `310 mm` or `12 5/16 in`")]
    [InlineData("2 ft 3", NoInches)]
    [InlineData("2' 3'", NoInches)]
    [InlineData("2 ft 3 mm", NoInches)]
    [InlineData("2''", NoInches)]
    [InlineData("2 ft x", NoInches)]
    [InlineData("5 \u001b[31m", "has ` [31m` left over: write one length, such as `310 mm` or `12 5/16 in`")] // no terminal obeys it
    public void What_is_no_length_is_told_so(string typed, string words) =>
        Assert.Equal(words, LengthText.Read(typed, LengthUnit.Centimetre, out _));

    [Theory]
    [InlineData(LengthUnit.Millimetre, 3)]
    [InlineData(LengthUnit.Centimetre, 30)]
    [InlineData(LengthUnit.Metre, 3000)]
    [InlineData(LengthUnit.Inch, 76.2)]
    [InlineData(LengthUnit.Foot, 914.4)]
    public void A_bare_number_is_in_the_unit_of_the_file(LengthUnit unit, double millimetres)
    {
        Assert.Null(LengthText.Read("3", unit, out var read));
        Assert.Equal(millimetres, read, 1e-9);
    }

    [Fact]
    public void A_bare_number_in_feet_does_not_turn_what_follows_into_inches() =>
        Assert.Equal(
            "has `3 in` left over: write one length, such as `310 mm` or `12 5/16 in`", LengthText.Read("2 3 in", LengthUnit.Foot, out _));

    [Fact]
    public void Hundreds_of_digits_are_too_long_or_nothing_but_never_a_wrong_figure()
    {
        var nines = new string('9', 400);
        Assert.Null(LengthText.Read(nines, LengthUnit.Millimetre, out var endless));
        Assert.Equal(double.PositiveInfinity, endless);
        Assert.Null(LengthText.Read($"{nines}/{nines}", LengthUnit.Millimetre, out var undecided));
        Assert.Equal(double.NaN, undecided);
        Assert.Null(LengthText.Read("0." + new string('0', 400) + "1", LengthUnit.Millimetre, out var tiny));
        Assert.Equal(0, tiny);
        Assert.Equal(NoFraction, LengthText.Read($"1 {nines}/{nines}", LengthUnit.Millimetre, out _));
    }

    [Fact]
    public void Minus_nothing_is_nothing()
    {
        Assert.Null(LengthText.Read("-0", LengthUnit.Millimetre, out var read));
        Assert.False(double.IsNegative(read));
    }
}
