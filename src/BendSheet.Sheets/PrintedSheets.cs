using System.Collections.Immutable;
using BendSheet.Core.Commissioning;
using BendSheet.Core.Picture;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.FullSize;
using BendSheet.Sheets.Layout;
using BendSheet.Sheets.Picture;
using BendSheet.Sheets.Steps;
using BendSheet.Sheets.Tags;

namespace BendSheet.Sheets;

/// <summary>A cover and the sheets of some lines as one PDF.</summary>
/// <param name="Pdf">The whole file; the same bytes for the same content.</param>
/// <param name="Job">What was asked for.</param>
/// <param name="Pages">How many pages.</param>
/// <param name="MissingCharacters">Characters that the font lacks, printed as a stand-in, each as it reads in a sentence.</param>
public sealed record PrintedSheets(ReadOnlyMemory<byte> Pdf, PrintJob Job, int Pages, ImmutableArray<string> MissingCharacters)
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

        // The parts do not depend on one another, so they are drawn in parallel.
        Parallel.For(0, drawn.Length, i => drawn[i] = parts.Drawn(i));
        return new(
            press.Bind([.. drawn.Select(one => one.Part)], job.Title.Length > 0 ? job.Title : SheetWords.Untitled),
            job,
            drawn.Sum(one => one.Part.PageCount),
            [.. drawn.SelectMany(one => one.Missing).Distinct(StringComparer.Ordinal)]);
    }

    /// <summary>What the foot of a part says beside the number of the page.</summary>
    private sealed record Foot(string Left, string Middle);

    /// <summary>What begins a page of its own and has an entry in the outline, each drawn on its own.</summary>
    private sealed class Parts
    {
        private readonly PrintJob _job;
        private readonly IPress _press;
        private readonly PaperSize _paper;
        private readonly TypeArea _area;
        private readonly List<Func<TextMeasure, IDrawnPart>> _all = [];

        public Parts(PrintJob job, IPress press)
        {
            (_job, _press) = (job, press);
            _paper = job.Paper == Paper.A4 ? PaperSize.A4 : PaperSize.Letter;
            _area = TypeArea.Of(_paper);
            if (job.Cover is { } cover)
            {
                _all.Add(measure => Cover(cover, measure));
            }
            else if (job.Car is { } car)
            {
                _all.Add(measure => Drawn(
                    PicturePages.Of(car, measure, _paper).Select(page => page with { Begins = null }),
                    PictureWords.Entry,
                    new(string.Empty, car.Project),
                    measure));
            }

            _all.AddRange(job.Lines.Select<SheetContent, Func<TextMeasure, IDrawnPart>>(line => measure => Line(line, measure)));
            if (job.Commissioning is { } commissioning)
            {
                _all.Add(measure => Commissioning(commissioning, measure));
            }

            if (job.Tags is { } tags)
            {
                _all.Add(measure => Tags(tags, measure));
            }
        }

        public int Count => _all.Count;

        /// <summary>A part, and the characters in it that the font lacks.</summary>
        public (IDrawnPart Part, IReadOnlyList<string> Missing) Drawn(int index)
        {
            var measure = new TextMeasure();
            return (_all[index](measure), measure.Missing);
        }

        private IDrawnPart Cover(CoverContent cover, TextMeasure measure) => Drawn(
            Upright(CoverPage.Pages(cover, measure, _area.Width, _area.Height))
                .Concat(_job.Car is { } car ? PicturePages.Of(car, measure, _paper) : []),
            CoverWords.Entry,
            new(string.Empty, cover.Project),
            measure);

        private IDrawnPart Line(SheetContent line, TextMeasure measure)
        {
            var pages = Upright(LineSheet.Pages(line, _job.Lines.Where(line.IsTwinOf), measure, _area.Width, _area.Height))
                .Concat(line.Steps.IsEmpty ? [] : FullSizePage.Part(StepWords.Part, line, _paper, measure, StepPages.Blocks))
                .Concat(FullSizePage.Of(line, _job.FullSize, _paper, measure));
            return Drawn(pages, line.Line, new(SheetWords.Fingerprint(line), line.Line), measure);
        }

        private IDrawnPart Commissioning(CommissioningContent content, TextMeasure measure) => Drawn(
            Upright(CommissioningPage.Pages(content, measure, _area.Width, _area.Height)),
            content.Entry,
            new(string.Empty, content.Heading),
            measure);

        private IDrawnPart Tags(TagSheet tags, TextMeasure measure) => Drawn(
            Upright(TagPages.Pages(tags, measure, _area.Width, _area.Height)),
            TagWords.Entry,
            new(string.Empty, tags.Project),
            measure);

        private IEnumerable<FullSizePage> Upright(IEnumerable<IReadOnlyList<(Block Block, double Top)>> pages) =>
            pages.Select(blocks => new FullSizePage(_paper, null, blocks));

        private IDrawnPart Drawn(IEnumerable<FullSizePage> laidOut, string entry, Foot foot, TextMeasure measure)
        {
            var pages = laidOut.ToList();
            var ahead = pages.Select((page, i) => new PageAhead(page.Size, page.Begins, drawn => Draw(drawn, page, i + 1))).ToList();
            return _press.Draw(measure.Printable(entry), ahead, _job.Mirrored);

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
            var beside = _job.Mirrored ? left + style.Width(SheetWords.Mirrored) + 4 : left;
            var room = canvas.Width - (2 * Math.Max(beside, style.Width(number) + 4));
            canvas.Line(0, baseline - 4, canvas.Width, baseline - 4, Canvas.Thin);
            canvas.Text(foot.Left, style, 0, baseline);
            canvas.Text(measure.Wrap(foot.Middle, style, room)[0], style, canvas.Width / 2, baseline, Align.Centre);
            canvas.Text(number, style, canvas.Width, baseline, Align.Right);
            if (_job.Mirrored)
            {
                // For whoever holds the paper; on the board this word is the only thing that reads the wrong way round.
                canvas.Mirrored(readable => readable.Text(SheetWords.Mirrored, style, canvas.Width - left, baseline, Align.Right));
            }
        }
    }
}
