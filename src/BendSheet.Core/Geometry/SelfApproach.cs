using BendSheet.Core.Units;

namespace BendSheet.Core.Geometry;

/// <summary>Where a finished line comes nearest to itself.</summary>
/// <param name="Distance">Between the two centrelines.</param>
/// <param name="First">The place nearer to end A.</param>
/// <param name="Second">The place nearer to end B.</param>
public sealed record SelfApproach(Length Distance, TubePlace First, TubePlace Second)
{
    /// <summary>The nearest approach of two places that have at least half a turn of bends between them.</summary>
    /// <remarks>
    /// Neighbouring places are near without touching. Where two places do touch side by side, the chord between them stands square on the
    /// tube at both: together with the chord the tube is a closed curve, which turns at least 360° (Fenchel's theorem), 90° of that at each
    /// end of the chord; so the bends between turn at least 180°. With less than that between them, places a length s apart, with bends of
    /// the radius R or more that turn T, are at least 2R·sin(T/2) + (s − RT)·cos(T/2) apart (the way made along the tube's direction at
    /// half the turning), which for s of πR and more is at least 2R: no contact as long as the tube is thinner than that.
    /// </remarks>
    /// <param name="centreline">Of the line.</param>
    /// <param name="within">The limit; below twice the smallest radius, so that a bend's own two sides are no approach.</param>
    /// <returns>Null where nothing comes nearer than that.</returns>
    public static SelfApproach? Of(TubeCentreline centreline, Length within)
    {
        if (centreline.Arcs.Sum(arc => arc.Turn.Radians) <= Math.PI)
        {
            return null;
        }

        var search = new Search(within.Millimetres);
        var pieces = Pieces(centreline);
        search.Inside(Piece.Tree(pieces, 0, pieces.Count));
        return search.Nearest;
    }

    /// <summary>Straights and arcs in turn, from end A; without straights of no length, as between the arcs of a coil.</summary>
    private static List<Piece> Pieces(TubeCentreline centreline)
    {
        var pieces = new List<Piece>((2 * centreline.Arcs.Length) + 1);
        var along = 0.0;
        var turned = 0.0;
        for (var i = 0; i <= 2 * centreline.Arcs.Length; i++)
        {
            var stretch = i % 2 == 0 ? Stretch.Of(centreline.Straights[i / 2]) : Stretch.Of(centreline.Arcs[i / 2]);
            if (stretch.LengthMm > Tolerances.SamePoint.Millimetres)
            {
                pieces.Add(new(stretch, i, along, turned));
            }

            along += stretch.LengthMm;
            turned += stretch.Turn;
        }

        return pieces;
    }

    /// <summary>A part of the tube in a sphere: one stretch, or two parts that follow each other.</summary>
    private sealed class Piece
    {
        private readonly Piece? _first;
        private readonly Piece? _second;

        /// <param name="stretch">Of the centreline.</param>
        /// <param name="index">Counted from end A, straights and arcs.</param>
        /// <param name="along">Of its start from end A.</param>
        /// <param name="turned">By all bends before it.</param>
        public Piece(Stretch stretch, int index, double along, double turned)
        {
            (Stretch, Index, Along, TurnedAtStart, TurnedAtEnd) = (stretch, index, along, turned, turned + stretch.Turn);
            (Centre, Reach) = (stretch.Middle, stretch.LengthMm / 2);
        }

        private Piece(Piece first, Piece second)
        {
            (_first, _second, TurnedAtStart, TurnedAtEnd) = (first, second, first.TurnedAtStart, second.TurnedAtEnd);
            var apart = first.Centre.DistanceTo(second.Centre);
            var far = apart + second.Reach <= first.Reach ? first : apart + first.Reach <= second.Reach ? second : null;
            Reach = far?.Reach ?? (apart + first.Reach + second.Reach) / 2;
            Centre = far?.Centre ?? first.Centre + ((Reach - first.Reach) / apart * (second.Centre - first.Centre));
        }

        public Stretch? Stretch { get; }

        public int Index { get; }

        public double Along { get; }

        public double TurnedAtStart { get; }

        public double TurnedAtEnd { get; }

