using BendSheet.Cli.Output;

namespace BendSheet.Cli.Tests.Output;

public class BrailleTests
{
    [Fact]
    public void A_dot_is_the_bit_that_the_standard_gives_it()
    {
        var picture = new Braille(2, 1);
        picture.Line(0, 0, 0, 0);
        picture.Line(3, 3, 3, 3);
        Assert.Equal(["⠁⢀"], picture.Rows(), StringComparer.Ordinal);
    }

    [Fact]
    public void Lines_are_drawn_from_dot_to_dot_and_blank_rows_around_them_left_out()
    {
        var picture = new Braille(4, 4);
        picture.Line(0, 4, 7, 4);
        picture.Line(7, 4, 7, 11);
        Assert.Equal(["⠉⠉⠉⢹", "   ⢸"], picture.Rows(), StringComparer.Ordinal);
    }

    [Fact]
    public void A_word_stands_in_the_nearest_free_place_with_a_blank_to_the_next_word()
    {
        var picture = new Braille(10, 3);
        picture.Line(0, 5, 19, 5);
        Assert.True(picture.Label("12", 8, 5));
        Assert.True(picture.Label("13", 9, 5));
        Assert.Equal(2, picture.Rows().Count(row => row.Contains('1', StringComparison.Ordinal)));
        Assert.Equal(new string('⠒', 10), picture.Rows().Single(row => row.Contains('⠒', StringComparison.Ordinal)));
    }

    [Fact]
    public void Without_a_free_place_a_word_stands_on_the_line_and_never_on_another_word()
    {
        var picture = new Braille(3, 1);
        picture.Line(0, 2, 5, 2);
        Assert.True(picture.Label("1", 2, 2));
        Assert.False(picture.Label("2", 2, 2));
        Assert.Equal(["⠤1⠤"], picture.Rows(), StringComparer.Ordinal);
    }

    [Fact]
    public void What_lies_outside_is_not_drawn()
    {
        var picture = new Braille(2, 1);
        picture.Line(-9, -9, -5, -5);
        picture.Line(40, 0, 50, 0);
        Assert.Empty(picture.Rows());
    }
}
