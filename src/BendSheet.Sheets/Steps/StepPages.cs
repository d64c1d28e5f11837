using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Elements;
using BendSheet.Sheets.Layout;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Steps;

/// <summary>A panel for each thing done, to be read at arm's length and ticked.</summary>
internal static class StepPages
{
    private const double BendHeight = 47;
    private const double Between = 2;
    private const double PictureWidth = 98;
    private const double Gutter = 4;
    private const double Padding = 1.5;
    private const double TickBoxSize = 5.5;

    /// <summary>Right of the box to tick.</summary>
    private const double Beside = 9;

    private const double CaptionHeight = 4;
    private const double ClockRadius = 5.2;

    /// <summary>Of the text beside a heading.</summary>
    private const double TextLeft = 42;

    /// <summary>Lines beside a heading that are never parted.</summary>
    private const int MostLines = 8;

    /// <summary>Lines of text that a panel of a bend has room for; the rest goes on below it.</summary>
    private const int TextLines = 2;

    /// <summary>The panels in the order of work.</summary>
    public static IEnumerable<Block> Blocks(SheetContent sheet, TextMeasure measure, double width, double height)
    {
        if (sheet.Steps.Any(step => step.Bend is not null))
        {
            foreach (var line in Paragraph.Of(StepWords.Legend, TextStyle.Body, measure, width))
            {
                yield return line;
            }

            yield return Block.Space(Between);
        }

        foreach (var step in sheet.Steps)
        {
            foreach (var block in step.Bend is { } bend ? OfBend(sheet, step, bend, measure, width) : OfWords(step, measure, width))
            {
                yield return block;
            }

            yield return Block.Space(Between);
        }
    }

    /// <summary>The heading on the left, as large as that of a bend, the text beside it.</summary>
    private static IEnumerable<Block> OfWords(StepPanel step, TextMeasure measure, double width)
    {
        var (heading, style) = (TextStyle.StepHeading, TextStyle.StepText);
        var lines = measure.Wrap(step.Text, style, width - TextLeft);
        var picture = Picture(step, measure, width);
        yield return new(
            Math.Max(heading.LineHeight, Math.Min(lines.Count, MostLines) * style.LineHeight) + 1,
            (canvas, top) =>
            {
                canvas.Decoration(() =>
                {
                    canvas.Line(0, top, width, top);
                    canvas.TickBox(Padding, top + 0.5 + heading.Ascent, TickBoxSize);
                });
                canvas.As(Role.Heading, () => canvas.Text(step.Heading, heading, Beside, top + 0.5 + heading.Ascent));
                canvas.As(Role.Text, () =>
                {
                    for (var i = 0; i < Math.Min(lines.Count, MostLines); i++)
                    {
                        canvas.Text(lines[i], style, TextLeft, top + 1 + style.Ascent + (i * style.LineHeight));
                    }
                });
            },
            KeepWithNext: picture is not null && lines.Count <= MostLines)
        {
            Role = Role.Nothing,
        };
        foreach (var (i, line) in lines.Index().Skip(MostLines))
        {
            yield return new(style.LineHeight, (canvas, top) => canvas.Text(line, style, TextLeft, top + style.Ascent))
            {
                Continues = true,
                KeepWithNext = picture is not null && i == lines.Count - 1,
            };
        }

        if (picture is not null)
        {
            yield return picture;
        }
    }

    private static Block? Picture(StepPanel step, TextMeasure measure, double width) => step switch
    {
        { Flip: { } flip } => FlipDrawing.Of(flip, measure, width),
        { End: { } end } => EndDrawing.Of(end, measure, width),
        _ => null,
    };

