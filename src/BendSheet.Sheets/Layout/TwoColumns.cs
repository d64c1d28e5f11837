using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Layout;

/// <summary>
/// Running text side by side in two columns: its lines are as long as the eye likes to follow, and a short last line or a heading wastes
/// half as much of the page.
/// </summary>
internal sealed class TwoColumns
{
    private const double Gutter = 5;

    /// <summary>With less room than this on a page the columns begin the next one.</summary>
    private const double LeastBegun = 40;

    /// <summary>By how much the columns may be longer for the second one to begin with a heading.</summary>
    private const double ForAHeading = 15;

    private readonly IReadOnlyList<Block> _flowing;
    private readonly double _columnWidth;

    /// <summary>Sets the text.</summary>
    /// <param name="sections">Each gives its blocks, in reading order, for the width of a column.</param>
    /// <param name="width">Of the type area.</param>
    public TwoColumns(IReadOnlyList<Func<double, IEnumerable<Block>>> sections, double width)
    {
        _columnWidth = (width - Gutter) / 2;
        _flowing = [.. sections.SelectMany(section => section(_columnWidth))];
        LeastHeight = Parted(_flowing, atHeading: false).Height;
        var atHeading = Parted(_flowing, atHeading: true).Height;
        Height = atHeading <= LeastHeight + ForAHeading ? atHeading : LeastHeight;
    }

    /// <summary>In which all of it stands well on one page.</summary>
    public double Height { get; }

    /// <summary>In which all of it stands on one page where every millimetre counts.</summary>
    public double LeastHeight { get; }

    /// <summary>A block for each page.</summary>
    /// <param name="left">What is left of the page that the first one may begin on.</param>
    /// <param name="page">Height of the pages that follow.</param>
    public IEnumerable<Block> Blocks(double left, double page)
    {
        if (LeastHeight <= left)
        {
            return [SideBySide(Balanced(_flowing, left))];
        }

        var begins = left >= LeastBegun;
        var columns = PageFlow.Spread(_flowing, column => begins && column < 2 ? left : page)
            .Select(column => column.Select(placed => placed.Block).ToList()).ToList();
        var pairs = columns.Chunk(2).ToList();

        // A long paragraph was cut where its column ended; in two halves it may be longer than the page.
        var room = begins && pairs.Count == 1 ? left : page;
        var balanced = Balanced([.. pairs[^1].SelectMany(blocks => blocks)], room);
        return pairs.SkipLast(1).Append(balanced.Max(HeightOf) <= room ? balanced : pairs[^1]).Select(SideBySide);
    }

    /// <summary>In two; beginning the second one with a heading where that is hardly longer and there is room for it.</summary>
    private static IReadOnlyList<Block>[] Balanced(IReadOnlyList<Block> blocks, double room)
    {
        var least = Parted(blocks, atHeading: false);
        var atHeading = Parted(blocks, atHeading: true);
        var count = atHeading.Height <= Math.Min(room, least.Height + ForAHeading) ? atHeading.Count : least.Count;
        return [[.. blocks.Take(count)], [.. blocks.Skip(count)]];
    }

    /// <summary>
    /// How many blocks the first of two columns has so that the longer one is as short as can be; nothing is parted from its heading or its
    /// own first line.
    /// </summary>
    /// <param name="blocks">Of both.</param>
    /// <param name="atHeading">The second one begins with a heading; the height is infinite where no heading can begin it.</param>
    private static (int Count, double Height) Parted(IReadOnlyList<Block> blocks, bool atHeading)
    {
        var whole = HeightOf(blocks);
        var best = (Count: blocks.Count, Height: atHeading ? double.PositiveInfinity : whole);
        var above = 0.0;
        for (var i = 1; i < blocks.Count; i++)
        {
            above += blocks[i - 1].Height;
            var height = Math.Max(above, whole - above);
            if (height < best.Height
                && !blocks[i - 1].KeepWithNext
                && !blocks[i].Continues
                && (!atHeading || blocks[i].Role == Role.Heading))
            {
                best = (i, height);
            }
        }

        return best;
    }

    private static double HeightOf(IReadOnlyList<Block> blocks) => blocks.Sum(block => block.Height);

    private Block SideBySide(IReadOnlyList<IReadOnlyList<Block>> columns) => new(
        columns.Max(HeightOf),
        (canvas, top) =>
        {
            for (var i = 0; i < columns.Count; i++)
            {
                var column = canvas.MovedRight(i * (_columnWidth + Gutter));
                var y = top;
                foreach (var block in columns[i])
                {
                    block.DrawOn(column, y);
                    y += block.Height;
                }
            }
        })
    {
        Role = Role.Nothing,
    };
}
