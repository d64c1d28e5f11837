namespace BendSheet.Cli.Tests.Commands;

public class StartTests : AtTheTerminal
{
    [Fact]
    public async Task I_get_a_file_that_is_sound_as_it_stands()
    {
        var file = Place("clutch.yaml");
        var ran = await Run("start", file);
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        Assert.Equal($"{file}: fill it in, then `bendsheet check {file}`.\n", ran.Output);
        Assert.Equal("clutch.yaml", InTheFolder());

        var check = await Run("check", file);
        Assert.Equal(0, check.Code);

        // Rows alone never pin the far end: what to measure next is all that there is to say.
        Assert.Contains("[far-end-unsure]", check.Error, StringComparison.Ordinal);
        Assert.EndsWith("; 1 note\n", check.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_I_typed_is_not_overwritten()
    {
        var file = Typed("my measurements\n");
        var ran = await Run("start", file);
        Assert.Equal(3, ran.Code);
        Assert.Empty(ran.Output);
        Assert.Equal(
            $"bendsheet: {file} was not written: it is there already, and what you typed is never overwritten: choose another name\n",
            ran.Error);
        Assert.Equal("my measurements\n", await File.ReadAllTextAsync(file));
        Assert.Equal("car.yaml", InTheFolder());
    }

    [Theory]
    [InlineData("nowhere/car.yaml", "there is no such folder")]
    [InlineData("car.yaml/car.yaml", "there is no such folder")]
    [InlineData("", "it is there already")]
    public async Task I_am_told_why_a_place_does_not_do(string name, string why)
    {
        Typed(CarFiles.Sound);
        var ran = await Run("start", Place(name));
        Assert.Equal(3, ran.Code);
        Assert.Contains($" was not written: {why}", ran.Error, StringComparison.Ordinal);
        Assert.Equal("car.yaml", InTheFolder());
    }

    [Fact]
    public async Task An_empty_name_is_no_name()
    {
        var ran = await Run("start", "");
        Assert.Equal(3, ran.Code);
        Assert.Equal("bendsheet:  was not written: this is no name for a file\n", ran.Error);
    }

    [Fact]
    public async Task I_can_have_the_file_on_standard_output()
    {
        var ran = await Run("start", "-");
        Assert.Equal(0, ran.Code);
        await Run("start", Place("car.yaml"));
        Assert.Equal(await File.ReadAllTextAsync(Place("car.yaml")), ran.Output);
    }
}
