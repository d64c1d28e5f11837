namespace BendSheet.Sheets.Labels;

/// <summary>
/// Labels side by side in one row along a line, in the line's order, each as near to its own place as the others let it. Leader lines from
/// place to label then never cross.
/// </summary>
internal static class SideBySide
{
    /// <summary>The middles of the labels, in the order given; they go beyond the row's end only where they are wider together.</summary>
    /// <param name="labels">Where the middle of each belongs, from left to right, and how wide it is.</param>
    /// <param name="width">Of the row.</param>
    public static IReadOnlyList<double> Middles(IReadOnlyList<(double X, double Width)> labels, double width)
    {
        // Labels that push each other form a group around the mean of where they belong: the least squares of all moves.
        var groups = new List<(double Left, double Width, int Count, double Wish)>();
        foreach (var (x, labelWidth) in labels)
        {
            var group = Group(labelWidth, 1, x - (labelWidth / 2));
            while (groups.Count > 0 && groups[^1].Left + groups[^1].Width > group.Left)
            {
                var before = groups[^1];
                groups.RemoveAt(groups.Count - 1);
                var wish = before.Wish + group.Wish - (group.Count * before.Width);
                group = Group(before.Width + group.Width, before.Count + group.Count, wish);
            }

            groups.Add(group);
        }

        var middles = new List<double>(labels.Count);
        foreach (var (groupLeft, _, count, _) in groups)
        {
            var left = groupLeft;
            foreach (var (_, labelWidth) in labels.Skip(middles.Count).Take(count))
            {
                middles.Add(left + (labelWidth / 2));
                left += labelWidth;
            }
        }

        return middles;

        // Wish: where each label would have the left edge of its group, summed up.
        (double Left, double Width, int Count, double Wish) Group(double groupWidth, int count, double wish) =>
            (Math.Clamp(wish / count, 0, Math.Max(0, width - groupWidth)), groupWidth, count, wish);
    }
}
