using BendSheet.Sheets.Pdf;
using PdfSharp.Drawing;

namespace BendSheet.Sheets.Drawing;

/// <summary>Draws on a page of a PDF.</summary>
/// <param name="page">The whole page, in millimetres.</param>
/// <param name="reading">Where the page's parts say what they are; null where nobody reads it out.</param>
internal sealed class PdfInk(XGraphics page, ReadingOrder? reading) : IInk
{
    /// <summary>The page, to be drawn on at once: what is drawn belongs to what is open in the reading order.</summary>
    private XGraphics Ink
    {
        get
        {
            reading?.BeginContent();
            return page;
        }
    }

    public void Text(string printable, TextStyle style, PagePoint at, Align align)
    {
        // The blanks move nothing, and keep apart what is read out or copied: lines of a paragraph are otherwise joined to one word.
        var (text, format) = align switch
        {
            Align.Left => (printable + " ", XStringFormats.BaseLineLeft),
            Align.Centre => ($" {printable} ", XStringFormats.BaseLineCenter),
            _ => (" " + printable, XStringFormats.BaseLineRight),
        };
        Ink.DrawString(text, TextMeasure.Font(style), XBrushes.Black, new XPoint(at.X, at.Y), format);
    }

    public void Line(ReadOnlySpan<PagePoint> points, Pen pen)
    {
        var drawn = new XPoint[points.Length];
        for (var i = 0; i < points.Length; i++)
        {
            drawn[i] = new(points[i].X, points[i].Y);
        }

        var xPen = Drawn(pen);
        xPen.LineJoin = points.Length > 2 ? XLineJoin.Round : XLineJoin.Miter;
        Ink.DrawLines(xPen, drawn);
    }

    public void Arc(PagePoint centre, double radius, double fromTop, double sweep, Pen pen)
    {
        if (sweep >= 360)
        {
            Ink.DrawEllipse(Drawn(pen), centre.X - radius, centre.Y - radius, 2 * radius, 2 * radius);
        }
        else
        {
            Ink.DrawArc(Drawn(pen), centre.X - radius, centre.Y - radius, 2 * radius, 2 * radius, fromTop - 90, sweep);
        }
    }

    public void Black(PagePoint corner, double width, double height) => Ink.DrawRectangle(XBrushes.Black, corner.X, corner.Y, width, height);

    public void Box(PagePoint corner, double width, double height, double pen) =>
        Ink.DrawRectangle(new XPen(XColors.Black, pen), corner.X, corner.Y, width, height);

    public void Blank(PagePoint corner, double width, double height) =>
        Ink.DrawRectangle(XBrushes.White, corner.X, corner.Y, width, height);

    public void Pill(PagePoint middle, double halfWidth, double radius, double pen)
    {
        var xPen = new XPen(XColors.Black, pen);
        if (halfWidth <= radius)
        {
            Ink.DrawEllipse(xPen, XBrushes.White, middle.X - radius, middle.Y - radius, 2 * radius, 2 * radius);
        }
        else
        {
            Ink.DrawRoundedRectangle(
                xPen, XBrushes.White, middle.X - halfWidth, middle.Y - radius, 2 * halfWidth, 2 * radius, 2 * radius, 2 * radius);
        }
    }

    public void Mirrored(double sum, Action draw)
    {
        var state = page.Save();
        page.TranslateTransform(sum, 0);
        page.ScaleTransform(-1, 1);
        draw();
        page.Restore(state);
    }

    private static XPen Drawn(Pen pen)
    {
        var drawn = new XPen(pen.White ? XColors.White : XColors.Black, pen.Width) { LineCap = pen.Round ? XLineCap.Round : XLineCap.Flat };
        if (pen.Dashed)
        {
            drawn.DashStyle = XDashStyle.Custom;
            drawn.DashPattern = [Pen.Dash / pen.Width, Pen.Gap / pen.Width];
        }

        return drawn;
    }
}
