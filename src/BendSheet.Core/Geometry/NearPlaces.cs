using BendSheet.Core.Units;

namespace BendSheet.Core.Geometry;

/// <summary>The places where two stretches of centreline come nearest to each other.</summary>
/// <param name="Distance">Between the two centrelines there, found to <see cref="SearchEffort.ToleranceMm"/>.</param>
/// <param name="OnFirst">How far along the first stretch.</param>
/// <param name="OnSecond">How far along the second stretch.</param>
public sealed record NearPlaces(Length Distance, Length OnFirst, Length OnSecond)
{
    /// <summary>Of any two stretches; null where they do not come nearer than so many millimetres.</summary>
    /// <param name="first">One of them.</param>
    /// <param name="second">The other one.</param>
    /// <param name="than">In millimetres.</param>
    /// <param name="effort">Counts the steps of the whole search and says how closely it looks.</param>
    internal static NearPlaces? Nearer(Stretch first, Stretch second, double than, SearchEffort effort)
    {
        if (first.IsStraight && second.IsStraight)
        {
            return OfStraights(first, second, than);
        }

        // An arc is walked, of two arcs the shorter; never a straight, which may be long.
        if (first.IsStraight || (!second.IsStraight && second.LengthMm < first.LengthMm))
        {
            return Nearer(second, first, than, effort) is { } swapped ? new(swapped.Distance, swapped.OnSecond, swapped.OnFirst) : null;
        }

        var walk = new ArcWalk(first, point => second.PointAt(second.NearestTo(point)), than, effort);
        return walk.Nearest is var (distance, along)
            ? new(
                Length.FromMillimetres(distance),
                Length.FromMillimetres(along),
                Length.FromMillimetres(second.NearestTo(first.PointAt(along))))
            : null;
    }

    /// <summary>Of a stretch and a solid; null where they do not come nearer than so many millimetres.</summary>
    /// <param name="stretch">Of the centreline.</param>
    /// <param name="solid">A place inside it has the distance zero.</param>
    /// <param name="than">In millimetres.</param>
    /// <param name="effort">Counts the steps of the whole search and says how closely it looks.</param>
    internal static (double DistanceMm, double AlongMm)? Nearer(Stretch stretch, Solid solid, double than, SearchEffort effort)
    {
        if (!stretch.IsStraight)
        {
            return new ArcWalk(stretch, solid.NearestTo, than, effort).Nearest;
        }

        var along = solid.NearestOn(stretch);
        var point = stretch.PointAt(along);
        effort.Steps++;
        return point.DistanceTo(solid.NearestTo(point)) is var distance && distance < than ? (distance, along) : null;
    }

    /// <summary>In closed form: where the two lines come nearest, or at an end of one of them.</summary>
    private static NearPlaces? OfStraights(Stretch first, Stretch second, double than)
    {
        NearPlaces? nearest = null;
        void Try(double onFirst, double onSecond)
        {
            var distance = first.PointAt(onFirst).DistanceTo(second.PointAt(onSecond));
            if (distance < than)
            {
                than = distance;
                nearest = new(Length.FromMillimetres(distance), Length.FromMillimetres(onFirst), Length.FromMillimetres(onSecond));
            }
        }

        if (Stretch.BetweenLines(first, second) is { } between)
        {
            Try(between.First, between.Second);
        }

        Try(0, second.NearestTo(first.PointAt(0.0)));
        Try(first.LengthMm, second.NearestTo(first.PointAt(first.LengthMm)));
        Try(first.NearestTo(second.PointAt(0.0)), 0);
        Try(first.NearestTo(second.PointAt(second.LengthMm)), second.LengthMm);
        return nearest;
    }

    /// <summary>
    /// Walks an arc by halves; from each place the nearest point of what it is held against is known in closed form. A half is left alone
    /// as soon as it is proved that nothing nearer lies in it.
    /// </summary>
    /// <remarks>
    /// The proof. Let P(s) walk a circle of radius r and centre C, Q be any fixed point. The second derivative of |P − Q|² is
    /// 2·(Q − C)·(P − C)/r², so never above 2·|Q − C|/r; and a Q nearer than the nearest so far, b, has |Q − C| below r + b. A function
    /// whose second derivative is nowhere above 2k lies, between two places a length l apart, nowhere below the straight line through its
    /// two values by more than k·x·(l − x). That holds for each Q, hence for the squared distance to the nearest one.
    /// </remarks>
    private sealed class ArcWalk
    {
        private readonly Stretch _arc;
        private readonly Func<Vector3D, Vector3D> _other;
        private readonly SearchEffort _effort;
        private double _nearest;
        private double _onArc;
        private bool _found;

        public ArcWalk(Stretch arc, Func<Vector3D, Vector3D> other, double than, SearchEffort effort)
        {
            _arc = arc;
            _other = other;
            _effort = effort;
            _nearest = than;
            var atStart = SquaredAt(0);
            Look(0, atStart, arc.LengthMm, SquaredAt(arc.LengthMm));
        }

        public (double DistanceMm, double AlongMm)? Nearest => _found ? (_nearest, _onArc) : null;

        private void Look(double from, double squaredFrom, double to, double squaredTo)
        {
            if (Math.Sqrt(LeastSquared(to - from, squaredFrom, squaredTo)) + _effort.ToleranceMm >= _nearest)
            {
                return;
            }

            var middle = (from + to) / 2;
            if (middle <= from || middle >= to)
            {
                return;
            }

            var squared = SquaredAt(middle);
            if (squaredFrom < squaredTo)
            {
                Look(from, squaredFrom, middle, squared);
                Look(middle, squared, to, squaredTo);
            }
            else
            {
                Look(middle, squared, to, squaredTo);
                Look(from, squaredFrom, middle, squared);
            }
        }

        /// <summary>What the squared distance cannot fall below between two places, see above.</summary>
        private double LeastSquared(double length, double squaredFrom, double squaredTo)
        {
            var k = (_arc.RadiusMm + _nearest) / _arc.RadiusMm;
            var x = (length / 2) - ((squaredTo - squaredFrom) / (2 * k * length));
            return x <= 0 || x >= length
                ? Math.Min(squaredFrom, squaredTo)
                : Math.Max(0, squaredFrom + ((squaredTo - squaredFrom) * x / length) - (k * x * (length - x)));
        }

        private double SquaredAt(double along)
        {
            _effort.Steps++;
            var point = _arc.PointAt(along);
            var between = point - _other(point);
            var squared = between.Dot(between);
            if (squared < _nearest * _nearest)
            {
                (_nearest, _onArc, _found) = (Math.Sqrt(squared), along, true);
            }

            return squared;
        }
    }
}

/// <summary>
/// Where a curve runs beside itself at one distance, as in a coil, no place is nearer than the others by more than the last digits, and a
/// search that tells them apart would not end soon. Its steps are counted, and it looks less closely the more there were.
/// </summary>
internal sealed class SearchEffort
{
    private const int StepsOfASearch = 20_000;

    /// <summary>Places that were looked at.</summary>
    public int Steps { get; set; }

    /// <summary>
    /// How near to the least distance is near enough, in millimetres: as good as exact for any line that people make, and then ten times
    /// coarser with every further twenty thousand steps, up to the tenth that a finding shows.
    /// </summary>
    public double ToleranceMm => Steps < StepsOfASearch
        ? Tolerances.SamePoint.Millimetres
        : Tolerances.SamePoint.Millimetres * Math.Pow(10, Math.Min(Steps / StepsOfASearch, 5));
}
