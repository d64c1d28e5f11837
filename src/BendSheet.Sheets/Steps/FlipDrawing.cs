using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Steps;

/// <summary>The part-bent tube before and after it is turned round, the tool staying where it is: the held side is on the left.</summary>
internal static class FlipDrawing
{
    private const double Height = 36;

    /// <summary>Between the two, for the arrow.</summary>
    private const double Between = 16;

    private const double ArrowHead = 2.2;

    private static readonly TextStyle Style = TextStyle.StepText with { Bold = true };

    /// <summary>Both side by side, with what is held below.</summary>
    public static Block Of(FlipPicture flip, TextMeasure measure, double width)
    {
        var half = (width - Between) / 2;
        var before = new StepDrawing(flip.Before, string.Empty, new(0, 0, half, Height), StepMoment.Made);
        var after = new StepDrawing(flip.After, string.Empty, new(half + Between, 0, half, Height), StepMoment.Ready);
        return new(
            Height + Style.LineHeight,
            (canvas, top) =>
            {
                before.Draw(canvas, top);
                after.Draw(canvas, top);
                DrawArrow(canvas, half + 2, half + Between - 2, top + (Height / 2));
                var baseline = top + Height + Style.Ascent;
                canvas.Text(measure.Wrap(flip.BeforeInWords, Style, half)[0], Style, half / 2, baseline, Align.Centre);
                canvas.Text(measure.Wrap(flip.AfterInWords, Style, half)[0], Style, half + Between + (half / 2), baseline, Align.Centre);
            })
        {
            Role = Role.Figure,
            Alternative = flip.Alternative,
        };
    }

    private static void DrawArrow(Canvas canvas, double from, double to, double y)
    {
        canvas.Line(from, y, to, y, Canvas.Thick);
        canvas.Line(to, y, to - ArrowHead, y - (ArrowHead / 2), Canvas.Thick);
        canvas.Line(to, y, to - ArrowHead, y + (ArrowHead / 2), Canvas.Thick);
    }
}
