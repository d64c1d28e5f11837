using System.Collections.Immutable;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Survey.Pieces;

/// <summary>What can come out different from the sheet.</summary>
internal enum PieceErrorKind
{
    /// <summary>What a bend turned.</summary>
    Bend,

    /// <summary>How a bend's plane was rolled against the one before.</summary>
    Roll,

    /// <summary>Where along the tube a bend was made; towards B is more.</summary>
    Mark,

    /// <summary>How long the first straight is, all marks being right among themselves.</summary>
    EndA,

    /// <summary>How long the last straight is.</summary>
    EndB,
}

/// <summary>One of them.</summary>
/// <param name="Kind">What.</param>
/// <param name="Bend">The number of the bend; 0 for an end.</param>
/// <param name="Scatter">One standard deviation, in millimetres or radians.</param>
internal readonly record struct PieceError(PieceErrorKind Kind, int Bend, double Scatter);

/// <summary>A tube as it was bent, as a function of what may have come out different from the sheet.</summary>
/// <remarks>
/// A bend that is turned further takes its tube from the side that is swept, since it starts where the held side does: motion of a rigid
/// body about the end of the bend on the swept side.
/// </remarks>
internal sealed class BentPiece
{
    private readonly RouteLayout _layout;
    private readonly ImmutableArray<TubeEnd> _held;
    private readonly bool[] _made;
    private readonly double _halfWidth;

    /// <summary>A piece that was made by a sheet.</summary>
    /// <param name="layout">What was aimed at.</param>
    /// <param name="held">The end that was held at each bend.</param>
    /// <param name="outsideDiameter">Of the tube.</param>
    /// <param name="made">The numbers of the bends that are made; null means all.</param>
    public BentPiece(
        RouteLayout layout,
        ImmutableArray<TubeEnd> held,
        Length outsideDiameter,
        IReadOnlyCollection<int>? made = null)
    {
        _layout = layout;
        _held = held;
        _halfWidth = outsideDiameter.Millimetres / 2;
        _made = [.. Enumerable.Range(1, layout.Bends.Length).Select(number => made?.Contains(number) ?? true)];
        Errors = [.. PossibleErrors()];
    }

    /// <summary>Everything that may be off, bend after bend, the ends last. What a coil's parts do is not looked at one by one.</summary>
    public ImmutableArray<PieceError> Errors { get; }

    /// <summary>How many bends the line has.</summary>
    public int Bends => _layout.Bends.Length;

    /// <summary>Every bend is made.</summary>
    public bool IsWhole => Array.TrueForAll(_made, made => made);

    /// <summary>Whether a bend is made.</summary>
    /// <param name="number">From 1.</param>
    public bool IsMade(int number) => _made[number - 1];

    /// <summary>What the sheet has a bend turn, in radians.</summary>
    /// <param name="number">From 1.</param>
    public double Aimed(int number) => _layout.Bends[number - 1].Bend.Turn.Radians;

    /// <summary>The straight before a bend as the sheet has it, in millimetres.</summary>
    /// <param name="number">From 1; one more than there are bends is the last straight.</param>
    public double StraightBefore(int number) => _layout.Legs[number - 1].StraightLeft.Millimetres;

