using System.Collections.Immutable;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.FullSize;
using BendSheet.Sheets.Layout;
using BendSheet.Sheets.Steps;

namespace BendSheet.Sheets;

/// <summary>A cover and the sheets of some lines as one PDF.</summary>
/// <param name="Pdf">The whole file; the same bytes for the same content.</param>
/// <param name="Lines">How many lines it has sheets for.</param>
/// <param name="Pages">How many pages.</param>
/// <param name="MissingCharacters">What the font has no sign for and was printed as a stand-in, each as it reads in a sentence.</param>
public sealed record PrintedSheets(ReadOnlyMemory<byte> Pdf, int Lines, int Pages, ImmutableArray<string> MissingCharacters)
{
    /// <summary>Prints what was asked for; each part begins a page and has an entry in the outline.</summary>
    /// <param name="job">What is wanted.</param>
    /// <param name="press">Makes the file.</param>
    public static PrintedSheets Of(PrintJob job, IPress press)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(press);
        var parts = new Parts(job, press);
        var drawn = new (IDrawnPart Part, IReadOnlyList<string> Missing)[parts.Count];

        // They know nothing of one another, so they are drawn side by side.
        Parallel.For(0, drawn.Length, i => drawn[i] = parts.Drawn(i));
        return new(
            press.Bind([.. drawn.Select(one => one.Part)], job.Title.Length > 0 ? job.Title : SheetWords.Untitled),
            job.Lines.Length,
            drawn.Sum(one => one.Part.PageCount),
            [.. drawn.SelectMany(one => one.Missing).Distinct(StringComparer.Ordinal)]);
    }

    /// <summary>What the foot of a part says beside the number of the page.</summary>
    private sealed record Foot(string Left, string Middle);

    /// <summary>The cover, if there is one, and a part for each line, each drawn for itself.</summary>
    private sealed record Parts(PrintJob Job, IPress Press)
    {
        private PaperSize Paper { get; } = Job.Paper == BendSheet.Core.Sheet.Paper.A4 ? PaperSize.A4 : PaperSize.Letter;

        private int Covers => Job.Cover is null ? 0 : 1;

        public int Count => Covers + Job.Lines.Length;

        /// <summary>A part, and what the font has no sign for in it.</summary>
        public (IDrawnPart Part, IReadOnlyList<string> Missing) Drawn(int index)
        {
            var measure = new TextMeasure();
            var part = index < Covers ? Cover(Job.Cover!, measure) : Line(Job.Lines[index - Covers], measure);
            return (part, measure.Missing);
        }

        private IDrawnPart Cover(CoverContent cover, TextMeasure measure)
        {
            var area = TypeArea.Of(Paper);
            var pages = Upright(CoverPage.Pages(cover, measure, area.Width, area.Height));
            return Drawn(pages, CoverWords.Entry, new(string.Empty, cover.Project), measure);
        }

        private IDrawnPart Line(SheetContent line, TextMeasure measure)
        {
            var area = TypeArea.Of(Paper);
            var pages = Upright(LineSheet.Pages(line, Job.Lines.Where(line.IsTwinOf), measure, area.Width, area.Height))
                .Concat(line.Steps.IsEmpty ? [] : FullSizePage.Part(StepWords.Part, line, Paper, measure, StepPages.Blocks))
                .Concat(FullSizePage.Of(line, Job.FullSize, Paper, measure));
            return Drawn(pages, line.Line, new(SheetWords.Fingerprint(line), line.Line), measure);
        }

        private IEnumerable<FullSizePage> Upright(IEnumerable<IReadOnlyList<(Block Block, double Top)>> pages) =>
            pages.Select(blocks => new FullSizePage(Paper, null, blocks));

        private IDrawnPart Drawn(IEnumerable<FullSizePage> laidOut, string entry, Foot foot, TextMeasure measure)
        {
            var pages = laidOut.ToList();
            var ahead = pages.Select((page, i) => new PageAhead(page.Size, page.Begins, drawn => Draw(drawn, page, i + 1))).ToList();
            return Press.Draw(measure.Printable(entry), ahead, Job.Mirrored);

            void Draw(IPage drawn, FullSizePage page, int number)
            {
                var canvas = new Canvas(drawn, TypeArea.Margin, TypeArea.Of(page.Size).Width);
                foreach (var (block, top) in page.Blocks)
                {
                    block.DrawOn(canvas, TypeArea.Margin + top);
                }

                canvas.Decoration(() => DrawFoot(
                    canvas,
                    foot,
                    SheetWords.Page(number, pages.Count),
                    page.Size.HeightMm - TypeArea.Margin,
                    measure));
            }
        }

        private void DrawFoot(Canvas canvas, Foot foot, string number, double baseline, TextMeasure measure)
        {
            var style = TextStyle.Small;
            var left = style.Width(foot.Left) + 4;
            var beside = Job.Mirrored ? left + style.Width(SheetWords.Mirrored) + 4 : left;
            var room = canvas.Width - (2 * Math.Max(beside, style.Width(number) + 4));
            canvas.Line(0, baseline - 4, canvas.Width, baseline - 4, Canvas.Thin);
            canvas.Text(foot.Left, style, 0, baseline);
            canvas.Text(measure.Wrap(foot.Middle, style, room)[0], style, canvas.Width / 2, baseline, Align.Centre);
            canvas.Text(number, style, canvas.Width, baseline, Align.Right);
            if (Job.Mirrored)
            {
                // For whoever holds the paper; on the board it is the only thing that cannot be read.
                canvas.Mirrored(readable => readable.Text(SheetWords.Mirrored, style, canvas.Width - left, baseline, Align.Right));
            }
        }
    }
}
