using BendSheet.Core.Car;
using BendSheet.Core.Geometry;
using BendSheet.Core.Survey.Pieces;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Geometry;
using BendSheet.Core.Workshop;
using CsCheck;

namespace BendSheet.Core.Tests.Survey.Pieces;

public class BentPieceTests
{
    private static LineTemplate Line { get; } = Lines.Of(Lines.Bender(15), [120, 100, 200, 80], (0, 45), (90, 30), (-45, 90));

    /// <summary>
    /// From the corner, the back of a bend lies R·(1/cos(bend/2) − 1) − w/2 inwards along the bisector: the corner, the circle's centre and
    /// a tangent point are a right-angled triangle.
    /// </summary>
    [Fact]
    public void Backs_lie_inwards_of_the_corners() => Shape.Roomy.Sample(
        shape =>
        {
            var template = shape.Template();
            var places = Piece(template).Nominal;
            var corners = CornerPoints.Build(shape.Legs, shape.Turns, [0, .. shape.Rotations.Skip(1)]);
            AssertGeometry.Equal(corners[^1], places.EndB);
            for (var i = 1; i <= shape.Turns.Length; i++)
            {
                var half = shape.Turns[i - 1] * Math.PI / 360;
                var (back, on) = (Unit(corners[i - 1] - corners[i]), Unit(corners[i + 1] - corners[i]));
                var inwards = (template.Bender.Radius.Millimetres * ((1 / Math.Cos(half)) - 1))
                    - (Lines.Tube.OutsideDiameter.Millimetres / 2);
                AssertGeometry.Equal(corners[i] + (inwards * Unit(back + on)), places.Touched[i]!.Value);
            }
        },
        iter: 200);

    /// <summary>3/16 in tube, 90° on 9/16 in: 14.2875·(√2 − 1) − 2.38 = 3.54 mm.</summary>
    [Fact]
    public void On_brake_tube_the_back_of_a_right_angle_is_three_and_a_half_millimetres_inwards()
    {
        var places = Piece(Lines.Of(Lines.Bender(Lines.NineSixteenths), [100, 100], (0, 90))).Nominal;
        Assert.Equal(3.54, (places.Touched[1]!.Value - new Vector3D(100, 0, 0)).Norm, 2);
    }

    /// <summary>
    /// Held at A the bend starts where it was marked, and the tube that is bent too far comes off the straight towards B; held at B it is
    /// the same looked at from the other end.
    /// </summary>
    [Theory]
    [InlineData(TubeEnd.A)]
    [InlineData(TubeEnd.B)]
    public void Bent_too_far_the_tube_comes_off_the_swept_side(TubeEnd held)
    {
        var layout = CarPlan.Line(Line).Layout!;
        var piece = new BentPiece(layout, [held, held, held], Lines.Tube.OutsideDiameter);
        var errors = new double[piece.Errors.Length];
        errors[piece.IndexOf(PieceErrorKind.Bend, 2)] = Lines.Deg(5).Radians;
        var shape = piece.ShapeWith(errors);
        var nominal = piece.ShapeWith(new double[errors.Length]);
        var taken = 15 * Lines.Deg(5).Radians;
        Assert.Equal(nominal.Straights[2] - (held == TubeEnd.A ? taken : 0), shape.Straights[2], 9);
        Assert.Equal(nominal.Straights[1] - (held == TubeEnd.B ? taken : 0), shape.Straights[1], 9);
        Assert.Equal(Lines.Deg(35).Radians, shape.Turned[1], 9);

        // No tube is gained or lost.
        Assert.Equal(
            nominal.Straights.Sum() + (15 * nominal.Turned.Sum()), shape.Straights.Sum() + (15 * shape.Turned.Sum()), 9);
    }

    /// <summary>Against central differences of the piece walked anew, for every error and everything that can be measured.</summary>
    [Theory]
    [InlineData(TubeEnd.A)]
    [InlineData(TubeEnd.B)]
    public void It_moves_with_each_error_as_it_does_when_it_is_bent_again(TubeEnd held) => Shape.Roomy.Sample(
        shape =>
        {
            var layout = CarPlan.Line(shape.Template()).Layout!;
            var piece = new BentPiece(layout, [.. layout.Bends.Select(_ => held)], Lines.Tube.OutsideDiameter);
            var places = piece.Nominal;
            PieceQuantity[] quantities =
            [
                .. PieceChecks.Quantities(places),
                .. Enumerable.Range(1, piece.Bends + 1).SelectMany(
                    to => new PieceQuantity[] { new(PieceKind.Ahead, 0, to), new(PieceKind.Aside, 0, to) }),
                .. Enumerable.Range(1, piece.Bends).SelectMany(
                    bend => new PieceQuantity[] { new(PieceKind.Bend, 0, bend), new(PieceKind.Roll, 0, bend) }),
            ];
            foreach (var (i, motion) in piece.Motions(places).Index())
            {
                const double Step = 1e-6;
                var (more, less) = (new double[piece.Errors.Length], new double[piece.Errors.Length]);
                (more[i], less[i]) = (Step, -Step);
                var (up, down) = (piece.With(more), piece.With(less));
                Assert.All(quantities, quantity => Assert.Equal(
                    (up.ValueOf(quantity) - down.ValueOf(quantity)) / (2 * Step), motion.Of(quantity, places), 1e-2));
                Assert.InRange(((1 / (2 * Step) * (up.EndB - down.EndB)) - motion.OfEndB(places)).Norm, 0, 1e-2);
                var turning = motion.Beyond.Turning.Cross(places.LastDirection);
                Assert.InRange(((1 / (2 * Step) * (up.LastDirection - down.LastDirection)) - turning).Norm, 0, 1e-4);
            }
        },
        iter: 200);

    [Fact]
    public void What_is_not_bent_yet_is_straight_tube()
    {
        var layout = CarPlan.Line(Line).Layout!;
        var piece = new BentPiece(layout, [TubeEnd.A, TubeEnd.A, TubeEnd.A], Lines.Tube.OutsideDiameter, [3]);
        var places = piece.Nominal;
        Assert.Equal([false, false, true], Enumerable.Range(1, 3).Select(piece.IsMade));
        Assert.True(places.Touched[1] is null && places.Touched[2] is null && places.Touched[4] is null);

        // Straight from A to where bend 3 begins, then 90°.
        var reached = layout.Legs.Take(3).Sum(leg => leg.StraightLeft.Millimetres) + (15 * Lines.Deg(75).Radians);
        Assert.Equal(reached + 15, places.EndB.X, 6);
        Assert.Equal(0, places.LastDirection.X, 9);
    }

    [Fact]
    public void A_coil_is_one_piece_and_a_U_bend_has_a_back()
    {
        var template = Lines.Of(Lines.Bender(10), [50, 50, 50], (0, 180), (90, 45)) with
        {
            Habit = MeasuredTo.Straight,
            Wire = new(null, Lines.Mm(10)),
        };
        var places = Piece(template).Nominal;

        // The straight of 50, the radius and half the tube.
        Assert.Equal(50 + 10 + (Lines.Tube.OutsideDiameter.Millimetres / 2), places.Touched[1]!.Value.X, 6);
        Assert.Equal(10, places.Touched[1]!.Value.Y, 6);
    }

    internal static BentPiece Piece(LineTemplate template)
    {
        var solved = CarPlan.Line(template);
        return new(solved.Layout!, [.. solved.Plan!.Bends.Select(bend => bend.Held)], template.Tube.OutsideDiameter);
    }

    private static Vector3D Unit(Vector3D vector) => 1 / vector.Norm * vector;
}
