using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Tests.Shape;

public class LabelsAroundTests
{
    private const double Radius = ViewLabel.Radius;
    private static readonly ViewCell Cell = new(0, 0, 60, 40);
    private static readonly PagePoint[] Corner = [new(10, 30), new(40, 30), new(40, 10)];

    [Fact]
    public void A_label_lies_in_the_direction_it_would_like_where_that_is_free()
    {
        var place = Place(new LabelsAround(Corner, 1, Cell, []), new(40, 30), new(1, 1))!.Place;
        Assert.Equal(place.X - 40, place.Y - 30, 9);
        Assert.True(place.X > 40);
    }

    [Fact]
    public void Labels_touch_neither_the_tube_nor_each_other_nor_the_edge_nor_a_leader_line()
    {
        var places = new LabelsAround(Corner, 1, Cell, []);
        var labels = Enumerable.Range(0, 9)
            .Select(i => Place(places, new(40, 30 - (2 * i)), new(1, 0), halfWidth: i % 3 == 0 ? 4 : Radius)!).ToList();
        for (var i = 0; i < labels.Count; i++)
        {
            Assert.InRange(labels[i].Place.X, labels[i].HalfWidth, Cell.Width - labels[i].HalfWidth);
            Assert.InRange(labels[i].Place.Y, Radius, Cell.Height - Radius);
            Assert.True(labels[i].Core.DistanceTo(new Segment(Corner[0], Corner[1])) > Radius + 0.5);
            Assert.True(labels[i].Core.DistanceTo(new Segment(Corner[1], Corner[2])) > Radius + 0.5);
            Assert.All(labels.Where(other => other != labels[i]), other =>
            {
                Assert.True(labels[i].Core.DistanceTo(other.Core) > 2 * Radius);
                Assert.All(other.Leaders, leader => Assert.True(labels[i].Core.DistanceTo(leader) > Radius));
            });
        }
    }

    [Fact]
    public void A_label_keeps_away_from_what_else_is_drawn_in_the_cell()
    {
        var taken = new Segment(new(45, 35), new(55, 35));
        var label = Place(new LabelsAround(Corner, 1, Cell, [taken]), new(40, 30), new(1, 1))!;
        Assert.True(label.Core.DistanceTo(taken) > Radius + 1);
    }

    [Fact]
    public void A_label_without_a_free_place_is_not_placed() =>
        Assert.Null(Place(new LabelsAround([new(0, 5), new(10, 5)], 1, new(0, 0, 10, 10), []), new(5, 5), new(0, -1)));

    private static ViewLabel? Place(LabelsAround places, PagePoint anchor, PagePoint wanted, double halfWidth = Radius) =>
        places.Place("1", halfWidth, [anchor], wanted);
}
