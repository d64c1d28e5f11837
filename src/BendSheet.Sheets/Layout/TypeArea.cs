using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Layout;

/// <summary>What a sheet of paper leaves between its margins and above the foot, in millimetres.</summary>
internal readonly record struct TypeArea(double Width, double Height)
{
    /// <summary>On all four sides.</summary>
    public const double Margin = 10;

    /// <summary>Of the foot, below the type area.</summary>
    private const double FootHeight = 5;

    /// <summary>Of a page.</summary>
    public static TypeArea Of(PaperSize size) => new(size.WidthMm - (2 * Margin), size.HeightMm - (2 * Margin) - FootHeight);
}
