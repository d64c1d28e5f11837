using BendSheet.Core.Bench;
using BendSheet.Core.Geometry;
using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Steps;

/// <summary>
/// The part-bent tube in the tool, seen along the former's axis: A on the left, the former above the tube, so that the swept side always
/// comes up. Before the pull it is outlined, after it dashed.
/// </summary>
internal sealed class StepDrawing
{
    /// <summary>
    /// A former smaller than this on paper is a dot: straights are drawn shorter before it comes to that, and of a tube with many bends
    /// only what lies near the tool is drawn, up to a break.
    /// </summary>
    private const double LeastFormer = 6;

    private const double MostFormer = 12;
    private const double LeastTube = 1.2;
    private const double JawLength = 5;
    private const double JawHeight = 1.6;
    private const double ArrowReach = 4.5;
    private const double ArrowHead = 1.8;
    private const double BreakReach = 1.6;

    /// <summary>White above and below the number.</summary>
    private const double NumberGap = 0.3;

    /// <summary>The longest straight drawn, in radii of the former, tried in this order; null draws each at its own length.</summary>
    private static readonly double?[] LongestStraights = [null, 30, 20, 14, 10, 7, 5, 4, 3, 2];

    private readonly StepPicture _picture;
    private readonly string _number;
    private readonly PartBent _shape;
    private readonly double _scale;
    private readonly PagePoint _origin;
    private readonly PagePoint[] _before;
    private readonly PagePoint[] _after;
    private readonly IReadOnlyList<ViewLabel> _labels;

    private readonly StepMoment _moment;

    /// <summary>How many of the tube's points are not drawn at its ends.</summary>
    private readonly (int AtA, int AtB) _left;

    /// <summary>The tool seen from its other side: left and right exchanged.</summary>
    private readonly bool _fromBehind;

    /// <summary>Fits it into a cell.</summary>
    /// <param name="picture">What there is to draw.</param>
    /// <param name="number">Of the bend.</param>
    /// <param name="cell">In the panel.</param>
    /// <param name="moment">What is shown of the pull; where that is not all of it, the held side lies on the left.</param>
    public StepDrawing(StepPicture picture, string number, ViewCell cell, StepMoment moment = StepMoment.Pull)
    {
        (_picture, _number, _moment) = (picture, number, moment);
        _fromBehind = moment != StepMoment.Pull && picture.Held == TubeEnd.B;
        var room = new ViewCell(
            cell.Left + ViewLayout.Margin, cell.Top + ViewLayout.Margin, cell.Width - (2 * ViewLayout.Margin),
            cell.Height - (2 * ViewLayout.Margin));
        var fitted = LongestStraights
            .Select(longest => Fitted(picture, longest is { } radii ? radii * picture.Radius : (Length?)null, room)).ToList();
        var large = fitted.FindIndex(one => one.Scale * picture.Radius.Millimetres >= LeastFormer);
        (_shape, _before, _after, _scale) = fitted[large < 0 ? ^1 : large];
        if (large < 0)
        {
            var whole = (Before: _before, After: _after, Scale: _scale);
            (_left, var larger) = NearTool(room);
            _scale *= larger;
            _before = [.. Drawn(whole.Before).Select(point => larger * point)];
            _after = [.. Drawn(whole.After).Select(point => larger * point)];
        }

        var middle = Bounds(_before.Concat(_after).Concat(Former()));
        _origin = new(
            room.Left + (room.Width / 2) - middle.Left - (middle.Width / 2),
            room.Top + (room.Height / 2) - middle.Top - (middle.Height / 2));
        _before = [.. _before.Select(point => point + _origin)];
        _after = [.. _after.Select(point => point + _origin)];
        _labels = [.. Labels(cell)];
    }

    private double TubeWidth => Math.Max(LeastTube, _picture.TubeDiameter.Millimetres * _scale);

    private PagePoint FormerMiddle => _origin + new PagePoint(0, -_picture.Radius.Millimetres * _scale);

    /// <summary>1 where the swept side lies to the right, as where A is held; -1 where it lies to the left.</summary>
    private int Swept => _picture.Held == TubeEnd.A || _fromBehind ? 1 : -1;

