using BendSheet.Sheets.Pdf;

namespace BendSheet.Sheets.Drawing;

/// <summary>Where a text stands in relation to its point.</summary>
internal enum Align
{
    /// <summary>Begins there.</summary>
    Left,

    /// <summary>Has its middle there.</summary>
    Centre,

    /// <summary>Ends there.</summary>
    Right,
}

/// <summary>
/// A page to draw on: millimetres from the upper left corner of the type area, y downwards, black on white. Texts are printable already
/// (<see cref="TextMeasure.Printable"/>).
/// </summary>
/// <param name="ink">Of the whole page.</param>
/// <param name="left">Of the type area.</param>
/// <param name="width">Of the type area.</param>
/// <param name="reading">Where the page's parts say what they are; null where nobody reads it out.</param>
internal sealed class Canvas(IInk ink, double left, double width, ReadingOrder? reading = null)
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
    public Canvas MovedRight(double distance) => new(ink, left + distance, width - distance, reading);

    /// <summary>Draws with left and right of the type area exchanged: what is drawn once mirrored can be read again.</summary>
    public void Mirrored(Action<Canvas> draw) => ink.Mirrored((2 * left) + width, () => draw(this));

    /// <summary>What is drawn has a role for somebody who has the page read out.</summary>
    /// <param name="role">What it is.</param>
    /// <param name="draw">Draws it.</param>
    /// <param name="alternative">Of a figure: what somebody needs to know who does not see it.</param>
    /// <param name="box">Of a figure, in the type area.</param>
    /// <param name="continues">Goes on with the paragraph or step before.</param>
    public void As(Role role, Action draw, string? alternative = null, PageBox box = default, bool continues = false)
    {
        if (reading is null)
        {
            draw();
            return;
        }

        reading.Draw(role, draw, alternative, box with { Left = left + box.Left }, continues);
    }

    /// <summary>Guides the eye, or the pen, and is not read out.</summary>
    public void Decoration(Action draw) => As(Role.Decoration, draw);

    /// <summary>One line of text, with its baseline at <paramref name="y"/>.</summary>
    public void Text(string printable, TextStyle style, double x, double y, Align align = Align.Left)
    {
        if (printable.Length > 0)
        {
            ink.Text(printable, style, At(x, y), align);
        }
    }

    /// <summary>A straight line.</summary>
    public void Line(double x1, double y1, double x2, double y2, double pen = Medium) => ink.Line([At(x1, y1), At(x2, y2)], new(pen));

    /// <summary>A dashed line; dash and gap in millimetres.</summary>
    public void DashedLine(double x1, double y1, double x2, double y2, double pen = Thin) =>
        ink.Line([At(x1, y1), At(x2, y2)], new(pen, Dashed: true));

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

        ink.Line(moved, new(pen, white, Round: !flatEnds));
    }

    /// <summary>A rectangle.</summary>
    public void Box(double x, double y, double boxWidth, double height, double pen = Medium) => ink.Box(At(x, y), boxWidth, height, pen);

    /// <summary>Covers what was drawn before.</summary>
    public void Blank(double x, double y, double blankWidth, double height) => ink.Blank(At(x, y), blankWidth, height);

    /// <summary>A circle on white with a short text in its middle.</summary>
    public void Bubble(string printable, TextStyle style, double x, double y, double radius) => Bubble(printable, style, x, y, radius, radius);

    /// <summary>A circle drawn out sideways, on white, with a text in its middle.</summary>
    public void Bubble(string printable, TextStyle style, double x, double y, double halfWidth, double radius)
    {
        ink.Pill(At(x, y), halfWidth, radius, Medium);
        Text(printable, style, x, y + (style.CapHeight / 2), Align.Centre);
    }

    /// <summary>A circle.</summary>
    public void Circle(PagePoint centre, double radius, double pen = Medium) => ink.Arc(At(centre.X, centre.Y), radius, 0, 360, new(pen));

    /// <summary>A part of a circle, clockwise on the page.</summary>
    /// <param name="centre">Of the circle.</param>
    /// <param name="radius">Of the circle.</param>
    /// <param name="fromTop">Degrees clockwise from straight up at which it begins.</param>
    /// <param name="sweep">Degrees that it goes on, at most a whole turn.</param>
    /// <param name="pen">Width.</param>
    /// <param name="dashed">Dash and gap as in <see cref="DashedLine"/>.</param>
    public void Arc(PagePoint centre, double radius, double fromTop, double sweep, double pen = Medium, bool dashed = false) =>
        ink.Arc(At(centre.X, centre.Y), radius, fromTop, sweep, new(pen, Dashed: dashed));

    /// <summary>A rectangle filled with black.</summary>
    public void Black(double x, double y, double blackWidth, double height) => ink.Black(At(x, y), blackWidth, height);

    /// <summary>A box to tick with a marker; its foot on the baseline.</summary>
    public void TickBox(double x, double baseline, double size) => Box(x, baseline - size + 0.4, size, size, Medium);

    private PagePoint At(double x, double y) => new(left + x, y);
}

/// <summary>A rectangle of the type area or the page, in millimetres, y downwards.</summary>
internal readonly record struct PageBox(double Left, double Top, double Width, double Height);

/// <summary>A point of the type area, in millimetres, y downwards.</summary>
internal readonly record struct PagePoint(double X, double Y)
{
    public static PagePoint operator +(PagePoint a, PagePoint b) => new(a.X + b.X, a.Y + b.Y);

    public static PagePoint operator -(PagePoint a, PagePoint b) => new(a.X - b.X, a.Y - b.Y);

    public static PagePoint operator *(double factor, PagePoint a) => new(factor * a.X, factor * a.Y);

    /// <summary>Whether another point is nearer than a distance.</summary>
    public bool IsNearer(PagePoint other, double distance) =>
        ((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)) < distance * distance;

    public double Norm => Math.Sqrt((X * X) + (Y * Y));
}
