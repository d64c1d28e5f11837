using BendSheet.Core.Geometry;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Shape;

/// <summary>The finished shape: one pictorial view and three flat ones, each to a stated scale.</summary>
internal sealed class ShapeViews
{
    private const double AxisLength = 4;

    /// <summary>From the end of an axis to the middle of its letter.</summary>
    private const double AxisLetter = 2;

    /// <summary>Below a caption's baseline.</summary>
    private const double CaptionFoot = 1.4;

    /// <summary>The heading must have room for this scale: its axes do not move to a line of their own for another scale.</summary>
    private const double WidestScale = 10000;

    private static readonly (string Name, Vector3D Axis)[] Axes = [("X", new(1, 0, 0)), ("Y", new(0, 1, 0)), ("Z", new(0, 0, 1))];

    private readonly SheetContent _sheet;
    private readonly TextMeasure _measure;
    private readonly Polyline _shape;
    private readonly Projection[] _projections;
    private readonly List<(double Width, double Height)> _sizes;

    /// <summary>What there is to draw.</summary>
    /// <param name="sheet">Whose shape it is.</param>
    /// <param name="measure">Measures texts.</param>
    public ShapeViews(SheetContent sheet, TextMeasure measure)
    {
        _sheet = sheet;
        _measure = measure;
        _shape = Polyline.Of(sheet.Shape);
        _projections = [ViewDirection.Best(sheet.Shape, sheet.TubeDiameter.Millimetres, sheet.LiesOnCar), .. Projection.Flat];
        _sizes = [.. _projections.Select(projection => DrawnTube.Size(_shape, projection, sheet.TubeDiameter.Millimetres))];
    }

    /// <summary>Numbers of many bends lie around the pictorial view in rings.</summary>
    private double LabelRoom => _sheet.Shape.Arcs.Length switch
    {
        <= 10 => 0,
        <= 25 => 6,
        _ => 12,
    };

    /// <summary>
    /// The views as one block with its heading, and how many of the pictorial view's labels there are: bends may have to share one.
    /// </summary>
    /// <param name="width">Of the type area.</param>
    /// <param name="height">That may be used, the heading included.</param>
    public (IReadOnlyList<Block> Blocks, int Labels) At(double width, double height)
    {
        var axes = AxesBelowHeading(width);
        var (projections, layout) = Laid(width, height - HeadsHeight(width));
        var draw = projections.Select((projection, i) =>
            View(projection, i == 0 ? layout.Pictorial : layout.Flat, layout.Cells[i], i == 0 && layout.Pictorial != layout.Flat)).ToList();
        var views = new Block(layout.Height, (canvas, top) =>
        {
            for (var i = 0; i < draw.Count; i++)
            {
                var (view, projection, cell) = (draw[i].Draw, projections[i], layout.Cells[i]);
                canvas.As(
                    Role.Figure,
                    () => view(canvas, top),
                    i == 0 ? DrawingWords.OfShape(_sheet, projection.Caption) : DrawingWords.OfFlatView(_sheet, projection.Caption),
                    new(cell.Left, top + cell.Top, cell.Width, cell.Height + ViewLayout.CaptionHeight));
            }
        })
        {
            Role = Role.Nothing,
        };
        return (
        [
            Paragraph.Heading(ViewWords.Heading(layout.Flat, axes.Count == 0 ? _sheet.Axes : null)),
            .. axes,
            views,
        ], draw[0].Labels);
    }

    /// <summary>
    /// How long the pictorial view and the longest of the flat ones are drawn, in millimetres: their longer sides without the room around
    /// them.
    /// </summary>
    /// <param name="width">Of the type area.</param>
    /// <param name="height">That may be used, the heading included.</param>
    public (double Picture, double Flat) LengthsAt(double width, double height)
    {
        var layout = Laid(width, height - HeadsHeight(width)).Layout;
        return (ViewLayout.Longest(_sizes.Take(1)) / layout.Pictorial, ViewLayout.Longest(_sizes.Skip(1)) / layout.Flat);
    }

    /// <summary>No two bends share one of the labels, two of which are the ends'.</summary>
    public bool NumbersAllBends(int labels) => labels == _sheet.Shape.Arcs.Length + 2;

    /// <summary>Each view alone, as large as an upright sheet allows, with its caption.</summary>
    /// <param name="sheet">Whose shape it is.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of each drawing.</param>
    /// <param name="mostHeight">Of each drawing.</param>
    public static IEnumerable<(string Name, string Caption, double Height, Action<Canvas, double> Draw)> Alone(
        SheetContent sheet, TextMeasure measure, double width, double mostHeight)
    {
        var views = new ShapeViews(sheet, measure);
        for (var i = 0; i < views._projections.Length; i++)
        {
            var projection = views._projections[i];
            var size = views._sizes[i];
            var margin = 2 * (ViewLayout.Margin + (i == 0 ? views.LabelRoom : 0));
            var denominator = ViewScales.First(scale =>
                (size.Width / scale) + margin <= width && (size.Height / scale) + margin + ViewLayout.CaptionHeight <= mostHeight);
            var cell = new ViewCell(0, 0, width, (size.Height / denominator) + margin);
            yield return (
                projection.Name,
                ViewWords.WithScale(projection.Caption, denominator),
                cell.Height + ViewLayout.CaptionHeight,
                views.View(projection, denominator, cell, withScale: true).Draw);
        }
    }

