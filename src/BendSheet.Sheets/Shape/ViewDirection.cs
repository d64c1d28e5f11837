using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Sheets.Shape;

/// <summary>
/// Where to look from, so that the pictorial view hides least. A person bends from that view what they can see in it: that a bend is there
/// (it is not seen edge-on), that a leg is there (it is not seen end-on), which bend is which (they do not fall on one another), and what
/// passes in front of what (as little as possible). So each of a fixed set of directions is charged for what it hides, and the cheapest one
/// is taken; of equals the first, which is the one that people know best. The weights are judged by eye, no source.
/// </summary>
internal static class ViewDirection
{
    /// <summary>Of the isometric view (ISO 5456-3), in degrees: the arc tangent of 1/√2.</summary>
    private const double Isometric = 35.264389682754654;

    /// <summary>A later direction must be clearly better: a difference in the last digit may not turn the picture.</summary>
    private const double Clearly = 1e-6;

    /// <summary>How far beside A a place lies before it counts as to one side, in millimetres.</summary>
    private const double Aside = 1;

    /// <summary>Places along the tube that are looked at.</summary>
    private const int Places = 48;

    /// <summary>On paper, as a part of the drawing's size, below which two numbers crowd each other.</summary>
    private const double Crowded = 0.08;

    /// <summary>More bends are not compared pair by pair: no direction keeps as many apart.</summary>
    private const int MostCompared = 120;

    /// <summary>
    /// From behind, the right and above first, then further round. Never along an axis, so that the axis mark can always be read; never
    /// from so high or low that up and across look alike.
    /// </summary>
    private static readonly Projection[] Directions =
    [
        .. from above in new[] { Isometric, 22, 50 }
           from round in new double[] { 225, 315, 135, 45, 240, 210, 330, 300, 150, 120, 60, 30 }
           select Projection.Pictorial(round, above),
    ];

    /// <summary>
    /// The direction that hides least. Of two lines that are mirror images one is looked at in the mirror, so that their pictures are a
    /// pair.
    /// </summary>
    /// <param name="centreline">Of the line.</param>
    /// <param name="tubeDiameter">In millimetres.</param>
    /// <param name="liesOnCar">Its mirror image lies on the other side of the car; or else it only has its rotations the other way.</param>
    public static Projection Best(TubeCentreline centreline, double tubeDiameter, bool liesOnCar = false)
    {
        var seen = new Seen(centreline, tubeDiameter);
        var inMirror = liesOnCar ? IsOnTheRight(centreline) : IsRolledTheOtherWay(centreline);
        var best = Directions[0];
        var least = double.PositiveInfinity;
        foreach (var direction in inMirror ? Directions.Select(one => liesOnCar ? one.AcrossY() : one.AcrossZ()) : Directions)
        {
            if (seen.HiddenFrom(direction, least - Clearly) is { } cost)
            {
                (best, least) = (direction, cost);
            }
        }

        return best;
    }

    /// <summary>Whether the first place that counts as beside A lies to its right; Y points to the left.</summary>
    private static bool IsOnTheRight(TubeCentreline centreline) =>
        centreline.Arcs.Select(arc => arc.Start.Position).Append(centreline.EndB).Select(place => place.Y - centreline.EndA.Y)
            .FirstOrDefault(aside => Math.Abs(aside) > Aside) < 0;

    private static bool IsRolledTheOtherWay(TubeCentreline centreline) =>
        centreline.Rolls().Select(roll => Math.Sin(roll.Radians)).FirstOrDefault(sine => Math.Abs(sine) > Clearly) < 0;

    /// <summary>What there is to see of a line.</summary>
    private sealed class Seen
    {
        private readonly List<Vector3D> _legs;
        private readonly List<Vector3D> _bendAxes;
        private readonly List<Vector3D> _numbered;
        private readonly Vector3D[] _places;
        private readonly double _size;
        private readonly double _hides;

