namespace BendSheet.Sheets.Shape;

/// <summary>A view's place on paper.</summary>
/// <param name="Left">Of its cell, in millimetres from the left of the type area.</param>
/// <param name="Top">Of its cell, from the top of the block.</param>
/// <param name="Width">Of its cell.</param>
/// <param name="Height">Of its cell, without the caption.</param>
internal sealed record ViewCell(double Left, double Top, double Width, double Height);

/// <summary>Four views to one scale, arranged so that the scale is the largest that the room allows.</summary>
/// <param name="Denominator">The scale is 1 : this.</param>
/// <param name="Cells">In the order of <see cref="Projection.All"/>.</param>
/// <param name="Height">Of the whole, captions included.</param>
internal sealed record ViewLayout(double Denominator, IReadOnlyList<ViewCell> Cells, double Height)
{
    /// <summary>Room around a drawing for its labels.</summary>
    public const double Margin = 7;

    /// <summary>Under each view.</summary>
    public const double CaptionHeight = 7;

    /// <summary>No cell is narrower than its caption needs.</summary>
    private const double LeastCell = 40;

    /// <summary>Scales that a person can convert in the head.</summary>
    private static readonly double[] Denominators =
        [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 150, 200, 300, 400, 500, 1000, 2000, 5000, 10000, 20000, 50000];

    /// <summary>Rows of views, by their index.</summary>
    private static readonly int[][][] Arrangements =
    [
        [[0, 1, 2, 3]],
        [[0], [1, 2, 3]],
        [[0, 1], [2, 3]],
        [[0, 1, 2], [3]],
        [[0, 3], [1], [2]],
        [[0], [1], [2], [3]],
    ];

    /// <summary>The best arrangement.</summary>
    /// <param name="sizes">Of each view, in the shape's own millimetres.</param>
    /// <param name="width">Of the type area.</param>
    /// <param name="height">That may be used.</param>
    public static ViewLayout Of(IReadOnlyList<(double Width, double Height)> sizes, double width, double height)
    {
        // An empty cell always fits, so that a scale is found for whatever was typed.
        for (var i = 0; ; i++)
        {
            var denominator = i < Denominators.Length ? Denominators[i] : Denominators[^1] * Math.Pow(10, i + 1 - Denominators.Length);
            foreach (var rows in Arrangements)
            {
                if (Arranged(sizes, rows, denominator, width, height) is { } layout)
                {
                    return layout;
                }
            }
        }
    }

    private static ViewLayout? Arranged(
        IReadOnlyList<(double Width, double Height)> sizes, int[][] rows, double denominator, double width, double height)
    {
        var cells = new ViewCell[sizes.Count];
        var top = 0.0;
        foreach (var row in rows)
        {
            var widths = row.Select(view => Math.Max((sizes[view].Width / denominator) + (2 * Margin), LeastCell)).ToArray();
            var rowHeight = row.Max(view => sizes[view].Height / denominator) + (2 * Margin);
            var spare = width - widths.Sum();
            if (spare < 0 || top + rowHeight + CaptionHeight > height)
            {
                return null;
            }

            var left = 0.0;
            for (var i = 0; i < row.Length; i++)
            {
                var cellWidth = widths[i] + (spare / row.Length);
                cells[row[i]] = new(left, top, cellWidth, rowHeight);
                left += cellWidth;
            }

            top += rowHeight + CaptionHeight;
        }

        return new(denominator, cells, top);
    }
}
