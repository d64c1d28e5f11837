namespace BendSheet.Sheets.FullSize;

/// <summary>
/// Labels in a row, each as near as can be to what it belongs to, in the same order, apart from one another and inside the row.
/// </summary>
internal static class SpreadLabels
{
    /// <summary>The middles of the labels; null where they are wider together than the row.</summary>
    /// <param name="labels">Where the middle of each belongs, from left to right, and how wide it is.</param>
    /// <param name="width">Of the row.</param>
    public static double[]? Middles(IReadOnlyList<(double X, double Width)> labels, double width)
    {
        if (labels.Sum(label => label.Width) > width)
        {
            return null;
        }

        // Labels that would meet stand side by side as one group, around the mean of where they belong.
        var groups = new List<(double Left, double Width, int Count, double Wish)>();
        foreach (var (x, labelWidth) in labels)
        {
            var group = Placed(labelWidth, 1, x - (labelWidth / 2));
            while (groups.Count > 0 && groups[^1].Left + groups[^1].Width > group.Left)
            {
                var before = groups[^1];
                groups.RemoveAt(groups.Count - 1);
                group = Placed(
                    before.Width + group.Width, before.Count + group.Count, before.Wish + group.Wish - (group.Count * before.Width));
            }

            groups.Add(group);
        }

        var middles = new double[labels.Count];
        var next = 0;
        foreach (var group in groups)
        {
            var left = group.Left;
            for (var i = 0; i < group.Count; i++, next++)
            {
                middles[next] = left + (labels[next].Width / 2);
                left += labels[next].Width;
            }
        }

        return middles;

        // Wish: where each label would have the left edge of its group, summed up.
        (double Left, double Width, int Count, double Wish) Placed(double groupWidth, int count, double wish) =>
            (Math.Clamp(wish / count, 0, Math.Max(0, width - groupWidth)), groupWidth, count, wish);
    }
}
