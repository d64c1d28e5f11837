using System.Globalization;
using BendSheet.Core.Centreline;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;
using BendSheet.Sheets.Pdf;

namespace BendSheet.Sheets.Shape;

/// <summary>The finished shape: one pictorial view and three flat ones, each to a stated scale.</summary>
internal sealed class ShapeViews
{
    private const double AxisLength = 4;

    /// <summary>From the end of an axis to the middle of its letter.</summary>
    private const double AxisLetter = 2;

    /// <summary>Below a caption's baseline.</summary>
    private const double CaptionFoot = 1.8;

    private static readonly (string Name, Vector3D Axis)[] Axes = [("X", new(1, 0, 0)), ("Y", new(0, 1, 0)), ("Z", new(0, 0, 1))];

    private readonly SheetContent _sheet;
    private readonly TextMeasure _measure;
    private readonly Polyline _shape;
    private readonly Projection[] _projections;
    private readonly List<(double Width, double Height)> _sizes;

    private ShapeViews(SheetContent sheet, TextMeasure measure)
    {
        _sheet = sheet;
        _measure = measure;
        _shape = Polyline.Of(sheet.Shape);
        _projections = [ViewDirection.Best(sheet.Shape, sheet.TubeDiameter.Millimetres), .. Projection.Flat];
        _sizes = [.. _projections.Select(projection => DrawnTube.Size(_shape, projection, sheet.TubeDiameter.Millimetres))];
    }

    /// <summary>Numbers of many bends lie around the pictorial view in rings.</summary>
    private double LabelRoom => _sheet.Shape.Arcs.Length switch
    {
        <= 10 => 0,
        <= 25 => 6,
        _ => 12,
    };

    /// <summary>The views as one block with its heading.</summary>
    /// <param name="sheet">Whose shape it is.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of the type area.</param>
    /// <param name="height">That may be used, the heading included.</param>
    public static IEnumerable<Block> Of(SheetContent sheet, TextMeasure measure, double width, double height)
    {
        var views = new ShapeViews(sheet, measure);
        var inOneLine = TextStyle.Heading.Width($"The finished shape, scale 1 : 10000 ({sheet.Axes})") <= width;
        IReadOnlyList<Block> axes = inOneLine ? [] : [.. Paragraph.Of(sheet.Axes, TextStyle.Small, measure, width).Select(line => line with { KeepWithNext = true })];
        var heads = Paragraph.Heading(string.Empty).Height + axes.Sum(line => line.Height);
        var layout = ViewLayout.Of(views._sizes, width, height - heads, views.LabelRoom);
        var draw = views._projections.Select((projection, i) =>
            views.View(projection, i == 0 ? layout.Pictorial : layout.Flat, layout.Cells[i], i == 0 && layout.Pictorial != layout.Flat)).ToList();
        yield return Paragraph.Heading($"The finished shape, scale {InWords(layout.Flat)}{(inOneLine ? $" ({sheet.Axes})" : string.Empty)}");
        foreach (var line in axes)
        {
            yield return line;
        }

        yield return new(layout.Height, (canvas, top) =>
        {
            for (var i = 0; i < draw.Count; i++)
            {
                var (view, projection, cell) = (draw[i], views._projections[i], layout.Cells[i]);
                canvas.As(
                    Role.Figure,
                    () => view(canvas, top),
                    i == 0 ? DrawingWords.OfShape(sheet, projection.Caption) : DrawingWords.OfFlatView(sheet, projection.Caption),
                    new(cell.Left, top + cell.Top, cell.Width, cell.Height + ViewLayout.CaptionHeight));
            }
        })
        {
            Role = Role.Nothing,
        };
    }

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
                $"{projection.Caption}, scale {InWords(denominator)}",
                cell.Height + ViewLayout.CaptionHeight,
                views.View(projection, denominator, cell, withScale: true));
        }
    }

    private static string InWords(double denominator) => "1 : " + denominator.ToString("0.#", CultureInfo.InvariantCulture);

    private Action<Canvas, double> View(Projection projection, double denominator, ViewCell cell, bool withScale)
    {
        var tube = DrawnTube.Of(_shape, _sheet.Shape, projection, _sheet.TubeDiameter.Millimetres, denominator, cell);
        var caption = projection.Caption + (withScale ? $", scale {InWords(denominator)}" : string.Empty);
        var captionWidth = TextStyle.Small.Width(caption);
        var middle = cell.Left + (cell.Width / 2);
        var foot = cell.Top + cell.Height + ViewLayout.CaptionHeight;
        if (Projection.Flat.Contains(projection))
        {
            var flat = new ShapeView(tube, ViewLabels.Of(tube, cell, [], _measure));
            return (canvas, top) =>
            {
                flat.Draw(canvas, top);
                canvas.Text(caption, TextStyle.Small, middle, top + foot - CaptionFoot, Align.Centre);
            };
        }

        // Caption and axis mark together in the middle; the mark reaches up into the cell, where the labels keep away from it.
        var arms = Axes.Select(axis => (axis.Name, Way: projection.Of(axis.Axis))).ToList();
        var reach = arms.Max(arm => (AxisLength * arm.Way.Y) + (AxisLetter * arm.Way.Y / arm.Way.Norm) + (TextStyle.Small.CapHeight / 2));
        var left = middle - (captionWidth / 2) - AxisLength - AxisLetter;
        var origin = new PagePoint(left + captionWidth + (2 * AxisLength) + AxisLetter, foot - 0.4 - reach);
        var tips = arms.ConvertAll(arm => new Segment(origin, origin + ((AxisLength + (AxisLetter / arm.Way.Norm)) * arm.Way)));
        var view = new ShapeView(tube, ViewLabels.Of(tube, cell, tips, _measure));
        return (canvas, top) =>
        {
            view.Draw(canvas, top);
            canvas.Text(caption, TextStyle.Small, left, top + foot - CaptionFoot);
            foreach (var (name, way) in arms)
            {
                var tip = origin + (AxisLength * way);
                var letter = tip + (AxisLetter / way.Norm * way);
                canvas.Line(origin.X, origin.Y + top, tip.X, tip.Y + top);
                canvas.Text(name, TextStyle.Small, letter.X, letter.Y + top + (TextStyle.Small.CapHeight / 2), Align.Centre);
            }
        };
    }
}
