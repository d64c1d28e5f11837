using BendSheet.Core.Geometry;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Picture;
using MathNet.Numerics.LinearAlgebra;

namespace BendSheet.Sheets.Tests.Picture;

/// <summary>
/// The views against plain rotation matrices: the car is turned until the eye stands where a drawing of the X and Z axes is looked at from.
/// </summary>
public class PictureViewTests
{
    private const int Seed = 11;
    private const double Near = 1e-9;

    public static TheoryData<int, double> Turns => new() { { 1, 180 }, { 2, -90 } };

    [Theory]
    [MemberData(nameof(Turns))]
    public void A_view_from_the_side_is_the_car_turned_about_its_upright_axis(int view, double degrees)
    {
        // Of ISO 8855's axes: seen along +Y, X points to the right and Z up.
        var turn = AboutUp(degrees);
        foreach (var point in Points())
        {
            var turned = turn * Vector<double>.Build.Dense([point.X, point.Y, point.Z]);
            var drawn = PictureView.All[view].Of(point);
            Assert.Equal(turned[0], drawn.X, Near);
            Assert.Equal(-turned[2], drawn.Y, Near);
        }
    }

    [Fact]
    public void The_plan_is_the_car_turned_half_about_and_seen_from_above()
    {
        foreach (var point in Points())
        {
            var turned = AboutUp(180) * Vector<double>.Build.Dense([point.X, point.Y, point.Z]);
            var drawn = PictureView.Above.Of(point);
            Assert.Equal(turned[0], drawn.X, Near);
            Assert.Equal(-turned[1], drawn.Y, Near);
        }
    }

    [Theory]
    [InlineData(190, 130)]
    [InlineData(277, 170)]
    public void All_views_have_the_stated_scale_and_stand_in_line_as_a_drawing_does(double width, double height)
    {
        var picture = RandomCar.Placed(new Random(Seed), 12);
        var layout = PictureLayout.Of(PictureItem.Of(picture, text => text), width, height);
        var (above, side, front) = (Ports(layout, 0), Ports(layout, 1), Ports(layout, 2));
        List<Vector3D> onCar = [.. picture.Parts.SelectMany(part => part.Places)];
        Assert.Equal(onCar.Count, above.Count);
        Assert.InRange(onCar.Count, 4, 100);
        for (var i = 1; i < onCar.Count; i++)
        {
            var way = onCar[i] - onCar[0];
            Assert.Equal(-way.X / layout.Denominator, above[i].X - above[0].X, Near);
            Assert.Equal(way.Y / layout.Denominator, above[i].Y - above[0].Y, Near);
            Assert.Equal(-way.Z / layout.Denominator, side[i].Y - side[0].Y, Near);
            Assert.Equal(way.Y / layout.Denominator, front[i].X - front[0].X, Near);
            Assert.Equal(above[i].X, side[i].X, Near);
            Assert.Equal(side[i].Y, front[i].Y, Near);
        }

        Assert.All(layout.Drawn.Zip(layout.Cells), view => Assert.All(view.First.SelectMany(item => item.Points), point =>
        {
            Assert.InRange(point.X, view.Second.Left, view.Second.Left + view.Second.Width);
            Assert.InRange(point.Y, view.Second.Top, view.Second.Top + view.Second.Height);
        }));
        Assert.InRange(layout.Height, 0, height);
    }

    private static List<PagePoint> Ports(PictureLayout layout, int view) =>
        [.. layout.Drawn[view].Where(item => item.Item.Kind == ItemKind.Part).SelectMany(item => item.Points)];

    private static Matrix<double> AboutUp(double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return Matrix<double>.Build.DenseOfArray(new[,] { { cos, -sin, 0 }, { sin, cos, 0 }, { 0, 0, 1 } });
    }

    private static IEnumerable<Vector3D> Points()
    {
        var random = new Random(Seed);
        return Enumerable.Range(0, 50).Select(_ => new Vector3D(random.Next(3000), random.Next(-900, 900), random.Next(1000)));
    }
}
