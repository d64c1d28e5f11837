using Google.OrTools.Sat;

namespace BendSheet.Core.Tests.Stock;

/// <summary>The same questions put to a general-purpose constraint solver, in models that share nothing with the search.</summary>
internal static class GeneralSolver
{
    /// <summary>Always the same answer after the same work, however long that takes.</summary>
    private const string Parameters = "num_workers:1,random_seed:1,max_deterministic_time:60";

    /// <summary>Fewest rolls of one length, out of every way to fill one with a piece or more to the brim.</summary>
    public static int FewestByPatterns(IReadOnlyList<int> pieces, int length)
    {
        var demand = pieces.GroupBy(size => size).OrderByDescending(same => same.Key).Select(same => (Size: same.Key, Count: same.Count()))
            .ToList();
        var patterns = new List<int[]>();
        Patterns(demand, 0, length, new int[demand.Count], patterns);
        var model = new CpModel();
        var rolls = patterns.Select((_, i) => model.NewIntVar(0, pieces.Count, FormattableString.Invariant($"x{i}"))).ToList();
        for (var i = 0; i < demand.Count; i++)
        {
            model.Add(LinearExpr.WeightedSum(rolls, patterns.Select(pattern => (long)pattern[i])) >= demand[i].Count);
        }

        model.Minimize(LinearExpr.Sum(rolls));
        return (int)Solve(model).ObjectiveValue;
    }

    /// <summary>Fewest new rolls, and then the longest piece left on any roll.</summary>
    /// <param name="pieces">In whole millimetres.</param>
    /// <param name="there">What the rolls hold that are there.</param>
    /// <param name="bought">What a new one holds.</param>
    /// <param name="loss">Lost to each cut.</param>
    public static (int Bought, int Left) Best(IReadOnlyList<int> pieces, IReadOnlyList<int> there, int bought, int loss)
    {
        for (var count = 0; ; count++)
        {
            int[] rolls = [.. there, .. Enumerable.Repeat(bought, count)];
            if (LongestLeft(pieces, rolls, loss) is { } left)
            {
                return (count, left);
            }
        }
    }

    private static int? LongestLeft(IReadOnlyList<int> pieces, int[] rolls, int loss)
    {
        var model = new CpModel();
        var on = new BoolVar[pieces.Count, rolls.Length];
        for (var piece = 0; piece < pieces.Count; piece++)
        {
            for (var roll = 0; roll < rolls.Length; roll++)
            {
                on[piece, roll] = model.NewBoolVar(FormattableString.Invariant($"on{piece}_{roll}"));
            }

            model.AddExactlyOne(Enumerable.Range(0, rolls.Length).Select(roll => (ILiteral)on[piece, roll]));
        }

        var longest = model.NewIntVar(0, rolls.Max(), "longest");
        var isLongest = rolls.Select((_, roll) => model.NewBoolVar(FormattableString.Invariant($"longest{roll}"))).ToList();
        model.AddExactlyOne(isLongest);
        for (var roll = 0; roll < rolls.Length; roll++)
        {
            var used = LinearExpr.WeightedSum(
                Enumerable.Range(0, pieces.Count).Select(piece => on[piece, roll]), pieces.Select(size => (long)size + loss));

            // The last cut may fall on the roll's end, and then loses nothing.
            model.Add(used <= rolls[roll] + loss);
            var left = model.NewIntVar(0, rolls[roll], FormattableString.Invariant($"left{roll}"));
            model.AddMaxEquality(left, new LinearExpr[] { LinearExpr.Constant(0), rolls[roll] - used });
            model.Add(longest <= left).OnlyEnforceIf(isLongest[roll]);
        }

        model.Maximize(longest);
        var solver = new CpSolver { StringParameters = Parameters };
        return solver.Solve(model) switch
        {
            CpSolverStatus.Optimal => (int)solver.ObjectiveValue,
            CpSolverStatus.Infeasible => null,
            var other => throw new InvalidOperationException($"the solver stopped with {other}"),
        };
    }

    private static CpSolver Solve(CpModel model)
    {
        var solver = new CpSolver { StringParameters = Parameters };
        Assert.Equal(CpSolverStatus.Optimal, solver.Solve(model));
        return solver;
    }

    private static void Patterns(List<(int Size, int Count)> demand, int from, int left, int[] pattern, List<int[]> patterns)
    {
        if (demand.All(one => one.Size > left || pattern[demand.IndexOf(one)] == one.Count))
        {
            patterns.Add([.. pattern]);
        }

        for (var i = from; i < demand.Count; i++)
        {
            if (demand[i].Size <= left && pattern[i] < demand[i].Count)
            {
                pattern[i]++;
                Patterns(demand, i, left - demand[i].Size, pattern, patterns);
                pattern[i]--;
            }
        }
    }
}
