using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Labels;

namespace BendSheet.Sheets.FullSize;

/// <summary>Something on a tile that has a number and a figure.</summary>
/// <param name="Number">In a circle.</param>
/// <param name="X">Where it is.</param>
/// <param name="Figure">Large, printable.</param>
/// <param name="Small">Below it, printable; may be none.</param>
internal sealed record TileMark(int Number, double X, string Figure, IReadOnlyList<string> Small);

/// <summary>
/// What stands at the marks of a tile: bend number and figure large, held side, dial and rotation small. In rows above and, where they are
/// many, below the tube.
/// </summary>
internal sealed class TileLabels
{
    /// <summary>Width of a mark's line, in millimetres: as fine as survives a copy, because it is what the pen follows.</summary>
    public const double MarkPen = 0.35;

    /// <summary>How far a mark's line reaches over the tube at both sides, in millimetres, to be seen with the tube lying on it.</summary>
    public const double Overhang = 4;

    private const double BubbleRadius = 2.9;
    private const double BubbleGap = 1;
    private const double Between = 3;

    /// <summary>Between a row and the tube, where lines run from marks to labels.</summary>
    private const double LeaderHeight = 5;

    /// <summary>One above and one below the tube.</summary>
    private const int RowsWithoutCrossing = 2;

    private readonly List<Label> _labels;
    private readonly double _width;
    private readonly double[] _middles;
    private readonly int _rows;
    private readonly double _rowHeight;

    private TileLabels(List<Label> labels, double[] middles, int rows, double width)
    {
        _width = width;
        _labels = labels;
        _middles = middles;
        _rows = rows;
        _rowHeight = labels.Count == 0 ? 0 : Label.FirstLine + (labels.Max(label => label.Small.Count) * TextStyle.Small.LineHeight) + 0.8;
    }

    /// <summary>Needed above the tube.</summary>
    public double HeightAbove => Side(RowsAbove);

    /// <summary>Needed below the tube.</summary>
    public double HeightBelow => Side(_rows - RowsAbove);

    private int RowsAbove => (_rows + 1) / 2;

    /// <summary>Places the labels of a tile's marks in as few rows as hold them.</summary>
    /// <param name="marks">Of the tile.</param>
    /// <param name="width">Of the tile.</param>
    public static TileLabels Of(IEnumerable<TileMark> marks, double width)
    {
        var labels = marks.OrderBy(mark => mark.X).Select(mark => new Label(mark)).ToList();
        var count = Enumerable.Range(1, labels.Count)
            .FirstOrDefault(rows => Rows(rows).All(row => row.Sum(label => label.Width) <= width), labels.Count);
        var middles = Rows(count).Select(row => SideBySide.Middles(row, width)).ToList();
        return new(labels, [.. labels.Select((_, i) => middles[i % count][i / count])], count, width);

        // One label after another goes into the next row.
        IEnumerable<List<(double X, double Width)>> Rows(int rows) => Enumerable.Range(0, rows)
            .Select(row => labels.Where((_, i) => i % rows == row).Select(label => (label.X, label.Width + Between)).ToList());
    }

    /// <summary>Marks right across the tube, labels, and lines between them.</summary>
    /// <param name="canvas">With its left side at the tile's start.</param>
    /// <param name="tubeTop">On the page.</param>
    /// <param name="diameter">Of the tube.</param>
    public void Draw(Canvas canvas, double tubeTop, double diameter)
    {
        for (var i = 0; i < _labels.Count; i++)
        {
            var x = _labels[i].X;
            canvas.Line(x, tubeTop - Overhang, x, tubeTop + diameter + Overhang, MarkPen);
            var (top, above) = Place(i, tubeTop, diameter);
            var end = above ? top + _rowHeight - 0.8 : top;
            canvas.Line(x, above ? tubeTop - Overhang : tubeTop + diameter + Overhang, _middles[i], end, Canvas.Thin);
            DrawNumberAtTube(canvas, i, tubeTop);
        }

        for (var i = 0; i < _labels.Count; i++)
        {
            var (top, above) = Place(i, tubeTop, diameter);
            var bottomAligned = above ? _rowHeight - 0.8 - _labels[i].Height : 0;
            _labels[i].Draw(canvas, _middles[i], top + bottomAligned);
        }
    }

    /// <summary>Where lines to labels pass behind other labels, each mark has its number once more, at its foot.</summary>
    private void DrawNumberAtTube(Canvas canvas, int label, double tubeTop)
    {
        const double FromMark = 0.7;
        var room = label + 1 < _labels.Count ? _labels[label + 1].X - _labels[label].X : _width - _labels[label].X;
        if (_rows > RowsWithoutCrossing && _labels[label].NumberWidth + (2 * FromMark) < room)
        {
            canvas.Text(_labels[label].Number, Label.AtTube, _labels[label].X + FromMark, tubeTop - 1.4);
        }
    }

    private double Side(int rows) => rows == 0 ? Overhang : Overhang + LeaderHeight + (rows * _rowHeight);

    private (double Top, bool Above) Place(int label, double tubeTop, double diameter)
    {
        var row = label % _rows;
        var above = row % 2 == 0;
        var outwards = row / 2;
        return above
            ? (tubeTop - Overhang - LeaderHeight - ((outwards + 1) * _rowHeight), true)
            : (tubeTop + diameter + Overhang + LeaderHeight + (outwards * _rowHeight), false);
    }

    private sealed class Label
    {
        private readonly string _mark;
        private readonly double _markWidth;

        public Label(TileMark mark)
        {
            X = mark.X;
            Number = FormattableString.Invariant($"{mark.Number}");
            NumberWidth = AtTube.Width(Number);
            _mark = mark.Figure;
            _markWidth = TextStyle.Mark.Width(_mark);
            Small = mark.Small;
            Width = Math.Max(
                (2 * BubbleRadius) + BubbleGap + _markWidth, Small.Select(text => TextStyle.Small.Width(text)).DefaultIfEmpty(0).Max());
        }

        public static TextStyle AtTube { get; } = TextStyle.Small with { Bold = true };

        public string Number { get; }

        public double NumberWidth { get; }

        public static double FirstLine => TextStyle.Mark.LineHeight;

        public double X { get; }

        public double Width { get; }

        public IReadOnlyList<string> Small { get; }

        public double Height => FirstLine + (Small.Count * TextStyle.Small.LineHeight);

        public void Draw(Canvas canvas, double middle, double top)
        {
            canvas.Blank(middle - (Width / 2), top, Width, Height);
            var left = middle - (((2 * BubbleRadius) + BubbleGap + _markWidth) / 2);
            canvas.Bubble(Number, TextStyle.Heading, left + BubbleRadius, top + (FirstLine / 2), BubbleRadius);
            canvas.Text(
                _mark, TextStyle.Mark, left + (2 * BubbleRadius) + BubbleGap, top + (FirstLine / 2) + (TextStyle.Mark.CapHeight / 2));
            for (var i = 0; i < Small.Count; i++)
            {
                canvas.Text(
                    Small[i], TextStyle.Small, middle, top + FirstLine + TextStyle.Small.Ascent
                        + (i * TextStyle.Small.LineHeight), Align.Centre);
            }
        }
    }
}
