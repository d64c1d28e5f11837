using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Sheet;

namespace BendSheet.Cli.Output;

/// <summary>The sheet's content as a table for the terminal.</summary>
public static class LineTable
{
    private const string Gap = "  ";

    /// <summary>Every line that can be made, one below the other.</summary>
    public static string Write(CarPlan plan) => Write(plan, drawn: false);

    /// <summary>The same with each line's picture, for a terminal that can show it.</summary>
    public static string WithPictures(CarPlan plan) => Write(plan, drawn: true);

    private static string Write(CarPlan plan, bool drawn)
    {
        var text = new StringBuilder();
        foreach (var sheet in plan.Sheets())
        {
            if (text.Length > 0)
            {
                text.Append('\n');
            }

            AppendLine(text, sheet);
            if (drawn)
            {
                AppendPicture(text, sheet);
            }
        }

        if (text.Length > 0)
        {
            text.Append('\n').Append(Cautions.Rotation).Append('\n');
            text.Append("Geometry only, no approval of a brake system. The order of work and the cautions are on the printed sheet: read "
                + "them first.\n");
        }

        return text.ToString();
    }

    private static void AppendLine(StringBuilder text, SheetContent sheet)
    {
        text.Append(sheet.Line).Append(sheet.Made ? " (made)" : string.Empty)
            .Append(": cut ").Append(Both(sheet.CutLength)).Append('\n')
            .Append(Gap).Append(sheet.Ends).Append('\n')
            .Append(Gap).Append("tube ").Append(sheet.Tube).Append("; bender ").Append(sheet.Bender)
            .Append("; developed length ").Append(Both(sheet.DevelopedLength)).Append("; sheet ").Append(sheet.Fingerprint).Append("\n\n");

        if (!sheet.Rows.IsEmpty)
        {
            AppendTable(text, sheet);
            text.Append('\n').Append(Gap).Append(sheet.Datum).Append('\n');
        }

        foreach (var remark in sheet.ReadFirst)
        {
            text.Append(Gap).Append("! ").Append(remark).Append('\n');
        }

        if (sheet.HowSure is { } sure)
        {
            text.Append(Gap).Append(sure).Append('\n');
        }

        if (!sheet.Adjusted.IsEmpty)
        {
            text.Append(Gap).Append("Typed → used: ")
                .AppendJoin("; ", sheet.Adjusted.Select(one => $"{one.Name} {one.Typed} → {one.Used}")).Append('\n');
        }

        if (!sheet.Clips.IsEmpty)
        {
            text.Append(Gap).AppendJoin(' ', sheet.Clips).Append('\n');
        }

        text.Append(Gap).Append(CheckWords.Heading(sheet)).Append(": ")
            .AppendJoin("; ", sheet.Checks.Select(check => $"{check.Name} {check.Figure}"))
            .Append(". Box over the outside, X × Y × Z: ").Append(sheet.Envelope).Append(" (").Append(sheet.Axes).Append(").\n");
    }

    private static void AppendPicture(StringBuilder text, SheetContent sheet)
    {
        text.Append('\n');
        foreach (var row in LinePicture.Rows(sheet))
        {
            text.Append((Gap + row).TrimEnd()).Append('\n');
        }
    }

    private static string Both(Figure figure) => $"{figure.Main} ({figure.Other})";

    private static void AppendTable(StringBuilder text, SheetContent sheet)
    {
        List<Column> columns =
        [
            .. BendColumn.Of(sheet).Select(column => new Column(
                column.AtTerminal, [.. sheet.Rows.Select(column.Text)], IsText: column.Figure == BendFigure.Remark)),
        ];
        AppendRow(text, columns, column => column.Heading);
        for (var row = 0; row < columns[0].Cells.Count; row++)
        {
            if (sheet.Rows[row].TurnRound is { } turn)
            {
                text.Append(Gap).Append("-- ").Append(turn).Append('\n');
            }

            AppendRow(text, columns, column => column.Cells[row]);
        }
    }

    private static void AppendRow(StringBuilder text, List<Column> columns, Func<Column, string> cell)
    {
        var cells = columns.Select(column => column.IsText ? cell(column) : cell(column).PadLeft(column.Width));
        text.Append((Gap + string.Join(Gap, cells)).TrimEnd()).Append('\n');
    }

    /// <summary>Figures end under one another; text begins there, and comes last.</summary>
    private sealed record Column(string Heading, List<string> Cells, bool IsText)
    {
        public int Width { get; } = Cells.Select(cell => cell.Length).Append(Heading.Length).Max();
    }
}
