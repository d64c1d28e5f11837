using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Picture;

/// <summary>Which squares of a cell are drawn on; whether a rectangle is free is known at a glance, however much is drawn.</summary>
/// <remarks>Sums over all squares above and to the left, as in F. C. Crow, Summed-Area Tables for Texture Mapping (1984): from memory.
/// </remarks>
internal sealed class TakenRoom
{
    /// <summary>Side of a square.</summary>
    private const double Side = 0.5;

    /// <summary>From the middle of a line to the nearest label: the line's marks reach as far.</summary>
    private const double FromLine = 1.7;

    /// <summary>From a part's box.</summary>
    private const double FromPart = 0.4;

    private readonly PageBox _cell;
    private readonly int _columns;
    private readonly int _rows;
    private readonly int[] _sums;

    /// <summary>Marks what runs and parts cover; a zone's hatching can be written on.</summary>
    public TakenRoom(IEnumerable<DrawnItem> drawn, PageBox cell)
    {
        _cell = cell;
        (_columns, _rows) = ((int)Math.Ceiling(cell.Width / Side), (int)Math.Ceiling(cell.Height / Side));
        _sums = new int[(_columns + 1) * (_rows + 1)];
        foreach (var item in drawn)
        {
            if (item.Item.Kind == ItemKind.Run)
            {
                foreach (var piece in item.Pieces)
                {
                    Take(piece);
                }
            }
            else if (item.Item.Kind == ItemKind.Part)
            {
                Take(item.Box, FromPart);
            }
        }

        for (var row = 1; row <= _rows; row++)
        {
            for (var column = 1; column <= _columns; column++)
            {
                _sums[At(column, row)] += _sums[At(column - 1, row)] + _sums[At(column, row - 1)] - _sums[At(column - 1, row - 1)];
            }
        }
    }

    /// <summary>The rectangle lies in the cell and on nothing that is drawn.</summary>
    public bool IsFree(PageBox box)
    {
        if (box.Left < _cell.Left || box.Top < _cell.Top
            || box.Left + box.Width > _cell.Left + _cell.Width || box.Top + box.Height > _cell.Top + _cell.Height)
        {
            return false;
        }

        var (left, top, right, bottom) = Squares(box, 0);
        return _sums[At(right + 1, bottom + 1)] - _sums[At(left, bottom + 1)] - _sums[At(right + 1, top)] + _sums[At(left, top)] == 0;
    }

    private int At(int column, int row) => (row * (_columns + 1)) + column;

    private void Take(Segment piece)
    {
        var way = piece.To - piece.From;
        var steps = Math.Max(1, (int)Math.Ceiling(way.Norm / Side));
        for (var i = 0; i <= steps; i++)
        {
            var point = piece.From + ((double)i / steps * way);
            Take(new(point.X, point.Y, 0, 0), FromLine);
        }
    }

    private void Take(PageBox box, double reach)
    {
        var (left, top, right, bottom) = Squares(box, reach);
        for (var row = top; row <= bottom; row++)
        {
            for (var column = left; column <= right; column++)
            {
                _sums[At(column + 1, row + 1)] = 1;
            }
        }
    }

    private (int Left, int Top, int Right, int Bottom) Squares(PageBox box, double reach) => (
        Column(box.Left - reach),
        Row(box.Top - reach),
        Column(box.Left + box.Width + reach),
        Row(box.Top + box.Height + reach));

    private int Column(double x) => (int)Math.Clamp((x - _cell.Left) / Side, 0, _columns - 1);

    private int Row(double y) => (int)Math.Clamp((y - _cell.Top) / Side, 0, _rows - 1);
}
