using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Tests.Shape;

public class ShapeViewsTests
{
    private const double Width = 190;
    private const double Height = 40;

    /// <summary>From the front of the car to its back axle: in the pictorial view taller than wide.</summary>
    private const string Tall = """
            - {straight: 125, bend: 60}
            - {straight: 150, rotate: 120 ccw, bend: 75}
            - {straight: 1770, rotate: 90 cw, bend: 25}
            - {straight: 95, rotate: 180, bend: 25}
            - {straight: 165}
        """;

    [Fact]
    public void A_picture_taller_than_wide_lies_down_where_it_is_drawn_larger_so_with_A_on_the_left()
    {
        var sheet = Content("rows:\n" + Tall);
        var (views, layout) = new ShapeViews(sheet, new TextMeasure()).Laid(Width, Height);
        var along = views[0].Of(sheet.Shape.EndB) - views[0].Of(sheet.Shape.EndA);
        Assert.True(along.X > Math.Abs(along.Y), $"from A to B it goes {along}");
        Assert.True(layout.Pictorial < Upright(sheet).Pictorial);
        Assert.Equal(0, views[0].Right.Dot(views[0].Up), 1e-12);
        Assert.True((views[0].Right.Cross(views[0].Up) - views[0].Nearness).Norm < 1e-12, "turned, and not seen in a mirror");
    }

    [Fact]
    public void On_the_car_up_stays_up()
    {
        var sheet = Content("start: {heading: up, towards: left}\n    rows:\n" + Tall);
        var (views, _) = new ShapeViews(sheet, new TextMeasure()).Laid(Width, Height);
        Assert.True(views[0].Up.Z > 0.6 && Math.Abs(views[0].Right.Z) < 1e-12);
    }

    [Fact]
    public void A_picture_that_has_room_enough_stays_upright()
    {
        var sheet = Content("rows:\n" + Tall);
        var (views, _) = new ShapeViews(sheet, new TextMeasure()).Laid(Width, 250);
        Assert.True(Math.Abs(views[0].Up.Z) > 0.6 && Math.Abs(views[0].Right.Z) < 1e-12);
    }

    [Theory]
    [InlineData("rows:\n" + Tall)]
    [InlineData("start: {heading: up, towards: left}\n    rows:\n" + Tall)]
    [InlineData("legs: [{forward: 90}, {down: 220, left: 50}, {back: 310, right: 140}, {down: 85}]")]
    public void A_line_and_its_mirror_image_are_a_pair_in_the_picture(string line)
    {
        var sheets = Printed.AnyContents(Printed.Head + "  left:\n    " + line + "\n  right: {mirror: left}\n");
        Assert.True(sheets[0].IsTwinOf(sheets[1]));
        var (left, right) = (PictorialOutline.Of(sheets[0]), PictorialOutline.Of(sheets[1]));
        var (fromLeft, fromRight) = (left.Points.Average(point => point.X), right.Points.Average(point => point.X));
        Assert.All(left.Points.Zip(right.Points), pair =>
        {
            Assert.Equal(pair.First.X - fromLeft, fromRight - pair.Second.X, 1e-6);
            Assert.Equal(pair.First.Y - left.Points[0].Y, pair.Second.Y - right.Points[0].Y, 1e-6);
        });
    }

    [Fact]
    public void In_too_little_room_bends_share_labels_and_it_is_known()
    {
        var sheet = Printed.Contents(Printed.ManyBends(14))[0];
        var views = new ShapeViews(sheet, new TextMeasure());
        Assert.False(views.NumbersAllBends(views.At(Width, 40).Labels));
        Assert.True(views.NumbersAllBends(views.At(Width, 200).Labels));
    }

    [Fact]
    public void Less_room_than_empty_cells_need_is_exceeded()
    {
        var (_, layout) = new ShapeViews(Printed.Contents(Printed.ManyBends(40))[0], new TextMeasure()).Laid(Width, 5);
        Assert.InRange(layout.Height, 5, 60);
    }

    private static ViewLayout Upright(SheetContent sheet) => ViewLayout.Of(
        [.. new[] { ViewDirection.Best(sheet.Shape, sheet.TubeDiameter.Millimetres) }.Concat(Projection.Flat)
            .Select(view => DrawnTube.Size(Polyline.Of(sheet.Shape), view, sheet.TubeDiameter.Millimetres))],
        Width,
        Height);

    private static SheetContent Content(string line) => Assert.Single(Printed.Contents(Printed.Head + "  rear:\n    " + line));
}
