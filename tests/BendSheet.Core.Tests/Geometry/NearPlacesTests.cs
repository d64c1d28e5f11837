using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Geometry;

/// <summary>Least distances that can be told by hand, and a second route: both stretches walked in small steps.</summary>
public class NearPlacesTests
{
    private const double Root2 = 1.4142135623730951;

    private static readonly Vector3D X = new(1, 0, 0);
    private static readonly Vector3D Y = new(0, 1, 0);
    private static readonly Vector3D Z = new(0, 0, 1);

    [Fact]
    public void Straights_that_cross_over_each_other_are_as_far_apart_as_their_height() =>
        Are(3, 50, 20, Straight(new(-50, 0, 0), X, 100), Straight(new(0, -20, 3), Y, 100));

    [Fact]
    public void Straights_that_end_before_they_cross_are_nearest_at_an_end() =>
        Are(5, 100, 0, Straight(new(-104, 0, 3), X, 100), Straight(new(0, 0, 0), Y, 100));

    [Fact]
    public void Parallel_straights_are_as_far_apart_everywhere() => Assert.Equal(
        7, Nearest(Straight(default, X, 100), Straight(new(30, 7, 0), X, 20)).Distance.Millimetres, 9);

    [Fact]
    public void Straights_in_line_are_nearest_end_to_end() => Are(10, 50, 0, Straight(default, X, 50), Straight(new(60, 0, 0), X, 50));

    [Fact]
    public void Straights_almost_in_one_direction_that_cross_are_found_to_cross() => Assert.Equal(
        0,
        Nearest(Straight(new(-500, -500e-7, 0), new(1, 1e-7, 0), 1000), Straight(new(-500, 0, 0), X, 1000)).Distance.Millimetres,
        9);

    [Fact]
    public void A_straight_through_the_eye_of_a_ring_is_a_radius_away() => Assert.Equal(
        25, Nearest(Straight(new(0, 25, -50), Z, 100), Arc(default, X, Y, 25, 360)).Distance.Millimetres, 6);

    [Fact]
    public void A_straight_past_a_ring_is_nearest_where_the_ring_bulges() =>
        Are(4, 50, Math.PI / 2 * 25, Straight(new(29, -25, 0), Y, 100), Arc(default, X, Y, 25, 360));

    [Fact]
    public void A_straight_past_the_open_side_of_an_arc_is_nearest_to_its_end() =>
        Are(29, 0, 0, Straight(new(-29, 0, 0), -1 * X, 100), Arc(default, X, Y, 25, 90));

    [Fact]
    public void Rings_one_above_the_other_are_as_far_apart_everywhere() => Assert.Equal(
        5, Nearest(Arc(default, X, Y, 25, 360), Arc(new(0, 0, 5), X, Y, 25, 360)).Distance.Millimetres, 6);

    [Fact]
    public void Rings_in_one_another_are_as_far_apart_as_their_radii() => Assert.Equal(
        5, Nearest(Arc(default, X, Y, 25, 360), Arc(new(0, 5, 0), X, Y, 20, 360)).Distance.Millimetres, 6);

    [Fact]
    public void A_ring_on_itself_is_nowhere_apart() =>
        Assert.Equal(0, Nearest(Arc(default, X, Y, 25, 360), Arc(new(25, 25, 0), Y, -1 * X, 25, 300)).Distance.Millimetres, 6);

    [Fact]
    public void Links_of_a_chain_that_lie_half_a_radius_inside_each_other_are_half_a_radius_apart() => Assert.Equal(
        10, Nearest(Arc(new(0, -20, 0), X, Y, 20, 360), Arc(new(0, 10, 0), Z, Y, 20, 360)).Distance.Millimetres, 6);

    [Fact]
    public void Rings_square_to_each_other_about_one_centre_cross_or_keep_their_radii_apart()
    {
        Assert.Equal(0, Nearest(Arc(new(0, -20, 0), X, Y, 20, 360), Arc(new(0, -20, 0), Z, Y, 20, 360)).Distance.Millimetres, 6);
        Assert.Equal(8, Nearest(Arc(new(0, -20, 0), X, Y, 20, 360), Arc(new(0, -12, 0), Z, Y, 12, 360)).Distance.Millimetres, 6);
    }

