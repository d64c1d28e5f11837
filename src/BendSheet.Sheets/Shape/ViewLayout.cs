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
    /// <summary>Room around a drawing for its labels, in millimetres: a label and its distance from the tube.</summary>
    public const double Margin = 6;

    /// <summary>Under each view, in millimetres.</summary>
    public const double CaptionHeight = 4.7;

    /// <summary>No cell is narrower than its caption needs, the pictorial view's with the axis mark.</summary>
    private const double LeastFlat = 38;
    private const double LeastPictorial = 62;

    /// <summary>By how many steps of scale the flat views may give way to the pictorial one.</summary>
    private const int MostSteps = 4;

    /// <summary>Nor do they once the longest of them is shorter on paper than this, in millimetres: a speck shows nothing.</summary>
    private const double LeastLength = 20;

    /// <summary>The smaller the better: a step more for the picture is worth up to two for the flat views.</summary>
    public double Worth => (2 * Math.Log(Pictorial)) + Math.Log(Flat);

    /// <summary>The flat views in rows, by their place among all views.</summary>
    private static readonly int[][][] FlatRows = [[[1, 2, 3]], [[1], [2, 3]], [[1, 2], [3]], [[1, 3], [2]], [[1], [2], [3]]];

    /// <summary>The longest side of any of them.</summary>
    public static double Longest(IEnumerable<(double Width, double Height)> sizes) => sizes.Max(size => Math.Max(size.Width, size.Height));

    /// <summary>The best arrangement.</summary>
    /// <param name="sizes">Of each view, in the shape's own millimetres, the pictorial one first.</param>
    /// <param name="width">Of the type area; at least what the captions need side by side.</param>
    /// <param name="height">That may be used; more is, where it is not enough for empty cells.</param>
    /// <param name="labelRoom">Around the pictorial view, beyond that which every view has.</param>
    public static ViewLayout Of(IReadOnlyList<(double Width, double Height)> sizes, double width, double height, double labelRoom = 0)
    {
        // Empty cells then fit, so that a scale is found for whatever was typed.
        height = Math.Max(height, (2 * (Margin + labelRoom)) + CaptionHeight);
        var pictorial = 0;
        ViewLayout? layout;
        while ((layout = At(sizes, (width, height, labelRoom), pictorial, pictorial)) is null)
        {
            pictorial++;
        }

        var best = layout;
        var longest = Longest(sizes.Skip(1));
        var (flat, last) = (pictorial, pictorial);
        while (last < pictorial + MostSteps && longest / ViewScales.Denominator(last + 1) >= LeastLength)
        {
            last++;
        }

        while (pictorial > 0 && flat <= last)
        {
            if (At(sizes, (width, height, labelRoom), pictorial - 1, flat) is { } larger)
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
    }

    /// <summary>The lowest arrangement at two scales; null where none has room.</summary>
    private static ViewLayout? At(
        IReadOnlyList<(double Width, double Height)> sizes,
        (double Width, double Height, double Labels) room,
        int ofPictorial,
        int ofFlat)
    {
        var (first, others) = (ViewScales.Denominator(ofPictorial), ViewScales.Denominator(ofFlat));
        var around = 2 * (Margin + room.Labels);
        (double Width, double Height)[] cells =
        [
            .. sizes.Select((size, i) => i == 0
                ? (Math.Max((size.Width / first) + around, LeastPictorial), (size.Height / first) + around)
                : (Math.Max((size.Width / others) + (2 * Margin), LeastFlat), (size.Height / others) + (2 * Margin))),
        ];
        if (Array.Exists(cells, cell => cell.Width > room.Width || cell.Height + CaptionHeight > room.Height))
        {
            return null;
        }

        Arrangement? lowest = null;
        foreach (var rows in FlatRows)
        {
            foreach (var beside in (ReadOnlySpan<bool>)[true, false])
            {
                var arrangement = new Arrangement(cells, rows, beside);
                if (arrangement.Fits(room.Width, room.Height) && !(arrangement.Height >= lowest?.Height))
                {
                    lowest = arrangement;
                }
            }
        }

        return lowest is null ? null : new(first, others, lowest.Placed(room.Width), lowest.Height);
    }

    /// <summary>The flat views in rows, either on the right of the pictorial one or below it.</summary>
    private sealed class Arrangement
    {
        private readonly (double Width, double Height)[] _cells;
        private readonly int[][] _rows;
        private readonly bool _beside;
        private readonly double _flatWidth;
        private readonly double _flatHeight;

        public Arrangement((double Width, double Height)[] cells, int[][] rows, bool beside)
        {
            (_cells, _rows, _beside) = (cells, rows, beside);
            foreach (var row in rows)
            {
                _flatWidth = Math.Max(_flatWidth, WidthOf(row));
                _flatHeight += HeightOf(row) + CaptionHeight;
            }

            var pictorial = cells[0].Height + CaptionHeight;
            Height = beside ? Math.Max(pictorial, _flatHeight) : pictorial + _flatHeight;
        }

        /// <summary>Captions included.</summary>
        public double Height { get; }

        public bool Fits(double width, double height) =>
            Height <= height && (_beside ? _cells[0].Width + _flatWidth : Math.Max(_cells[0].Width, _flatWidth)) <= width;

        /// <summary>Where each view comes to lie; what is to spare is shared out among them.</summary>
        public ViewCell[] Placed(double width)
        {
            var placed = new ViewCell[_cells.Length];
            var left = _beside ? _cells[0].Width + ((width - _cells[0].Width - _flatWidth) / 3) : 0;
            var top = _beside ? 0 : _cells[0].Height + CaptionHeight;
            placed[0] = _beside ? new(0, 0, left, Height - CaptionHeight) : new(0, 0, width, _cells[0].Height);
            var spareHeight = (Height - top - _flatHeight) / _rows.Length;
            foreach (var row in _rows)
            {
                var rowHeight = HeightOf(row) + spareHeight;
                var spare = (width - left - WidthOf(row)) / row.Length;
                var x = left;
                foreach (var view in row)
                {
                    placed[view] = new(x, top, _cells[view].Width + spare, rowHeight);
                    x += placed[view].Width;
                }

                top += rowHeight + CaptionHeight;
            }

            return placed;
        }

        private double WidthOf(int[] row)
        {
            var width = 0.0;
            foreach (var view in row)
            {
                width += _cells[view].Width;
            }

            return width;
        }

        private double HeightOf(int[] row)
        {
            var height = 0.0;
            foreach (var view in row)
            {
                height = Math.Max(height, _cells[view].Height);
            }

            return height;
        }
    }
}
