namespace BendSheet.Sheets.Drawing;

/// <summary>A sheet of paper. Its sides are exact.</summary>
public sealed record PaperSize
{
    private const double MmPerInch = 25.4;

    private PaperSize(double widthMm, double heightMm)
    {
        WidthMm = widthMm;
        HeightMm = heightMm;
    }

    /// <summary>210 mm × 297 mm (ISO 216), upright.</summary>
    public static PaperSize A4 { get; } = new(210, 297);

    /// <summary>8½ in × 11 in (ANSI A), upright.</summary>
    public static PaperSize Letter { get; } = new(8.5 * MmPerInch, 11 * MmPerInch);

    /// <summary>Left to right.</summary>
    public double WidthMm { get; }

    /// <summary>Top to bottom.</summary>
    public double HeightMm { get; }

    /// <summary>The same sheet turned by a quarter.</summary>
    public PaperSize Turned() => new(HeightMm, WidthMm);
}
