using System.Collections.Immutable;
using System.Globalization;
using BendSheet.Core.Bench;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Sheet;

/// <summary>Words and rounds the order of work as panels, one for each thing that is done.</summary>
public static class StepWriter
{
    /// <summary>The panels of a line.</summary>
    /// <param name="line">With a plan.</param>
    /// <param name="notation">How lengths are written.</param>
    /// <exception cref="ArgumentException">The line has no plan.</exception>
    public static ImmutableArray<StepPanel> Of(SolvedLine line, LengthNotation notation)
    {
        if (line is not { Plan: { } plan, Template: var template })
        {
            throw new ArgumentException("Only a line that can be made has steps.", nameof(line));
        }

        var begun = WorkOrder.IsBegun(template, plan);
        var panels = ImmutableArray.CreateBuilder<StepPanel>();
        var made = ImmutableHashSet<int>.Empty;
        StepPicture? last = null;
        var firstEnds = plan.Order.FlaredFirst.ToHashSet();
        var rows = SheetWriter.Rows(template, plan, notation).ToDictionary(row => row.Number);
        foreach (var step in WorkOrder.Steps(template, plan, notation))
        {
            if (step.Bends.IsEmpty)
            {
                // On a piece that was begun, the cut and the ends finished first are done; a flip stands only before a bend still to make.
                var done = begun && (step.Kind == WorkKind.Cut
                    || (step.Kind == WorkKind.EndA && firstEnds.Contains(TubeEnd.A))
                    || (step.Kind == WorkKind.EndB && firstEnds.Contains(TubeEnd.B))
                    || (step.Kind == WorkKind.Flip && IsMade(plan.InWorkingOrder.Skip(made.Count).First())));
                if (!done)
                {
                    panels.Add(step.Kind switch
                    {
                        WorkKind.Flip => new(StepWords.Heading(step.Kind), StepWords.Flip(step.Text))
                        {
                            Flip = new(last!, Picture(line, Coiled(plan, made.Count), made)),
                        },
                        WorkKind.EndA => OfEnd(line, TubeEnd.A, step, made, notation),
                        WorkKind.EndB => OfEnd(line, TubeEnd.B, step, made, notation),
                        _ => new(StepWords.Heading(step.Kind), step.Text),
                    });
                }

                continue;
            }

            foreach (var bends in Together(step.Bends))
            {
                if (!IsMade(bends[0]))
                {
                    panels.Add(Panel(line, bends, rows[bends[0].Number], made, notation));
                }

                last = Picture(line, bends, made);
                made = made.Union(bends.Select(bend => bend.Number - 1));
            }
        }

        return panels.ToImmutable();

        bool IsMade(BenchBend bend) => begun && template.Bent.Contains(bend.Number);
    }

    /// <summary>A coil is wound in one go.</summary>
    private static List<List<BenchBend>> Together(IEnumerable<BenchBend> bends)
    {
        List<List<BenchBend>> together = [];
        foreach (var bend in bends)
        {
            if (together.Count > 0 && together[^1][^1] is var before && before.Bend.FromTangent && bend.Bend.FromTangent
                && before.Bender == bend.Bender && Math.Abs(before.Number - bend.Number) == 1)
            {
                together[^1].Add(bend);
            }
            else
            {
                together.Add([bend]);
            }
        }

        return together;
    }

    /// <summary>What is bent in one go after so many bends.</summary>
    private static List<BenchBend> Coiled(BenchPlan plan, int after) =>
        Together(plan.InWorkingOrder.Skip(after))[0];

    private static StepPicture Picture(SolvedLine line, List<BenchBend> bends, ImmutableHashSet<int> made) =>
        new(line, (bends.Min(one => one.Number) - 1, bends.Max(one => one.Number) - 1), made);

    private static StepPanel OfEnd(SolvedLine line, TubeEnd end, WorkStep step, ImmutableHashSet<int> made, LengthNotation notation)
    {
        var tube = line.Template.Tube;
        var fitting = (end == TubeEnd.A ? line.Template.From : line.Template.To).Fitting!;
        var standsOut = FlareStep.StandsOutInWords(fitting, tube, notation);
        ImmutableArray<PieceOnEnd> pieces =
        [
            .. fitting.Hardware.Reverse().Select(piece => new PieceOnEnd(piece, EndWords.Shape(piece), StepWords.Piece(piece, end))),
        ];
        return new(StepWords.Heading(step.Kind, fitting), step.Text)
        {
            End = new(end, EndOfTube.Of(line, end, made), fitting, tube.OutsideDiameter)
            {
                Pieces = pieces,
                StandsOut = FlareStep.StandsOut(fitting, tube),
                StandsOutInWords = standsOut,
                Alternative = StepWords.OfEnd(end, pieces, standsOut),
            },
        };
    }

    private static StepPanel Panel(
        SolvedLine line, List<BenchBend> bends, BendRow row, ImmutableHashSet<int> made, LengthNotation notation)
    {
        var (plan, bend) = (line.Plan!, bends[0]);
        var picture = Picture(line, bends, made);
        var range = picture.Bends;
        var number = range.First == range.Last
            ? FormattableString.Invariant($"{bend.Number}")
            : FormattableString.Invariant($"{bends[0].Number}–{bends[^1].Number}");
        var check = StepCheck.Of(line, range, picture.IsMadeThen);
        var swept = bend.Held == TubeEnd.A ? TubeEnd.B : TubeEnd.A;
        var swing = SheetWriter.SwingInWords(bends.Max(one => one.Swing), line.Template.Tube, notation);
        return new(
            bends.Count > 1 ? $"Bends {number}" : $"Bend {number}",
            Text(bends, swept, swing))
        {
            Bend = new()
            {
                Number = number,
                Row = row,
                CheckName = check is null
                    ? StepWords.ByProtractor
                    : StepWords.Check(Place(check.From, plan), Place(check.To, plan), notation),
                Check = check is null ? AngleNotation.Figure(bend.Bend.Turn) : notation.Figure(check.Distance),
                Picture = picture,
                Alternative = $"The tube in the tool for bend {number}: the {bend.Held} side held, the former above the tube, the {swept} "
                    + "side swept up to it, before and after the pull.",
            },
            Note = string.Join("; ", bends.Select(one => one.Bend.Note).OfType<string>().Distinct(StringComparer.Ordinal)),
        };
    }

    private static string Text(List<BenchBend> bends, TubeEnd swept, string swing) =>
        $"Hold the {bends[0].Held} side. Sweep the {swept} side towards the former ({swing} clear). {WorkOrder.ToolStep(bends)}."
            + (bends.Count > 1
            ? FormattableString.Invariant($" The figures are those of bend {bends[0].Number}: the table has the others.")
            : string.Empty);

    private static string Place(int place, BenchPlan plan) =>
        place == 0 ? "A" : place == plan.Bends.Length + 1 ? "B" : place.ToString(CultureInfo.InvariantCulture);
}
