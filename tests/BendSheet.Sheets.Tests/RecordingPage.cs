using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Tests;

/// <summary>Something that was drawn.</summary>
/// <param name="Role">The innermost role around it; null where nothing said what it is.</param>
/// <param name="Text">Of a text; null for lines and areas.</param>
/// <param name="Box">Where it lies on the paper, in millimetres, pens counted in.</param>
internal sealed record DrawnThing(Role? Role, string? Text, PageBox Box)
{
    /// <summary>Of a text, its size.</summary>
    public double Points { get; init; }
}

/// <summary>A page that only remembers what was drawn on it, for the tests.</summary>
internal sealed class RecordingPage : IPage
{
    private readonly Stack<Role> _roles = new();
    private Func<double, double>? _mirror;

    /// <summary>In the order of drawing.</summary>
    public List<DrawnThing> Things { get; } = [];

    /// <summary>Of each figure what it says to somebody who does not see it.</summary>
    public List<string?> Alternatives { get; } = [];

    public void Mean(Role role, Action draw, string? alternative, PageBox box, bool continues)
    {
        if (role == Role.Figure)
        {
            Alternatives.Add(alternative);
        }

        _roles.Push(role);
        draw();
        _roles.Pop();
    }

    public void Text(string printable, TextStyle style, PagePoint at, Align align)
    {
        var width = style.Width(printable);
        var left = align switch { Align.Left => at.X, Align.Centre => at.X - (width / 2), _ => at.X - width };
        Add(printable, left, at.Y - style.CapHeight, left + width, at.Y, style.Points);
    }

    public void Line(ReadOnlySpan<PagePoint> points, Pen pen)
    {
        var (left, top, right, bottom) = (points[0].X, points[0].Y, points[0].X, points[0].Y);
        foreach (var point in points)
        {
            (left, right) = (Math.Min(left, point.X), Math.Max(right, point.X));
            (top, bottom) = (Math.Min(top, point.Y), Math.Max(bottom, point.Y));
        }

        var half = pen.Width / 2;
        Add(null, left - half, top - half, right + half, bottom + half);
    }

    public void Box(PagePoint corner, double width, double height, double pen) =>
        Add(null, corner.X - (pen / 2), corner.Y - (pen / 2), corner.X + width + (pen / 2), corner.Y + height + (pen / 2));

    public void Blank(PagePoint corner, double width, double height) => Add(null, corner.X, corner.Y, corner.X + width, corner.Y + height);

    public void Black(PagePoint corner, double width, double height) => Blank(corner, width, height);

    public void Arc(PagePoint centre, double radius, double fromTop, double sweep, Pen pen)
    {
        for (var part = 0; part <= 36; part++)
        {
            var (sin, cos) = Math.SinCos((fromTop + (sweep * part / 36)) * Math.PI / 180);
            Line([new(centre.X + (radius * sin), centre.Y - (radius * cos))], pen);
        }
    }

    public void Pill(PagePoint middle, double halfWidth, double radius, double pen)
    {
        var half = Math.Max(halfWidth, radius) + (pen / 2);
        Add(null, middle.X - half, middle.Y - radius - (pen / 2), middle.X + half, middle.Y + radius + (pen / 2));
    }

    public void Mirrored(double sum, Action draw)
    {
        _mirror = x => sum - x;
        draw();
        _mirror = null;
    }

    private void Add(string? text, double left, double top, double right, double bottom, double points = 0)
    {
        if (_mirror is { } mirror)
        {
            (left, right) = (mirror(right), mirror(left));
        }

        Things.Add(new(_roles.Count > 0 ? _roles.Peek() : null, text, new(left, top, right - left, bottom - top)) { Points = points });
    }
}
