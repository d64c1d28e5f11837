namespace BendSheet.Sheets.Shape;

/// <summary>A view's place on paper.</summary>
/// <param name="Left">Of its cell, in millimetres from the left of the type area.</param>
/// <param name="Top">Of its cell, from the top of the block.</param>
/// <param name="Width">Of its cell.</param>
/// <param name="Height">Of its cell, without the caption.</param>
internal sealed record ViewCell(double Left, double Top, double Width, double Height);

/// <summary>
/// The pictorial view, from which the piece is bent, as large as the room allows, and three flat views to one scale of their own, which
/// is never larger.
/// </summary>
/// <param name="Pictorial">The pictorial view's scale is 1 : this.</param>
/// <param name="Flat">The flat views' scale is 1 : this.</param>
/// <param name="Cells">Pictorial view, then the flat ones.</param>
/// <param name="Height">Of the whole, captions included.</param>
internal sealed record ViewLayout(double Pictorial, double Flat, IReadOnlyList<ViewCell> Cells, double Height)
{
    /// <summary>Room around a drawing for its labels: a label and its distance from the tube.</summary>
    public const double Margin = 6;

    /// <summary>Under each view.</summary>
    public const double CaptionHeight = 4.7;

    /// <summary>No cell is narrower than its caption needs, the pictorial view's with the axis mark.</summary>
    private const double LeastFlat = 38;
    private const double LeastPictorial = 62;

    /// <summary>By how many steps of scale the flat views may give way to the pictorial one.</summary>
    private const int MostSteps = 4;

    /// <summary>The smaller the better: a step more for the picture is worth up to two for the flat views.</summary>
    public double Worth => (2 * Math.Log(Pictorial)) + Math.Log(Flat);

    /// <summary>The flat views in rows, by their place among all views.</summary>
    private static readonly int[][][] FlatRows = [[[1, 2, 3]], [[1], [2, 3]], [[1, 2], [3]], [[1, 3], [2]], [[1], [2], [3]]];

    /// <summary>The best arrangement.</summary>
    /// <param name="sizes">Of each view, in the shape's own millimetres, the pictorial one first.</param>
    /// <param name="width">Of the type area.</param>
    /// <param name="height">That may be used.</param>
    /// <param name="labelRoom">Around the pictorial view, beyond that which every view has.</param>
    public static ViewLayout Of(IReadOnlyList<(double Width, double Height)> sizes, double width, double height, double labelRoom = 0)
    {
        // An empty cell always fits, so that a scale is found for whatever was typed.
        var pictorial = 0;
        ViewLayout? layout;
        while ((layout = At(pictorial, pictorial)) is null)
        {
            pictorial++;
        }

        var best = layout;
        for (var (flat, last) = (pictorial, pictorial + MostSteps); pictorial > 0 && flat <= last;)
        {
            if (At(pictorial - 1, flat) is { } larger)
            {
                pictorial--;
                best = larger.Worth < best.Worth ? larger : best;
            }
            else
            {
                flat++;
            }
        }

        return best;

        ViewLayout? At(int ofPictorial, int ofFlat)
        {
            var (first, others) = (ViewScales.Denominator(ofPictorial), ViewScales.Denominator(ofFlat));
            (double Width, double Height)[] cells =
            [
                .. sizes.Select((size, i) => i == 0
                    ? (Math.Max((size.Width / first) + (2 * (Margin + labelRoom)), LeastPictorial), (size.Height / first) + (2 * (Margin + labelRoom)))
                    : (Math.Max((size.Width / others) + (2 * Margin), LeastFlat), (size.Height / others) + (2 * Margin))),
            ];
            if (Array.Exists(cells, cell => cell.Width > width || cell.Height + CaptionHeight > height))
            {
                return null;
            }

            return FlatRows.SelectMany(rows => new[] { Beside(cells, rows, width, height), Below(cells, rows, width, height) })
                .OfType<(ViewCell[] Cells, double Height)>()
                .Select(placed => new ViewLayout(first, others, placed.Cells, placed.Height))
                .MinBy(placed => placed.Height);
        }
    }

    /// <summary>The flat views on the right of the pictorial one.</summary>
    private static (ViewCell[] Cells, double Height)? Beside((double Width, double Height)[] cells, int[][] rows, double width, double height)
    {
        var flatWidth = rows.Max(row => row.Sum(view => cells[view].Width));
        var flatHeight = rows.Sum(row => row.Max(view => cells[view].Height) + CaptionHeight);
        var whole = Math.Max(cells[0].Height + CaptionHeight, flatHeight);
        var spare = width - cells[0].Width - flatWidth;
        if (spare < 0 || whole > height)
        {
            return null;
        }

        var placed = new ViewCell[cells.Length];
        var left = cells[0].Width + (spare / 3);
        placed[0] = new(0, 0, left, whole - CaptionHeight);
        PlaceRows(placed, cells, rows, new(left, 0, width - left, whole), whole - flatHeight);
        return (placed, whole);
    }

    /// <summary>The flat views below the pictorial one.</summary>
    private static (ViewCell[] Cells, double Height)? Below((double Width, double Height)[] cells, int[][] rows, double width, double height)
    {
        var top = cells[0].Height + CaptionHeight;
        var whole = top + rows.Sum(row => row.Max(view => cells[view].Height) + CaptionHeight);
        if (whole > height || cells[0].Width > width || rows.Any(row => row.Sum(view => cells[view].Width) > width))
        {
            return null;
        }

        var placed = new ViewCell[cells.Length];
        placed[0] = new(0, 0, width, cells[0].Height);
        PlaceRows(placed, cells, rows, new(0, top, width, whole - top), 0);
        return (placed, whole);
    }

    private static void PlaceRows(ViewCell[] placed, (double Width, double Height)[] cells, int[][] rows, ViewCell area, double spareHeight)
    {
        var top = area.Top;
        foreach (var row in rows)
        {
            var rowHeight = row.Max(view => cells[view].Height) + (spareHeight / rows.Length);
            var spare = (area.Width - row.Sum(view => cells[view].Width)) / row.Length;
            var left = area.Left;
            foreach (var view in row)
            {
                placed[view] = new(left, top, cells[view].Width + spare, rowHeight);
                left += placed[view].Width;
            }

            top += rowHeight + CaptionHeight;
        }
    }
}