        public Seen(TubeCentreline centreline, double tubeDiameter)
        {
            // From one numbered place to the next: what a person reads as a leg.
            _numbered =
            [
                centreline.EndA,
                .. centreline.Arcs.Select(arc => arc.PointAt(Angle.FromDegrees(arc.Turn.Degrees / 2))),
                centreline.EndB,
            ];
            _legs =
            [
                .. _numbered.Zip(_numbered.Skip(1), (from, to) => to - from).Where(leg => leg.Norm > 0).Select(leg => 1 / leg.Norm * leg),
            ];
            _bendAxes = [.. centreline.Arcs.Select(arc => arc.Start.Axis)];
            _places = PlacesAlong(centreline);
            _size = Math.Max(_places.Max(place => place.DistanceTo(centreline.EndA)), double.Epsilon);
            // A thin tube hides the next place all the same when it is seen within half a step of it.
            _hides = Math.Max(tubeDiameter, 0.55 * centreline.Length.Millimetres / (Places - 1));
        }

        /// <summary>What a direction hides; null for as much as the limit or more. What is quick to find is looked at first.</summary>
        public double? HiddenFrom(Projection direction, double lessThan)
        {
            var cost = MeanAndWorst(_legs, leg => EndOn(leg.Dot(direction.Nearness)))
                + MeanAndWorst(_bendAxes, axis => 1 - Math.Abs(axis.Dot(direction.Nearness)));
            if (cost < lessThan)
            {
                cost += Crowding(direction);
            }

            if (cost < lessThan)
            {
                cost += Covering(direction);
            }

            return cost < lessThan ? cost : null;
        }

        /// <summary>How much shorter a leg looks than it is, from 0 to 1.</summary>
        private static double EndOn(double towardsEye) => 1 - Math.Sqrt(Math.Max(0, 1 - (towardsEye * towardsEye)));

        /// <summary>The worst counts as much as all others: a single bend that nobody sees spoils the piece.</summary>
        private static double MeanAndWorst(List<Vector3D> directions, Func<Vector3D, double> hidden)
        {
            var (sum, worst, count) = (0.0, 0.0, 0);
            foreach (var direction in directions)
            {
                var part = hidden(direction);
                sum += part * part;
                worst = Math.Max(worst, part);
                count++;
            }

            return count == 0 ? 0 : (sum / count) + (worst * worst);
        }

        private double Crowding(Projection direction)
        {
            if (_numbered.Count > MostCompared)
            {
                return 0;
            }

            var flat = _numbered.ConvertAll(direction.Of);
            var near = Crowded * _size;
            var cost = 0.0;
            for (var i = 0; i < flat.Count; i++)
            {
                for (var j = i + 1; j < flat.Count; j++)
                {
                    cost += Math.Max(0, 1 - ((flat[i] - flat[j]).Norm / near));
                }
            }

            return cost / flat.Count;
        }

        /// <summary>Crossings, and the part of the tube that lies along another part of it.</summary>
        private double Covering(Projection direction)
        {
            var flat = Array.ConvertAll(_places, direction.Of);
            var covered = new bool[Places];
            for (var i = 0; i < Places; i++)
            {
                for (var j = i + 1; j < Places; j++)
                {
                    // Neighbours along the tube are near each other from everywhere.
                    if (flat[i].IsNearer(flat[j], _hides) && _places[i].DistanceTo(_places[j]) > 2 * _hides)
                    {
                        covered[i] = covered[j] = true;
                    }
                }
            }

            var crossings = Crossings.Of(flat, new double[Places]).Count();
            return (2.0 * covered.Count(place => place) / Places) + (0.15 * crossings);
        }

        /// <summary>Evenly along the tube.</summary>
        private static Vector3D[] PlacesAlong(TubeCentreline centreline)
        {
            var stretches = new List<Stretch> { Stretch.Of(centreline.Straights[0]) };
            for (var i = 0; i < centreline.Arcs.Length; i++)
            {
                stretches.Add(Stretch.Of(centreline.Arcs[i]));
                stretches.Add(Stretch.Of(centreline.Straights[i + 1]));
            }

            var step = 1.0 / (Places - 1) * centreline.Length;
            var places = new Vector3D[Places];
            var (index, before) = (0, Length.Zero);
            for (var i = 0; i < Places; i++)
            {
                var along = i * step;
                while (index + 1 < stretches.Count && along - before > stretches[index].Length)
                {
                    before += stretches[index].Length;
                    index++;
                }

                var rest = along - before;
                places[i] = stretches[index].PointAt(rest < stretches[index].Length ? rest : stretches[index].Length);
            }

            return places;
        }
    }
}
