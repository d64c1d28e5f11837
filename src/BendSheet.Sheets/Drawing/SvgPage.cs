using System.Globalization;
using System.Text;

namespace BendSheet.Sheets.Drawing;

/// <summary>Draws as the elements of an SVG whose user unit is the millimetre. Figures have up to three decimals.</summary>
internal sealed class SvgPage : IPage
{
    private readonly StringBuilder _body = new();

    /// <summary>What was drawn so far: elements of SVG, one a line.</summary>
    public string Elements => _body.ToString();

    /// <summary>A drawing has one description for all that is in it.</summary>
    public void Mean(Role role, Action draw, string? alternative, PageBox box, bool continues) => draw();

    public void Text(string printable, TextStyle style, PagePoint at, Align align)
    {
        var anchor = align switch
        {
            Align.Left => string.Empty,
            Align.Centre => " text-anchor=\"middle\"",
            _ => " text-anchor=\"end\"",
        };
        var weight = style.Bold ? " font-weight=\"600\"" : string.Empty;
        var digits = style.Tabular ? " font-variant-numeric=\"tabular-nums\"" : string.Empty;
        Add($"""<text x="{at.X:0.###}" y="{at.Y:0.###}" font-size="{style.Size:0.###}"{weight}{digits}{anchor} textLength="{style.Width(printable):0.###}" lengthAdjust="spacingAndGlyphs">{Escaped(printable)}</text>""");
    }

    public void Line(ReadOnlySpan<PagePoint> points, Pen pen)
    {
        var path = new StringBuilder();
        foreach (var point in points)
        {
            path.Append(CultureInfo.InvariantCulture, $"{(path.Length == 0 ? 'M' : 'L')}{point.X:0.###} {point.Y:0.###}");
        }

        var colour = pen.White ? "white" : "black";
        var cap = pen.Round ? " stroke-linecap=\"round\"" : string.Empty;
        var join = points.Length > 2 ? " stroke-linejoin=\"round\"" : string.Empty;
        var dash = pen.Dashed ? string.Create(CultureInfo.InvariantCulture, $" stroke-dasharray=\"{Pen.Dash} {Pen.Gap}\"") : string.Empty;
        Add($"""<path d="{path}" fill="none" stroke="{colour}" stroke-width="{pen.Width:0.###}"{cap}{join}{dash}/>""");
    }

    public void Box(PagePoint corner, double width, double height, double pen) =>
        Add($"""<rect x="{corner.X:0.###}" y="{corner.Y:0.###}" width="{width:0.###}" height="{height:0.###}" fill="none" stroke="black" stroke-width="{pen:0.###}"/>""");

    public void Blank(PagePoint corner, double width, double height) =>
        Add($"""<rect x="{corner.X:0.###}" y="{corner.Y:0.###}" width="{width:0.###}" height="{height:0.###}" fill="white"/>""");

    public void Pill(PagePoint middle, double halfWidth, double radius, double pen)
    {
        var half = Math.Max(halfWidth, radius);
        Add($"""<rect x="{middle.X - half:0.###}" y="{middle.Y - radius:0.###}" width="{2 * half:0.###}" height="{2 * radius:0.###}" rx="{radius:0.###}" fill="white" stroke="black" stroke-width="{pen:0.###}"/>""");
    }

    public void Black(PagePoint corner, double width, double height) =>
        Add($"""<rect x="{corner.X:0.###}" y="{corner.Y:0.###}" width="{width:0.###}" height="{height:0.###}"/>""");

    public void Arc(PagePoint centre, double radius, double fromTop, double sweep, Pen pen)
    {
        var dash = pen.Dashed ? string.Create(CultureInfo.InvariantCulture, $" stroke-dasharray=\"{Pen.Dash} {Pen.Gap}\"") : string.Empty;
        if (sweep >= 360)
        {
            Add($"""<circle cx="{centre.X:0.###}" cy="{centre.Y:0.###}" r="{radius:0.###}" fill="none" stroke="black" stroke-width="{pen.Width:0.###}"{dash}/>""");
            return;
        }

        var (start, end) = (On(fromTop), On(fromTop + sweep));
        Add($"""<path d="M{start.X:0.###} {start.Y:0.###}A{radius:0.###} {radius:0.###} 0 {(sweep > 180 ? 1 : 0)} 1 {end.X:0.###} {end.Y:0.###}" fill="none" stroke="black" stroke-width="{pen.Width:0.###}"{dash}/>""");

        PagePoint On(double degrees)
        {
            var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
            return new(centre.X + (radius * sin), centre.Y - (radius * cos));
        }
    }

    public void Mirrored(double sum, Action draw)
    {
        Add($"""<g transform="translate({sum:0.###} 0) scale(-1 1)">""");
        draw();
        Add($"</g>");
    }

    /// <summary>A text as XML holds it.</summary>
    public static string Escaped(string text) => text
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal)
        .Replace("\"", "&quot;", StringComparison.Ordinal);

    private void Add(FormattableString element) => _body.Append(element.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
