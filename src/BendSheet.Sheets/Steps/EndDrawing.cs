using BendSheet.Core.Sheet;
using BendSheet.Core.Workshop;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Labels;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Steps;

/// <summary>
/// An end of the tube about to be flared, to scale along and across: black bar, hardware behind it, the nearest bend where it is made. A
/// points to the left and B to the right, as on all pictures.
/// </summary>
internal sealed class EndDrawing
{
    private const double MostScale = 1.8;

    /// <summary>Of a tube on paper; hardware is about twice as wide.</summary>
    private const double MostTube = 9;

    private const double LettersRoom = 12;
    private const double BarHeight = 5;
    private const double HalfHeight = 11;

    /// <summary>Beyond the hardware, where the tube is longer: to its break, or a bend that is made.</summary>
    private const double TubeBeyond = 14;

    private const double LabelsBelow = 2.5;
    private const double LabelGap = 4;

    /// <summary>Thickness of a bar at most, and where the file gives no straight length for bar and hardware. Common practice.</summary>
    private const double CommonBarMm = 9;

    /// <summary>How much stands out in the drawing where the tool does not say, in millimetres.</summary>
    private const double SomeMm = 2;

    private static readonly TextStyle Style = TextStyle.Label;

    private readonly EndPicture _end;
    private readonly double _width;
    private readonly double _scale;
    private readonly double _bar;
    private readonly List<(double From, double To, PieceOnEnd Piece)> _pieces = [];

    private EndDrawing(EndPicture end, double width)
    {
        (_end, _width) = (end, width);
        var standsOut = end.HasBar ? Math.Max(end.StandsOut?.Millimetres ?? SomeMm, 0) : SomeMm;
        var left = end.Fitting.Straight.Millimetres - end.Fitting.HardwareLength.Millimetres - standsOut;
        var bar = !end.HasBar ? 0 : left > 1 ? Math.Min(left, CommonBarMm) : CommonBarMm;
        var whole = standsOut + bar + end.Fitting.HardwareLength.Millimetres;
        _scale = Math.Min(
            Math.Min(MostScale, MostTube / end.OutsideDiameter.Millimetres),
            (width - LettersRoom - TubeBeyond - 12) / whole);
        StandsOut = standsOut * _scale;
        _bar = bar * _scale;
        var at = StandsOut + _bar + 1;
        foreach (var piece in end.Pieces)
        {
            var to = at + (piece.Piece.Length.Millimetres * _scale);
            _pieces.Add((at, to, piece));
            at = to + 0.6;
        }

        Behind = at;
    }

    private double StandsOut { get; }

    /// <summary>Where the hardware ends.</summary>
    private double Behind { get; }

    private double HalfTube => _end.OutsideDiameter.Millimetres * _scale / 2;

    /// <summary>The picture with its words below.</summary>
    public static Block Of(EndPicture end, TextMeasure measure, double width)
    {
        var drawing = new EndDrawing(end, width);
        var wanted = drawing.Labels().ToList();
        var share = (width / Math.Max(1, wanted.Count)) - LabelGap;
        var lines = wanted.ConvertAll(label => measure.Wrap(label.Text, Style, share));
        var most = lines.Select(one => one.Count).DefaultIfEmpty(0).Max();
        return new(
            (2 * HalfHeight) + LabelsBelow + (most * Style.LineHeight) + 1,
            (canvas, top) =>
            {
                drawing.Draw(canvas, top + HalfHeight);
                drawing.DrawLabels(canvas, top, wanted, lines);
            })
        {
            Role = Role.Figure,
            Alternative = end.Alternative,
        };
    }

    /// <summary>On paper, from a distance from the cut end.</summary>
    private double X(double fromEnd) => _end.End == TubeEnd.A ? LettersRoom + fromEnd : _width - LettersRoom - fromEnd;

    private IEnumerable<(double X, double Y, string Text)> Labels()
    {
        var labels = _pieces.Select(one => (X((one.From + one.To) / 2), Reach(one.Piece.Shape) + 0.4, one.Piece.InWords));
        var all = _end.HasBar ? labels.Prepend((X(StandsOut / 2), HalfTube + 0.4, _end.StandsOutInWords)) : labels;
        return all.OrderBy(label => label.Item1);
    }

