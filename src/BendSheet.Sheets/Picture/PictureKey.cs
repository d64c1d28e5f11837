using BendSheet.Core.Picture;
using BendSheet.Core.Plumbing;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Picture;

/// <summary>Beside or below the picture: how to read it, and a row for each line and hose.</summary>
internal static class PictureKey
{
    private const double Swatch = 15;
    private const int LegendColumns = 3;
    private const double LegendRow = 5;
    private const double Padding = 1;
    private const double TickBoxSize = 3;

    /// <summary>A row of more lines is printed as several, so that none is taller than a page.</summary>
    private const int LinesInRow = 12;

    /// <summary>Shares of the width: number, name, ends, length, circuit, box to tick.</summary>
    private static readonly double[] Shares = [0.05, 0.23, 0.34, 0.14, 0.15, 0.09];

    private static readonly TextStyle Style = TextStyle.Small;

    /// <summary>What the lines and marks mean.</summary>
    /// <param name="picture">What it shows.</param>
    /// <param name="goesOn">It is a diagram some of whose parts stand in two places.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of the type area.</param>
    public static IEnumerable<Block> Legend(CarPicture picture, bool goesOn, TextMeasure measure, double width)
    {
        List<(Action<Canvas, double, double> Draw, string Words)> all = [.. Samples(picture, goesOn)];
        var column = width / LegendColumns;
        foreach (var row in all.Chunk(LegendColumns))
        {
            var wrapped = row.Select(one => measure.Wrap(one.Words, Style, column - Swatch - 4)).ToList();
            var height = Math.Max(LegendRow, (wrapped.Max(lines => lines.Count) * Style.LineHeight) + 1);
            yield return new(height, (canvas, top) =>
            {
                for (var i = 0; i < row.Length; i++)
                {
                    var (draw, left) = (row[i].Draw, i * column);
                    canvas.Decoration(() => draw(canvas, left, top + (LegendRow / 2)));
                    for (var line = 0; line < wrapped[i].Count; line++)
                    {
                        var (words, y) = (wrapped[i][line], top + 0.8 + Style.Ascent + (line * Style.LineHeight));
                        canvas.As(
                            Role.Text, () => canvas.Text(words, Style, left + Swatch + 2, y), continues: line > 0);
                    }
                }
            })
            {
                Role = Role.Nothing,
            };
        }
    }

    /// <summary>The table; its heading is repeated on each page.</summary>
    public static IEnumerable<Block> Table(CarPicture picture, TextMeasure measure, double width)
    {
        double[] edges = [0, .. Shares.Select((_, i) => width * Shares.Take(i + 1).Sum())];
        var heading = Heading(measure, edges);
        yield return heading with { KeepWithNext = true };
        foreach (var run in picture.Shown)
        {
            string[] cells =
            [
                PictureWords.Number(run.Number), PictureWords.NameInKey(run), PictureWords.Ends(run), run.Length,
                run.Circuit is { } circuit ? picture.Circuits[circuit] : string.Empty,
            ];
            var wrapped = cells.Select((text, i) => measure.Wrap(text, StyleOf(i), edges[i + 1] - edges[i] - (2 * Padding))).ToList();
            for (var from = 0; from < wrapped.Max(lines => lines.Count); from += LinesInRow)
            {
                var part = wrapped.ConvertAll(lines => lines.Skip(from).Take(LinesInRow).ToList());
                yield return Row(part, from == 0 ? run.IsMade : null, edges, heading);
            }
        }
    }

    private static TextStyle StyleOf(int column) => column < 2 ? Style with { Bold = true } : Style;

    private static Block Heading(TextMeasure measure, double[] edges)
    {
        var heads = PictureWords.Columns.Select((head, i) => measure.Wrap(head, Style, edges[i + 1] - edges[i] - (2 * Padding))).ToList();
        var height = (heads.Max(lines => lines.Count) * Style.LineHeight) + 1.5;
        return new(height, (canvas, top) =>
        {
            canvas.Decoration(() => canvas.Line(0, top + height, edges[^1], top + height, Canvas.Thick));
            for (var i = 0; i < heads.Count; i++)
            {
                Cell(canvas, Role.ColumnHead, heads[i], Style, edges[i] + Padding, top + 0.5);
            }
        })
        {
            Role = Role.Row,
        };
    }

