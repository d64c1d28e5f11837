namespace BendSheet.Sheets.FullSize;

/// <summary>
/// Labels along a line, each in the first row where it meets no other, and inside the type area. What finds no place in the rows there are
/// is left out: it stands in the table too.
/// </summary>
internal sealed class LabelRows
{
    private const int LeftOut = -1;

    private readonly List<(double X, int Row)> _placed = [];

    private LabelRows()
    {
    }

    /// <summary>How many rows are needed; none for no labels.</summary>
    public int Count { get; private set; }

    /// <summary>Places labels in the order given.</summary>
    /// <param name="labels">Where the middle of each belongs, and how wide it is.</param>
    /// <param name="width">Of the type area.</param>
    /// <param name="most">Rows.</param>
    public static LabelRows Place(IEnumerable<(double X, double Width)> labels, double width, int most)
    {
        var rows = new LabelRows();
        var taken = new List<List<(double From, double To)>>();
        foreach (var (x, labelWidth) in labels)
        {
            var middle = Math.Clamp(x, Math.Min(labelWidth, width) / 2, Math.Max(width - (labelWidth / 2), labelWidth / 2));
            var from = middle - (labelWidth / 2);
            var to = middle + (labelWidth / 2);
            var row = taken.FindIndex(others => others.TrueForAll(other => other.To <= from || other.From >= to));
            if (row < 0 && taken.Count == most)
            {
                rows._placed.Add((middle, LeftOut));
                continue;
            }

            if (row < 0)
            {
                row = taken.Count;
                taken.Add([]);
            }

            taken[row].Add((from, to));
            rows._placed.Add((middle, row));
        }

        rows.Count = taken.Count;
        return rows;
    }

    /// <summary>Whether a label has a place.</summary>
    public bool Has(int label) => _placed[label].Row != LeftOut;

    /// <summary>Row of a label, 0 nearest to the line.</summary>
    public int Row(int label) => _placed[label].Row;

    /// <summary>Middle of a label.</summary>
    public double X(int label) => _placed[label].X;
}
