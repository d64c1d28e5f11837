using System.Globalization;
using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Sheet;
using BendSheet.Core.Stock;
using BendSheet.Core.Units;

namespace BendSheet.Cli.Output;

/// <summary>
/// Cutting plan and shopping list for a spreadsheet, one table whose first column tells them apart: <c>cut</c> for each piece,
/// <c>do not cut: no template yet</c> for one without, <c>left</c> for each roll, <c>buy</c> for each thing. Millimetres, unrounded.
/// </summary>
public static class StockCsv
{
    private static readonly string[] Columns =
    [
        "list", "tube", "roll", "from", "to", "length", "name", "specification", "needed", "have", "buy", "usedAt",
    ];

    /// <summary>The heading and the rows, each with a line end after it.</summary>
    public static string Write(CarPlan plan)
    {
        var text = new StringBuilder();
        Csv.AppendRow(text, Columns);
        foreach (var tube in plan.Stock.Plan.Tubes)
        {
            foreach (var roll in tube.Plan?.Rolls ?? [])
            {
                AppendRoll(text, TubeWords.InWords(tube.Tube, plan.Measured.Notation), roll);
            }
        }

        foreach (var item in plan.Stock.Shopping.Items)
        {
            Csv.AppendRow(
                text,
                [
                    "buy", "", "", "", "", "", Csv.Text(item.Name), Csv.Text(item.Specification),
                    Number(item.Count), Number(item.Have), Number(item.ToBuy),
                    Csv.Text(string.Join(", ", item.UsedAt)),
                ]);
        }

        return text.ToString();
    }

    private static void AppendRoll(StringBuilder text, string tube, RollCuts roll)
    {
        string[] on = [Csv.Text(tube), Csv.Text(roll.Name)];
        foreach (var cut in roll.Cuts)
        {
            Csv.AppendRow(
                text,
                [
                    cut.Piece.Use == PieceUse.Rough ? StockRoll.DoNotCut : "cut", .. on,
                    Number(cut.From), Number(cut.To), Number(cut.Piece.Length), Csv.Text(cut.Piece.Name), "", "", "", "", "",
                ]);
        }

        var from = roll.Before - roll.Left;
        Csv.AppendRow(text, ["left", .. on, Number(from), Number(roll.Before), Number(roll.Left), "", "", "", "", "", ""]);
    }

    private static string Number(Length length) => length.Millimetres.ToString("R", CultureInfo.InvariantCulture);

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
