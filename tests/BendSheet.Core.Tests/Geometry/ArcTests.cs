using BendSheet.Core.Geometry;

namespace BendSheet.Core.Tests.Geometry;

public class ArcTests
{
    public static TheoryData<double> Turns { get; } = [0.1, 30, 90, 179, 180, 270, 360];

    [Theory]
    [MemberData(nameof(Turns))]
    public void Its_length_is_that_of_densely_sampled_chords(double turn)
    {
        var arc = Arc(turn);
        AssertGeometry.Equal(SampledLength(arc), arc.Length.Millimetres);
    }

    [Theory]
    [MemberData(nameof(Turns))]
    public void Its_points_lie_round_its_centre_in_its_plane(double turn)
    {
        var arc = Arc(turn);
        for (var i = 0; i <= 20; i++)
        {
            var arm = arc.PointAt(Lines.Deg(turn * i / 20)) - arc.Centre;
            AssertGeometry.Equal(12.5, arm.Norm, "radius");
            AssertGeometry.Equal(0, arm.Dot(arc.Start.Axis), "out of plane");
        }
    }

    [Theory]
    [InlineData(30)]
    [InlineData(90)]
    [InlineData(150)]
    public void Its_corner_lies_on_both_straights_prolonged(double turn)
    {
        var arc = Arc(turn);
        var corner = arc.Corner!.Value;
        var end = arc.End;
        AssertGeometry.Equal(0, (corner - arc.Start.Position).Cross(arc.Start.Direction).Norm, "off the straight before");
        AssertGeometry.Equal(0, (end.Position - corner).Cross(end.Direction).Norm, "off the straight behind");
        AssertGeometry.Equal(corner.DistanceTo(arc.Start.Position), corner.DistanceTo(end.Position), "setbacks");
    }

    [Theory]
    [InlineData(180)]
    [InlineData(270)]
    [InlineData(360)]
    public void From_half_a_turn_on_there_is_no_corner(double turn) => Assert.Null(Arc(turn).Corner);

    /// <summary>Chords of 64, 128 and 256 pieces; two steps of Richardson take out their errors in 1/n² and 1/n⁴.</summary>
    internal static double SampledLength(Arc arc)
    {
        var (coarse, middle, fine) = (Chords(arc, 64), Chords(arc, 128), Chords(arc, 256));
        var (better, best) = (((4 * middle) - coarse) / 3, ((4 * fine) - middle) / 3);
        return ((16 * best) - better) / 15;
    }

    private static double Chords(Arc arc, int pieces)
    {
        var points = Enumerable.Range(0, pieces + 1).Select(i => arc.PointAt(Lines.Deg(arc.Turn.Degrees * i / pieces))).ToList();
        return points.Skip(1).Select((point, i) => point.DistanceTo(points[i])).Sum();
    }

    private static Arc Arc(double turn) => new(Frame.Default.Advanced(Lines.Mm(7)).Rolled(Lines.Deg(35)), Lines.Mm(12.5), Lines.Deg(turn));
}
