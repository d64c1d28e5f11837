using System.Collections.Immutable;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.FullSize;
using BendSheet.Sheets.Layout;
using BendSheet.Sheets.Pdf;

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

    private const string MirroredWords = "Mirrored: copy it face down";

    /// <summary>Nearly no page has more content, in bytes.</summary>
    private const int TypicalContent = 64 * 1024;

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
        var press = new Press(job);
        var parts = new DrawnPart[press.Parts];

        // They know nothing of one another, so they are drawn side by side.
        Parallel.For(
            0,
            parts.Length,
            () => new SyntaxWriter(TypicalContent),
            (i, _, content) =>
            {
                parts[i] = press.Part(i, content);
                return content;
            },
            _ => { });
        return new(
            BoundParts.Of(parts, job.Title.Length > 0 ? job.Title : "Bend sheets"),
            job.Lines.Length,
            parts.Sum(part => part.Pages.Length),
            [.. parts.SelectMany(part => part.Missing).Distinct(StringComparer.Ordinal)]);
    }

    /// <summary>What a sheet of paper leaves between its margins and above the foot.</summary>
    internal static (double Width, double Height) TypeArea(PaperSize size) => (size.WidthMm - (2 * Margin), size.HeightMm - (2 * Margin) - FootHeight);

    /// <summary>What the foot of a part says beside the number of the page.</summary>
    private sealed record Foot(string Left, string Middle);

    /// <summary>Draws parts, each for itself.</summary>
    private sealed record Press(PrintJob Job)
    {
        private PaperSize Paper { get; } = Job.Paper == BendSheet.Core.Sheet.Paper.A4 ? PaperSize.A4 : PaperSize.Letter;

        private int Covers => Job.Cover is null ? 0 : 1;

        /// <summary>The cover, if there is one, and a part for each line.</summary>
        public int Parts => Covers + Job.Lines.Length;

        public DrawnPart Part(int index, SyntaxWriter content) => index < Covers ? Cover(Job.Cover!, content) : Line(Job.Lines[index - Covers], content);

        private DrawnPart Cover(CoverContent cover, SyntaxWriter content)
        {
            var measure = new TextMeasure();
            var (width, height) = TypeArea(Paper);
            return Drawn(Upright(CoverPage.Pages(cover, measure, width, height)), "Cover", new(string.Empty, cover.Project), measure, content);
        }

        private DrawnPart Line(SheetContent line, SyntaxWriter content)
        {
            var measure = new TextMeasure();
            var (width, height) = TypeArea(Paper);
            var pages = Upright(LineSheet.Pages(line, measure, width, height)).Concat(FullSizePage.Of(line, Job.FullSize, Paper, measure));
            return Drawn(pages, line.Line, new($"sheet {line.Fingerprint}", line.Line), measure, content);
        }

        private IEnumerable<FullSizePage> Upright(IEnumerable<IReadOnlyList<(Block Block, double Top)>> pages) =>
            pages.Select(blocks => new FullSizePage(Paper, null, blocks));

        private DrawnPart Drawn(IEnumerable<FullSizePage> laidOut, string entry, Foot foot, TextMeasure measure, SyntaxWriter content)
        {
            var pages = laidOut.ToList();
            return DrawnPart.Of(entry, pages.Select((page, i) => (page.Size, page.Begins, Draw(page, i + 1))), measure, content, Job.Mirrored);

            Action<IInk, ReadingOrder> Draw(FullSizePage page, int number) => (ink, reading) =>
            {
                var canvas = new Canvas(ink, Margin, TypeArea(page.Size).Width, reading);
                foreach (var (block, top) in page.Blocks)
                {
                    block.DrawOn(canvas, Margin + top);
                }

                canvas.Decoration(() =>
                    DrawFoot(canvas, foot, FormattableString.Invariant($"page {number} of {pages.Count}"), page.Size.HeightMm - Margin, measure));
            };
        }

        private void DrawFoot(Canvas canvas, Foot foot, string number, double baseline, TextMeasure measure)
        {
            var style = TextStyle.Small;
            var left = style.Width(foot.Left) + 4;
            var beside = Job.Mirrored ? left + style.Width(MirroredWords) + 4 : left;
            var room = canvas.Width - (2 * Math.Max(beside, style.Width(number) + 4));
            canvas.Line(0, baseline - 4, canvas.Width, baseline - 4, Canvas.Thin);
            canvas.Text(foot.Left, style, 0, baseline);
            canvas.Text(measure.Wrap(foot.Middle, style, room)[0], style, canvas.Width / 2, baseline, Align.Centre);
            canvas.Text(number, style, canvas.Width, baseline, Align.Right);
            if (Job.Mirrored)
            {
                // For whoever holds the paper; on the board it is the only thing that cannot be read.
                canvas.Mirrored(readable => readable.Text(MirroredWords, style, canvas.Width - left, baseline, Align.Right));
            }
        }
    }
}