    /// <param name="cells">Lines of each.</param>
    /// <param name="isMade">Null where the row goes on with more text of the run before.</param>
    /// <param name="edges">Of the columns.</param>
    /// <param name="heading">To be repeated.</param>
    private static Block Row(List<List<string>> cells, bool? isMade, double[] edges, Block heading)
    {
        var height = (cells.Max(lines => lines.Count) * Style.LineHeight) + 1.6;
        return new(
            height,
            (canvas, top) =>
            {
                canvas.Decoration(() => canvas.Line(0, top + height, edges[^1], top + height, Canvas.Thin));
                for (var i = 0; i < cells.Count; i++)
                {
                    Cell(canvas, i == 1 ? Role.RowHead : Role.Cell, cells[i], StyleOf(i), edges[i] + Padding, top + 0.6);
                }

                var (x, baseline) = (edges[^2] + Padding, top + 0.6 + Style.Ascent);
                if (isMade is { } made)
                {
                    canvas.Decoration(() => canvas.TickBox(x, baseline, TickBoxSize));
                    canvas.As(Role.Cell, () => canvas.Text(made ? PictureWords.Tick : string.Empty, Style, x + 0.4, baseline));
                }
            },
            heading)
        {
            Role = Role.Row,
        };
    }

    private static void Cell(Canvas canvas, Role role, IReadOnlyList<string> lines, TextStyle style, double left, double top) =>
        canvas.As(role, () =>
        {
            for (var i = 0; i < lines.Count; i++)
            {
                canvas.Text(lines[i], style, left, top + style.Ascent + (i * style.LineHeight));
            }
        });

    private static IEnumerable<(Action<Canvas, double, double> Draw, string Words)> Samples(CarPicture picture, bool goesOn)
    {
        List<PicturedRun> shown = [.. picture.Shown];
        foreach (var (run, words) in new[]
        {
            (shown.Find(run => run.Kind == ConnectionKind.Line && run.IsMade), PictureWords.Made),
            (shown.Find(run => run.Kind == ConnectionKind.Line && !run.IsMade), PictureWords.NotMade),
            (shown.Find(run => run.Kind == ConnectionKind.Hose), picture.HasPlaces ? PictureWords.HoseBetweenPorts : PictureWords.Hose),
            (picture.HasPlaces
                ? null : picture.Runs.FirstOrDefault(run => run.Kind == ConnectionKind.ScrewedIn), PictureWords.ScrewedIn),
        })
        {
            if (run is not null)
            {
                yield return (RunSample(run with { Circuit = null }), words);
            }
        }

        if (picture.Parts.Any(part => part.Number > 0))
        {
            yield return (PartSample(picture.HasPlaces), picture.HasPlaces ? PictureWords.Part : PictureWords.PartOfDiagram);
        }

        if (goesOn)
        {
            yield return (AgainSample, PictureWords.Again);
        }

        if (!picture.Zones.IsEmpty)
        {
            yield return (ZoneSample, PictureWords.Zone);
        }

        foreach (var circuit in shown.Select(run => run.Circuit).OfType<int>().Distinct().Order())
        {
            var made = new PicturedRun(ConnectionKind.Line, string.Empty, string.Empty, Nowhere, Nowhere, IsMade: true)
            {
                Circuit = circuit,
            };
            yield return (RunSample(made), PictureWords.Circuit(picture.Circuits[circuit]));
        }
    }

    private static PicturedEnd Nowhere { get; } = new(string.Empty, null, IsNamed: false);

    private static Action<Canvas, double, double> RunSample(PicturedRun run) =>
        (canvas, left, middle) => CircuitMarks.Run(canvas, run, [new(left, middle), new(left + Swatch, middle)]);

    private static Action<Canvas, double, double> PartSample(bool withPorts) => (canvas, left, middle) =>
    {
        canvas.Box(left + 4, middle - 1.4, 7, 2.8);
        if (withPorts)
        {
            canvas.Black(left + 4.9, middle - 0.5, 1, 1);
            canvas.Black(left + 9.1, middle - 0.5, 1, 1);
        }
    };

    private static void AgainSample(Canvas canvas, double left, double middle)
    {
        var (right, top, bottom) = (left + 11, middle - 1.4, middle + 1.4);
        PagePoint[] outline = [new(left + 4, top), new(right, top), new(right, bottom), new(left + 4, bottom), new(left + 4, top)];
        canvas.DashedPath(outline, Canvas.Medium);
    }

    private static void ZoneSample(Canvas canvas, double left, double middle)
    {
        canvas.Box(left + 3, middle - 1.6, 9, 3.2, Canvas.Thin);
        Hatching.Draw(canvas, left + 3, left + 12, middle - 1.6, 3.2, 2.5);
    }
}
