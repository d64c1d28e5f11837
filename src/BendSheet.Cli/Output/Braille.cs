using System.Text;

namespace BendSheet.Cli.Output;

/// <summary>
/// A picture of characters: lines as Braille patterns (Unicode U+2800 to U+28FF), each two dots wide and four high, and letters
/// between them. A terminal's character is about twice as high as wide, so that the dots lie in squares.
/// </summary>
/// <param name="width">In characters.</param>
/// <param name="height">In characters.</param>
public sealed class Braille(int width, int height)
{
    /// <summary>Dots in a character.</summary>
    public const int DotsAcross = 2;

    /// <inheritdoc cref="DotsAcross"/>
    public const int DotsDown = 4;

    private const char Empty = '\u2800';

    /// <summary>The bit of each dot, row by row from the top (The Unicode Standard, block Braille Patterns).</summary>
    private static readonly int[] Bits = [0x01, 0x08, 0x02, 0x10, 0x04, 0x20, 0x40, 0x80];

    private readonly int[] _dots = new int[width * height];
    private readonly char[] _letters = new char[width * height];

    /// <summary>A straight line from dot to dot; what lies outside is not drawn.</summary>
    public void Line(double fromX, double fromY, double toX, double toY)
    {
        var steps = (int)Math.Ceiling(Math.Max(Math.Abs(toX - fromX), Math.Abs(toY - fromY)));
        for (var i = 0; i <= steps; i++)
        {
            var part = steps == 0 ? 0 : (double)i / steps;
            Dot((int)Math.Floor(fromX + (part * (toX - fromX))), (int)Math.Floor(fromY + (part * (toY - fromY))));
        }
    }

    /// <summary>Puts a word beside a dot: in the nearest place without a line or a letter, or else on the line itself.</summary>
    /// <returns>False where there is only room over another word.</returns>
    public bool Label(string word, double x, double y)
    {
        const int Around = 2;
        var column = (int)Math.Floor(x / DotsAcross);
        var row = (int)Math.Floor(y / DotsDown);
        var places = from down in Enumerable.Range(-Around, (2 * Around) + 1)
                     from right in Enumerable.Range(-Around - word.Length, (2 * Around) + word.Length + 1)
                     let gap = right > 0 ? right : right + word.Length > 0 ? 0 : 1 - right - word.Length
                     orderby (gap * gap) + (4 * down * down), down, right
                     select (Column: column + right, Row: row + down);
        foreach (var place in places.Where(place => Has(place.Column, place.Row, word.Length, free: true)).Take(1))
        {
            Write(word, place.Column, place.Row);
            return true;
        }

        var on = Math.Clamp(column, 0, Math.Max(0, width - word.Length));
        if (!Has(on, row, word.Length, free: false))
        {
            return false;
        }

        Write(word, on, row);
        return true;
    }

    /// <summary>The rows from the first to the last that has anything on it, without spaces at their ends.</summary>
    public IReadOnlyList<string> Rows()
    {
        var rows = Enumerable.Range(0, height).Select(Row).ToList();
        var first = rows.FindIndex(row => row.Length > 0);
        return first < 0 ? [] : rows[first..(rows.FindLastIndex(row => row.Length > 0) + 1)];
    }

    private void Dot(int x, int y)
    {
        if (x >= 0 && y >= 0 && x < width * DotsAcross && y < height * DotsDown)
        {
            _dots[(y / DotsDown * width) + (x / DotsAcross)] |= Bits[(y % DotsDown * DotsAcross) + (x % DotsAcross)];
        }
    }

    /// <summary>
    /// Whether a word may stand there: not on or right beside another word and, where it has to be free, without a line under it.
    /// </summary>
    private bool Has(int column, int row, int length, bool free)
    {
        if (row < 0 || row >= height || column < 0 || column + length > width)
        {
            return false;
        }

        for (var i = column - 1; i <= column + length; i++)
        {
            var inside = i >= column && i < column + length;
            if (i >= 0 && i < width && (_letters[(row * width) + i] != 0 || (free && inside && _dots[(row * width) + i] != 0)))
            {
                return false;
            }
        }

        return true;
    }

    private void Write(string word, int column, int row) => word.AsSpan().CopyTo(_letters.AsSpan((row * width) + column));

    private string Row(int row)
    {
        var text = new StringBuilder(width);
        for (var i = row * width; i < (row + 1) * width; i++)
        {
            text.Append(_letters[i] != 0 ? _letters[i] : _dots[i] != 0 ? (char)(Empty + _dots[i]) : ' ');
        }

        return text.ToString().TrimEnd();
    }
}
