using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Elements;
using BendSheet.Sheets.Layout;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets;

/// <summary>
/// The parts of one line's sheet, in reading order. One page wherever it fits; or else the first page has what is wanted at the tool, up to
/// the order of work, with the cautions where there is room for them, and the next one the finished shape, large, what to check on it, and
/// the cautions that are not said yet.
/// </summary>
internal sealed class LineSheet
{
    /// <summary>The views never shrink below the least to save a page, nor grow beyond what helps.</summary>
    private const double LeastViews = 27;
    private const double MostViews = 110;

    /// <summary>With less than this the columns below need not begin with a heading: what is read from the views is worth more.</summary>
    private const double LargeViews = 60;

    /// <summary>With less than this the cautions run on, which makes room for the views.</summary>
    private const double FairViews = 50;

    /// <summary>
    /// The pictorial view and the longest of the flat ones are at least this long, if they can be: drawn shorter, a tube of four bends
    /// is hidden by its own numbers.
    /// </summary>
    private const double LeastLength = 15;

    /// <summary>Each bend beyond four has a number of its own beside the pictorial view, which has to be longer then.</summary>
    private const int BendsInLeastPicture = 4;
    private const double LongerForABend = 5;

    /// <summary>With more bends than this the picture needs more height for each, or their numbers crowd it.</summary>
    private const int BendsInLeast = 5;
    private const double MoreForABend = 12;

    /// <summary>On a page shared with little else the views are at least this high; with less room they begin the next page.</summary>
    private const double LeastViewsOfSeveralPages = 75;
    private const double MostViewsOfSeveralPages = 235;

    /// <summary>This much of a page, in millimetres, is not left blank to begin the next one.</summary>
    private const double HalfBlank = 90;

    /// <summary>In millimetres: the checks stand last only where that saves more than this of the page.</summary>
    private const double WorthAnotherOrder = 5;

    private readonly double _width;
    private readonly double _height;
    private readonly double _leastViews;
    private readonly double _leastPicture;
    private readonly ShapeViews _views;
    private readonly IReadOnlyList<Block> _before;
    private readonly IReadOnlyList<Block> _first;
    private readonly TwoColumns _checks;

    /// <summary>All that follows the views on one page: with every caution on lines of its own, and shorter, run on. Made when asked for.
    /// </summary>
    private readonly IEnumerable<TwoColumns> _after;
    private readonly Block _continued;

    private LineSheet(SheetContent sheet, TextMeasure measure, double width, double height)
    {
        (_width, _height) = (width, height);
        _continued = Title.Continued(sheet, measure, width);
        _views = new(sheet, measure);
        _leastViews = LeastViews + (MoreForABend * Math.Max(0, sheet.Rows.Length - BendsInLeast));
        _leastPicture = LeastLength + (LongerForABend * Math.Max(0, sheet.Rows.Length - BendsInLeastPicture));
        _before =
        [
            .. Title.Of(sheet, measure, width),
            .. ReadFirst(sheet, measure, width),
            .. StripDrawing.Of(sheet, measure, width),
            .. Clips(sheet, measure, width),
            .. BendTable.Of(sheet, measure, width),
        ];
        Func<double, IEnumerable<Block>>[] order =
        [
            column =>
            [
                Paragraph.Heading(SheetWords.Order, column),
                .. sheet.Order.SelectMany(step => Paragraph.Step(step, measure, column)),
            ],
        ];
        IEnumerable<Block> Checks(double column) => CheckList.Of(sheet, measure, column);
        IEnumerable<Block> Cautions(double column) => CautionList.Of(measure, column);
        var withCautions = new TwoColumns([.. order, Cautions], width);
        var besides = PageFlow.Spread(_before, HeightOf).Count == 1 && withCautions.LeastHeight <= Left(_before);
        _first = [.. _before, .. (besides ? withCautions : new(order, width)).Blocks(Left(_before), HeightOf(1))];
        _checks = new(besides ? [Checks] : [Checks, Cautions], width);
        _after = new Func<double, IEnumerable<Block>>[] { Cautions, column => CautionList.RunOn(measure, column) }.Select(After);

        // The checks are not parted: between two cautions the columns may end more evenly.
        TwoColumns After(Func<double, IEnumerable<Block>> cautions)
        {
            var last = new TwoColumns([.. order, Checks, cautions], width);
            var even = new TwoColumns([.. order, cautions, Checks], width);
            return even.LeastHeight + WorthAnotherOrder < last.LeastHeight ? even : last;
        }
    }

