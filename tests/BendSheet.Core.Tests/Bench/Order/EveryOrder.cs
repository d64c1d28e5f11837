using BendSheet.Core.Bench;
using BendSheet.Core.Bench.Order;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
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

    /// <summary>What every order that works takes, with the ends that are flared first in it.</summary>
    public IEnumerable<(int Cramped, int TurnRounds, double Swing, int Start, bool FlareAFirst, bool FlareBFirst)> Working()
    {
        foreach (var flareA in Choices(_template.From, _layout.Legs[0].StraightLeft.Millimetres))
        {
            foreach (var flareB in Choices(_template.To, _layout.Legs[^1].StraightLeft.Millimetres))
            {
                foreach (var order in Orders())
                {
                    foreach (var held in Sides(Count))
                    {
                        var steps = order.Zip(held).ToList();
                        if (Works(steps, flareA, flareB))
                        {
                            var (cramped, turns, swing, start) = Cost(steps);
                            yield return (cramped, turns, swing, start, flareA, flareB);
                        }
                    }
                }
            }
        }
    }

    /// <summary>
    /// Bends that swing into what is round the tool, turn-rounds, the largest swing in millimetres, and how far from the best start: A, B,
    /// then the middle from A on.
    /// </summary>
    public (int Cramped, int TurnRounds, double Swing, int Start) Cost(IReadOnlyList<(int Bend, TubeEnd Held)> steps)
    {
        var turned = Enumerable.Range(1, steps.Count - 1).Count(i => steps[i].Held != steps[i - 1].Held);
        var swings = Enumerable.Range(0, steps.Count).Select(i =>
        {
            var (bend, held) = steps[i];
            var swept = steps.Take(i).Count(made => held == TubeEnd.A ? made.Bend > bend : made.Bend < bend);
            return _swings.Of(bend, held, swept).Millimetres;
        }).ToList();
        var cramped = steps.Zip(swings).Count(step =>
            step.Second
                + (_template.Tube.OutsideDiameter.Millimetres / 2) > (_layout.Bends[step.First.Bend].Bend.Bender.ClearAround?.Millimetres
                ?? double.PositiveInfinity) + 1e-6);
        var first = steps[0].Bend;
        return (cramped, turned, swings.Max(), first == 0 ? 0 : first == Count - 1 ? 1 : first + 1);
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
            var mark = line + ((held == TubeEnd.A ? 1 : -1) * tool.Offset.Millimetres);
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
    private IEnumerable<List<int>> Orders()
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

    private static IEnumerable<TubeEnd[]> Sides(int count) =>
        Enumerable.Range(0, 1 << count).Select(bits => Enumerable.Range(0, count).Select(i => (TubeEnd)(bits >> i & 1)).ToArray());
}
