using System.Collections.Immutable;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
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

    /// <summary>Prints a sheet for each line, each on pages of its own, and nothing else.</summary>
    /// <param name="lines">At least one.</param>
    /// <param name="paper">To print on.</param>
    public static PrintedSheets Of(ImmutableArray<SheetContent> lines, Paper paper) => Of(new PrintJob(lines, paper) { Title = lines[0].Project });

    /// <summary>Prints what was asked for; each part begins a page and has an entry in the outline.</summary>
    public static PrintedSheets Of(PrintJob job)
    {
        ArgumentNullException.ThrowIfNull(job);
        using var document = new PdfDocument();
        using var measure = new TextMeasure();
        var reading = new ReadingOrder(document);
        var press = new Press(document, job.Paper == Paper.A4 ? PaperSize.A4 : PaperSize.Letter, measure, job.Mirrored, reading);
        if (job.Cover is { } cover)
        {
            press.Print(CoverPage.Pages(cover, measure, press.Width, press.Height), "Cover", new(string.Empty, cover.Project));
        }

        foreach (var line in job.Lines)
        {
            press.Print(LineSheet.Pages(line, measure, press.Width, press.Height), line.Line, new($"sheet {line.Fingerprint}", line.Line));
        }

        var pages = document.PageCount;
        return new(FinishedPdf.Of(document, job.Title.Length > 0 ? job.Title : "Bend sheets", reading.Tree), job.Lines.Length, pages, [.. measure.Missing]);
    }

    private const string MirroredWords = "Mirrored: copy it face down";

    /// <summary>What the foot of a part says beside the number of the page.</summary>
    private sealed record Foot(string Left, string Middle);

    /// <summary>Puts blocks on pages.</summary>
    private sealed record Press(PdfDocument Document, PaperSize Size, TextMeasure Measure, bool Mirrored, ReadingOrder Reading)
    {
        /// <summary>Of the type area.</summary>
        public double Width => Size.WidthMm - (2 * Margin);

        /// <summary>Of the type area.</summary>
        public double Height => Size.HeightMm - (2 * Margin) - FootHeight;

        public void Print(IReadOnlyList<IReadOnlyList<(Block Block, double Top)>> pages, string entry, Foot foot)
        {
            Reading.BeginPart();
            for (var i = 0; i < pages.Count; i++)
            {
                using var graphics = NewPage();
                if (i == 0)
                {
                    Document.Outlines.Add(Measure.Printable(entry), Document.Pages[Document.PageCount - 1]);
                }

                var canvas = new Canvas(graphics, Margin, Width, Reading);
                foreach (var (block, top) in pages[i])
                {
                    block.DrawOn(canvas, Margin + top);
                }

                var number = FormattableString.Invariant($"page {i + 1} of {pages.Count}");
                canvas.Decoration(() => DrawFoot(canvas, foot, number));
                Reading.EndPage();
            }
        }

        private XGraphics NewPage()
        {
            var graphics = Size.AddPage(Document);
            if (Mirrored)
            {
                graphics.TranslateTransform(Size.WidthMm, 0);
                graphics.ScaleTransform(-1, 1);
            }

            Reading.BeginPage(graphics, Document.Pages[Document.PageCount - 1], Size, Mirrored);
            return graphics;
        }

        private void DrawFoot(Canvas canvas, Foot foot, string number)
        {
            var style = TextStyle.Small;
            var baseline = Size.HeightMm - Margin;
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
