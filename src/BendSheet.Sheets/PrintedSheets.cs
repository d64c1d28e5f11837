using System.Collections.Immutable;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.FullSize;
using BendSheet.Sheets.Layout;
using BendSheet.Sheets.Pdf;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace BendSheet.Sheets;

/// <summary>A cover and the sheets of some lines as one PDF.</summary>
/// <param name="Pdf">The whole file; the same bytes for the same content.</param>
/// <param name="Lines">How many lines it has sheets for.</param>
/// <param name="Pages">How many pages.</param>
/// <param name="MissingCharacters">What the font has no sign for and was printed as a stand-in, each as it reads in a sentence.</param>
public sealed record PrintedSheets(ReadOnlyMemory<byte> Pdf, int Lines, int Pages, ImmutableArray<string> MissingCharacters)
{
    private const double Margin = 10;

    /// <summary>Of the foot, below the type area.</summary>
    private const double FootHeight = 5;

    /// <summary>Prints a sheet for each line, each on pages of its own, without a cover.</summary>
    /// <param name="lines">At least one.</param>
    /// <param name="paper">To print on.</param>
    /// <param name="fullSize">Pages drawn at full size, behind each line's sheet.</param>
    public static PrintedSheets Of(ImmutableArray<SheetContent> lines, Paper paper, FullSizePages fullSize = FullSizePages.None) =>
        Of(new PrintJob(lines, paper) { Title = lines[0].Project, FullSize = fullSize });

    /// <summary>Prints what was asked for; each part begins a page and has an entry in the outline.</summary>
    public static PrintedSheets Of(PrintJob job)
    {
        ArgumentNullException.ThrowIfNull(job);
        using var document = new PdfDocument();
        using var measure = new TextMeasure();
        var reading = new ReadingOrder(document);
        var size = job.Paper == Paper.A4 ? PaperSize.A4 : PaperSize.Letter;
        var (width, height) = TypeArea(size);
        IEnumerable<FullSizePage> Upright(IEnumerable<IReadOnlyList<(Block Block, double Top)>> pages) => pages.Select(blocks => new FullSizePage(size, null, blocks));
        var press = new Press(document, measure, job.Mirrored, reading);
        if (job.Cover is { } cover)
        {
            press.Print([.. Upright(CoverPage.Pages(cover, measure, width, height))], "Cover", new(string.Empty, cover.Project));
        }

        foreach (var line in job.Lines)
        {
            press.Print(
                [.. Upright(LineSheet.Pages(line, measure, width, height)), .. FullSizePage.Of(line, job.FullSize, size, measure)],
                line.Line,
                new($"sheet {line.Fingerprint}", line.Line));
        }

        var pages = document.PageCount;
        return new(FinishedPdf.Of(document, job.Title.Length > 0 ? job.Title : "Bend sheets", reading.Tree), job.Lines.Length, pages, [.. measure.Missing]);
    }

    /// <summary>What a sheet of paper leaves between its margins and above the foot.</summary>
    internal static (double Width, double Height) TypeArea(PaperSize size) => (size.WidthMm - (2 * Margin), size.HeightMm - (2 * Margin) - FootHeight);

    private const string MirroredWords = "Mirrored: copy it face down";

    /// <summary>What the foot of a part says beside the number of the page.</summary>
    private sealed record Foot(string Left, string Middle);

    /// <summary>Puts blocks on pages.</summary>
    private sealed record Press(PdfDocument Document, TextMeasure Measure, bool Mirrored, ReadingOrder Reading)
    {
        public void Print(IReadOnlyList<FullSizePage> pages, string entry, Foot foot)
        {
            Reading.BeginPart();
            PdfOutline? outline = null;
            for (var i = 0; i < pages.Count; i++)
            {
                var page = pages[i];
                using var graphics = NewPage(page.Size);
                outline ??= Document.Outlines.Add(Measure.Printable(entry), Document.Pages[Document.PageCount - 1]);
                if (page.Begins is { } part)
                {
                    outline.Outlines.Add(part, Document.Pages[Document.PageCount - 1]);
                }

                var canvas = new Canvas(graphics, Margin, TypeArea(page.Size).Width, Reading);
                foreach (var (block, top) in page.Blocks)
                {
                    block.DrawOn(canvas, Margin + top);
                }

                var number = FormattableString.Invariant($"page {i + 1} of {pages.Count}");
                canvas.Decoration(() => DrawFoot(canvas, foot, number, page.Size.HeightMm - Margin));
                Reading.EndPage();
            }
        }

        private XGraphics NewPage(PaperSize size)
        {
            var graphics = size.AddPage(Document);
            if (Mirrored)
            {
                graphics.TranslateTransform(size.WidthMm, 0);
                graphics.ScaleTransform(-1, 1);
            }

            Reading.BeginPage(graphics, Document.Pages[Document.PageCount - 1], size, Mirrored);
            return graphics;
        }

        private void DrawFoot(Canvas canvas, Foot foot, string number, double baseline)
        {
            var style = TextStyle.Small;
            var left = Measure.Width(foot.Left, style) + 4;
            var beside = Mirrored ? left + Measure.Width(MirroredWords, style) + 4 : left;
            var room = canvas.Width - (2 * Math.Max(beside, Measure.Width(number, style) + 4));
            canvas.Line(0, baseline - 4, canvas.Width, baseline - 4, Canvas.Thin);
            canvas.Text(foot.Left, style, 0, baseline);
            canvas.Text(Measure.Wrap(foot.Middle, style, room)[0], style, canvas.Width / 2, baseline, Align.Centre);
            canvas.Text(number, style, canvas.Width, baseline, Align.Right);
            if (Mirrored)
            {
                // For whoever holds the paper; on the board it is the only thing that cannot be read.
                canvas.Mirrored(readable => readable.Text(MirroredWords, style, canvas.Width - left, baseline, Align.Right));
            }
        }
    }
}
