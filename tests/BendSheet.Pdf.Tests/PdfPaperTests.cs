using BendSheet.Sheets.Drawing;
using UglyToad.PdfPig;

namespace BendSheet.Pdf.Tests;

public class PdfPaperTests
{
    /// <summary>PDFsharp writes thousandths of a point, a third of a micrometre.</summary>
    private const double ToleranceMm = 0.0002;

    public static TheoryData<string, double, double> Papers => new()
    {
        { "A4", 210, 297 },
        { "A4 turned", 297, 210 },
        { "Letter", 215.9, 279.4 },
        { "Letter turned", 279.4, 215.9 },
    };

    [Theory]
    [MemberData(nameof(Papers))]
    public void A_page_is_as_large_as_its_paper(string name, double widthMm, double heightMm)
    {
        using var pdf = PdfDocument.Open(Framed(Named(name)));
        var page = pdf.GetPage(1);

        Assert.Equal(widthMm, page.Width / Drawn.PointsPerMm, ToleranceMm);
        Assert.Equal(heightMm, page.Height / Drawn.PointsPerMm, ToleranceMm);
        Assert.Equal(0, page.Rotation.Value);
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Drawing_is_in_millimetres_from_the_upper_left_corner(string name, double widthMm, double heightMm)
    {
        using var pdf = PdfDocument.Open(Framed(Named(name)));
        var box = pdf.GetPage(1).Paths.Single().GetBoundingRectangle()!.Value;

        Assert.Equal(10, box.Left / Drawn.PointsPerMm, ToleranceMm);
        Assert.Equal(heightMm - 20, box.Top / Drawn.PointsPerMm, ToleranceMm);
        Assert.Equal(widthMm - 5, box.Right / Drawn.PointsPerMm, ToleranceMm);
        Assert.Equal(5, box.Bottom / Drawn.PointsPerMm, ToleranceMm);
    }

    [Theory]
    [InlineData(100, 0)]
    [InlineData(0, 100)]
    [InlineData(60, 80)]
    public void A_line_of_100_mm_is_100_mm_long(double x, double y)
    {
        using var pdf = PdfDocument.Open(Drawn.OnCanvas(canvas => canvas.Line(33.3, 44.4, 33.3 + x, 44.4 + y)));
        var line = pdf.GetPage(1).Paths.Single().Single().Commands.OfType<UglyToad.PdfPig.Core.PdfSubpath.Line>().Single();

        Assert.Equal(100.000, line.Length / Drawn.PointsPerMm, 0.0005);
    }

    private static PaperSize Named(string name) => name switch
    {
        "A4" => PaperSize.A4,
        "A4 turned" => PaperSize.A4.Turned(),
        "Letter" => PaperSize.Letter,
        _ => PaperSize.Letter.Turned(),
    };

    private static byte[] Framed(PaperSize paper) =>
        Drawn.OnCanvas(canvas => canvas.Box(10, 20, paper.WidthMm - 15, paper.HeightMm - 25, 0.1), paper);
}
