using System.Collections.Immutable;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Fonts;

namespace BendSheet.Pdf;

/// <summary>Draws the content of a PDF page (ISO 32000-1, 8 and 9).</summary>
/// <param name="page">Where millimetres count from the upper left corner already.</param>
/// <param name="used">For each face the characters that are drawn with it; they are added.</param>
/// <param name="reading">Where the page's parts say what they are.</param>
internal sealed class ContentPage(SyntaxWriter page, ImmutableArray<DrawnCharacters> used, ReadingOrder reading) : IPage
{
    /// <summary>How much of a circle one Bézier curve follows, in radians: it strays from it by less than 0.03 % of the radius.</summary>
    private const double LongestArc = Math.PI / 2;

    private State _state = State.OfNewPage;

    /// <summary>The page, to be drawn on at once: what is drawn belongs to what is open in the reading order.</summary>
    private SyntaxWriter Ink
    {
        get
        {
            reading.BeginContent();
            return page;
        }
    }

    public void Mean(Role role, Action draw, string? alternative, PageBox box, bool continues) =>
        reading.Draw(role, draw, alternative, box, continues);

    public void Text(string printable, TextStyle style, PagePoint at, Align align)
    {
        var face = style.Face;
        var start = align switch
        {
            Align.Left => at.X,
            Align.Centre => at.X - (style.Width(printable) / 2) - style.Width(" "),
            _ => at.X - style.Width(printable) - style.Width(" "),
        };
        Fill(white: false).Raw("BT /F"u8).Integer(face.Number).Raw(" "u8).Number(style.Size).Raw("Tf 1 0 0 -1 "u8).Number(start)
            .Number(at.Y).Raw("Tm ("u8);

        // The spaces move nothing. They keep words apart when the text is read out or copied: lines would otherwise be joined to one word.
        Glyphs(align == Align.Left ? "" : " ", face);
        Glyphs(printable, face);
        Glyphs(align == Align.Right ? "" : " ", face);
        page.Raw(") Tj ET\n"u8);
    }

    public void Line(ReadOnlySpan<PagePoint> points, Pen pen)
    {
        Stroke(pen, roundCorners: points.Length > 2);
        Point(points[0]).Raw("m "u8);
        foreach (var point in points[1..])
        {
            Point(point).Raw("l "u8);
        }

        page.Raw("S\n"u8);
    }

    public void Arc(PagePoint centre, double radius, double fromTop, double sweep, Pen pen)
    {
        Stroke(pen);
        var whole = sweep >= 360;
        Curve(centre, radius, fromTop, Math.Min(sweep, 360));
        page.Raw(whole ? "s\n"u8 : "S\n"u8);
    }

    public void Black(PagePoint corner, double width, double height)
    {
        Fill(white: false);
        Rectangle(corner, width, height).Raw("f\n"u8);
    }

    public void Box(PagePoint corner, double width, double height, double pen)
    {
        Stroke(new(pen));
        Rectangle(corner, width, height).Raw("S\n"u8);
    }

    public void Blank(PagePoint corner, double width, double height)
    {
        Fill(white: true);
        Rectangle(corner, width, height).Raw("f\n"u8);
    }

    public void Pill(PagePoint middle, double halfWidth, double radius, double pen)
    {
        Stroke(new(pen));
        Fill(white: true);
        var side = new PagePoint(Math.Max(halfWidth - radius, 0), 0);
        Curve(middle + side, radius, 0, 180);
        Curve(middle - side, radius, 180, 180, goesOn: true);
        page.Raw("b\n"u8);
    }

    public void Mirrored(double sum, Action draw)
    {
        page.Raw("q -1 0 0 1 "u8).Number(sum).Raw("0 cm\n"u8);
        var state = _state;
        draw();
        _state = state;
        page.Raw("Q\n"u8);
    }

    private void Glyphs(string text, Face face)
    {
        foreach (var character in text)
        {
            used[face.Number].Add(character);
            page.Code(face.Glyph(character));
        }
    }

    /// <summary>A path along a part of a circle, clockwise.</summary>
    private void Curve(PagePoint centre, double radius, double fromTop, double sweep, bool goesOn = false)
    {
        var angle = fromTop * Math.PI / 180;
        var pieces = Math.Max(1, (int)Math.Ceiling((sweep * Math.PI / 180 / LongestArc) - 1e-9));
        var step = sweep * Math.PI / 180 / pieces;
        var reach = 4.0 / 3 * Math.Tan(step / 4); // of the control points, as a part of the radius
        var (from, along) = On(angle);
        Point(from).Raw(goesOn ? "l "u8 : "m "u8);
        for (var piece = 1; piece <= pieces; piece++)
        {
            var (to, alongTo) = On(angle + (piece * step));
            Point(from + (reach * along));
            Point(to - (reach * alongTo));
            Point(to).Raw("c "u8);
            (from, along) = (to, alongTo);
        }

        // The place so many radians clockwise from straight up, and the way on from there, as long as the radius.
        (PagePoint At, PagePoint Along) On(double radians)
        {
            var (sin, cos) = Math.SinCos(radians);
            return (new(centre.X + (radius * sin), centre.Y - (radius * cos)), new(radius * cos, radius * sin));
        }
    }

    private SyntaxWriter Point(PagePoint point) => page.Number(point.X).Number(point.Y);

    private SyntaxWriter Rectangle(PagePoint corner, double width, double height) =>
        Point(corner).Number(width).Number(height).Raw("re "u8);

    private SyntaxWriter Fill(bool white)
    {
        if (_state.WhiteFill != white)
        {
            Ink.Raw(white ? "1 g "u8 : "0 g "u8);
            _state = _state with { WhiteFill = white };
        }

        return Ink;
    }

    private void Stroke(Pen pen, bool roundCorners = false)
    {
        if (_state.Pen.Width != pen.Width)
        {
            Ink.Number(pen.Width).Raw("w "u8);
        }

        if (_state.Pen.White != pen.White)
        {
            Ink.Raw(pen.White ? "1 G "u8 : "0 G "u8);
        }

        if (_state.Pen.Round != pen.Round)
        {
            Ink.Raw(pen.Round ? "1 J "u8 : "0 J "u8);
        }

        if (_state.RoundCorners != roundCorners)
        {
            Ink.Raw(roundCorners ? "1 j "u8 : "0 j "u8);
        }

        if (_state.Pen.Dashed != pen.Dashed)
        {
            _ = pen.Dashed ? Ink.Raw("["u8).Number(Pen.Dash).Number(Pen.Gap).Raw("] 0 d "u8) : Ink.Raw("[] 0 d "u8);
        }

        _state = _state with { Pen = pen, RoundCorners = roundCorners };
        _ = Ink;
    }

    /// <summary>What was set last.</summary>
    private readonly record struct State(Pen Pen, bool RoundCorners, bool WhiteFill)
    {
        /// <summary>ISO 32000-1, table 52.</summary>
        public static State OfNewPage => new(new(1), RoundCorners: false, WhiteFill: false);
    }
}