    /// <summary>
    /// A pictorial view taller than wide lies down, with A on the left as on the straight tube, where it can be drawn larger so. Up is only
    /// up where the line lies as on the car.
    /// </summary>
    /// <param name="width">Of the type area.</param>
    /// <param name="height">That may be used, without the heading.</param>
    internal (IReadOnlyList<Projection> Projections, ViewLayout Layout) Laid(double width, double height)
    {
        var upright = ViewLayout.Of(_sizes, width, height, LabelRoom);
        if (_sheet.LiesOnCar || _sizes[0].Height <= _sizes[0].Width)
        {
            return (_projections, upright);
        }

        var lying = ViewLayout.Of([(_sizes[0].Height, _sizes[0].Width), .. _sizes.Skip(1)], width, height, LabelRoom);
        if (lying.Worth >= upright.Worth)
        {
            return (_projections, upright);
        }

        var risesToB = (_sheet.Shape.EndB - _sheet.Shape.EndA).Dot(_projections[0].Up) > 0;
        return ([_projections[0].Turned(clockwise: risesToB), .. _projections.Skip(1)], lying);
    }

    /// <summary>The axes in words; none where the heading has room for them.</summary>
    private IReadOnlyList<Block> AxesBelowHeading(double width) =>
        TextStyle.Heading.Width(ViewWords.Heading(WidestScale, _sheet.Axes)) <= width
            ? []
            : [.. Paragraph.Of(_sheet.Axes, TextStyle.Small, _measure, width).Select(line => line with { KeepWithNext = true })];

    private double HeadsHeight(double width) =>
        Paragraph.Heading(string.Empty).Height + AxesBelowHeading(width).Sum(line => line.Height);

    private (Action<Canvas, double> Draw, int Labels) View(Projection projection, double denominator, ViewCell cell, bool withScale)
    {
        var tube = DrawnTube.Of(_shape, _sheet.Shape, projection, _sheet.TubeDiameter.Millimetres, denominator, cell);
        var caption = withScale ? ViewWords.WithScale(projection.Caption, denominator) : projection.Caption;
        var captionWidth = TextStyle.Small.Width(caption);
        var middle = cell.Left + (cell.Width / 2);
        var foot = cell.Top + cell.Height + ViewLayout.CaptionHeight;
        if (Projection.Flat.Contains(projection))
        {
            var labelsOfFlat = ViewLabels.Of(tube, cell, [], small: true);
            var flat = new ShapeView(tube, labelsOfFlat);
            return ((canvas, top) =>
            {
                flat.Draw(canvas, top);
                canvas.Text(caption, TextStyle.Small, middle, top + foot - CaptionFoot, Align.Centre);
            }, labelsOfFlat.Count);
        }

        // Caption and axis mark together in the middle; the mark reaches up into the cell, where the labels keep away from it, on that side
        // of the caption where the tube is further away.
        var arms = Axes.Select(axis => (axis.Name, Way: projection.Of(axis.Axis))).ToList();
        var reach = arms.Max(arm => (AxisLength * arm.Way.Y) + (AxisLetter * arm.Way.Y / arm.Way.Norm) + (TextStyle.Small.CapHeight / 2));
        var (mark, tips) = new[] { middle + (captionWidth / 2) + AxisLength, middle - (captionWidth / 2) - AxisLength }
            .Select(x => new PagePoint(x, foot - 0.4 - reach))
            .Select(
                origin => (origin, arms.ConvertAll(
                    arm => new Segment(origin, origin + ((AxisLength + (AxisLetter / arm.Way.Norm)) * arm.Way)))))
            .MaxBy(place => place.Item2.Min(tube.DistanceTo));
        var left = middle - (captionWidth / 2) + (mark.X > middle ? -(AxisLength + AxisLetter) : AxisLength + AxisLetter);
        var labels = ViewLabels.Of(tube, cell, tips);
        var view = new ShapeView(tube, labels);
        return ((canvas, top) =>
        {
            view.Draw(canvas, top);
            canvas.Text(caption, TextStyle.Small, left, top + foot - CaptionFoot);
            foreach (var (name, way) in arms)
            {
                var tip = mark + (AxisLength * way);
                var letter = tip + (AxisLetter / way.Norm * way);
                canvas.Line(mark.X, mark.Y + top, tip.X, tip.Y + top);
                canvas.Text(name, TextStyle.Small, letter.X, letter.Y + top + (TextStyle.Small.CapHeight / 2), Align.Centre);
            }
        }, labels.Count);
    }
}
