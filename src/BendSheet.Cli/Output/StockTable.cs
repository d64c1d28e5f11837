using System.Globalization;
using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Sheet;

namespace BendSheet.Cli.Output;

/// <summary>The cover's content as tables for the terminal: lines, tube with its cutting plan, shopping list.</summary>
internal static class StockTable
{
    private const string Gap = TextTable.Gap;

    /// <summary>Empty where the file is wrong.</summary>
    public static string Write(CarPlan plan, View view)
    {
        if (plan.Stock.Verdict == Verdict.WrongFile)
        {
            return string.Empty;
        }

        var cover = plan.Cover();
        var text = new StringBuilder(cover.Summary).Append('\n');
        TextTable.Append(text, Gap, [
            TextColumn.Words("line", cover.Lines.Select(line => line.Name)),
            TextColumn.Figures(
                "cut",
                cover.Lines.Select(
                    line => (line.State == LineState.Rough ? "about " : string.Empty) + (line.CutLength ?? Figure.Unknown).Main)),
            TextColumn.Words("", cover.Lines.Select(line => line.StateInWords)),
            TextColumn.Words("from → to", cover.Lines.Select(line => line.EndsAtTerminal)),
        ], view.Width);
        foreach (var tube in cover.Tubes)
        {
            AppendTube(text, tube, cover.Notation.Symbol, view.Width);
        }

        AppendShopping(text, cover, view.Width);
        foreach (var remark in cover.Remarks)
        {
            text.Append(remark).Append('\n');
        }

        return Wrapped.Text(text.ToString(), view.Width);
    }

    private static void AppendTube(StringBuilder text, StockTube tube, string unit, int? width)
    {
        text.Append("\nTube ").Append(tube.Tube).Append('\n');
        TextTable.Append(text, Gap, [
            TextColumn.Words(null, tube.Amounts.Select(amount => amount.Label)),
            TextColumn.Figures(null, tube.Amounts.Select(amount => amount.Length.Main)),
            TextColumn.Words(null, tube.Amounts.Select(amount => $"({amount.Length.Other})")),
        ], width);
        foreach (var roll in tube.Rolls)
        {
            AppendRoll(text, roll, unit, width);
        }

        text.Append('\n');
        foreach (var remark in tube.Remarks)
        {
            text.Append(Gap).Append(remark).Append('\n');
        }
    }

    private static void AppendRoll(StringBuilder text, StockRoll roll, string unit, int? width)
    {
        text.Append('\n').Append(Gap).Append(roll.Name).Append(": ");
        if (roll.IsWhole)
        {
            text.Append("not cut, ").Append(roll.Left).Append('\n');
            return;
        }

        text.Append(roll.Before.Main).Append(" (").Append(roll.Before.Other).Append(')');
        if (!roll.Cuts.IsEmpty)
        {
            text.Append(", from its free end\n");
            TextTable.Append(text, Gap + Gap, [
                TextColumn.Figures($"cut at {unit}", roll.Cuts.Select(cut => cut.At)),
                TextColumn.Figures("length", roll.Cuts.Select(cut => cut.Length)),
                TextColumn.Figures("then left", roll.Cuts.Select(cut => cut.Left)),
                TextColumn.Words("piece", roll.Cuts.Select(cut => cut.Piece)),
            ], width);
        }

        if (!roll.Planned.IsEmpty)
        {
            text.Append(roll.Cuts.IsEmpty ? ", " : Gap + Gap + "then planned, ").Append(StockRoll.DoNotCut).Append('\n');
            TextTable.Append(text, Gap + Gap + Gap, [
                TextColumn.Words(null, roll.Planned.Select(room => room.Line)),
                TextColumn.Figures(null, roll.Planned.Select(room => room.About)),
            ], width);
        }

        text.Append(Gap).Append(Gap).Append("left: ").Append(roll.Left).Append('\n');
    }

    private static void AppendShopping(StringBuilder text, CoverContent cover, int? width)
    {
        if (cover.Shopping.IsEmpty)
        {
            text.Append("\nNothing has to be bought.\n");
            return;
        }

        text.Append("\nShopping list\n");
        TextTable.Append(text, Gap, [
            TextColumn.Figures("buy", cover.Shopping.Select(item => Number(item.ToBuy))),
            TextColumn.Words("what", cover.Shopping.Select(item => item.Name)),
            TextColumn.Words("which", cover.Shopping.Select(item => item.Specification)),
            TextColumn.Figures("needed", cover.Shopping.Select(item => Number(item.Needed))),
            TextColumn.Figures("have", cover.Shopping.Select(item => Number(item.Have))),
            TextColumn.Words("used at", cover.Shopping.Select(item => item.UsedAt)),
        ], width);
        if (cover.Cost is { } cost)
        {
            text.Append(Gap).Append(cost).Append('\n');
        }
    }

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
