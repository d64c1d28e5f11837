using System.Globalization;
using BendSheet.Core.Centreline;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;
using BendSheet.Sheets.Pdf;

namespace BendSheet.Sheets.Shape;

/// <summary>The finished shape: one pictorial and three flat views, all to one stated scale.</summary>
internal static class ShapeViews
{
    private const double AxisLength = 4;

    /// <summary>The views as one block with its heading.</summary>
    /// <param name="sheet">Whose shape it is.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of the type area.</param>
    /// <param name="height">That may be used, the heading included.</param>
    public static IEnumerable<Block> Of(SheetContent sheet, TextMeasure measure, double width, double height)
    {
        var shape = Polyline.Of(sheet.Shape);
        var diameter = sheet.TubeDiameter.Millimetres;
        var sizes = Projection.All.Select(projection => ShapeView.Size(shape, projection, diameter)).ToList();
        var layout = ViewLayout.Of(sizes, width, height - Paragraph.Heading(string.Empty).Height);
        var views = Projection.All.Select((projection, i) =>
            ShapeView.Of(shape, sheet.Shape, projection, diameter, layout.Denominator, layout.Cells[i])).ToList();

        var scale = layout.Denominator.ToString("0.#", CultureInfo.InvariantCulture);
        yield return Paragraph.Heading($"The finished shape, scale 1 : {scale} ({sheet.Axes})");
        yield return new(layout.Height, (canvas, top) =>
        {
            for (var i = 0; i < views.Count; i++)
            {
                var (view, projection, cell) = (views[i], Projection.All[i], layout.Cells[i]);
                canvas.As(
                    Role.Figure,
                    () =>
                    {
                        view.Draw(canvas, top);
                        DrawCaption(canvas, measure, projection, cell, top);
                    },
                    projection == Projection.Pictorial ? DrawingWords.OfShape(sheet, projection.Caption) : DrawingWords.OfFlatView(sheet, projection.Caption),
                    new(cell.Left, top + cell.Top, cell.Width, cell.Height + ViewLayout.CaptionHeight));
            }
        })
        {
            Role = Role.Nothing,
        };
    }

    private static void DrawCaption(Canvas canvas, TextMeasure measure, Projection projection, ViewCell cell, double top)
    {
        var baseline = top + cell.Top + cell.Height + 4;
        var width = measure.Width(projection.Caption, TextStyle.Small);
        var left = cell.Left + (cell.Width / 2) - (width / 2);
        canvas.Text(projection.Caption, TextStyle.Small, left, baseline);
        if (projection == Projection.Pictorial)
        {
            DrawAxes(canvas, projection, new(left + width + 9, baseline + 1));
        }
    }

    private static void DrawAxes(Canvas canvas, Projection projection, PagePoint origin)
    {
        foreach (var (name, axis) in new[] { ("X", new Vector3D(1, 0, 0)), ("Y", new Vector3D(0, 1, 0)), ("Z", new Vector3D(0, 0, 1)) })
        {
            var tip = origin + (AxisLength * projection.Of(axis));
            var label = origin + ((AxisLength + 2) * projection.Of(axis));
            canvas.Line(origin.X, origin.Y, tip.X, tip.Y);
            canvas.Text(name, TextStyle.Small, label.X, label.Y + (TextStyle.Small.CapHeight / 2), Align.Centre);
        }
    }
}