    /// <summary>The number has its corners within a former of this radius on paper, in millimetres.</summary>
    private bool Fits(TextStyle style, double radius) =>
        double.Hypot(style.Width(_number), style.CapHeight) / 2 <= radius - Canvas.Thick;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">To draw on.</param>
    /// <param name="top">Of the panel.</param>
    public void Draw(Canvas canvas, double top)
    {
        var down = new PagePoint(0, top);
        var former = FormerMiddle + down;
        var radius = Math.Max(0.5, (_picture.Radius.Millimetres * _scale) - (TubeWidth / 2));
        var moves = _picture.Held == TubeEnd.A
            ? _after.Skip(_shape.First - _left.AtA)
            : _after.Take(_after.Length - (_before.Length - 1 - (_shape.Last - _left.AtA)));
        if (_moment == StepMoment.Pull)
        {
            canvas.DashedPath(moves.Select(point => point + down), Canvas.Thick);
        }

        canvas.Circle(former, radius, Canvas.Thick);
        PagePoint[] tube = [.. _before.Select(point => point + down)];
        canvas.Path(tube, TubeWidth, flatEnds: true);
        canvas.Path(tube, TubeWidth - (2 * Canvas.Medium), white: true, flatEnds: true);
        DrawBreaks(canvas, tube);
        DrawNumber(canvas, former, Fits(TextStyle.Label, radius) ? TextStyle.Label : ViewLabels.Style);
        DrawJaws(canvas, down);
        if (_moment == StepMoment.Pull)
        {
            DrawSweep(canvas, former, radius);
        }

        foreach (var label in _labels)
        {
            foreach (var leader in label.Leaders)
            {
                canvas.Line(leader.From.X, leader.From.Y + top, leader.To.X, leader.To.Y + top, Canvas.Thin);
            }

            canvas.Bubble(label.Text, ViewLabels.Style, label.Place.X, label.Place.Y + top, label.HalfWidth, ViewLabel.Radius);
        }
    }

    private (PartBent Before, PagePoint[] Points, PagePoint[] Then, double Scale) Fitted(
        StepPicture picture, Length? longest, ViewCell room)
    {
        var before = _moment == StepMoment.Made ? picture.After(longest) : picture.Before(longest);
        var after = _moment == StepMoment.Pull ? picture.After(longest) : before;
        var (flat, then) = (Flat(before, picture.Held), Flat(after, picture.Held));
        var radius = picture.Radius.Millimetres;
        var bounds = Bounds(flat.Concat(then).Concat([new(-radius, -2 * radius), new(radius, 0)]));
        var scale = Math.Min(Math.Min(room.Width / bounds.Width, room.Height / bounds.Height), MostFormer / radius);
        return (before, [.. flat.Select(point => scale * point)], [.. then.Select(point => scale * point)], scale);
    }

    /// <summary>
    /// As much of the tube on both sides of the tool as there is room for with a former that is not a dot: what is left out, and by how
    /// much larger the rest is drawn then.
    /// </summary>
    private ((int AtA, int AtB) Left, double Larger) NearTool(ViewCell room)
    {
        var left = (AtA: Math.Max(0, _shape.First - 1), AtB: Math.Max(0, _before.Length - 2 - _shape.Last));
        var larger = Math.Min(LeastFormer / (_picture.Radius.Millimetres * _scale), Largest(left));
        for (var (atA, atB) = (true, true); atA || atB;)
        {
            atA = left.AtA > 0 && Largest(left with { AtA = left.AtA - 1 }) >= larger;
            left.AtA -= atA ? 1 : 0;
            atB = left.AtB > 0 && Largest(left with { AtB = left.AtB - 1 }) >= larger;
            left.AtB -= atB ? 1 : 0;
        }

        return (left, larger);

        double Largest((int AtA, int AtB) without)
        {
            var bounds = Bounds(_before[without.AtA..^without.AtB].Concat(_after[without.AtA..^without.AtB]).Concat(Former()));
            return Math.Min(room.Width / bounds.Width, room.Height / bounds.Height);
        }
    }

    private PagePoint[] Drawn(PagePoint[] whole) => whole[_left.AtA..^_left.AtB];

    /// <summary>From the place where the held side touches the former; along the tube to the right, to the former up.</summary>
    private List<PagePoint> Flat(PartBent tube, TubeEnd held)
    {
        var frame = held == TubeEnd.A ? tube.Start : tube.End;
        return [.. tube.Points.Select(point => OnPaper(point - frame.Position, frame))];
    }

    private static PageBox Bounds(IEnumerable<PagePoint> points)
    {
        var all = points.ToList();
        var (left, top) = (all.Min(point => point.X), all.Min(point => point.Y));
        return new(left, top, all.Max(point => point.X) - left, all.Max(point => point.Y) - top);
    }

    private IEnumerable<PagePoint> Former()
    {
        var radius = _picture.Radius.Millimetres * _scale;
        return [new(-radius, -2 * radius), new(radius, 0)];
    }

