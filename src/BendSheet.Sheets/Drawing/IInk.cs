namespace BendSheet.Sheets.Drawing;

/// <summary>How a line is drawn.</summary>
/// <param name="Width">In millimetres.</param>
/// <param name="White">White instead of black, to break what lies behind.</param>
/// <param name="Round">Round ends and corners instead of ends cut square.</param>
/// <param name="Dashed">In dashes of 1.5 mm with gaps of 1 mm.</param>
internal readonly record struct Pen(double Width, bool White = false, bool Round = false, bool Dashed = false)
{
    /// <summary>Of a dashed line.</summary>
    public const double Dash = 1.5;

    /// <summary>Between two dashes.</summary>
    public const double Gap = 1;
}

/// <summary>
/// What a <see cref="Canvas"/> puts its drawings down with: a page of a PDF, or an SVG. Millimetres from the upper left corner of the paper,
/// y downwards.
/// </summary>
internal interface IInk
{
    /// <summary>One line of text on its baseline.</summary>
    void Text(string printable, TextStyle style, PagePoint at, Align align);

    /// <summary>An open line through two points or more.</summary>
    void Line(ReadOnlySpan<PagePoint> points, Pen pen);

    /// <summary>The outline of a rectangle.</summary>
    void Box(PagePoint corner, double width, double height, double pen);

    /// <summary>A white rectangle over what was drawn before.</summary>
    void Blank(PagePoint corner, double width, double height);

    /// <summary>A black rectangle.</summary>
    void Black(PagePoint corner, double width, double height);

    /// <summary>A part of a circle, clockwise from so many degrees after straight up; a whole circle for 360 degrees.</summary>
    void Arc(PagePoint centre, double radius, double fromTop, double sweep, Pen pen);

    /// <summary>A white rectangle with half circles for its shorter sides and an outline; a circle where it is as high as wide.</summary>
    void Pill(PagePoint middle, double halfWidth, double radius, double pen);

    /// <summary>Whatever is drawn has left and right exchanged: x becomes <paramref name="sum"/> less x.</summary>
    void Mirrored(double sum, Action draw);
}
