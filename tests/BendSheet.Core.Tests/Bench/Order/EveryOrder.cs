using BendSheet.Core.Bench;
using BendSheet.Core.Bench.Order;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Geometry;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Bench.Order;

/// <summary>
/// Looks at every order there is, one after the other, with the rules written out once more: an oracle for the search, for lines of a few
/// bends.
/// </summary>
internal sealed class EveryOrder
{
    private readonly LineTemplate _template;
    private readonly RouteLayout _layout;
    private readonly StraightTube _tube;
    private readonly SweepReach _swings;

    public EveryOrder(LineTemplate template)
    {
        _template = template;
        _layout = RouteLayout.Of(template).Layout!;
        _tube = StraightTube.Of(template, _layout);
        _swings = new(_layout, _tube, [.. _layout.Bends.Select(bend => bend.Bend.Turn)]);
    }

    private int Count => _layout.Bends.Length;

    /// <summary>
    /// What every order that works takes, with the ends that are flared first in it: of those that grow outwards from one bend, or where
    /// none of them works of all that there are.
    /// </summary>
    public List<(OrderOfHands Cost, int Start, bool FlareAFirst, bool FlareBFirst)> Working() =>
        [.. Working(Outwards()) is var outwards && outwards.Any() ? outwards : Working(Permutations([]))];

    private IEnumerable<(OrderOfHands Cost, int Start, bool FlareAFirst, bool FlareBFirst)> Working(IEnumerable<List<int>> orders)
    {
        foreach (var flareA in Choices(_template.From, _layout.Legs[0].StraightLeft.Millimetres))
        {
            foreach (var flareB in Choices(_template.To, _layout.Legs[^1].StraightLeft.Millimetres))
            {
                foreach (var order in orders)
                {
                    foreach (var held in Sides(Count))
                    {
                        var steps = order.Zip(held).ToList();
                        if (Works(steps, flareA, flareB))
                        {
                            var (cost, start) = Cost(steps);
                            yield return (cost, start, flareA, flareB);
                        }
                    }
                }
            }
        }
    }

    /// <summary>
    /// What an order takes, and how far from the best start it begins: A, B, then the middle from A on. A swing is long beyond 500 mm of
    /// bent tube, or 1,500 mm of straight tube.
    /// </summary>
    public (OrderOfHands Cost, int Start) Cost(IReadOnlyList<(int Bend, TubeEnd Held)> steps)
    {
        var (cramped, isLong, turned, most) = (0, 0, 0, 0.0);
        for (var i = 0; i < steps.Count; i++)
        {
            var (bend, held) = steps[i];
            var swept = steps.Take(i).Select(made => made.Bend).Where(made => held == TubeEnd.A ? made > bend : made < bend).ToList();
            var swing = Swing(bend, held, swept);
            var room = _layout.Bends[bend].Bend.Bender.ClearAround?.Millimetres ?? double.PositiveInfinity;
            cramped += swing + (_template.Tube.OutsideDiameter.Millimetres / 2) > room + 1e-6 ? 1 : 0;
            isLong += swing > (swept.Count > 0 ? 500 : 1500) ? 1 : 0;
            turned += i > 0 && steps[i - 1].Held != held ? 1 : 0;
            most = Math.Max(most, swing);
        }

        var first = steps[0].Bend;
        return (new(cramped, isLong, turned, most), first == 0 ? 0 : first == Count - 1 ? 1 : first + 1);
    }

    /// <summary>
    /// How far a swept side reaches, with some bends made on it: of bends next to the one that is made as the search has it, which a test
    /// of its own holds against walked tube; of others that of a line that has only the made ones on that side, with tube for the rest.
    /// </summary>
    private double Swing(int bend, TubeEnd held, List<int> swept)
    {
        var sign = held == TubeEnd.A ? 1 : -1;
        return Enumerable.Range(1, swept.Count).All(i => swept.Contains(bend + (sign * i)))
            ? _swings.Of(bend, held, swept.Count).Millimetres
            : StraightenedReach(bend, held, swept);
    }