        public Vector3D Centre { get; }

        public double Reach { get; }

        public static Piece Tree(List<Piece> pieces, int from, int to)
        {
            var middle = (from + to) / 2;
            return to - from == 1 ? pieces[from] : new(Tree(pieces, from, middle), Tree(pieces, middle, to));
        }

        public (Piece First, Piece Second) Halves() => Stretch is { LengthMm: var length }
            ? (Part(0, length / 2), Part(length / 2, length))
            : (_first!, _second!);

        public Piece Part(double from, double to) =>
            new(Stretch!.Part(from, to), Index, Along + from, TurnedAtStart + (Stretch.IsStraight ? 0 : from / Stretch.RadiusMm));

        /// <summary>
        /// What lies after so much turning from end A; null for nothing. A straight lies there as a whole or not at all.
        /// </summary>
        public Piece? TurnedAtLeast(double turned) => turned <= TurnedAtStart ? this
            : turned >= TurnedAtEnd ? null
            : Part((turned - TurnedAtStart) * Stretch!.RadiusMm, Stretch.LengthMm);

        /// <summary>What lies before so much turning from end A; null for nothing.</summary>
        public Piece? TurnedAtMost(double turned) => turned >= TurnedAtEnd ? this
            : turned <= TurnedAtStart ? null
            : Part(0, (turned - TurnedAtStart) * Stretch!.RadiusMm);

        public TubePlace PlaceAt(Length onStretch) =>
            new(Index / 2, Index % 2 == 1, Length.FromMillimetres(Along) + onStretch);
    }

    private sealed class Search(double within)
    {
        private readonly SearchEffort _effort = new();
        private double _nearest = within;

        public SelfApproach? Nearest { get; private set; }

        /// <summary>Between any two places of a part.</summary>
        public void Inside(Piece part)
        {
            if (part.TurnedAtEnd - part.TurnedAtStart > Math.PI)
            {
                var (first, second) = part.Halves();
                Inside(first);
                Inside(second);
                Between(first, second);
            }
        }

        /// <summary>Between a place of one part and a place of another one nearer to end B.</summary>
        private void Between(Piece first, Piece second)
        {
            if (second.TurnedAtEnd - first.TurnedAtStart < Math.PI
                || first.Centre.DistanceTo(second.Centre) - first.Reach - second.Reach + _effort.ToleranceMm >= _nearest)
            {
                return;
            }

            if (first.Stretch is null || second.Stretch is null)
            {
                InHalves(first, second);
            }
            else if (first.TurnedAtMost(second.TurnedAtEnd - Math.PI) is { } before
                && second.TurnedAtLeast(first.TurnedAtStart + Math.PI) is { } after)
            {
                BetweenStretches(before, after);
            }
        }

        /// <summary>Two arcs may hold places with half a turn between them and others with less: they are halved.</summary>
        private void BetweenStretches(Piece first, Piece second)
        {
            if (second.TurnedAtStart - first.TurnedAtEnd < Math.PI - 1e-9 && !first.Stretch!.IsStraight && !second.Stretch!.IsStraight)
            {
                InHalves(first, second);
            }
            else if (NearPlaces.Nearer(first.Stretch!, second.Stretch!, _nearest, _effort) is { } places)
            {
                _nearest = places.Distance.Millimetres;
                Nearest = new(places.Distance, first.PlaceAt(places.OnFirst), second.PlaceAt(places.OnSecond));
            }
        }

        private void InHalves(Piece first, Piece second)
        {
            if (second.Stretch is null || (first.Stretch is not null && second.Reach > first.Reach))
            {
                var (near, far) = second.Halves();
                Between(first, near);
                Between(first, far);
            }
            else
            {
                var (far, near) = first.Halves();
                Between(near, second);
                Between(far, second);
            }
        }
    }
}

/// <summary>A place on the finished tube.</summary>
/// <param name="Number">Of the straight or the bend, from 0 at end A.</param>
/// <param name="InBend">In a bend; otherwise in a straight.</param>
/// <param name="AlongTube">From the finished end A along the centreline.</param>
public readonly record struct TubePlace(int Number, bool InBend, Length AlongTube);
