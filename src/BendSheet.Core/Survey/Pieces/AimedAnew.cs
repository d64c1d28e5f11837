using System.Collections.Immutable;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using MathNet.Numerics.LinearAlgebra;

namespace BendSheet.Core.Survey.Pieces;

/// <summary>A line some of whose bends are made: those as they came out, the others aimed so that B still lands.</summary>
/// <param name="Template">With what is made as it is and the rest aimed anew.</param>
/// <param name="Miss">How far off B then is.</param>
/// <param name="Askew">How far askew it then enters.</param>
public sealed record AimedAnew(LineTemplate Template, Length Miss, Angle Askew)
{
    private const int Refinements = 8;

    /// <summary>
    /// What a change costs, in its scatter, against what is off, in parts of what is wanted: the way between A and B should stay where it
    /// was measured, and a tenth of what is wanted is near enough.
    /// </summary>
    private const double Cost = 2e-3;

    /// <summary>Aims what is not made yet.</summary>
    /// <param name="template">As the sheet has it.</param>
    /// <param name="layout">Of that.</param>
    /// <param name="piece">As far as it is made.</param>
    /// <param name="whole">With all bends.</param>
    /// <param name="errors">Of the whole: what is made as it came out, the rest zero.</param>
    /// <param name="port">Where B is to land.</param>
    /// <returns>Null where B does not land as wanted, or a bend would have to go the other way or take more tube than there is.</returns>
    internal static AimedAnew? Of(
        LineTemplate template, RouteLayout layout, BentPiece piece, BentPiece whole, double[] errors, PieceLanding port)
    {
        int[] free = [.. Enumerable.Range(0, errors.Length).Where(i => IsFree(whole.Errors[i], piece))];
        if (free.Length == 0)
        {
            // Only a coil is left, whose bends nobody changes.
            return null;
        }

        var now = (double[])errors.Clone();
        for (var step = 0; step < Refinements; step++)
        {
            var places = whole.With(now);
            var off = Vector<double>.Build.DenseOfArray(PieceLanding.Of(places).OffFrom(port, template.Wanted));
            var motions = whole.Motions(places);
            var slopes = Matrix<double>.Build.DenseOfColumnArrays(
                free.Select(i => Slope(motions[i], places, whole.Errors[i].Scatter, template.Wanted)));
            var changed = Vector<double>.Build.DenseOfEnumerable(free.Select(i => (now[i] - errors[i]) / whole.Errors[i].Scatter));
            var normal = slopes.TransposeThisAndMultiply(slopes) + (Cost * Matrix<double>.Build.DenseIdentity(free.Length));
            var by = normal.Cholesky().Solve(-slopes.TransposeThisAndMultiply(off) - (Cost * changed));
            for (var k = 0; k < free.Length; k++)
            {
                now[free[k]] += Math.Clamp(by[k], -MostAtOnce, MostAtOnce) * whole.Errors[free[k]].Scatter;
            }
        }

        var shape = whole.ShapeWith(now);
        var landing = PieceLanding.Of(whole.With(now));
        var lands = landing.MissTo(port) <= template.Wanted.Miss.Millimetres && landing.AskewTo(port) <= template.Wanted.Askew.Radians;
        if (!lands || !Array.TrueForAll(shape.Turned, turn => turn is > 0 and < 2 * Math.PI)
            || !Array.TrueForAll(shape.Straights, left => left >= 0))
        {
            return null;
        }

        // A corner may have opened to a U-bend, which the line's legs were not measured for.
        var aimed = template with { Route = RouteOf(layout, shape, template.Bent) };
        return RouteLayout.Of(aimed).Layout is { } anew && anew.Legs.All(leg => leg.StraightLeft >= Length.Zero)
            ? new(aimed, Length.FromMillimetres(landing.MissTo(port)), Angle.FromRadians(landing.AskewTo(port)))
            : null;
    }

    /// <summary>How what is off changes with an error, for one standard deviation of it: by central differences at end B.</summary>
    private static double[] Slope(PieceMotion motion, PiecePlaces places, double scatter, WantedFit wanted)
    {
        const double Step = 0.01;
        var (way, turning) = (motion.OfEndB(places), motion.Beyond.Turning.Cross(places.LastDirection));
        PieceLanding At(double by) => PieceLanding.Of(places.EndB + (by * scatter * way), places.LastDirection + (by * scatter * turning));
        return [.. At(Step).OffFrom(At(-Step), wanted).Select(part => part / (2 * Step))];
    }

    /// <summary>Further than so many deviations in one go the first order is not to be believed.</summary>
    private const double MostAtOnce = 8;

    /// <summary>What can still change: a bend not made yet, its mark, and a roll between two bends that are not both made.</summary>
    private static bool IsFree(PieceError error, BentPiece piece) => error.Kind switch
    {
        PieceErrorKind.Bend or PieceErrorKind.Mark => !piece.IsMade(error.Bend),
        PieceErrorKind.Roll => !piece.IsMade(error.Bend) || !piece.IsMade(error.Bend - 1),
        _ => false,
    };

    private static Route RouteOf(RouteLayout layout, BentShape shape, ImmutableArray<int> made)
    {
        // The line along the tube is penned already: what is made keeps its dial, and the first bend comes to lie beside it.
        var aside = Enumerable.Range(1, made[0] - 1).Sum(i => layout.Bends[i].Bend.Rotation.Radians - shape.Rolled[i]);
        ImmutableArray<Bend> bends =
        [
            .. layout.Bends.Select((one, i) => one.Bend with
            {
                Turn = Angle.FromRadians(shape.Turned[i]),
                Rotation = Angle.FromRadians(shape.Rolled[i] + (i == 0 ? aside : 0)),
                Note = made.Contains(i + 1) ? Made(one.Bend.Note) : one.Bend.Note,
            }),
        ];
        Length Setback(int bend) => bend >= 0 && bend < bends.Length && bends[bend] is { HasCorner: true, FromTangent: false }
            ? BendShape.Of(bends[bend], bends[bend].Turn).Setback
            : Length.Zero;
        return Route.Of(
            [
                .. layout.Legs.Select((leg, i) => new Leg(
                    Length.FromMillimetres(shape.Straights[i]) + Setback(i - 1) + Setback(i), leg.At, MeasuredTo.Corner)),
            ],
            bends);
    }

    private static string Made(string? note) => note is null ? "made" : $"made; {note}";
}
