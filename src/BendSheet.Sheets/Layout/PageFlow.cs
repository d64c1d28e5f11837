using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Layout;

/// <summary>Spreads blocks over pages: nothing is cut off, nothing is printed over.</summary>
internal static class PageFlow
{
    /// <summary>The blocks of each page, those repeated included, each with its distance from the top of the type area.</summary>
    /// <param name="blocks">In reading order.</param>
    /// <param name="heightOf">Of the type area of a page, by its index.</param>
    public static IReadOnlyList<IReadOnlyList<(Block Block, double Top)>> Spread(IReadOnlyList<Block> blocks, Func<int, double> heightOf)
    {
        var pages = new List<IReadOnlyList<(Block, double)>>();
        var page = new List<(Block, double)>();
        var used = 0.0;
        for (var i = 0; i < blocks.Count; i++)
        {
            var block = blocks[i];
            if (page.Count > 0 && used + HeightWithFollowers(blocks, i) > heightOf(pages.Count))
            {
                if (block.IsSpace)
                {
                    // White space at the foot of a page is there already.
                    continue;
                }

                pages.Add(page);
                page = [];
                used = 0;
                if (block.Repeated is { } repeated)
                {
                    page.Add((repeated with { Role = Role.Decoration }, 0));
                    used = repeated.Height;
                }
            }

            page.Add((block, used));
            used += block.Height;
        }

        pages.Add(page);
        return pages;
    }

    /// <summary>A heading needs room for itself and what it is the heading of.</summary>
    private static double HeightWithFollowers(IReadOnlyList<Block> blocks, int index)
    {
        var height = blocks[index].Height;
        while (blocks[index].KeepWithNext && index + 1 < blocks.Count)
        {
            index++;
            height += blocks[index].Height;
        }

        return height;
    }
}
