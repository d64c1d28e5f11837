namespace BendSheet.Sheets.Drawing;

/// <summary>
/// A page to draw on: millimetres from the upper left corner of the type area, y downwards, black on white. Texts are printable already
/// (<see cref="TextMeasure.Printable"/>).
/// </summary>
/// <param name="page">The whole page.</param>
/// <param name="left">Of the type area.</param>
/// <param name="width">Of the type area.</param>
internal sealed class Canvas(IPage page, double left, double width)
{
    /// <summary>A line that is only there to guide the eye.</summary>
    public const double Thin = 0.2;

    /// <summary>An ordinary line.</summary>
    public const double Medium = 0.3;

    /// <summary>A line that must survive a bad copy.</summary>
    public const double Thick = 0.6;

    /// <summary>Of the type area.</summary>
    public double Width => width;

    /// <summary>The same page with its type area beginning further to the right.</summary>
    public Canvas MovedRight(double distance) => new(page, left + distance, width - distance);

    /// <summary>Draws with left and right of the type area exchanged: what is drawn once mirrored can be read again.</summary>
    public void Mirrored(Action<Canvas> draw) => page.Mirrored((2 * left) + width, () => draw(this));

    /// <summary>What is drawn has a role for somebody who has the page read out.</summary>
    /// <param name="role">What it is.</param>
    /// <param name="draw">Draws it.</param>
    /// <param name="alternative">Of a figure: what somebody needs to know who does not see it.</param>
    /// <param name="box">Of a figure, in the type area.</param>
    /// <param name="continues">Goes on with the paragraph or step before.</param>
    public void As(Role role, Action draw, string? alternative = null, PageBox box = default, bool continues = false) =>
        page.Mean(role, draw, alternative, box with { Left = left + box.Left }, continues);

    /// <summary>Guides the eye, or the pen, and is not read out.</summary>
    public void Decoration(Action draw) => As(Role.Decoration, draw);

    /// <summary>One line of text, with its baseline at <paramref name="y"/>.</summary>
    public void Text(string printable, TextStyle style, double x, double y, Align align = Align.Left)
    {
        if (printable.Length > 0)
        {
            page.Text(printable, style, At(x, y), align);
        }
    }

    /// <summary>A straight line.</summary>
    public void Line(double x1, double y1, double x2, double y2, double pen = Medium) => page.Line([At(x1, y1), At(x2, y2)], new(pen));

    /// <summary>A dashed line; dash and gap in millimetres.</summary>
    public void DashedLine(double x1, double y1, double x2, double y2, double pen = Thin) =>
        page.Line([At(x1, y1), At(x2, y2)], new(pen, Dashed: true));

    /// <summary>An open line through points, with round corners.</summary>
    /// <param name="points">In the type area.</param>
    /// <param name="pen">Width.</param>
    /// <param name="white">White instead of black, to break what lies behind.</param>
    /// <param name="flatEnds">Cut square at the ends.</param>
    public void Path(ReadOnlySpan<PagePoint> points, double pen, bool white = false, bool flatEnds = false)
    {
        if (points.Length < 2)
        {
            return;
        }

        var moved = new PagePoint[points.Length];
        for (var i = 0; i < points.Length; i++)
        {
            moved[i] = At(points[i].X, points[i].Y);
        }

        page.Line(moved, new(pen, white, Round: !flatEnds));
    }

    /// <summary>A dashed line through points; dash and gap as in <see cref="DashedLine"/>.</summary>
    public void DashedPath(IEnumerable<PagePoint> points, double pen)
    {
        PagePoint[] moved = [.. points.Select(point => At(point.X, point.Y))];
        if (moved.Length > 1)
        {
            page.Line(moved, new(pen, Dashed: true));
        }
    }

    /// <summary>A rectangle.</summary>
    public void Box(double x, double y, double boxWidth, double height, double pen = Medium) => page.Box(At(x, y), boxWidth, height, pen);

    /// <summary>Covers what was drawn before.</summary>
    public void Blank(double x, double y, double blankWidth, double height) => page.Blank(At(x, y), blankWidth, height);

    /// <summary>A circle on white with a short text in its middle.</summary>
    public void Bubble(string printable, TextStyle style, double x, double y, double radius) =>
        Bubble(printable, style, x, y, radius, radius);

    /// <summary>A circle drawn out sideways, on white, with a text in its middle.</summary>
    public void Bubble(string printable, TextStyle style, double x, double y, double halfWidth, double radius)
    {
        page.Pill(At(x, y), halfWidth, radius, Medium);
        Text(printable, style, x, y + (style.CapHeight / 2), Align.Centre);
    }

    /// <summary>A circle.</summary>
    public void Circle(PagePoint centre, double radius, double pen = Medium) => page.Arc(At(centre.X, centre.Y), radius, 0, 360, new(pen));

    /// <summary>A part of a circle, clockwise on the page.</summary>
    /// <param name="centre">Of the circle.</param>
    /// <param name="radius">Of the circle.</param>
    /// <param name="fromTop">Degrees clockwise from straight up at which it begins.</param>
    /// <param name="sweep">Degrees that it goes on, at most a whole turn.</param>
    /// <param name="pen">Width.</param>
    /// <param name="dashed">Dash and gap as in <see cref="DashedLine"/>.</param>
    public void Arc(PagePoint centre, double radius, double fromTop, double sweep, double pen = Medium, bool dashed = false) =>
        page.Arc(At(centre.X, centre.Y), radius, fromTop, sweep, new(pen, Dashed: dashed));

    /// <summary>A rectangle filled with black.</summary>
    public void Black(double x, double y, double blackWidth, double height) => page.Black(At(x, y), blackWidth, height);

    /// <summary>A box to tick with a marker; its foot on the baseline.</summary>
    public void TickBox(double x, double baseline, double size) => Box(x, baseline - size + 0.4, size, size, Medium);

    private PagePoint At(double x, double y) => new(left + x, y);
}
