namespace BendSheet.Cli.Tests.Output;

public class ColourTests : AtTheTerminal
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task I_see_colours_on_a_terminal_and_nowhere_else(bool colour)
    {
        Colour = colour;
        var file = Typed(CarFiles.LegTooShort);
        var ran = await Run("show", file);
        Assert.Equal(colour, ran.Error.Contains($"{file}:11:18: \e[1;31merror\e[0m: leg 2", StringComparison.Ordinal));
        Assert.Equal(colour, ran.Error.Contains('\e', StringComparison.Ordinal));
        Assert.DoesNotContain('\e', ran.Output);
    }
}
