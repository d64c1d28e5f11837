using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Tests.Shape;

public class ViewLayoutTests
{
    private const double Width = 190;

    [Theory]
    [InlineData(280, 190, 150, 50)]
    [InlineData(280, 190, 150, 110)]
    [InlineData(9000, 5, 5, 60)]
    [InlineData(5, 5, 9000, 60)]
    [InlineData(40, 20, 5, 80)]
    [InlineData(5, 5, 5, 60)]
    [InlineData(6e9, 1e5, 0, 46)]
    public void Every_view_lies_inside_the_room_and_beside_the_others(double x, double y, double z, double height)
    {
        (double Width, double Height)[] sizes = [(x + y, ((x + y) / 2) + z), (x, y), (x, z), (y, z)];
        var layout = ViewLayout.Of(sizes, Width, height);
        Assert.True(layout.Height <= height);
        for (var i = 0; i < sizes.Length; i++)
        {
            var cell = layout.Cells[i];
            Assert.InRange(cell.Left + cell.Width, 0, Width + 1e-9);
            Assert.InRange(cell.Top + cell.Height + ViewLayout.CaptionHeight, 0, height);
            Assert.True(cell.Width >= (sizes[i].Width / layout.Denominator) + (2 * ViewLayout.Margin));
            Assert.True(cell.Height >= (sizes[i].Height / layout.Denominator) + (2 * ViewLayout.Margin));
            Assert.All(layout.Cells.Take(i), other => Assert.True(
                other.Left + other.Width <= cell.Left + 1e-9 || cell.Left + cell.Width <= other.Left + 1e-9
                || other.Top + other.Height <= cell.Top || cell.Top + cell.Height <= other.Top));
        }
    }

    [Fact]
    public void A_piece_is_never_drawn_larger_than_it_is() =>
        Assert.Equal(1, ViewLayout.Of([(2, 2), (1, 1), (1, 1), (1, 1)], Width, 110).Denominator);
}
