using BendSheet.Core.Findings;
using BendSheet.Core.Stock;

namespace BendSheet.Core.Tests.Stock;

/// <summary>Pieces and rolls in millimetres, and what must hold of every plan.</summary>
internal static class Stocked
{
    public static SourcePosition At { get; } = new("test.yaml", 4, 5);

    public static Roll Roll(double length, double left, string name = "roll") =>
        new(name, Lines.Tube, Lines.Mm(length), Lines.Mm(left), At) { LeftIsTyped = true };

    public static Piece Piece(double length, string name = "piece") => new(name, Lines.Mm(length), PieceUse.Line, At);

    /// <summary>A plan without anything lost or spared unless said, looked over before it is handed out.</summary>
    public static CuttingPlan Plan(IEnumerable<double> pieces, IEnumerable<Roll> rolls, double loss = 0, double spare = 0)
    {
        var all = pieces.Select((length, i) => Piece(length, FormattableString.Invariant($"p{i}"))).ToList();
        var plan = CuttingPlan.Of([.. all], [.. rolls], Lines.Mm(loss), Lines.Mm(spare));
        IsSound(plan, all, loss);
        return plan;
    }

    /// <summary>
    /// Every piece once, none beyond the end of its roll, each a cut's loss behind the one before, and the offcut what is left.
    /// </summary>
    public static void IsSound(CuttingPlan plan, List<Piece> pieces, double loss)
    {
        var planned = plan.Rolls.SelectMany(roll => roll.Cuts).Select(cut => cut.Piece).Concat(plan.TooLong).ToList();
        Assert.Equal(
            pieces.Select(piece => piece.Name).Order(StringComparer.Ordinal), planned.Select(piece => piece.Name)
                .Order(StringComparer.Ordinal));
        const double Same = 1e-4;
        foreach (var roll in plan.Rolls)
        {
            var at = 0.0;
            foreach (var cut in roll.Cuts)
            {
                Assert.Equal(at, cut.From.Millimetres, Same);
                Assert.Equal(at + cut.Piece.Length.Millimetres, cut.To.Millimetres, Same);
                Assert.InRange(cut.To.Millimetres, 0, roll.Before.Millimetres + Same);
                at = cut.To.Millimetres + loss;
                Assert.Equal(Math.Max(0, roll.Before.Millimetres - at), cut.Left.Millimetres, Same);
            }

            Assert.Equal(Math.Max(0, roll.Before.Millimetres - at), roll.Left.Millimetres, Same);
            Assert.True(roll.Count == 1 || (roll.Count > 1 && roll.Cuts.IsEmpty));
        }

        Assert.Equal(plan.Bought, plan.Rolls.Where(roll => roll.IsBought).Sum(roll => roll.Count));
        Assert.InRange(plan.BoughtAtLeast, 0, plan.Bought);
        Assert.Equal(plan.Rolls.Max(roll => roll.Left.Millimetres), plan.LongestLeft.Millimetres, Same);
        Assert.True(plan.LongestLeft <= plan.LongestLeftAtMost);
    }
}
