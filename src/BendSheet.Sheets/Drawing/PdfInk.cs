using PdfSharp.Drawing;

namespace BendSheet.Sheets.Drawing;

/// <summary>Draws on a page of a PDF.</summary>
/// <param name="graphics">The whole page, in millimetres.</param>
internal sealed class PdfInk(XGraphics graphics) : IInk
{
    public void Text(string printable, TextStyle style, PagePoint at, Align align)
    {
        var format = align switch
        {
            Align.Left => XStringFormats.BaseLineLeft,
            Align.Centre => XStringFormats.BaseLineCenter,
            _ => XStringFormats.BaseLineRight,
        };
        graphics.DrawString(printable, TextMeasure.Font(style), XBrushes.Black, new XPoint(at.X, at.Y), format);
    }

    public void Line(ReadOnlySpan<PagePoint> points, Pen pen)
    {
        var drawn = new XPoint[points.Length];
        for (var i = 0; i < points.Length; i++)
        {
            drawn[i] = new(points[i].X, points[i].Y);
        }

        var xPen = new XPen(pen.White ? XColors.White : XColors.Black, pen.Width)
        {
            LineJoin = points.Length > 2 ? XLineJoin.Round : XLineJoin.Miter,
            LineCap = pen.Round ? XLineCap.Round : XLineCap.Flat,
        };
        if (pen.Dashed)
        {
            xPen.DashStyle = XDashStyle.Custom;
            xPen.DashPattern = [Pen.Dash / pen.Width, Pen.Gap / pen.Width];
        }

        graphics.DrawLines(xPen, drawn);
    }

    public void Box(PagePoint corner, double width, double height, double pen) =>
        graphics.DrawRectangle(new XPen(XColors.Black, pen), corner.X, corner.Y, width, height);

    public void Blank(PagePoint corner, double width, double height) =>
        graphics.DrawRectangle(XBrushes.White, corner.X, corner.Y, width, height);

    public void Pill(PagePoint middle, double halfWidth, double radius, double pen)
    {
        var xPen = new XPen(XColors.Black, pen);
        if (halfWidth <= radius)
        {
            graphics.DrawEllipse(xPen, XBrushes.White, middle.X - radius, middle.Y - radius, 2 * radius, 2 * radius);
        }
        else
        {
            graphics.DrawRoundedRectangle(
                xPen, XBrushes.White, middle.X - halfWidth, middle.Y - radius, 2 * halfWidth, 2 * radius, 2 * radius, 2 * radius);
        }
    }

    public void Clipped(PagePoint corner, double width, double height, Action draw)
    {
        var state = graphics.Save();
        graphics.IntersectClip(new XRect(corner.X, corner.Y, width, height));
        draw();
        graphics.Restore(state);
    }
}
