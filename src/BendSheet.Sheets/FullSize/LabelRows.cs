namespace BendSheet.Sheets.FullSize;

/// <summary>
/// Labels along a line, each in the first row where it meets no other and where no leader, straight down from where a label belongs, passes
/// under another label, or else where it only meets no other; inside the type area. What finds no place in the rows there are is left out.
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
        var taken = new List<List<(double From, double To, double Leader)>>();
        foreach (var (x, labelWidth) in labels)
        {
            var middle = Math.Clamp(x, Math.Min(labelWidth, width) / 2, Math.Max(width - (labelWidth / 2), labelWidth / 2));
            var from = middle - (labelWidth / 2);
            var to = middle + (labelWidth / 2);
            var free = Enumerable.Range(0, Math.Min(taken.Count + 1, most))
                .Where(row => row == taken.Count || taken[row].TrueForAll(other => other.To <= from || other.From >= to)).ToList();
            if (free.Count == 0)
            {
                rows._placed.Add((middle, LeftOut));
                continue;
            }

            var row = free.Where(IsClear).DefaultIfEmpty(free[0]).First();
            if (row == taken.Count)
            {
                taken.Add([]);
            }

            taken[row].Add((from, to, x));
            rows._placed.Add((middle, row));

            bool IsClear(int row) => taken.Take(row).All(nearer => nearer.TrueForAll(other => x <= other.From || x >= other.To))
                && taken.Skip(row + 1).All(further => further.TrueForAll(other => other.Leader <= from || other.Leader >= to));
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
