namespace BendSheet.Sheets.Drawing;

/// <summary>Where a text stands in relation to its point.</summary>
public enum Align
{
    /// <summary>Begins there.</summary>
    Left,

    /// <summary>Has its middle there.</summary>
    Centre,

    /// <summary>Ends there.</summary>
    Right,
}

/// <summary>How a line is drawn.</summary>
/// <param name="Width">In millimetres.</param>
/// <param name="White">White instead of black, to break what lies behind.</param>
/// <param name="Round">Round ends and corners instead of ends cut square.</param>
/// <param name="Dashed">In dashes of 1.5 mm with gaps of 1 mm.</param>
public readonly record struct Pen(double Width, bool White = false, bool Round = false, bool Dashed = false)
{
    /// <summary>Length of a dash, in millimetres.</summary>
    public const double Dash = 1.5;

    /// <summary>Between two dashes, in millimetres.</summary>
    public const double Gap = 1;
}

/// <summary>
/// A page that is drawn on, whatever it becomes: a page of a document, a drawing of its own. Millimetres from the upper left corner of the
/// paper, y downwards, black on white. Texts are printable already.
/// </summary>
public interface IPage
{
    /// <summary>
    /// Whatever is drawn means something to somebody who has the page read out; the order of drawing is the order of reading.
    /// </summary>
    /// <param name="role">What it is.</param>
    /// <param name="draw">Draws it.</param>
    /// <param name="alternative">Of a figure: what somebody needs to know who does not see it.</param>
    /// <param name="box">Of a figure.</param>
    /// <param name="continues">Goes on with the paragraph or step before.</param>
    void Mean(Role role, Action draw, string? alternative, PageBox box, bool continues);

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
