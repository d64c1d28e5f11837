using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Tests.Shape;

public class LabelPlacesTests
{
    private static readonly ViewCell Cell = new(0, 0, 60, 40);
    private static readonly PagePoint[] Corner = [new(10, 30), new(40, 30), new(40, 10)];

    [Fact]
    public void A_label_lies_in_the_direction_it_would_like_where_that_is_free()
    {
        var place = new LabelPlaces(Corner, 1, Cell).Place(new(40, 30), new(1, 1))!.Value;
        Assert.Equal(place.X - 40, place.Y - 30, 9);
        Assert.True(place.X > 40);
    }

    [Fact]
    public void Labels_touch_neither_the_tube_nor_each_other_nor_the_edge()
    {
        var places = new LabelPlaces(Corner, 1, Cell);
        var labels = Enumerable.Range(0, 12).Select(i => places.Place(new(40, 30 - i), new(1, 0))!.Value).ToList();
        for (var i = 0; i < labels.Count; i++)
        {
            Assert.InRange(labels[i].X, LabelPlaces.Radius, Cell.Width - LabelPlaces.Radius);
            Assert.InRange(labels[i].Y, LabelPlaces.Radius, Cell.Height - LabelPlaces.Radius);
            Assert.True(Math.Abs(labels[i].X - 40) > LabelPlaces.Radius + 0.5 || labels[i].Y < 10 || labels[i].Y > 30);
            Assert.True(Math.Abs(labels[i].Y - 30) > LabelPlaces.Radius + 0.5 || labels[i].X < 10 || labels[i].X > 40);
            Assert.All(labels.Take(i), other => Assert.True((other - labels[i]).Norm > 2 * LabelPlaces.Radius));
        }
    }

    [Fact]
    public void A_label_without_a_free_place_is_left_out()
    {
        var places = new LabelPlaces([new(0, 5), new(10, 5)], 1, new(0, 0, 10, 10));
        Assert.Null(places.Place(new(5, 5), new(0, -1)));
    }
}