    private static IEnumerable<Block> OfBend(SheetContent sheet, StepPanel step, BendStepFigures bend, TextMeasure measure, double width)
    {
        var style = TextStyle.StepText;
        var left = PictureWidth + Gutter;
        var lines = measure.Wrap(step.Text, TextStyle.Body, width - left - Padding);
        var longText = lines.Count > TextLines ? step.Text : string.Empty;
        List<string> below = [.. new[] { longText, step.Note }.Where(text => text.Length > 0)];
        var cell = new ViewCell(Padding, Padding, PictureWidth - Padding, BendHeight - (2 * Padding));
        var picture = new StepDrawing(bend.Picture, bend.Number, cell);
        yield return new(
            BendHeight,
            (canvas, top) =>
            {
                canvas.Decoration(() => canvas.Box(0, top, width, BendHeight, Canvas.Medium));
                DrawHeading(canvas.MovedRight(left), step, bend, top, width - left);
                canvas.As(
                    Role.Figure,
                    () => picture.Draw(canvas, top),
                    bend.Alternative,
                    new(cell.Left, top + cell.Top, cell.Width, cell.Height));
                DrawFigures(canvas.MovedRight(left), sheet, bend, top, width - left, measure);
                if (lines.Count <= TextLines)
                {
                    canvas.MovedRight(left).As(Role.Text, () => DrawLines(canvas.MovedRight(left), lines, top + BendHeight));
                }
            },
            KeepWithNext: below.Count > 0)
        {
            Role = Role.Nothing,
        };
        foreach (var line in below.SelectMany(text => Paragraph.Of(text, style, measure, width, Beside)))
        {
            yield return line;
        }
    }

    private static void DrawLines(Canvas canvas, IReadOnlyList<string> lines, double foot)
    {
        var style = TextStyle.Body;
        for (var i = 0; i < lines.Count; i++)
        {
            canvas.Text(lines[i], style, 0, foot - Padding - ((lines.Count - 1 - i) * style.LineHeight));
        }
    }

    private static void DrawHeading(Canvas canvas, StepPanel step, BendStepFigures bend, double top, double width)
    {
        var baseline = top + Padding + TextStyle.StepHeading.Ascent;
        canvas.Decoration(() => canvas.TickBox(0, baseline, TickBoxSize));
        canvas.As(Role.Heading, () => canvas.Text(step.Heading, TextStyle.StepHeading, Beside, baseline));
        canvas.As(Role.Text, () => canvas.Text(bend.Row.Held, TextStyle.StepHeading, width - Padding, baseline, Align.Right));
    }

    /// <summary>Two and two: what is set along the tube and round it; what is pulled, and what is measured then.</summary>
    private static void DrawFigures(Canvas canvas, SheetContent sheet, BendStepFigures bend, double top, double width, TextMeasure measure)
    {
        var (right, upper, row) = (width / 2, top + Padding + TextStyle.StepHeading.LineHeight + 0.5, CaptionHeight + 10.5);
        Figure(canvas, StepWords.Mark(sheet), bend.Row.Mark, 0, upper, right - 2, measure);
        canvas.As(Role.Text, () =>
        {
            canvas.Text(StepWords.LineAt, TextStyle.Small, right + (2 * ClockRadius) + 2, upper + TextStyle.Small.Ascent);
            canvas.Text(bend.Row.LineFigure, TextStyle.Small, width - Padding, upper + TextStyle.Small.Ascent, Align.Right);
            canvas.Text(
                bend.Row.LineClock,
                TextStyle.StepFigure,
                right + (2 * ClockRadius) + 2,
                upper + CaptionHeight + TextStyle.StepFigure.CapHeight + 0.6);
        });
        ClockFace.Draw(
            canvas, new(right + ClockRadius, upper + CaptionHeight + (TextStyle.StepFigure.CapHeight / 2)), ClockRadius, bend.Row.LineAt);
        Figure(canvas, StepWords.Pull, bend.Row.Pull, 0, upper + row, right - 2, measure);
        Figure(canvas, bend.CheckName, bend.Check, right, upper + row, width - right - Padding, measure);
    }

    private static void Figure(Canvas canvas, string caption, string figure, double left, double top, double width, TextMeasure measure) =>
        canvas.As(Role.Text, () =>
        {
            canvas.Text(measure.Wrap(caption, TextStyle.Small, width)[0], TextStyle.Small, left, top + TextStyle.Small.Ascent);
            canvas.Text(
                figure,
                TextStyle.StepFigure.Fitting(figure, width),
                left,
                top + CaptionHeight + TextStyle.StepFigure.CapHeight + 0.6);
        });
}
