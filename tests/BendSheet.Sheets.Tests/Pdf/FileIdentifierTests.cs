using System.Numerics;
using System.Text;
using BendSheet.Sheets.Pdf;

namespace BendSheet.Sheets.Tests.Pdf;

public class FileIdentifierTests
{
    [Theory]
    [InlineData("", "6C62272E07BB014262B821756295C58D")]
    [InlineData("a", "D228CB696F1A8CAF78912B704E4A8964")]
    [InlineData("foobar", "343E1662793C64BF6F0D3597BA446F18")]
    public void The_published_values_come_out(string text, string expected) =>
        Assert.Equal(expected, FileIdentifier.Of(Encoding.ASCII.GetBytes(text)));

    [Fact]
    public void Two_words_calculate_as_one_large_number_does()
    {
        var bytes = new byte[1000];
        new Random(20).NextBytes(bytes);

        var prime = (BigInteger.One << 88) + 0x13B;
        var hash = BigInteger.Parse("06C62272E07BB014262B821756295C58D", System.Globalization.NumberStyles.HexNumber, null);
        foreach (var value in bytes)
        {
            hash = (hash ^ value) * prime % (BigInteger.One << 128);
        }

        Assert.Equal(hash.ToString("X32", null)[^32..], FileIdentifier.Of(bytes));
    }
}
