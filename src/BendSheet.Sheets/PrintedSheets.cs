using System.Collections.Immutable;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.FullSize;
using BendSheet.Sheets.Pdf;
using PdfSharp.Pdf;

namespace BendSheet.Sheets;

/// <summary>The sheets of some lines as one PDF.</summary>
/// <param name="Pdf">The whole file; the same bytes for the same content.</param>
/// <param name="Lines">How many lines it has sheets for.</param>
/// <param name="Pages">How many pages.</param>
/// <param name="MissingCharacters">What the font has no sign for and was printed as a stand-in, each as it reads in a sentence.</param>
public sealed record PrintedSheets(ReadOnlyMemory<byte> Pdf, int Lines, int Pages, ImmutableArray<string> MissingCharacters)
{
    private const double Margin = 10;

    /// <summary>Of the foot, below the type area.</summary>
    private const double FootHeight = 5;

    /// <summary>Prints a sheet for each line, each on pages of its own.</summary>
    /// <param name="lines">At least one.</param>
    /// <param name="paper">To print on.</param>
    /// <param name="fullSize">Pages drawn at full size, behind each line's own.</param>
    public static PrintedSheets Of(ImmutableArray<SheetContent> lines, Paper paper, FullSizePages fullSize = FullSizePages.None)
    {
        using var document = new PdfDocument();
        using var measure = new TextMeasure();
        var size = paper == Paper.A4 ? PaperSize.A4 : PaperSize.Letter;
        foreach (var line in lines)
        {
            AddSheet(document, line, size, measure, fullSize);
        }

        var pages = document.PageCount;
        var title = lines[0].Project.Length > 0 ? lines[0].Project : "Bend sheets";
        return new(FinishedPdf.Of(document, title), lines.Length, pages, [.. measure.Missing]);
    }

    /// <summary>What a sheet of paper leaves between its margins and above the foot.</summary>
    internal static (double Width, double Height) TypeArea(PaperSize size) => (size.WidthMm - (2 * Margin), size.HeightMm - (2 * Margin) - FootHeight);

    private static void AddSheet(PdfDocument document, SheetContent line, PaperSize size, TextMeasure measure, FullSizePages fullSize)
    {
        var (width, height) = TypeArea(size);
        var own = LineSheet.Pages(line, measure, width, height);
        List<FullSizePage> pages = [.. own.Select(blocks => new FullSizePage(size, null, blocks)), .. FullSizePage.Of(line, fullSize, size, measure)];
        PdfOutline? outline = null;
        for (var i = 0; i < pages.Count; i++)
        {
            var page = pages[i];
            using var graphics = page.Size.AddPage(document);
            outline ??= document.Outlines.Add(measure.Printable(line.Line), document.Pages[document.PageCount - 1]);
            if (page.Begins is { } part)
            {
                outline.Outlines.Add(part, document.Pages[document.PageCount - 1]);
            }

            var canvas = new Canvas(graphics, Margin, TypeArea(page.Size).Width);
            foreach (var (block, top) in page.Blocks)
            {
                block.Draw(canvas, Margin + top);
            }

            DrawFoot(canvas, measure, line, i + 1, pages.Count, page.Size.HeightMm - Margin);
        }
    }

    private static void DrawFoot(Canvas canvas, TextMeasure measure, SheetContent line, int page, int pages, double baseline)
    {
        var sheet = $"sheet {line.Fingerprint}";
        var number = FormattableString.Invariant($"page {page} of {pages}");
        var room = canvas.Width - measure.Width(sheet, TextStyle.Small) - measure.Width(number, TextStyle.Small) - 8;
        canvas.Line(0, baseline - 4, canvas.Width, baseline - 4, Canvas.Thin);
        canvas.Text(sheet, TextStyle.Small, 0, baseline);
        canvas.Text(measure.Wrap(line.Line, TextStyle.Small, room)[0], TextStyle.Small, canvas.Width / 2, baseline, Align.Centre);
        canvas.Text(number, TextStyle.Small, canvas.Width, baseline, Align.Right);
    }
}
