using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.References;

/// <summary>
/// Random tubes against a general-purpose geometry kernel, which made its fillets and measured its wires with its own algorithms: lengths,
/// points and boxes. It proves no convention: the program that drives it reads rows and rotations as we do.
/// </summary>
/// <remarks>
/// The kernel trims lines and circles in closed form and measures them to the last digits of a double, so the one tolerance of figures
/// found by two routes holds here as well; the lengths were found to agree to 1e-15 of themselves.
/// </remarks>
public class KernelRoutesTests
{
    private const int Fewest = 200;

    /// <summary>
    /// The kernel calls points nearer than this the same, and leaves that much air between a swept tube and a face of its box.
    /// </summary>
    private const double AirBesideTube = 1e-7;

    /// <summary>From 0, in the order of the table.</summary>
    public static TheoryData<int> Routes { get; } = [.. Enumerable.Range(0, KernelRoute.All.Count)];

    [Fact]
    public void There_are_enough_routes_of_every_kind()
    {
        Assert.True(KernelRoute.All.Count >= Fewest, $"{KernelRoute.All.Count} routes");
        Assert.Equal(Enumerable.Range(1, 9), KernelRoute.All.Select(route => route.Bends.Length).Distinct().Order());
        Assert.All(KernelRoute.All, route => Assert.All(route.Bends, bend => Assert.InRange(bend, 5, 150)));
        Assert.All(KernelRoute.All, route => Assert.InRange(route.Radius, 8, 30));
        Assert.All((double[])[30, 45, 90], bend => Assert.Contains(KernelRoute.All, route => route.Bends.Contains(bend)));
        Assert.All((double[])[0, 180], roll => Assert.Contains(KernelRoute.All, route => route.Rotations.Skip(1).Contains(roll)));
        Assert.All(KernelRoute.All, route => Assert.Equal(0, route.BeyondTubeBox));
    }

    [Theory]
    [MemberData(nameof(Routes))]
    public void The_centreline_is_as_long_as_the_wire_in_three_ways(int index)
    {
        var route = KernelRoute.All[index];
        var template = route.Template();
        var layout = RouteLayout.Of(template).Layout!;
        var gains = layout.Bends.Sum(bend => bend.Gain!.Value.Millimetres);
        AssertGeometry.Equal(route.Length, layout.Centreline(Frame.Default).Length.Millimetres, "straights plus arcs");
        AssertGeometry.Equal(route.Length, route.Legs.Sum() - gains, "legs less gains");
        AssertGeometry.Equal(route.Length, template.Plan().DevelopedLength.Millimetres, "developed length");
    }

    [Theory]
    [MemberData(nameof(Routes))]
    public void Each_straight_and_each_arc_is_as_long_as_its_edge(int index)
    {
        var route = KernelRoute.All[index];
        var centreline = route.Template().Centreline();
        Same(route.Straights, centreline.Straights.Select(straight => straight.Length), "straight");
        Same(route.Arcs, centreline.Arcs.Select(arc => arc.Length), "arc");
    }

    [Theory]
    [MemberData(nameof(Routes))]
    public void Each_bend_starts_and_ends_where_the_edges_before_it_end(int index)
    {
        var route = KernelRoute.All[index];
        var bends = route.Template().Plan().Bends;
        var starts = route.Arcs.Select((_, i) => route.Straights.Take(i + 1).Sum() + route.Arcs.Take(i).Sum()).ToArray();
        Same(starts, bends.Select(bend => bend.Start), "start of bend");
        Same([.. starts.Zip(route.Arcs, (start, arc) => start + arc)], bends.Select(bend => bend.End), "end of bend");
    }

    [Theory]
    [MemberData(nameof(Routes))]
    public void The_corners_lie_where_the_polyline_has_them(int index)
    {
        var route = KernelRoute.All[index];
        AssertGeometry.Equal(route.Corners, route.Template().Centreline().CornerPoints(), "corner");
    }

    [Theory]
    [MemberData(nameof(Routes))]
    public void So_far_along_the_centreline_lies_the_point_of_the_wire(int index)
    {
        var route = KernelRoute.All[index];
        var centreline = route.Template().Centreline();
        Assert.Equal(3, route.Places.Length);
        AssertGeometry.Equal(
            route.PointsAtPlaces, [.. route.Places.Select(place => PointAt(centreline, Lines.Mm(place)))], "place");
    }

    [Fact]
    public void Many_of_the_places_lie_in_an_arc_and_many_in_a_straight()
    {
        var inArc = KernelRoute.All.Sum(route =>
        {
            var bends = route.Template().Plan().Bends;
            return route.Places.Count(place => bends.Any(bend => bend.Start < Lines.Mm(place) && Lines.Mm(place) < bend.End));
        });
        Assert.InRange(inArc, 50, (3 * KernelRoute.All.Count) - 50);
    }

    [Theory]
    [MemberData(nameof(Routes))]
    public void The_box_of_the_centreline_is_the_box_of_the_wire(int index)
    {
        var route = KernelRoute.All[index];
        var box = Envelope.Of(route.Template().Centreline(), Length.Zero);
        AssertGeometry.Equal(route.Box.X, box.X.Millimetres, "along X");
        AssertGeometry.Equal(route.Box.Y, box.Y.Millimetres, "along Y");
        AssertGeometry.Equal(route.Box.Z, box.Z.Millimetres, "along Z");
    }

    [Theory]
    [MemberData(nameof(Routes))]
    public void The_box_of_the_tube_is_the_box_of_the_swept_disk(int index)
    {
        var route = KernelRoute.All[index];
        var box = Envelope.Of(route.Template().Centreline(), Lines.Mm(route.TubeDiameter));
        InBoxWithAir(route.TubeBox.X, box.X.Millimetres, "along X");
        InBoxWithAir(route.TubeBox.Y, box.Y.Millimetres, "along Y");
        InBoxWithAir(route.TubeBox.Z, box.Z.Millimetres, "along Z");
    }

    private static void Same(double[] expected, IEnumerable<Length> actual, string what)
    {
        var lengths = actual.ToArray();
        Assert.Equal(expected.Length, lengths.Length);
        for (var i = 0; i < lengths.Length; i++)
        {
            AssertGeometry.Equal(expected[i], lengths[i].Millimetres, $"{what} {i + 1}");
        }
    }

    private static void InBoxWithAir(double kernel, double actual, string what)
    {
        AssertGeometry.AtMost(kernel, actual, what);
        AssertGeometry.AtMost(actual, kernel - (2 * AirBesideTube), what + ", the kernel's box without its air");
    }

    private static Vector3D PointAt(TubeCentreline centreline, Length place)
    {
        var left = place;
        for (var i = 0; i < centreline.Arcs.Length; i++)
        {
            var straight = centreline.Straights[i];
            if (left <= straight.Length)
            {
                return straight.Start.Advanced(left).Position;
            }

            left -= straight.Length;
            var arc = centreline.Arcs[i];
            if (left <= arc.Length)
            {
                return arc.PointAt(Angle.FromRadians(left / arc.Radius));
            }

            left -= arc.Length;
        }

        return centreline.Straights[^1].Start.Advanced(left).Position;
    }
}
