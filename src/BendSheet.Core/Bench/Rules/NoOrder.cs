using BendSheet.Core.Bench.Order;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// A hand bender holds straight tube on one side of the bend and sweeps straight tube on the other. A bend too near to one that is made
/// already, or to a finished end with its hardware on, cannot be made. The last bend needs its room too, so some lines have no order.
/// </summary>
public static class NoOrder
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "no-order",
        RuleSubject.Making,
        "A hand bender needs straight tube to hold on one side and to sweep on the other, beside whatever is made already.");

    /// <summary>That a begun line, aimed anew, cannot be finished in the order of work that it was begun in.</summary>
    internal static IEnumerable<Finding> Begun(RouteLayout layout, int bend) =>
    [
        Rule.Error(
            layout.Bends[bend].Bend.TurnAt,
            FormattableString.Invariant($"aimed anew, bend {bend + 1} has too little straight tube beside it for the tool or ")
                + "the flaring bar, in the order of work that the line was begun in: make the piece again"),
    ];

    /// <summary>Why a line cannot be made in any order; silent where what is wrong with its ends was said already.</summary>
    internal static IEnumerable<Finding> Why(LineTemplate template, RouteLayout layout, StraightTube tube, SweepReach swings)
    {
        var waysAtA = Ways(TubeEnd.A, template.From, layout.Legs[0].StraightLeft);
        var waysAtB = Ways(TubeEnd.B, template.To, layout.Legs[^1].StraightLeft);
        if (OrderPlanner.Best(waysAtA, waysAtB, layout, tube, swings) is not null)
        {
            return [];
        }

        var bare = BendingTask.Of(layout, tube, default, default);
        var tooNear = TooNear(template, layout, bare).ToList();
        return tooNear.Count > 0 ? tooNear
            : [OrderPlanner.Best([default], [default], layout, tube, swings) is not null
                ? EndInTheWay(template, layout, BendingTask.Of(layout, tube, Roomiest(waysAtA), Roomiest(waysAtB)), waysAtA, tube, swings)
                : BendInTheWay(template, layout, bare, swings)];
    }

    /// <summary>An end that is too short for its own hardware or flare has its own finding, and is left out of account here.</summary>
    private static FlareTiming[] Ways(TubeEnd which, LineEnd end, Length straight)
    {
        FlareTiming[] ways = EndTooShort.IsShort(end, straight) ? [] : [.. FlareTiming.Choices(which, end, straight)];
        return ways.Length > 0 ? ways : [default];
    }

    private static FlareTiming Roomiest(FlareTiming[] ways) => ways.MinBy(way => way.Taken);

    /// <summary>Straights that are too short for whatever is made beside them last.</summary>
    private static IEnumerable<Finding> TooNear(LineTemplate template, RouteLayout layout, BendingTask task)
    {
        var first = layout.Bends[0].Bend.Bender;
        if (Short(task.TowardsA(0, made: false), Least(task, 0, needed => needed.TowardsA)) is { } atA)
        {
            yield return Rule.Error(
                layout.Legs[0].At,
                $"bend 1 has {FindingFigures.Mm(atA.Left)} of straight tube towards end A and {BenderNames.InWords(first)} needs at "
                    + $"least {FindingFigures.UpMm(atA.Need)} there for its grip, follow or mark, from whichever side it is held: move "
                    + $"the bend {FindingFigures.UpMm(atA.Need - atA.Left)} further from the end, or use a tool that needs less");
        }

        for (var i = 1; i < task.Count; i++)
        {
            var onFirst = Least(task, i - 1, needed => needed.TowardsB);
            var onSecond = Least(task, i, needed => needed.TowardsA);
            if (Short(task.TowardsA(i, made: true), onFirst < onSecond ? onFirst : onSecond) is { } between)
            {
                var how = template.Route.Legs[i].Inner is { } inner ? $" ({InnerLegCure.Apart(inner)} does that)" : string.Empty;
                yield return Rule.Error(
                    layout.Legs[i].At,
                    $"bends {i} and {i + 1} have {FindingFigures.Mm(between.Left)} of straight tube between them, and whichever is made "
                        + $"second needs at least {FindingFigures.UpMm(between.Need)} there for the tool's grip, follow or mark: move "
                        + $"them {FindingFigures.UpMm(between.Need - between.Left)} further apart{how}, or use a tool that needs less");
            }
        }

        var last = layout.Bends[^1].Bend.Bender;
        if (Short(task.TowardsB(task.Count - 1, made: false), Least(task, task.Count - 1, needed => needed.TowardsB)) is { } atB)
        {
            yield return Rule.Error(
                layout.Legs[^1].At,
                $"bend {task.Count} has {FindingFigures.Mm(atB.Left)} of straight tube towards end B and {BenderNames.InWords(last)} "
                    + $"needs at least {FindingFigures.UpMm(atB.Need)} there for its grip, follow or mark, from whichever side it is "
                    + $"held: move the bend {FindingFigures.UpMm(atB.Need - atB.Left)} further from the end, leave `trim` on end B to be "
                    + "cut off later, or use a tool that needs less");
        }
    }

    /// <summary>Bare tube would do, but not with the ends finished in any way that they can be.</summary>
    private static Finding EndInTheWay(
        LineTemplate template, RouteLayout layout, BendingTask task, FlareTiming[] waysAtA, StraightTube tube, SweepReach swings)
    {
        var atA = OrderPlanner.Best(waysAtA, [default], layout, tube, swings) is null;
        var (end, letter, leg, number) = atA
            ? (template.From, TubeEnd.A, layout.Legs[0], 1)
            : (template.To, TubeEnd.B, layout.Legs[^1], task.Count);
        var fitting = end.Fitting!;
        var left = atA ? task.TowardsA(0, made: false) : task.TowardsB(task.Count - 1, made: false);
        return Rule.Error(
            leg.At,
            $"end {letter} cannot be flared. After bending, fitting {fitting.Name} needs {FindingFigures.UpMm(fitting.StraightNeeded)} "
            + $"of straight tube and {FindingFigures.Mm(leg.StraightLeft)} is left. Before bending, its hardware covers "
            + $"{FindingFigures.Mm(fitting.HardwareLength)} and leaves {FindingFigures.Mm(left)}, too little for the tool at bend {number}"
            + ". Move the bend further from the end, or use a tool that needs less");
    }

    /// <summary>A bend that finds too little on both sides, whatever is made first.</summary>
    private static Finding BendInTheWay(LineTemplate template, RouteLayout layout, BendingTask task, SweepReach swings)
    {
        for (var i = 0; i < task.Count; i++)
        {
            if (new OrderSearch(
                task with { HeldAtA = task.HeldAtA.SetItem(i, default), HeldAtB = task.HeldAtB.SetItem(i, default) }, swings).Starts()
                    .Any())
            {
                var bender = layout.Bends[i].Bend.Bender;
                return Rule.Error(
                    layout.Bends[i].Bend.TurnAt,
                    $"bend {i + 1} finds no room in {Orders(task)}: it has "
                    + $"{FindingFigures.Mm(task.TowardsA(i, made: i > 0))} of straight tube towards A and "
                    + $"{FindingFigures.Mm(task.TowardsB(i, made: i + 1 < task.Count))} towards B, "
                    + $"and {BenderNames.InWords(bender)} needs {FindingFigures.UpMm(Held(task, i))} on the side that is held and "
                    + $"{FindingFigures.UpMm(Swept(task, i))} on the side that is swept, for its grip or follow and up to its mark: move "
                    + "the bends apart, look at the tool's `offset`, or use one that needs less");
            }
        }

        return Rule.Error(
            template.At,
            $"line {template.Name} cannot be made in {Orders(task)}: more than one bend finds too little "
                + "straight tube beside it; move its bends apart, or use a tool that needs less");
    }

    /// <summary>What was looked at.</summary>
    private static string Orders(BendingTask task) => task.Count > ScatteredOrderSearch.MostBends
        ? "any order that works outwards from one bend"
        : "any order";

    private static Length Held(BendingTask task, int bend) => task.Needs(bend, TubeEnd.A).TowardsA;

    private static Length Swept(BendingTask task, int bend) => task.Needs(bend, TubeEnd.A).TowardsB;

    private static Length Least(BendingTask task, int bend, Func<StraightNeeded, Length> side)
    {
        var atA = side(task.Needs(bend, TubeEnd.A));
        var atB = side(task.Needs(bend, TubeEnd.B));
        return atA < atB ? atA : atB;
    }

    private static (Length Left, Length Need)? Short(Length left, Length need) => left.FallsShortOf(need) ? (left, need) : null;
}
