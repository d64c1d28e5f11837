using BendSheet.Sheets.Pdf;

namespace BendSheet.Sheets.Layout;

/// <summary>
/// Running text side by side in two columns: its lines are as long as the eye likes to follow, and a short last line or a heading wastes half
/// as much of the page.
/// </summary>
internal sealed class TwoColumns
{
    private const double Gutter = 5;

    /// <summary>With less room than this on a page the columns begin the next one.</summary>
    private const double LeastBegun = 25;

    private readonly IReadOnlyList<Block> _flowing;
    private readonly double _columnWidth;
    private readonly Block _together;

    /// <summary>Sets the text.</summary>
    /// <param name="sections">Each gives its blocks, in reading order, for the width of a column.</param>
    /// <param name="width">Of the type area.</param>
    public TwoColumns(IReadOnlyList<Func<double, IEnumerable<Block>>> sections, double width)
    {
        _columnWidth = (width - Gutter) / 2;
        _flowing = [.. sections.SelectMany(section => section(_columnWidth))];
        _together = SideBySide(Balanced(_flowing));
    }

    /// <summary>The least height in which all of it stands on one page.</summary>
    public double Height => _together.Height;

    /// <summary>A block for each page.</summary>
    /// <param name="left">What is left of the page that the first one may begin on.</param>
    /// <param name="page">Height of the pages that follow.</param>
    public IEnumerable<Block> Blocks(double left, double page)
    {
        if (Height <= left)
        {
            return [_together];
        }

        var columns = PageFlow.Spread(_flowing, column => left >= LeastBegun && column < 2 ? left : page)
            .Select(column => column.Select(placed => placed.Block).ToList()).ToList();
        return columns.Chunk(2).Select((pair, i) => SideBySide(columns.Count - (2 * i) > 2 ? pair : Balanced([.. pair.SelectMany(blocks => blocks)])));
    }

    /// <summary>In two, the longer one as short as can be; nothing is parted from its heading or its own first line.</summary>
    private static IReadOnlyList<Block>[] Balanced(IReadOnlyList<Block> blocks)
    {
        var whole = HeightOf(blocks);
        var best = (Count: blocks.Count, Height: whole);
        var above = 0.0;
        for (var i = 1; i < blocks.Count; i++)
        {
            above += blocks[i - 1].Height;
            var height = Math.Max(above, whole - above);
            if (height < best.Height && !blocks[i - 1].KeepWithNext && !blocks[i].Continues)
            {
                best = (i, height);
            }
        }

        return [[.. blocks.Take(best.Count)], [.. blocks.Skip(best.Count)]];
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