    private void DrawLabels(
        Canvas canvas, double top, List<(double X, double Y, string Text)> labels, List<IReadOnlyList<string>> lines)
    {
        var widths = lines.ConvertAll(one => one.Max(Style.Width) + LabelGap);
        var middles = SideBySide.Middles([.. labels.Zip(widths, (label, width) => (label.X, width))], _width);
        var below = top + (2 * HalfHeight) + LabelsBelow;
        for (var i = 0; i < labels.Count; i++)
        {
            canvas.Line(labels[i].X, top + HalfHeight + labels[i].Y, middles[i], below, Canvas.Thin);
            for (var line = 0; line < lines[i].Count; line++)
            {
                canvas.Text(lines[i][line], Style, middles[i], below + Style.Ascent + (line * Style.LineHeight), Align.Centre);
            }
        }
    }

    private void Draw(Canvas canvas, double middle)
    {
        DrawTube(canvas, middle);
        if (_end.HasBar)
        {
            var left = Math.Min(X(StandsOut), X(StandsOut + _bar));
            canvas.Black(left, middle - HalfTube - BarHeight, _bar, BarHeight);
            canvas.Black(left, middle + HalfTube, _bar, BarHeight);
        }

        foreach (var (from, to, piece) in _pieces)
        {
            DrawPiece(canvas, from, to, piece.Shape, middle);
        }

        canvas.Bubble(_end.End.ToString(), Style, X(-5), middle, 2.6);
    }

    private void DrawTube(Canvas canvas, double middle)
    {
        var straight = _end.Tube.Straight.Millimetres * _scale;
        var atBend = _end.Tube.Turn is not null && straight < Behind + TubeBeyond;
        var end = atBend ? Math.Max(straight, Behind) : Math.Min(Behind + TubeBeyond, Math.Max(straight, Behind));
        List<PagePoint> points = [new(X(0), middle), new(X(end), middle)];
        if (atBend && _end.Tube.Turn is { } turn)
        {
            // As much of the bend as there is room for.
            var radius = _end.Tube.Radius.Millimetres * _scale;
            for (var degrees = 6.0; degrees <= turn.Degrees; degrees += 6)
            {
                var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
                if (radius * (1 - cos) > HalfHeight - HalfTube)
                {
                    break;
                }

                points.Add(new(X(end + (radius * sin)), middle - (radius * (1 - cos))));
            }
        }

        canvas.Path([.. points], 2 * HalfTube, flatEnds: true);
        canvas.Path([.. points], (2 * HalfTube) - (2 * Canvas.Medium), white: true, flatEnds: true);
        canvas.Line(X(0), middle - HalfTube, X(0), middle + HalfTube);
    }

    /// <summary>Half the width of a piece across the tube, on paper.</summary>
    private double Reach(HardwareShape shape) => HalfTube * (shape == HardwareShape.Nut ? 2.1 : 1.7);

    private void DrawPiece(Canvas canvas, double from, double to, HardwareShape shape, double middle)
    {
        var (half, inner) = (Reach(shape), HalfTube * 1.15);
        var between = from + (0.45 * (to - from));

        // How wide it is towards the end, where its front part meets the rear one, and behind.
        var (front, neck) = shape switch
        {
            HardwareShape.Nut => (HalfTube * 1.5, HalfTube * 1.5),
            HardwareShape.Sleeve => (inner, half),
            _ => (half, half),
        };
        canvas.Blank(Math.Min(X(from), X(to)), middle - HalfTube - 0.3, Math.Abs(X(to) - X(from)), (2 * HalfTube) + 0.6);
        foreach (var side in (ReadOnlySpan<double>)[-1, 1])
        {
            canvas.Path(
                [
                    new(X(from), middle), new(X(from), middle + (side * front)), new(X(between), middle + (side * neck)),
                    new(X(between), middle + (side * half)), new(X(to), middle + (side * half)), new(X(to), middle),
                ],
                Canvas.Medium);
        }

        if (shape == HardwareShape.Nut)
        {
            canvas.Line(X(between), middle - half, X(between), middle + half);
            canvas.Line(X(between), middle, X(to), middle, Canvas.Thin);
            for (var at = from + 1.2; at < between - 0.2; at += 1.2)
            {
                canvas.Line(X(at), middle - front, X(at - 0.6), middle + front, Canvas.Thin);
            }
        }
        else if (shape == HardwareShape.Sleeve)
        {
            canvas.Line(X(between), middle - half, X(between), middle + half, Canvas.Thin);
        }
    }
}
