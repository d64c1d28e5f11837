using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Survey.Pieces;

/// <summary>A measurement on the piece beside what the sheet asks for. In millimetres or radians.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Name">As it is typed: <c>A-3</c>, <c>roll 2</c>.</param>
/// <param name="Measured">As it was read.</param>
/// <param name="Expected">As the sheet has it.</param>
/// <param name="Within">One standard deviation.</param>
/// <param name="At">Where it was typed.</param>
public sealed record PieceReading(
    PieceQuantity Quantity, string Name, double Measured, double Expected, double Within, SourcePosition At)
{
    /// <summary>Measured minus expected; of an angle the nearest way round.</summary>
    public double Residual => Quantity.IsAngle
        ? Math.IEEERemainder(Measured - Expected, 2 * Math.PI)
        : Measured - Expected;
}

/// <summary>A mistake that would explain what was measured. In millimetres or radians.</summary>
/// <param name="Kind">What.</param>
/// <param name="Bend">The number of the bend; 0 for an end and for a misread measurement.</param>
/// <param name="Size">Above zero: further, clockwise, towards B or longer; of a misread measurement how much too large it was read.</param>
/// <param name="Within">One standard deviation of the size.</param>
/// <param name="Misread">The name of the measurement; null for anything else.</param>
public sealed record PieceMistake(PieceCauseKind Kind, int Bend, double Size, double Within, string? Misread)
{
    /// <summary>It is an angle, in radians.</summary>
    public required bool IsAngle { get; init; }
}

/// <summary>A measurement that would tell two explanations apart.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="IfFirst">What it reads if the first is right, in millimetres or radians.</param>
/// <param name="IfSecond">What it reads if the second is.</param>
public sealed record TellingMeasurement(PieceQuantity Quantity, double IfFirst, double IfSecond);

/// <summary>What a piece came out as, from everything that was measured on it, and what to do about it.</summary>
/// <param name="Readings">In the order of the file.</param>
public sealed record PieceInHand(ImmutableArray<PieceReading> Readings)
{
    /// <summary>A piece of more bends is not looked at as a whole.</summary>
    public const int MostBends = 40;

    /// <summary>What single mistakes explain it, the likeliest first; none where it is how hands scatter.</summary>
    public ImmutableArray<PieceMistake> Mistakes { get; private init; } = [];

    /// <summary>Something explains all that was measured.</summary>
    public required bool IsExplained { get; init; }

    /// <summary>What would tell the likeliest two explanations apart, where they do not come to the same at B; null otherwise.</summary>
    public TellingMeasurement? Telling { get; private init; }

    /// <summary>How far off its port B most probably is; what is not bent yet counted as the sheet has it.</summary>
    public required Length Miss { get; init; }

    /// <summary>How far askew it most probably enters.</summary>
    public required Angle Askew { get; init; }

    /// <summary>It lands as well as wanted.</summary>
    public required bool IsGood { get; init; }

    /// <summary>What puts it right: no steps where it is near enough; null where nothing does, or nobody knows yet.</summary>
    public Correction? Correction { get; private init; }

    /// <summary>The bends that are not made yet, aimed anew; null where all are made, or nothing brings B there.</summary>
    public AimedAnew? Aimed { get; private init; }

    /// <summary>
    /// By the trial fit the port would lie aside of A's straight by less than zero, which cannot be: it was read or typed wrongly.
    /// </summary>
    public bool IsPortNowhere { get; private init; }

    /// <summary>The piece was offered up, and the port told where B has to go.</summary>
    public TrialFit? TrialFit { get; private init; }

    /// <summary>Some bends are not made yet.</summary>
    public bool IsHalfMade { get; private init; }