    /// <summary>The pages of a sheet.</summary>
    /// <param name="sheet">What it says.</param>
    /// <param name="twins">Sheets of its mirror image, whose shape is drawn as large.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of the type area.</param>
    /// <param name="height">Of the type area.</param>
    public static IReadOnlyList<IReadOnlyList<(Block Block, double Top)>> Pages(
        SheetContent sheet, IEnumerable<SheetContent> twins, TextMeasure measure, double width, double height)
    {
        var own = new LineSheet(sheet, measure, width, height);
        var room = own.Room();
        var rooms = twins.Select(twin => new LineSheet(twin, measure, width, height).Room()).Append(room).ToList();
        var blocks = rooms.TrueForAll(one => one.After is not null)
            ? own.OnOnePage(rooms.Min(one => one.Height), room.After!)
            : own.OnSeveral(rooms.Select(one => one.After is null ? one.Height : double.PositiveInfinity).Min());
        return [.. PageFlow.Spread(blocks, own.HeightOf).Select((page, i) => i == 0 ? page : Under(own._continued, page))];
    }

    /// <summary>
    /// What the views may take, and what stands below them if all of the sheet is on one page then: shorter where the views need the room.
    /// </summary>
    private (TwoColumns? After, double Height) Room()
    {
        (TwoColumns? After, double Height) room = (null, 0);
        var left = Left(_before);
        foreach (var after in PageFlow.Spread(_before, HeightOf).Count == 1 ? _after : [])
        {
            var onOne = Math.Min(left - (left - after.Height >= LargeViews ? after.Height : after.LeastHeight), MostViews);
            if (onOne >= _leastViews && IsClear(onOne))
            {
                room = (after, onOne);
            }

            if (room.Height >= FairViews)
            {
                break;
            }
        }

        return room.After is null ? (null, ViewsOfSeveral()) : room;
    }

    /// <summary>Nothing is a speck, and bends need not share numbers in the picture from which the piece is bent, to save a page.</summary>
    private bool IsClear(double views)
    {
        var (drawn, most) = (_views.LengthsAt(_width, views), _views.LengthsAt(_width, MostViews));
        return drawn.Picture >= Math.Min(_leastPicture, most.Picture) && drawn.Flat >= Math.Min(LeastLength, most.Flat)
            && _views.At(_width, views).Labels is var labels
            && (_views.NumbersAllBends(labels) || _views.At(_width, MostViews).Labels <= labels);
    }

    private IReadOnlyList<Block> OnOnePage(double views, TwoColumns after)
    {
        Block[] upper = [.. _before, .. _views.At(_width, views).Blocks];
        return [.. upper, .. after.Blocks(Left(upper), HeightOf(1))];
    }

    private IReadOnlyList<Block> OnSeveral(double views)
    {
        var shape = _views.At(_width, views).Blocks;
        if (ShapeLast)
        {
            return [.. _first, .. _checks.Blocks(Left(_first), HeightOf(1)), .. shape];
        }

        Block[] upper = [.. _first, .. shape];
        return [.. upper, .. _checks.Blocks(Left(upper), HeightOf(1))];
    }

    /// <summary>
    /// What checks and cautions leave of the page that the order of work ends on; or all that is left of it, where it would be half blank
    /// otherwise; or else what they leave of the next one, or all of that.
    /// </summary>
    private double ViewsOfSeveral()
    {
        var left = Left(_first);
        var here = left - _checks.Height;
        return Math.Min(
            here >= LeastViewsOfSeveralPages ? here
            : ShapeLast ? HeightOf(1)
            : left >= HalfBlank ? left
            : HeightOf(1) - _checks.Height, MostViewsOfSeveralPages);
    }

    /// <summary>
    /// Checks and cautions fill the page that the order of work ends on, and the shape has the next one to itself: after the shape, they
    /// would leave the earlier page half blank.
    /// </summary>
    private bool ShapeLast =>
        Left(_first) is var left && left >= HalfBlank && left >= _checks.Height && left - _checks.Height < LeastViewsOfSeveralPages;

    private double HeightOf(int page) => page == 0 ? _height : _height - _continued.Height;

    /// <summary>Height left on the last page once the blocks are spread over pages.</summary>
    private double Left(IReadOnlyList<Block> blocks)
    {
        var pages = PageFlow.Spread(blocks, HeightOf);
        var (last, top) = pages[^1][^1];
        return HeightOf(pages.Count - 1) - top - last.Height;
    }

    private static IEnumerable<Block> ReadFirst(SheetContent sheet, TextMeasure measure, double width) => sheet.ReadFirst.IsEmpty
        ? []
        :
        [
            Paragraph.Heading(SheetWords.ReadFirst),
            .. sheet.ReadFirst.SelectMany(remark => Paragraph.Remark("!", remark, TextStyle.Body, measure, width)),
        ];

    /// <summary>Clips are marked together with the bends.</summary>
    private static IEnumerable<Block> Clips(SheetContent sheet, TextMeasure measure, double width) =>
        sheet.Clips.IsEmpty ? [] : Paragraph.Of(SheetWords.Clips(sheet), TextStyle.Body, measure, width);

    private static IReadOnlyList<(Block Block, double Top)> Under(Block head, IReadOnlyList<(Block Block, double Top)> blocks) =>
        [(head, 0), .. blocks.Select(placed => (placed.Block, placed.Top + head.Height))];
}
