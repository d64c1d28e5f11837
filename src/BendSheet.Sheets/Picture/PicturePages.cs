using BendSheet.Core.Picture;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.FullSize;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Picture;

/// <summary>
/// The pages of the car: picture and key on one page where they fit; a crowded picture lies across a page of its own and the key follows.
/// </summary>
internal static class PicturePages
{
    /// <summary>At most this many lines, hoses, parts and zones are readable in the width of an upright page.</summary>
    private const int MostUpright = 40;

    /// <summary>Below this the views are no picture any more.</summary>
    private const double LeastHeight = 70;

    /// <summary>Height for sentences that are only known once the labels are placed.</summary>
    private const double ForSentences = 8;

    /// <summary>Pages, in reading order; what the views cannot show whole follows as a diagram.</summary>
    public static IReadOnlyList<FullSizePage> Of(CarPicture picture, TextMeasure measure, PaperSize paper) => picture.Diagram is { } diagram
        ? [.. One(picture, measure, paper), .. One(diagram, measure, paper).Select(page => page with { Begins = null })]
        : One(picture, measure, paper);

    private static IReadOnlyList<FullSizePage> One(CarPicture picture, TextMeasure measure, PaperSize paper)
    {
        var area = TypeArea.Of(paper);
        List<Block> head = [.. Head(picture, measure, area.Width)];
        if (!picture.HasPlaces)
        {
            var diagram = DiagramDrawing.Of(picture, measure, area.Width, area.Height - Sum(head));
            return Pages(paper, [.. head, .. diagram.Blocks(), .. Below(picture, diagram, measure, area.Width)], area.Height);
        }

        var below = Sum(Below(picture, null, [], measure, area.Width));
        var room = area.Height - Sum(head) - below - ForSentences;
        if (room >= LeastHeight && ItemsOf(picture) <= MostUpright)
        {
            var views = ViewsDrawing.Of(picture, measure, area.Width, room);
            if (views is [{ IsWhole: true } whole])
            {
                return Pages(paper, [.. head, Views(picture, whole), .. Below(picture, views, measure, area.Width)], area.Height);
            }
        }

        var (across, wide) = (paper.Turned(), TypeArea.Of(paper.Turned()));
        List<Block> wideHead = [.. Head(picture, measure, wide.Width)];
        var alone = ViewsDrawing.Of(picture, measure, wide.Width, wide.Height - Sum(wideHead));
        return
        [
            .. alone.SelectMany((views, i) => Pages(across, [.. wideHead, Views(picture, views)], wide.Height)
                .Select(page => i == 0 ? page : page with { Begins = null })),
            .. Pages(paper, [.. Below(picture, alone, measure, area.Width)], area.Height).Select(page => page with { Begins = null }),
        ];
    }

    /// <summary>Everything below one another, of any height, for a drawing of its own.</summary>
    /// <param name="picture">What it shows.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of the drawing.</param>
    /// <param name="most">Height of the picture alone.</param>
    public static IReadOnlyList<Block> Alone(CarPicture picture, TextMeasure measure, double width, double most)
    {
        List<Block> head = [.. Head(picture, measure, width)];
        if (!picture.HasPlaces)
        {
            var diagram = DiagramDrawing.Of(picture, measure, width, most);
            return [.. head, .. diagram.Blocks(), .. Below(picture, diagram, measure, width)];
        }

        var views = ViewsDrawing.Of(picture, measure, width, most);
        return [.. head, .. views.Select(one => Views(picture, one)), .. Below(picture, views, measure, width)];
    }

    /// <summary>Whether a drawing of its own is better wide.</summary>
    public static bool IsCrowded(CarPicture picture) => picture.HasPlaces && ItemsOf(picture) > MostUpright;

    private static int ItemsOf(CarPicture picture) =>
        picture.Shown.Count() + picture.Parts.Count(part => part.Number > 0) + picture.Zones.Length;

    private static IReadOnlyList<FullSizePage> Pages(PaperSize size, IReadOnlyList<Block> blocks, double height) =>
    [
        .. PageFlow.Spread(blocks, _ => height).Select((page, i) => new FullSizePage(size, i == 0 ? PictureWords.Entry : null, page)),
    ];

    private static IEnumerable<Block> Head(CarPicture picture, TextMeasure measure, double width)
    {
        var words = PictureWords.Heading(picture);
        var style = TextStyle.Title.Fitting(measure.Printable(words), width);
        return
        [
            .. Paragraph.Of(words, style, measure, width).Select(line => line with { Role = Role.Title, KeepWithNext = true }),
            Block.Space(2) with { KeepWithNext = true },
        ];
    }

    private static Block Views(CarPicture picture, ViewsDrawing views) => new(views.Layout.Height, views.Draw)
    {
        Role = Role.Figure,
        Alternative = PictureWords.Alternative(picture, views.Layout.Denominator),
    };

    private static List<Block> Below(CarPicture picture, DiagramDrawing diagram, TextMeasure measure, double width) =>
        [.. Legend(picture, diagram.GoesOn, measure, width), .. Key(picture, diagram.Numbers, [], measure, width)];

    private static List<Block> Below(CarPicture picture, IReadOnlyList<ViewsDrawing> views, TextMeasure measure, double width) =>
        Below(
            picture,
            views.SelectMany(one => one.Numbers).ToHashSet(),
            views switch
            {
                [{ IsWhole: true }] => [],
                [_] => [PictureWords.Crowded],
                _ => [PictureWords.Crowded, PictureWords.DrawnAgain],
            },
            measure,
            width);

    private static List<Block> Below(
        CarPicture picture, IReadOnlySet<int>? numbers, IEnumerable<string> remarks, TextMeasure measure, double width) =>
        [.. Legend(picture, goesOn: false, measure, width), .. Key(picture, numbers, remarks, measure, width)];

    private static IEnumerable<Block> Legend(CarPicture picture, bool goesOn, TextMeasure measure, double width) =>
        [Block.Space(2), .. PictureKey.Legend(picture, goesOn, measure, width), Block.Space(1)];

    private static List<Block> Key(
        CarPicture picture, IReadOnlySet<int>? numbers, IEnumerable<string> remarks, TextMeasure measure, double width)
    {
        List<Block> blocks = [];
        if (!picture.NotDrawn.IsEmpty)
        {
            blocks.Add(Paragraph.Heading(PictureWords.NotDrawnHeading));
            blocks.AddRange(picture.NotDrawn.SelectMany(sentence => Paragraph.Of(sentence, TextStyle.Body, measure, width)));
            blocks.Add(Block.Space(1));
        }

        blocks.Add(Paragraph.Heading(PictureWords.KeyHeading));
        blocks.AddRange(PictureKey.Table(picture, measure, width));
        string[] sentences =
        [
            PictureWords.ByNumber(picture, numbers), .. remarks, PictureWords.KeptClear(picture),
        ];
        foreach (var sentence in sentences)
        {
            if (sentence.Length > 0)
            {
                blocks.Add(Block.Space(1.5));
                blocks.AddRange(Paragraph.Of(sentence, TextStyle.Body, measure, width));
            }
        }

        return blocks;
    }

    private static double Sum(IEnumerable<Block> blocks) => blocks.Sum(block => block.Height);
}