    /// <summary>From what was measured on a piece.</summary>
    /// <param name="template">With it.</param>
    /// <param name="layout">What was aimed at.</param>
    /// <param name="held">The end that was held at each bend.</param>
    /// <returns>Null where nothing was measured, or the line has no bend or more than <see cref="MostBends"/>.</returns>
    public static PieceInHand? Of(LineTemplate template, RouteLayout layout, ImmutableArray<TubeEnd> held)
    {
        if ((template.Checks.IsEmpty && template.TrialFit is null)
            || layout.Bends.Length is 0 or > MostBends)
        {
            return null;
        }

        IReadOnlyCollection<int>? made = template.Bent.IsEmpty ? null : template.Bent;
        return new Examination(
            template,
            new(layout, held, template.Tube.OutsideDiameter, made),
            new(layout, held, template.Tube.OutsideDiameter)).Found(layout);
    }

    /// <summary>From measurements to what is said of the piece.</summary>
    /// <param name="Template">With them.</param>
    /// <param name="Piece">As far as it is made.</param>
    /// <param name="Whole">As it is to be.</param>
    private sealed record Examination(LineTemplate Template, BentPiece Piece, BentPiece Whole)
    {
        /// <summary>A measurement tells what differs by so many of its deviations.</summary>
        private const double Told = 3;

        /// <summary>A mistake is no larger than so many times what mistakes usually are.</summary>
        private const double LargestMistake = 3;

        /// <summary>No reading is off by more of its deviations where the piece is what it is taken for.</summary>
        private const double MostLeft = 4;

        private readonly PiecePlaces _nominal = Piece.Nominal;

        private ImmutableArray<PieceMeasurement> Measured { get; } =
            [.. Template.Checks.Where(check => Piece.Nominal.Has(check.Quantity))];

        public PieceInHand Found(RouteLayout layout)
        {
            List<WeighedPiece> weighed = [.. Measured.Select(check => PieceWeighing.Of(check, _nominal, Template))];
            var explained = PieceCauses.Of(Piece, weighed);
            var best = explained[0];
            var likely = explained.Where(one => one.Misfit - best.Misfit <= PieceCauses.TellsApart).ToList();
            var isExplained = Explains(best, weighed);
            var other = isExplained ? likely.Skip(1).FirstOrDefault(one => LandsElsewhere(best, one)) : null;
            var telling = other is null ? null : Telling(best.Estimate.Places, other.Estimate.Places);
            var isClear = isExplained && telling is null && best.Cause?.Kind != PieceCauseKind.Misread;
            var whole = OfWhole(best.Estimate.Errors);
            var landing = PieceLanding.Of(Whole.With(whole));
            var port = Port(landing);
            var isPortNowhere = Template.TrialFit is not null && port.Aside < 0;
            isClear &= !isPortNowhere;
            var (miss, askew) = (landing.MissTo(port), landing.AskewTo(port));
            return new([.. Measured.Select((check, i) => Reading(check, weighed[i]))])
            {
                IsExplained = isExplained,
                Mistakes = !isExplained || likely.Exists(one => one.Cause is null)
                    ? []
                    : [.. likely.Select(one => Mistake(one, weighed))],
                Telling = telling,
                Miss = Length.FromMillimetres(miss),
                Askew = Angle.FromRadians(askew),
                IsGood = miss <= Template.Wanted.Miss.Millimetres && askew <= Template.Wanted.Askew.Radians,
                Correction = isClear && Piece.IsWhole
                    ? CorrectionSearch.Of(
                        Piece,
                        best.Estimate.Errors,
                        port,
                        Template.Wanted,
                        Template.Tube.OutsideDiameter,
                        PieceWeighing.Tape(Template),
                        atPort: Template.TrialFit is not null)
                    : null,
                Aimed = Piece.IsWhole || !isClear ? null : AimedAnew.Of(Template, layout, Piece, Whole, whole, port),
                IsPortNowhere = isPortNowhere,
                TrialFit = Template.TrialFit,
                IsHalfMade = !Piece.IsWhole,
            };
        }

        /// <summary>Whether it leaves no more than readings may be off, and its mistake is no larger than people make.</summary>
        private static bool Explains(Explained best, List<WeighedPiece> weighed)
        {
            if (best.Cause is { Way: [var (error, _), ..] } cause
                && Math.Abs(best.Estimate.Errors[error]) > LargestMistake * cause.Wide)
            {
                return false;
            }

            var left = weighed.Where((_, i) => best.Cause is not { Kind: PieceCauseKind.Misread } misread || misread.Bend != i)
                .Select(one => Residual(one, best.Estimate.Places.ValueOf(one.Quantity)) / one.Deviation);
            return left.All(one => Math.Abs(one) <= MostLeft);
        }

