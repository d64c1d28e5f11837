namespace BendSheet.Sheets.Drawing;

/// <summary>A rectangle of the type area or the page, in millimetres, y downwards.</summary>
public readonly record struct PageBox(double Left, double Top, double Width, double Height);

/// <summary>A point of the type area, in millimetres, y downwards.</summary>
public readonly record struct PagePoint(double X, double Y)
{
    /// <summary>Moved by another one.</summary>
    public static PagePoint operator +(PagePoint a, PagePoint b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>The vector from <paramref name="b"/> to <paramref name="a"/>.</summary>
    public static PagePoint operator -(PagePoint a, PagePoint b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>Stretched by a factor.</summary>
    public static PagePoint operator *(double factor, PagePoint a) => new(factor * a.X, factor * a.Y);

    /// <summary>Whether another point is nearer than a distance.</summary>
    public bool IsNearer(PagePoint other, double distance) =>
        ((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)) < distance * distance;

    /// <summary>Distance from the origin.</summary>
    public double Norm => Math.Sqrt((X * X) + (Y * Y));
}
