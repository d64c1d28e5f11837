using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Sheet;

namespace BendSheet.Cli.Output;

/// <summary>The sheet's content as a table for the terminal.</summary>
internal static class LineTable
{
    private const string Gap = TextTable.Gap;

    /// <summary>Columns that a narrow terminal leaves out, in this order: the mark, angles and what they follow from stay.</summary>
    private static readonly BendFigure[] LeftOutFirst =
        [BendFigure.Lever, BendFigure.Swing, BendFigure.Dial, BendFigure.Rotate, BendFigure.StraightAfter, BendFigure.Held];

    /// <summary>Every line that can be made, one below the other; on a terminal that can show it, with its picture.</summary>
    public static string Write(CarPlan plan, View view)
    {
        var text = new StringBuilder();
        foreach (var sheet in plan.Sheets())
        {
            if (text.Length > 0)
            {
                text.Append('\n');
            }

            AppendLine(text, sheet, view.Width);
            if (view.Drawing)
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

        return Wrapped.Text(text.ToString(), view.Width);
    }

    private static void AppendLine(StringBuilder text, SheetContent sheet, int? width)
    {
        text.Append(sheet.Line).Append(sheet.Made ? " (made)" : string.Empty)
            .Append(": cut ").Append(Both(sheet.CutLength)).Append('\n')
            .Append(Gap).Append(sheet.Ends).Append('\n')
            .Append(Gap).Append("tube ").Append(sheet.Tube).Append("; bender ").Append(sheet.Bender)
            .Append("; developed length ").Append(Both(sheet.DevelopedLength)).Append("; sheet ").Append(sheet.Fingerprint).Append("\n\n");

        if (!sheet.Rows.IsEmpty)
        {
            AppendTable(text, sheet, width);
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

    private static void AppendTable(StringBuilder text, SheetContent sheet, int? width)
    {
        List<BendColumn> all = [.. BendColumn.Of(sheet)];
        var shown = Fitting(all, sheet, width);
        List<TextColumn> columns = [.. shown.Select(column => Column(column, sheet))];
        TextTable.AppendRow(text, Gap, columns, column => column.Heading!);
        for (var row = 0; row < sheet.Rows.Length; row++)
        {
            if (sheet.Rows[row].TurnRound is { } turn)
            {
                text.Append(Gap).Append("-- ").Append(turn).Append('\n');
            }

            var at = row;
            TextTable.AppendRow(text, Gap, columns, column => column.Cells[at]);
            if (shown.Count < all.Count && sheet.Rows[row].Remark is { Length: > 0 } remark)
            {
                text.Append(Gap).Append(Gap).Append(Gap).Append("note: ").Append(remark).Append('\n');
            }
        }

        var left = all.Except(shown).Where(column => column.Figure != BendFigure.Remark).Select(column => column.AtTerminal).ToList();
        if (left.Count > 0)
        {
            text.Append('\n').Append(Gap).Append("Left out for lack of room: ").AppendJoin(", ", left).Append("; `--wide` shows all.\n");
        }
    }

    /// <summary>All columns where they fit; otherwise those that do, with remarks on rows of their own.</summary>
    private static List<BendColumn> Fitting(List<BendColumn> all, SheetContent sheet, int? width)
    {
        bool Fits(IEnumerable<BendColumn> columns) =>
            width is not { } most || TextTable.Width(Gap, [.. columns.Select(column => Column(column, sheet))]) <= most;

        if (Fits(all))
        {
            return all;
        }

        List<BendColumn> shown = [.. all.Where(column => column.Figure != BendFigure.Remark)];
        foreach (var figure in LeftOutFirst.TakeWhile(_ => !Fits(shown)))
        {
            shown.RemoveAll(column => column.Figure == figure);
        }

        return shown;
    }

    private static TextColumn Column(BendColumn column, SheetContent sheet) =>
        new(column.AtTerminal, [.. sheet.Rows.Select(column.Text)], IsText: column.Figure == BendFigure.Remark);
}
