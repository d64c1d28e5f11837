using BendSheet.Core.Workshop;
using BendSheet.Files.Typed;

namespace BendSheet.Files.Tests.Typed;

public class PortTextTests
{
    [Theory]
    [InlineData("3/8-24 flare 37", "3/8-24 flare 37")]
    [InlineData("3/8-24 UNF 37° flare", "3/8-24 flare 37")]
    [InlineData("1 1/16-12 flare 37", "1 1/16-12 flare 37")]
    [InlineData("3/8-24 inverted 45", "3/8-24 inverted 45")]
    [InlineData("3/8-24 inverted", "3/8-24 inverted 45")]
    [InlineData("3/8-24 inverted flare", "3/8-24 inverted 45")]
    [InlineData("5/8-18 flare 45", "5/8-18 flare 45")]
    [InlineData("1/8-27 taper", "1/8-27 taper")]
    [InlineData("M10x1 bubble", "M10x1 bubble")]
    [InlineData("M10x1 bubble flare", "M10x1 bubble")]
    [InlineData("M10 x 1 banjo", "M10x1 banjo")]
    [InlineData("barb", "barb")]
    [InlineData("3/8-24", "3/8-24")]
    [InlineData("bubble", "bubble")]
    [InlineData("unknown", "")]
    public void A_port_is_spelled_out(string typed, string inWords)
    {
        Assert.Null(PortText.Read(typed, out var port));
        Assert.Equal(inWords, port.InWords);
        Assert.Null(port.Source);
    }

    [Theory]
    [InlineData("an-3", "3/8-24 flare 37", Confidence.Confirmed)]
    [InlineData("AN4", "7/16-20 flare 37", Confidence.Confirmed)]
    [InlineData("an -6", "9/16-18 flare 37", Confidence.Confirmed)]
    [InlineData("flare 37 3/16", "3/8-24 flare 37", Confidence.Confirmed)]
    [InlineData("inverted 3/16", "3/8-24 inverted 45", Confidence.Confirmed)]
    [InlineData("inverted 45 1/4 in", "7/16-24 inverted 45", Confidence.FromMemory)]
    [InlineData("flare 45 1/4", "7/16-20 flare 45", Confidence.FromMemory)]
    [InlineData("bubble 4.75", "M10x1 bubble", Confidence.Confirmed)]
    [InlineData("bubble 3/16 in", "M10x1 bubble", Confidence.Confirmed)]
    [InlineData("bubble 6 mm", "M12x1 bubble", Confidence.FromMemory)]
    [InlineData("1/8 npt", "1/8-27 taper", Confidence.FromMemory)]
    [InlineData("1/4 taper", "1/4-18 taper", Confidence.FromMemory)]
    public void A_port_is_named_by_a_standard(string typed, string inWords, Confidence confidence)
    {
        Assert.Null(PortText.Read(typed, out var port));
        Assert.Equal(inWords, port.InWords);
        Assert.Equal(confidence, port.Source?.Confidence);
    }

    [Theory]
    [InlineData("an-7", "has a dash size that does not exist: the sizes are 2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24")]
    [InlineData("an-99999999999", "has a dash size that does not exist: ")]
    [InlineData("bubble 5", "has a size for which no thread is known here (known are 4.75 mm, 6 mm): write the thread instead, such as "
        + "`3/8-24 bubble`")]
    [InlineData("3/8-24 flare", "is not a port: ")]
    [InlineData("3/8-24 flare 37 45", "is not a port: ")]
    [InlineData("3/8-24 bubble taper", "is not a port: ")]
    [InlineData("3/8", "is not a port: ")]
    [InlineData("flair 37", "is not a port: ")]
    [InlineData("banjo 10", "is not a port: ")]
    [InlineData("", "is not a port: ")]
    public void Anything_else_is_said_to_be_none(string typed, string why) =>
        Assert.StartsWith(why, PortText.Read(typed, out _), StringComparison.Ordinal);
}