    /// <summary>The ends and the bends that are made, where there is room.</summary>
    private IEnumerable<ViewLabel> Labels(ViewCell cell)
    {
        var radius = _picture.Radius.Millimetres * _scale;
        PagePoint[] ring = [.. Enumerable.Range(0, 25).Select(i => FormerMiddle + FullSize.GaugeShape.OnCircle(radius, i * 15))];
        var number = new Segment(FormerMiddle + new PagePoint(-radius, 0), FormerMiddle + new PagePoint(radius, 0));
        var taken = _after.Zip(_after.Skip(1), (from, to) => new Segment(from, to))
            .Concat(ring.Zip(ring.Skip(1), (from, to) => new Segment(from, to))).Append(number).ToList();
        var places = new LabelsAround(_before, TubeWidth, cell, taken);
        var frame = _picture.Held == TubeEnd.A ? _shape.Start : _shape.End;
        var bends = _shape.Touched.Index().Skip(1).SkipLast(1)
            .Where(one => one.Item is not null && IsDrawn(_shape.TouchedAt[one.Index]))
            .Select(one => (
                Text: FormattableString.Invariant($"{one.Index}"),
                At: _origin + (_scale * OnPaper(one.Item!.Value - frame.Position, frame))));
        var wanted = bends.Prepend(("A", _before[0])).Append(("B", _before[^1]));
        foreach (var (text, at) in wanted)
        {
            var half = Math.Max(ViewLabel.Radius, (ViewLabels.Style.Width(text) / 2) + 0.9);
            if (places.Place(text, half, [at], default) is { } label)
            {
                yield return label;
            }
        }
    }

    private PagePoint OnPaper(Vector3D point, Frame frame) =>
        new((_fromBehind ? -1 : 1) * point.Dot(frame.Direction), 0 - point.Dot(frame.Side));

    private bool IsDrawn(int point) => point > _left.AtA && point < _left.AtA + _before.Length;

    /// <summary>Two strokes across a straight that is longer than drawn, and where the rest of the tube is not drawn.</summary>
    private void DrawBreaks(Canvas canvas, PagePoint[] tube)
    {
        foreach (var end in _shape.Breaks.Where(IsDrawn).Select(end => end - _left.AtA))
        {
            var way = tube[end] - tube[end - 1];
            if (way.Norm < BreakReach)
            {
                continue;
            }

            DrawBreak(canvas, tube[end - 1] + (0.5 * way), way);
        }

        if (_left.AtA > 0)
        {
            DrawBreak(canvas, tube[0], tube[1] - tube[0]);
        }

        if (_left.AtB > 0)
        {
            DrawBreak(canvas, tube[^1], tube[^1] - tube[^2]);
        }
    }

    private void DrawBreak(Canvas canvas, PagePoint middle, PagePoint way)
    {
        var along = 1 / way.Norm * way;
        var across = new PagePoint(-along.Y, along.X);
        canvas.Path([middle - (0.6 * along), middle + (0.6 * along)], TubeWidth + 0.4, white: true, flatEnds: true);
        foreach (var side in (ReadOnlySpan<double>)[-0.6, 0.6])
        {
            var at = middle + (side * along);
            var slant = (BreakReach * across) + (0.5 * along);
            canvas.Line(at.X - slant.X, at.Y - slant.Y, at.X + slant.X, at.Y + slant.Y, Canvas.Medium);
        }
    }

    /// <summary>On white, to be read also where tube that is bent already passes in front of the former.</summary>
    private void DrawNumber(Canvas canvas, PagePoint middle, TextStyle style)
    {
        var (half, cap) = (style.Width(_number) / 2, style.CapHeight);
        canvas.Blank(middle.X - half, middle.Y - (cap / 2) - NumberGap, 2 * half, cap + (2 * NumberGap));
        canvas.Text(_number, style, middle.X, middle.Y + (cap / 2), Align.Centre);
    }

    /// <summary>On both sides of the held tube, beside the former.</summary>
    private void DrawJaws(Canvas canvas, PagePoint down)
    {
        var left = Swept > 0 ? _origin.X - JawLength - 1 : _origin.X + 1;
        var (middle, half) = (_origin.Y + down.Y, TubeWidth / 2);
        canvas.Black(left, middle - half - JawHeight, JawLength, JawHeight);
        canvas.Black(left, middle + half, JawLength, JawHeight);
    }

    /// <summary>An arrow round the former's middle, from below on the swept side upwards.</summary>
    private void DrawSweep(Canvas canvas, PagePoint former, double radius)
    {
        var reach = radius + TubeWidth + ArrowReach;
        var turn = Math.Clamp(_picture.Line.Plan!.Bends[_picture.Bends.First].Bend.Turn.Degrees, 25, 100);
        PagePoint[] arc = [.. Enumerable.Range(0, 13).Select(i => former + FullSize.GaugeShape.OnCircle(
            reach, 180 - (Swept * (45 + (turn * i / 12)))))];
        canvas.Path(arc, Canvas.Medium);
        var way = arc[^1] - arc[^2];
        var along = 1 / way.Norm * way;
        var across = new PagePoint(-along.Y, along.X);
        foreach (var side in (ReadOnlySpan<double>)[-0.5, 0.5])
        {
            var barb = arc[^1] - (ArrowHead * along) + (side * ArrowHead * across);
            canvas.Line(arc[^1].X, arc[^1].Y, barb.X, barb.Y, Canvas.Thick);
        }
    }
}
