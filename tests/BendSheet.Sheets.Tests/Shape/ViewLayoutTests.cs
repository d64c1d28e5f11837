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
        Assert.True(layout.Pictorial <= layout.Flat);
        for (var i = 0; i < sizes.Length; i++)
        {
            var cell = layout.Cells[i];
            Assert.InRange(cell.Left + cell.Width, 0, Width + 1e-9);
            Assert.InRange(cell.Top + cell.Height + ViewLayout.CaptionHeight, 0, height + 1e-9);
            var denominator = i == 0 ? layout.Pictorial : layout.Flat;
            Assert.True(cell.Width >= (sizes[i].Width / denominator) + (2 * ViewLayout.Margin) - 1e-9);
            Assert.True(cell.Height >= (sizes[i].Height / denominator) + (2 * ViewLayout.Margin) - 1e-9);
            Assert.All(layout.Cells.Take(i), other => Assert.True(
                other.Left + other.Width <= cell.Left + 1e-9 || cell.Left + cell.Width <= other.Left + 1e-9
                || other.Top + other.Height + ViewLayout.CaptionHeight <= cell.Top + 1e-9
                || cell.Top + cell.Height + ViewLayout.CaptionHeight <= other.Top + 1e-9));
        }
    }

    [Fact]
    public void The_flat_views_give_way_to_the_pictorial_one()
    {
        var layout = ViewLayout.Of([(280, 200), (280, 190), (280, 150), (190, 150)], Width, 50);
        Assert.True(layout.Pictorial < layout.Flat);
    }

    [Fact]
    public void Numbers_of_many_bends_get_more_room_around_the_pictorial_view()
    {
        (double, double)[] sizes = [(280, 200), (280, 190), (280, 150), (190, 150)];
        var layout = ViewLayout.Of(sizes, Width, 110, labelRoom: 12);
        Assert.True(layout.Cells[0].Height >= (200 / layout.Pictorial) + (2 * (ViewLayout.Margin + 12)));
    }

    [Fact]
    public void A_piece_is_never_drawn_larger_than_it_is() =>
        Assert.Equal(1, ViewLayout.Of([(2, 2), (1, 1), (1, 1), (1, 1)], Width, 110).Pictorial);
}
