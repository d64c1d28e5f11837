using System.Globalization;
using System.Text;


namespace BendSheet.Pdf.Tests;

public class SyntaxWriterTests
{
    [Theory]
    [InlineData(0, "0 ")]
    [InlineData(-0.00004, "0 ")]
    [InlineData(297, "297 ")]
    [InlineData(-0.5, "-0.5 ")]
    [InlineData(12.05, "12.05 ")]
    [InlineData(0.0001, "0.0001 ")]
    [InlineData(99.99996, "100 ")]
    [InlineData(-1234567.0625, "-1234567.0625 ")]
    public void A_number_has_at_most_four_decimals_and_never_an_exponent(double value, string expected) =>
        Assert.Equal(expected, Text(new SyntaxWriter(16).Number(value)));

    [Fact]
    public void Numbers_are_those_that_the_runtime_writes()
    {
        var random = new Random(1);
        Assert.All(Enumerable.Range(0, 5000).Select(_ => (random.NextDouble() - 0.5) * Math.Pow(10, random.Next(-3, 6))), value =>
            Assert.Equal(Math.Round(value, 4), double.Parse(Text(new SyntaxWriter(16).Number(value)), CultureInfo.InvariantCulture), 1e-9));
    }

    [Fact]
    public void Words_and_integers_follow_one_another() =>
        Assert.Equal("/P 7 0000000012", Text(new SyntaxWriter(1).Raw("/P "u8).Integer(7).Raw(" ").Integer(12, digits: 10)));

    /// <summary>ISO 32000-1, 7.3.4.2, table 3.</summary>
    [Theory]
    [InlineData('A', "\0A")]
    [InlineData(0x2829, "\\(\\)")]
    [InlineData(0x5C0D, "\\\\\\r")]
    [InlineData(0x0A0A, "\n\n")]
    public void A_code_in_a_string_is_its_two_bytes_and_what_would_end_the_string_is_escaped(ushort code, string expected) =>
        Assert.Equal(expected, Text(new SyntaxWriter(1).Code(code)));

    private static string Text(SyntaxWriter writer) => Encoding.ASCII.GetString(writer.Written.Span);
}
