using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Labels;

namespace BendSheet.Sheets.FullSize;

/// <summary>What lies on a tile, named below it in rows: joints and ends must be there whatever else finds room.</summary>
internal sealed class TileNames
{
    private const double Gap = 2;
    private const int MostRows = 4;

    private readonly List<(string Text, bool Must, RowLabel? At)> _names;

    private TileNames(List<(string Text, bool Must, RowLabel? At)> names) => _names = names;

    /// <summary>Of all rows.</summary>
    public double Height => (_names.Max(name => name.At?.Row + 1) ?? 0) * TextStyle.Small.LineHeight;

    /// <summary>Places names, each as near to its place as it finds room.</summary>
    /// <param name="names">Where each belongs, and whether it must be there.</param>
    /// <param name="width">Of the tile.</param>
    public static TileNames Of(IReadOnlyList<(double X, string Text, bool Must)> names, double width) =>

        // Short names find room near the tube; what must be there goes first only where it would be left out otherwise.
        new(new[] { names.OrderBy(name => name.Must), names.OrderByDescending(name => name.Must) }
            .Select(order => Placed([.. order], width))
            .MinBy(placed => placed.Count(name => name.Must && name.At is null))!);

    /// <summary>The lines down to the names.</summary>
    /// <param name="canvas">With its left side at the tile's start.</param>
    /// <param name="from">Where the lines begin.</param>
    /// <param name="top">Of the rows.</param>
    public void DrawLines(Canvas canvas, double from, double top)
    {
        foreach (var at in _names.Select(name => name.At).OfType<RowLabel>().Where(at => at.X >= 0))
        {
            canvas.Line(at.X, from, at.X, top + (at.Row * TextStyle.Small.LineHeight), Canvas.Thin);
        }
    }

    /// <summary>The names.</summary>
    /// <param name="canvas">With its left side at the tile's start.</param>
    /// <param name="top">Of the rows.</param>
    public void Draw(Canvas canvas, double top)
    {
        foreach (var (text, _, at) in _names.Where(name => name.At is not null))
        {
            var nameTop = top + (at!.Row * TextStyle.Small.LineHeight);
            var half = TextStyle.Small.Width(text) / 2;
            canvas.Blank(at.Middle - half, nameTop, 2 * half, TextStyle.Small.LineHeight);
            canvas.Text(text, TextStyle.Small, at.Middle, nameTop + TextStyle.Small.Ascent, Align.Centre);
        }
    }

    private static List<(string Text, bool Must, RowLabel? At)> Placed(List<(double X, string Text, bool Must)> names, double width)
    {
        var rows = RowLabel.Place(names.Select(name => (name.X, TextStyle.Small.Width(name.Text) + Gap)), width, MostRows);
        return [.. names.Zip(rows, (name, at) => (name.Text, name.Must, at))];
    }
}
