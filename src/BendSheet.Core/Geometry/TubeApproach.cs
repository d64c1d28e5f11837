using BendSheet.Core.Units;

namespace BendSheet.Core.Geometry;

/// <summary>Where two lines, or a line and a solid, come nearest to each other.</summary>
/// <param name="Distance">Between the centrelines, or from the centreline to the solid; zero inside it.</param>
/// <param name="First">The place on the first line.</param>
/// <param name="Second">The place on the second line; null where the line was held against a solid.</param>
public sealed record TubeApproach(Length Distance, TubePlace First, TubePlace? Second);

/// <summary>A line's straights and arcs in boxes within boxes, to be held against others.</summary>
/// <remarks>Boxes that are further apart than what was found already are never opened; what is left is worked out stretch by stretch, in
/// closed form or to <see cref="SearchEffort.ToleranceMm"/>.</remarks>
public sealed class TubeBoxes
{
    private readonly Node _root;

    private TubeBoxes(Node root) => _root = root;

    /// <summary>The whole of it.</summary>
    internal Bounds Bounds => _root.Bounds;

    /// <summary>A line's centreline, shortened by so much at either end; null where nothing is left of it.</summary>
    public static TubeBoxes? Of(TubeCentreline centreline, Length offA, Length offB)
    {
        var (from, to) = (offA.Millimetres, centreline.Length.Millimetres - offB.Millimetres);
        var leaves = new List<Node>((2 * centreline.Arcs.Length) + 1);
        var along = 0.0;
        for (var i = 0; i <= 2 * centreline.Arcs.Length; i++)
        {
            var stretch = i % 2 == 0 ? Stretch.Of(centreline.Straights[i / 2]) : Stretch.Of(centreline.Arcs[i / 2]);
            var (first, last) = (Math.Max(0, from - along), Math.Min(stretch.LengthMm, to - along));
            if (last - first > Tolerances.SamePoint.Millimetres)
            {
                var part = first > 0 || last < stretch.LengthMm ? stretch.Part(first, last) : stretch;
                leaves.Add(new(part.Bounds, part, i, along + first));
            }

            along += stretch.LengthMm;
        }

        return leaves.Count == 0 ? null : new(Tree(leaves, 0, leaves.Count));
    }

    /// <summary>The nearest approach of two lines; null where they do not come nearer than the limit.</summary>
    public TubeApproach? Nearer(TubeBoxes other, Length than, ref long work)
    {
        var search = new Search(than.Millimetres);
        search.Between(_root, other._root);
        work += search.Work;
        return search.Nearest;
    }

    /// <summary>The nearest approach to a solid; null where the line does not come nearer than the limit.</summary>
    public TubeApproach? Nearer(Solid solid, Length than, ref long work)
    {
        var search = new Search(than.Millimetres);
        search.Against(_root, solid, solid.Bounds);
        work += search.Work;
        return search.Nearest;
    }

    private static Node Tree(List<Node> leaves, int from, int to)
    {
        if (to - from == 1)
        {
            return leaves[from];
        }

        var (first, second) = (Tree(leaves, from, (from + to) / 2), Tree(leaves, (from + to) / 2, to));
        return new(Bounds.Around(first.Bounds, second.Bounds), null, 0, 0) { Halves = (first, second) };
    }

    private sealed record Node(Bounds Bounds, Stretch? Stretch, int Index, double AlongMm)
    {
        public (Node First, Node Second) Halves { get; init; }

        public TubePlace PlaceAt(double onStretch) =>
            new(Index / 2, Index % 2 == 1, Length.FromMillimetres(AlongMm + onStretch));
    }

    private sealed class Search(double than)
    {
        private readonly SearchEffort _effort = new();
        private double _nearest = than;
        private long _boxes;

        public TubeApproach? Nearest { get; private set; }

        public long Work => _boxes + _effort.Steps;

        public void Between(Node one, Node other)
        {
            _boxes++;
            if (one.Bounds.GapTo(other.Bounds) >= _nearest)
            {
                return;
            }

            if (one.Stretch is { } first && other.Stretch is { } second)
            {
                if (NearPlaces.Nearer(first, second, _nearest, _effort) is { } places)
                {
                    _nearest = places.Distance.Millimetres;
                    Nearest = new(
                        places.Distance, one.PlaceAt(places.OnFirst.Millimetres), other.PlaceAt(places.OnSecond.Millimetres));
                }
            }
            else if (other.Stretch is not null || (one.Stretch is null && one.Bounds.Size >= other.Bounds.Size))
            {
                var (near, far) = one.Halves;
                Between(near, other);
                Between(far, other);
            }
            else
            {
                var (near, far) = other.Halves;
                Between(one, near);
                Between(one, far);
            }
        }

        public void Against(Node part, Solid solid, Bounds bounds)
        {
            _boxes++;
            if (part.Bounds.GapTo(bounds) >= _nearest)
            {
                return;
            }

            if (part.Stretch is null)
            {
                Against(part.Halves.First, solid, bounds);
                Against(part.Halves.Second, solid, bounds);
            }
            else if (NearPlaces.Nearer(part.Stretch, solid, _nearest, _effort) is var (distance, along))
            {
                _nearest = distance;
                Nearest = new(Length.FromMillimetres(distance), part.PlaceAt(along), null);
            }
        }
    }
}