    [Fact]
    public void The_open_ends_of_two_half_rings_are_told_from_their_circles() =>
        Assert.Equal(
            10 * Root2, Nearest(Arc(default, X, Y, 25, 180), Arc(new(-10, -10, 0), -1 * X, -1 * Y, 25, 180)).Distance.Millimetres, 6);

    /// <summary>
    /// No pair of steps may be nearer than what was found; and the nearest of them, from which no place of the two stretches is further
    /// than half a step each, cannot be much further away.
    /// </summary>
    [Fact]
    public void Walked_in_small_steps_no_two_places_are_nearer()
    {
        var random = new Random(20240302);
        for (var pair = 0; pair < 400; pair++)
        {
            var first = Any(random);
            var second = Any(random);
            var found = Nearest(first, second).Distance.Millimetres;
            var (stepped, step) = Stepped(first, second);
            Assert.True(found <= stepped + Tolerances.SamePoint.Millimetres, $"pair {pair}: found {found}, but steps come to {stepped}");
            Assert.True(found >= stepped - step, $"pair {pair}: found {found}, and steps of {step} come only to {stepped}");
        }
    }

    private static (double Distance, double Step) Stepped(Stretch first, Stretch second)
    {
        const int Steps = 200;
        Vector3D[] Points(Stretch stretch) =>
            [.. Enumerable.Range(0, Steps + 1).Select(i => stretch.PointAt((double)i / Steps * stretch.Length))];
        var others = Points(second);
        return (Points(first).Min(point => others.Min(point.DistanceTo)), (first.Length + second.Length).Millimetres / (2 * Steps));
    }

    private static Stretch Any(Random random)
    {
        Vector3D Vector() => new((2 * random.NextDouble()) - 1, (2 * random.NextDouble()) - 1, (2 * random.NextDouble()) - 1);
        Vector3D Unit(Vector3D vector) => 1 / vector.Norm * vector;
        var direction = Unit(Vector());
        var start = 30 * Vector();
        // A third of them in one plane, where the nearest places are often no single ones.
        return random.Next(6) switch
        {
            0 => Straight(start, direction, 100 * random.NextDouble()),
            1 => Straight(start with { Z = 0 }, X, 100 * random.NextDouble()),
            2 => Arc(start with { Z = 0 }, X, Y, 5 + (40 * random.NextDouble()), 360 * random.NextDouble()),
            _ => Arc(start, direction, Unit(direction.Cross(Vector())), 5 + (40 * random.NextDouble()), 360 * random.NextDouble()),
        };
    }

    private static void Are(double distance, double onFirst, double onSecond, Stretch first, Stretch second)
    {
        foreach (var (places, swapped) in new[] { (Nearest(first, second), false), (Nearest(second, first), true) })
        {
            Assert.Equal(distance, places.Distance.Millimetres, 6);

            // Near the nearest place the distance hardly changes: a millionth of it is some thousandths along the tube.
            Assert.Equal(onFirst, (swapped ? places.OnSecond : places.OnFirst).Millimetres, 0.01);
            Assert.Equal(onSecond, (swapped ? places.OnFirst : places.OnSecond).Millimetres, 0.01);
        }
    }

    private static NearPlaces Nearest(Stretch first, Stretch second) =>
        NearPlaces.Nearer(first, second, double.PositiveInfinity, new SearchEffort())!;

    private static Stretch Straight(Vector3D start, Vector3D direction, double length) =>
        Stretch.Of(new Straight(new(start, direction, default), Lines.Mm(length)));

    private static Stretch Arc(Vector3D start, Vector3D direction, Vector3D side, double radius, double turn) =>
        Stretch.Of(new Arc(new(start, direction, side), Lines.Mm(radius), Lines.Deg(turn)));
}
