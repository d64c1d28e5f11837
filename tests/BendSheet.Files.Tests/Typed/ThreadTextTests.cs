using BendSheet.Files.Typed;

namespace BendSheet.Files.Tests.Typed;

public class ThreadTextTests
{
    [Theory]
    [InlineData("3/8-24", "3/8-24")]
    [InlineData("3/8 - 24", "3/8-24")]
    [InlineData("3/8-24 UNF", "3/8-24")]
    [InlineData(".375-24", "3/8-24")]
    [InlineData("0.3750-24 UNJF", "3/8-24")]
    [InlineData("1 1/16-12", "1 1/16-12")]
    [InlineData("1-1/16-12", "1 1/16-12")]
    [InlineData("M10x1", "M10x1")]
    [InlineData("m10 x 1.0", "M10x1")]
    [InlineData("M10×1.25", "M10x1.25")]
    public void A_thread_is_read_as_it_is_sold(string typed, string inWords) => Assert.Equal(inWords, ThreadText.Read(typed)?.InWords);

    [Theory]
    [InlineData("")]
    [InlineData("3/8")]
    [InlineData("M10")]
    [InlineData("M10x")]
    [InlineData("-24")]
    [InlineData("3/0-24")]
    [InlineData("3/8-0")]
    [InlineData("1e9-24")]
    [InlineData("1 2 3-24")]
    [InlineData("nan-24")]
    public void Anything_else_is_none(string typed) => Assert.Null(ThreadText.Read(typed));
}
