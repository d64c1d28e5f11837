namespace BendSheet.Sheets.Elements;

/// <summary>
/// Labels side by side in one row along a line, in the line's order, each as near to its own place as the others let it. Leader lines from
/// place to label then never cross.
/// </summary>
internal static class LabelRow
{
    /// <summary>Middles of the labels, in the order given.</summary>
    /// <param name="places">Where the middle of each belongs, none further to the left than the one before.</param>
    /// <param name="pitch">From middle to middle at least, and half of it to both sides; all labels together fit into the width.</param>
    /// <param name="width">Of the row.</param>
    public static IReadOnlyList<double> Spread(IReadOnlyList<double> places, double pitch, double width)
    {
        // Labels that push each other form a block whose middle lies over the middle of their places: the least squares of all moves.
        var blocks = new List<(double Sum, int Count)>();
        double First((double Sum, int Count) block) =>
            Math.Clamp(
                (block.Sum / block.Count) - ((block.Count - 1) * pitch / 2),
                pitch / 2,
                Math.Max(pitch / 2, width - ((block.Count - 0.5) * pitch)));
        foreach (var place in places)
        {
            blocks.Add((place, 1));
            while (blocks.Count > 1 && First(blocks[^2]) + (blocks[^2].Count * pitch) > First(blocks[^1]))
            {
                blocks[^2] = (blocks[^2].Sum + blocks[^1].Sum, blocks[^2].Count + blocks[^1].Count);
                blocks.RemoveAt(blocks.Count - 1);
            }
        }

        return [.. blocks.SelectMany(block => Enumerable.Range(0, block.Count).Select(i => First(block) + (i * pitch)))];
    }
}
