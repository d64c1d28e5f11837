using System.Globalization;
using System.Text;
using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Units;

namespace BendSheet.Cli.Output;

/// <summary>
/// One row for each bend, for a spreadsheet: millimetres and degrees, unrounded. A straight line has one row
/// without a bend; a line that cannot be made has none.
/// </summary>
public static class SolvedCsv
{
    private static readonly string[] Columns =
    [
        "line", "cutLength", "developedLength", "number", "straightBefore", "rotate", "dial", "bend", "pull", "bender", "radius", "setback",
        "arc", "gain", "start", "middle", "end", "mark", "straightAfter", "step", "held", "lineAt", "swing", "lever", "note",
    ];

    /// <summary>The heading and the rows, each with a line end after it.</summary>
    public static string Write(CarPlan car)
    {
        var text = new StringBuilder();
        Csv.AppendRow(text, Columns);
        foreach (var line in car.Lines)
        {
            if (line is not { Plan: { } plan })
            {
                continue;
            }

            var before = plan.FirstStraight;
            if (plan.Bends.IsEmpty)
            {
                Csv.AppendRow(text, [.. LineCells(line, plan), string.Empty, Number(before), .. Columns.Skip(5).Select(_ => string.Empty)]);
            }

            foreach (var bend in plan.Bends)
            {
                Csv.AppendRow(text, [.. LineCells(line, plan), .. BendCells(bend, before)]);
                before = bend.StraightAfter;
            }
        }

        return text.ToString();
    }

    private static IEnumerable<string> LineCells(SolvedLine line, BenchPlan plan) =>
        [Csv.Text(line.Template.Name), Number(plan.CutLength), Number(plan.DevelopedLength)];

    private static IEnumerable<string> BendCells(BenchBend bend, Length before) =>
    [
        bend.Number.ToString(CultureInfo.InvariantCulture),
        Number(before),
        Number(bend.Bend.Rotation),
        Number(bend.Dial),
        Number(bend.Bend.Turn),
        Number(bend.Pull),
        Csv.Text(bend.Bender.Name),
        Number(bend.Layout.Radius),
        Number(bend.Layout.Setback),
        Number(bend.Layout.Arc),
        Number(bend.Layout.Gain),
        Number(bend.Start),
        Number(bend.Middle),
        Number(bend.End),
        Number(bend.Mark),
        Number(bend.StraightAfter),
        bend.Step.ToString(CultureInfo.InvariantCulture),
        bend.Held.ToString(),
        Number(bend.LineAt),
        Number(bend.Swing),
        Number(bend.Lever),
        Csv.Text(bend.Bend.Note ?? string.Empty),
    ];

    private static string Number(Length? length) =>
        length is { } known ? known.Millimetres.ToString("R", CultureInfo.InvariantCulture) : string.Empty;

    private static string Number(Angle angle) => angle.Degrees.ToString("R", CultureInfo.InvariantCulture);
}
