using UglyToad.PdfPig.Content;

namespace BendSheet.Sheets.Tests;

/// <summary>What holds for every page of words.</summary>
internal static class AssertPages
{
    private const double PointsPerMm = 72 / 25.4;
    private const double MarginMm = 10;

    /// <summary>Nothing leaves the type area, lies over something else, or is too small to be read.</summary>
    public static void InTypeArea(IEnumerable<Page> pages) => Assert.All(pages, page =>
    {
        Assert.All(page.Letters, letter =>
        {
            Assert.True(letter.PointSize > 7.99, $"{letter.Value} in {letter.PointSize} pt");
            Assert.InRange(letter.BoundingBox.Left / PointsPerMm, MarginMm - 0.3, (page.Width / PointsPerMm) - MarginMm + 0.3);
            Assert.InRange(letter.BoundingBox.Right / PointsPerMm, MarginMm - 0.3, (page.Width / PointsPerMm) - MarginMm + 0.3);
            Assert.InRange(letter.BoundingBox.Bottom / PointsPerMm, MarginMm - 1.5, (page.Height / PointsPerMm) - MarginMm + 0.3);
        });
        Assert.Empty(Printed.Overlaps([.. page.Letters.Where(letter => letter.BoundingBox.Area > 0)]));
    });
}