    /// <summary>Which of the errors; a negative number where there is none.</summary>
    public int IndexOf(PieceErrorKind kind, int bend)
    {
        for (var i = 0; i < Errors.Length; i++)
        {
            if (Errors[i].Kind == kind && Errors[i].Bend == bend)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>The next roll after that of a bend; null where there is none.</summary>
    public int? NextRoll(int bend)
    {
        for (var i = IndexOf(PieceErrorKind.Roll, bend) + 1; i < Errors.Length; i++)
        {
            if (Errors[i].Kind == PieceErrorKind.Roll)
            {
                return i;
            }
        }

        return null;
    }

    /// <summary>The piece as the sheet has it.</summary>
    public PiecePlaces Nominal => With(new double[Errors.Length]);

    /// <summary>The piece as the sheet has it, out by errors.</summary>
    /// <param name="errors">For each of <see cref="Errors"/>, in millimetres or radians.</param>
    public PiecePlaces With(double[] errors) => Walk(ShapeWith(errors));

    /// <summary>What its bends turned, how they are rolled, and the straights between them.</summary>
    /// <param name="errors">For each of <see cref="Errors"/>, in millimetres or radians.</param>
    public BentShape ShapeWith(double[] errors)
    {
        var count = _layout.Bends.Length;
        var shape = new BentShape(
            new double[count], new double[count], [.. _layout.Legs.Select(leg => leg.StraightLeft.Millimetres)]);
        for (var i = 0; i < count; i++)
        {
            shape.Turned[i] = _made[i] ? _layout.Bends[i].Bend.Turn.Radians : 0;
            shape.Rolled[i] = _layout.Bends[i].Bend.Rotation.Radians;
            shape.Straights[i + 1] += _made[i] ? 0 : _layout.Bends[i].Arc.Millimetres;
        }

        for (var i = 0; i < errors.Length; i++)
        {
            Put(Errors[i], errors[i], shape);
        }

        return shape;
    }

    /// <summary>How it moves with each of <see cref="Errors"/>.</summary>
    /// <param name="places">Where it is.</param>
    public PieceMotion[] Motions(PiecePlaces places) => [.. Errors.Select(error => Motion(error, places))];

    private PieceMotion Motion(PieceError error, PiecePlaces places)
    {
        if (error.Kind == PieceErrorKind.EndA)
        {
            return new(0, default, Twist.Along(Frame.Default.Direction), error);
        }

        if (error.Kind == PieceErrorKind.EndB)
        {
            return new(_layout.Bends.Length + 1, places.LastDirection, default, error);
        }

        var (begin, end) = places.Bends[error.Bend - 1];
        if (error.Kind == PieceErrorKind.Mark)
        {
            return new(error.Bend, begin.Direction, Twist.Along(begin.Direction - end.Direction), error);
        }

        var back = places.Touched[error.Bend]!.Value;
        if (error.Kind == PieceErrorKind.Roll)
        {
            var rolled = Twist.About(begin.Direction, begin.Position);
            return new(error.Bend, rolled.At(back), rolled, error);
        }

        // The middle of the arc turns half as far, about the middle of the former, which stays where the held side is.
        var radius = _layout.Bends[error.Bend - 1].Radius.Millimetres;
        var isHeldAtA = _held[error.Bend - 1] == TubeEnd.A;
        var half = 0.5 * Twist.About(begin.Axis, begin.Position + (radius * begin.Side)).At(back);
        return new(
            error.Bend,
            isHeldAtA ? half : half - (radius * begin.Direction),
            Twist.About(begin.Axis, isHeldAtA ? end.Position : begin.Position),
            error);
    }

    private IEnumerable<PieceError> PossibleErrors()
    {
        var ends = HandScatter.CommonPractice.Mark.Millimetres;
        var first = true;
        for (var number = 1; number <= _layout.Bends.Length; number++)
        {
            if (!_made[number - 1] || _layout.Bends[number - 1].Bend.FromTangent)
            {
                continue;
            }

            var scatter = _layout.Bends[number - 1].Bend.Bender.Scatter ?? HandScatter.CommonPractice;
            yield return new(PieceErrorKind.Bend, number, scatter.Bend.Radians);
            if (!first)
            {
                yield return new(PieceErrorKind.Roll, number, scatter.Roll.Radians);
            }

            yield return new(PieceErrorKind.Mark, number, scatter.Mark.Millimetres);
            first = false;
        }

        yield return new(PieceErrorKind.EndA, 0, ends);
        if (IsWhole)
        {
            yield return new(PieceErrorKind.EndB, 0, ends);
        }
    }

    private void Put(PieceError error, double by, BentShape shape)
    {
        var (turned, rolled, straights) = shape;
        var bend = error.Bend - 1;
        switch (error.Kind)
        {
            case PieceErrorKind.Bend:
                turned[bend] += by;
                straights[_held[bend] == TubeEnd.A ? bend + 1 : bend] -= by * _layout.Bends[bend].Radius.Millimetres;
                break;
            case PieceErrorKind.Roll:
                rolled[bend] += by;
                break;
            case PieceErrorKind.Mark:
                straights[bend] += by;
                straights[bend + 1] -= by;
                break;
            case PieceErrorKind.EndA:
                straights[0] += by;
                break;
            default:
                straights[^1] += by;
                break;
        }
    }

    private PiecePlaces Walk(BentShape shape)
    {
        var (turned, rolled, straights) = shape;
        var backs = new Vector3D?[turned.Length + 2];
        var bends = new (Frame Begin, Frame End)[turned.Length];
        var frame = Frame.Default;
        backs[0] = frame.Position;
        for (var i = 0; i < turned.Length; i++)
        {
            frame = frame.Advanced(Length.FromMillimetres(straights[i]));
            frame = frame.Rolled(Angle.FromRadians(i == 0 ? 0 : rolled[i]));
            if (!_made[i])
            {
                continue;
            }

            var (bend, turn) = (_layout.Bends[i], Angle.FromRadians(turned[i]));
            if (!bend.Bend.FromTangent)
            {
                // From the middle of the former straight out through the middle of the arc.
                var middle = frame.Bent(bend.Radius, Angle.FromRadians(turned[i] / 2));
                backs[i + 1] = middle.Position - (_halfWidth * middle.Side);
            }

            bends[i] = (frame, frame.Bent(bend.Radius, turn));
            frame = bends[i].End;
        }

        frame = frame.Advanced(Length.FromMillimetres(straights[^1]));
        backs[^1] = IsWhole ? frame.Position : null;
        return new(backs, frame.Position, frame.Direction, turned, rolled) { Bends = bends };
    }
}

/// <summary>A bent tube's figures.</summary>
/// <param name="Turned">By each bend, in radians.</param>
/// <param name="Rolled">How each bend's plane is rolled against the one before, in radians.</param>
/// <param name="Straights">One more than bends, in millimetres.</param>
internal sealed record BentShape(double[] Turned, double[] Rolled, double[] Straights);

/// <summary>What can be touched and read on a bent tube, seen from end A: A at the origin, its straight along +X, the first bend turning
/// to +Y. In millimetres and radians.</summary>
/// <param name="Touched">The face of A, the back of each bend, the face of B; null where a tape has nothing to touch.</param>
/// <param name="EndB">End B, made or not.</param>
/// <param name="LastDirection">Of the straight at end B, length 1.</param>
/// <param name="Turned">What each bend turned.</param>
/// <param name="Rolled">How each bend's plane is rolled against the one before.</param>
internal sealed record PiecePlaces(
    Vector3D?[] Touched, Vector3D EndB, Vector3D LastDirection, double[] Turned, double[] Rolled)
{
    /// <summary>Where each bend that is made begins, rolled into its plane, and where it ends.</summary>
    public required (Frame Begin, Frame End)[] Bends { get; init; }

    /// <summary>What would be read, in millimetres or radians.</summary>
    public double ValueOf(PieceQuantity quantity) => quantity.Kind switch
    {
        PieceKind.Bend => Turned[quantity.To - 1],
        PieceKind.Roll => Rolled[quantity.To - 1],
        PieceKind.Ahead => Touched[quantity.To]!.Value.X,
        PieceKind.Aside => Places.AsideOf(Touched[quantity.To]!.Value),
        _ => Touched[quantity.From]!.Value.DistanceTo(Touched[quantity.To]!.Value),
    };

    /// <summary>Whether it can be measured.</summary>
    public bool Has(PieceQuantity quantity) => quantity.IsAngle || (Touched[quantity.From] is not null && Touched[quantity.To] is not null);
}
