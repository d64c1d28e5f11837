using System.Globalization;
using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Sheet;

namespace BendSheet.Cli.Output;

/// <summary>The cover's content as tables for the terminal: lines, tube with its cutting plan, shopping list.</summary>
public static class StockTable
{
    private const string Gap = "  ";

    /// <summary>Nothing of a wrong file.</summary>
    public static string Write(CarPlan plan)
    {
        if (plan.Stock.Verdict == Verdict.WrongFile)
        {
            return string.Empty;
        }

        var cover = plan.Cover();
        var text = new StringBuilder(cover.Summary).Append('\n');
        Append(text, Gap, [
            Column.Words("line", cover.Lines.Select(line => line.Name)),
            Column.Figures(
                "cut",
                cover.Lines.Select(
                    line => (line.State == LineState.Rough ? "about " : string.Empty) + (line.CutLength ?? Figure.Unknown).Main)),
            Column.Words("", cover.Lines.Select(line => line.StateInWords)),
            Column.Words("from → to", cover.Lines.Select(line => line.EndsAtTerminal)),
        ]);
        foreach (var tube in cover.Tubes)
        {
            AppendTube(text, tube, cover.Notation.Symbol);
        }

        AppendShopping(text, cover);
        foreach (var remark in cover.Remarks)
        {
            text.Append(remark).Append('\n');
        }

        return text.ToString();
    }

    private static void AppendTube(StringBuilder text, StockTube tube, string unit)
    {
        text.Append("\nTube ").Append(tube.Tube).Append('\n');
        Append(text, Gap, [
            Column.Words(null, tube.Amounts.Select(amount => amount.Label)),
            Column.Figures(null, tube.Amounts.Select(amount => amount.Length.Main)),
            Column.Words(null, tube.Amounts.Select(amount => $"({amount.Length.Other})")),
        ]);
        foreach (var roll in tube.Rolls)
        {
            AppendRoll(text, roll, unit);
        }

        text.Append('\n');
        foreach (var remark in tube.Remarks)
        {
            text.Append(Gap).Append(remark).Append('\n');
        }
    }

    private static void AppendRoll(StringBuilder text, StockRoll roll, string unit)
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
            Append(text, Gap + Gap, [
                Column.Figures($"cut at {unit}", roll.Cuts.Select(cut => cut.At)),
                Column.Figures("length", roll.Cuts.Select(cut => cut.Length)),
                Column.Figures("then left", roll.Cuts.Select(cut => cut.Left)),
                Column.Words("piece", roll.Cuts.Select(cut => cut.Piece)),
            ]);
        }

        if (!roll.Planned.IsEmpty)
        {
            text.Append(roll.Cuts.IsEmpty ? ", " : Gap + Gap + "then planned, ").Append(StockRoll.DoNotCut).Append('\n');
            Append(text, Gap + Gap + Gap, [
                Column.Words(null, roll.Planned.Select(room => room.Line)),
                Column.Figures(null, roll.Planned.Select(room => room.About)),
            ]);
        }

        text.Append(Gap).Append(Gap).Append("left: ").Append(roll.Left).Append('\n');
    }

    private static void AppendShopping(StringBuilder text, CoverContent cover)
    {
        if (cover.Shopping.IsEmpty)
        {
            text.Append("\nNothing has to be bought.\n");
            return;
        }

        text.Append("\nShopping list\n");
        Append(text, Gap, [
            Column.Figures("buy", cover.Shopping.Select(item => Number(item.ToBuy))),
            Column.Words("what", cover.Shopping.Select(item => item.Name)),
            Column.Words("which", cover.Shopping.Select(item => item.Specification)),
            Column.Figures("needed", cover.Shopping.Select(item => Number(item.Needed))),
            Column.Figures("have", cover.Shopping.Select(item => Number(item.Have))),
            Column.Words("used at", cover.Shopping.Select(item => item.UsedAt)),
        ]);
        if (cover.Cost is { } cost)
        {
            text.Append(Gap).Append(cost).Append('\n');
        }
    }

    private static void Append(StringBuilder text, string indent, Column[] columns)
    {
        if (columns[0].Heading is not null)
        {
            AppendRow(text, indent, columns, column => column.Heading!);
        }

        for (var row = 0; row < columns[0].Cells.Count; row++)
        {
            AppendRow(text, indent, columns, column => column.Cells[row]);
        }
    }

    private static void AppendRow(StringBuilder text, string indent, Column[] columns, Func<Column, string> cell)
    {
        var cells = columns.Select(column => column.IsText ? cell(column).PadRight(column.Width) : cell(column).PadLeft(column.Width));
        text.Append((indent + string.Join(Gap, cells)).TrimEnd()).Append('\n');
    }

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>Figures end under one another, words begin under one another.</summary>
    private sealed record Column(string? Heading, List<string> Cells, bool IsText)
    {
        public int Width { get; } = Cells.Select(cell => cell.Length).Append(Heading?.Length ?? 0).Max();

        public static Column Words(string? heading, IEnumerable<string> cells) => new(heading, [.. cells], IsText: true);

        public static Column Figures(string? heading, IEnumerable<string> cells) => new(heading, [.. cells], IsText: false);
    }
}
