namespace BendSheet.Sheets.Labels;

/// <summary>A label in a row below a line, with a leader straight down to it.</summary>
/// <param name="X">Where it belongs, and its leader begins.</param>
/// <param name="Middle">Of the label.</param>
/// <param name="Width">Of the label.</param>
/// <param name="Row">0 nearest to the line.</param>
internal sealed record RowLabel(double X, double Middle, double Width, int Row)
{
    /// <summary>
    /// Places labels in the order given, each in the first row where it meets no other and where no leader passes under a label, or else
    /// where it only meets no other; null for what finds no place.
    /// </summary>
    /// <param name="labels">Where the middle of each belongs, and how wide it is.</param>
    /// <param name="width">Of the type area, which no label leaves.</param>
    /// <param name="rows">That there are.</param>
    public static IReadOnlyList<RowLabel?> Place(IEnumerable<(double X, double Width)> labels, double width, int rows)
    {
        var placer = new LabelPlacer<RowLabel>(
            (label, placed) => !placed.Any(label.Meets), (label, placed) => placed.Any(label.Crosses) ? rows : 0);
        return [.. labels.Select(label => placer.Place(Rows(label.X, label.Width)))];

        IEnumerable<Candidate<RowLabel>> Rows(double x, double labelWidth)
        {
            var middle = Math.Clamp(x, Math.Min(labelWidth, width) / 2, Math.Max(width - (labelWidth / 2), labelWidth / 2));
            return Enumerable.Range(0, rows).Select(row => new Candidate<RowLabel>(row, row, new(x, middle, labelWidth, row)));
        }
    }

    private double Left => Middle - (Width / 2);

    private double Right => Middle + (Width / 2);

    private bool Meets(RowLabel other) => Row == other.Row && other.Right > Left && other.Left < Right;

    /// <summary>Whether the leader of the one further down passes under the other.</summary>
    private bool Crosses(RowLabel other) => (other.Row < Row && other.Covers(X)) || (other.Row > Row && Covers(other.X));

    private bool Covers(double x) => Left < x && x < Right;
}
