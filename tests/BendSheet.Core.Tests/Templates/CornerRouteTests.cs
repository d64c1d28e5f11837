using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Tests.Templates;

public class CornerRouteTests
{
    /// <summary>Corners anywhere on the car, none of them square: the tube's own corners and ends lie where they were measured.</summary>
    [Fact]
    public void The_tube_lies_where_its_corners_were_measured()
    {
        var random = new Random(20261126);
        for (var round = 0; round < 50; round++)
        {
            var point = new Vector3D(500 * random.NextDouble(), 500 * random.NextDouble(), 500 * random.NextDouble());
            var points = new List<Vector3D> { point };
            for (var i = 0; i < 4; i++)
            {
                var way = new Vector3D(random.NextDouble() + 0.3, random.NextDouble() - 0.5, random.NextDouble() - 0.5);
                points.Add(points[^1] + (200 / way.Norm * way));
            }

            var bender = Lines.Bender(10);
            var line = CornerRoute.Read([.. points.Select(corner => new CornerPoint(corner, Lines.NameAt))], bender).Line!;
            var template = Lines.Of(bender, [100, 100], (0, 90)) with { Route = line.Route, Start = line.Start, LiesOnCar = true };
            AssertGeometry.Equal(points, template.Centreline().CornerPoints());
            AssertGeometry.Equal(0, line.Start.Direction.Dot(line.Start.Side));
            AssertGeometry.Equal(1, line.Start.Side.Norm);
        }
    }
}