    private double StraightenedReach(int bend, TubeEnd held, List<int> swept)
    {
        var kept = Enumerable.Range(0, Count).Where(i => i == bend || swept.Contains(i)).ToList();
        var straights = new double[kept.Count + 1];
        var rotations = new double[kept.Count];
        var (k, straight, rotation) = (0, 0.0, 0.0);
        for (var i = 0; i < Count; i++)
        {
            straight += _layout.Legs[i].StraightLeft.Millimetres;
            rotation += _layout.Bends[i].Bend.Rotation.Degrees;
            if (kept.Contains(i))
            {
                (straights[k], rotations[k++]) = (straight, rotation);
                (straight, rotation) = (0, 0);
            }
            else
            {
                straight += _layout.Bends[i].Arc.Millimetres;
            }
        }

        // What the flares and the trim take is tube as well while the bends are made.
        straights[^1] = straight
            + (_layout.Legs[^1].StraightLeft + _template.To.FlareAllowance + _template.To.Trim).Millimetres;
        straights[0] += _template.From.FlareAllowance.Millimetres;
        var radius = _layout.Bends[0].Radius.Millimetres;
        var turns = kept.Select(i => _layout.Bends[i].Bend.Turn.Degrees).ToArray();
        var line = new Shape(radius, straights, turns, rotations).Template();
        var layout = RouteLayout.Of(line).Layout!;
        return new SweepReach(layout, StraightTube.Of(line, layout), [.. layout.Bends.Select(one => one.Bend.Turn)])
            .Of(kept.IndexOf(bend), held, swept.Count).Millimetres;
    }

    /// <summary>Whether every bend finds its room, with what is made and what is flared before it.</summary>
    public bool Works(IReadOnlyList<(int Bend, TubeEnd Held)> steps, bool flareAFirst, bool flareBFirst)
    {
        var made = new HashSet<int>();
        foreach (var (bend, held) in steps)
        {
            var lower = made.Where(other => other < bend).Select(other => _tube.Bends[other].End.Millimetres)
                .DefaultIfEmpty(BareA(flareAFirst)).Max();
            var upper = made.Where(other => other > bend).Select(other => _tube.Bends[other].Start.Millimetres)
                .DefaultIfEmpty(BareB(flareBFirst)).Min();
            var tool = _layout.Bends[bend].Bend.Bender;
            var (start, end) = (_tube.Bends[bend].Start.Millimetres, _tube.Bends[bend].End.Millimetres);
            var from = start - (held == TubeEnd.A ? tool.Grip : tool.Follow).Millimetres;
            var to = end + (held == TubeEnd.A ? tool.Follow : tool.Grip).Millimetres;
            var middle = (start + end) / 2;
            var line = tool.Mark == MarkPlace.Middle ? middle : held == TubeEnd.A ? start : end;
            var mark = line + ((held == TubeEnd.A ? 1 : -1) * (tool.Offset ?? Length.Zero).Millimetres);
            const double Same = 1e-6;
            if (from < lower - Same || to > upper + Same || mark < lower - Same || mark > upper + Same)
            {
                return false;
            }

            made.Add(bend);
        }

        return true;
    }

    private double BareA(bool flaredFirst) =>
        flaredFirst
            ? _template.From.FlareAllowance.Millimetres + _template.From.Fitting!.Hardware.Sum(piece => piece.Length.Millimetres)
            : 0;

    private double BareB(bool flaredFirst) => _tube.CutLength.Millimetres
        - (flaredFirst
            ? _template.To.FlareAllowance.Millimetres + _template.To.Fitting!.Hardware.Sum(piece => piece.Length.Millimetres)
            : 0);

    private static List<bool> Choices(LineEnd end, double straight)
    {
        if (!end.IsFlared)
        {
            return [false];
        }

        var choices = new List<bool>();
        if (end.Trim.Millimetres == 0)
        {
            choices.Add(true);
        }

        if (straight >= end.Fitting!.StraightNeeded.Millimetres - 1e-6)
        {
            choices.Add(false);
        }

        return choices;
    }

    /// <summary>Every order that grows outwards from its first bend.</summary>
    private IEnumerable<List<int>> Outwards()
    {
        for (var first = 0; first < Count; first++)
        {
            // One bit for each later step: towards A or towards B.
            for (var bits = 0; bits < 1 << (Count - 1); bits++)
            {
                var (low, high) = (first, first);
                var order = new List<int> { first };
                for (var step = 0; step < Count - 1; step++)
                {
                    order.Add((bits >> step & 1) == 0 ? ++high : --low);
                }

                if (low == 0 && high == Count - 1)
                {
                    yield return order;
                }
            }
        }
    }

    private IEnumerable<List<int>> Permutations(List<int> begun) => begun.Count == Count
        ? [begun]
        : Enumerable.Range(0, Count).Except(begun).SelectMany(next => Permutations([.. begun, next]));

    private static IEnumerable<TubeEnd[]> Sides(int count) =>
        Enumerable.Range(0, 1 << count).Select(bits => Enumerable.Range(0, count).Select(i => (TubeEnd)(bits >> i & 1)).ToArray());
}

/// <summary>What an order asks of the hands, the first figure counting most.</summary>
internal readonly record struct OrderOfHands(int Cramped, int LongSwings, int TurnRounds, double Swing)
{
    public (int Cramped, int LongSwings, int TurnRounds) Figures => (Cramped, LongSwings, TurnRounds);
}