        private static double Residual(WeighedPiece one, double value) =>
            one.Quantity.IsAngle ? Math.IEEERemainder(one.Value - value, 2 * Math.PI) : one.Value - value;

        private PieceLanding Port(PieceLanding landing)
        {
            var aimed = PieceLanding.Of(Whole.Nominal);
            return Template.TrialFit is { } fit
                ? aimed with { Ahead = landing.Ahead + fit.Ahead.Millimetres, Aside = landing.Aside + fit.Aside.Millimetres }
                : aimed;
        }

        /// <summary>What is not made yet is as the sheet has it.</summary>
        private double[] OfWhole(double[] errors)
        {
            var whole = new double[Whole.Errors.Length];
            for (var i = 0; i < errors.Length; i++)
            {
                whole[Whole.IndexOf(Piece.Errors[i].Kind, Piece.Errors[i].Bend)] = errors[i];
            }

            return whole;
        }

        private bool LandsElsewhere(Explained one, Explained other)
        {
            var (first, second) = (Lands(one), Lands(other));
            return first.MissTo(second) > Template.Wanted.Miss.Millimetres || first.AskewTo(second) > Template.Wanted.Askew.Radians;
        }

        private PieceLanding Lands(Explained one) => PieceLanding.Of(Whole.With(OfWhole(one.Estimate.Errors)));

        private PieceReading Reading(PieceMeasurement check, WeighedPiece weighed) => new(
            check.Quantity, check.Quantity.Name(Piece.Bends), check.Value, _nominal.ValueOf(check.Quantity), weighed.Deviation, check.At);

        private PieceMistake Mistake(Explained explained, List<WeighedPiece> weighed)
        {
            var (cause, estimate) = (explained.Cause!, explained.Estimate);
            if (cause.Kind == PieceCauseKind.Misread)
            {
                var one = weighed[cause.Bend];
                var off = one.Value - estimate.Places.ValueOf(one.Quantity);
                return new(
                    cause.Kind,
                    0,
                    one.Quantity.IsAngle ? Math.IEEERemainder(off, 2 * Math.PI) : off,
                    one.Deviation,
                    one.Quantity.Name(Piece.Bends))
                {
                    IsAngle = one.Quantity.IsAngle,
                };
            }

            var slope = new double[Piece.Errors.Length];
            slope[cause.Way[0].Error] = 1;
            return new(
                cause.Kind, cause.Bend, estimate.Errors[cause.Way[0].Error], Math.Sqrt(estimate.Variance(slope)), Misread: null)
            {
                IsAngle = cause.Kind is PieceCauseKind.Bend or PieceCauseKind.Roll or PieceCauseKind.Plane,
            };
        }

        /// <summary>What the two explanations differ most in, in standard deviations of the reading.</summary>
        private TellingMeasurement? Telling(PiecePlaces first, PiecePlaces second)
        {
            var taken = Measured.Select(check => check.Quantity).ToHashSet();
            double Differs(PieceQuantity one) =>
                Math.Abs(first.ValueOf(one) - second.ValueOf(one)) / PieceWeighing.Deviation(one, _nominal, Template);
            var best = Quantities().Where(one => !taken.Contains(one)).Select(one => (PieceQuantity?)one)
                .MaxBy(one => Differs(one!.Value));
            return best is { } telling && Differs(telling) > Told
                ? new(telling, first.ValueOf(telling), second.ValueOf(telling))
                : null;
        }

        private IEnumerable<PieceQuantity> Quantities() =>
        [
            .. PieceChecks.Quantities(_nominal),
            .. Piece.Errors.Where(error => error.Kind is PieceErrorKind.Bend or PieceErrorKind.Roll).Select(
                error => new PieceQuantity(error.Kind == PieceErrorKind.Bend ? PieceKind.Bend : PieceKind.Roll, 0, error.Bend)),
        ];
    }
}
