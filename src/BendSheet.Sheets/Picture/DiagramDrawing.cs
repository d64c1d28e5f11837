using BendSheet.Core.Picture;
using BendSheet.Core.Plumbing;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Picture;

/// <summary>The plumbing as boxes with lines between them, layer by layer from the master cylinders to the right.</summary>
internal sealed class DiagramDrawing
{
    private const int FewestColumns = 3;
    private const int MostColumns = 5;

    /// <summary>Of the width of a column, the box; the rest is the line to it.</summary>
    private const double BoxShare = 0.46;

    private const double RowHeight = 11.5;
    private const double BoxHeight = 8;

    /// <summary>From the box of a part to where its lines part.</summary>
    private const double Trunk = 2.5;

    private static readonly TextStyle Style = TextStyle.Small;

    private readonly CarPicture _picture;
    private readonly TextMeasure _measure;
    private readonly IReadOnlyList<DiagramBand> _bands;
    private readonly double _pitch;
    private readonly double _boxWidth;

    private DiagramDrawing(CarPicture picture, TextMeasure measure, double width, double most)
    {
        var roots = PlumbingTree.Of(picture);
        var columns = Math.Clamp(roots.Select(Depth).DefaultIfEmpty(1).Max(), FewestColumns, MostColumns);
        _picture = picture;
        _measure = measure;
        _pitch = width / (columns - 1 + BoxShare);
        _boxWidth = _pitch * BoxShare;
        _bands = DiagramBand.Of(roots, columns, Math.Max(1, (int)((most - 2) / RowHeight) - 1));
        Numbers = picture.Parts.Where(part => Wrapped(part.Name).Count > 2).Select(part => part.Number).ToHashSet();
    }

    /// <summary>Parts whose names are too long for a box and have their number in it.</summary>
    public IReadOnlySet<int> Numbers { get; }

    /// <summary>Some box stands in two places.</summary>
    public bool GoesOn => _bands.Any(band => band.Boxes.Any(box => box.IsAgain));

    /// <summary>Lays it out.</summary>
    /// <param name="picture">Without places.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of the type area.</param>
    /// <param name="most">Height of a block at most.</param>
    public static DiagramDrawing Of(CarPicture picture, TextMeasure measure, double width, double most) =>
        new(picture, measure, width, most);

    /// <summary>A block for each band.</summary>
    public IEnumerable<Block> Blocks() => _bands.Select((band, i) => new Block(
        (band.Rows * RowHeight) + 1, (canvas, top) => Draw(canvas, band, top))
    {
        Role = i == 0 ? Role.Figure : Role.Decoration,
        Alternative = i == 0 ? PictureWords.Alternative(_picture, null) : null,
    });

    /// <summary>Boxes on the longest way from a root; counted no further than matters.</summary>
    private static int Depth(PlumbingNode root)
    {
        var (layer, depth) = (new List<PlumbingNode> { root }, 0);
        while (layer.Count > 0 && depth <= MostColumns)
        {
            layer = [.. layer.SelectMany(node => node.Branches.Where(branch => !branch.IsAgain)).Select(branch => branch.To)];
            depth++;
        }

        return depth;
    }

    private void Draw(Canvas canvas, DiagramBand band, double top)
    {
        foreach (var link in band.Links)
        {
            var (begin, end) = (Middle(link.From, top), Middle(link.To, top));
            var (right, left) = (begin.X + (_boxWidth / 2), end.X - (_boxWidth / 2));
            PagePoint[] way = [new(right, begin.Y), new(right + Trunk, begin.Y), new(right + Trunk, end.Y), new(left, end.Y)];
            canvas.Path(way.AsSpan(0, 3), Canvas.Thin);
            CircuitMarks.Run(canvas, link.Branch.Run, [way[2], way[3]]);
            Label(canvas, link.Branch.Run, way[2], way[3].X);
        }

        foreach (var box in band.Boxes)
        {
            Box(canvas, box, Middle(box, top));
        }
    }

    private PagePoint Middle(DiagramBox box, double top) =>
        new((box.Column * _pitch) + (_boxWidth / 2), top + ((box.Row + 0.5) * RowHeight));

    private IReadOnlyList<string> Wrapped(string name) => _measure.Wrap(name, Style, _boxWidth - 1.6);

    /// <summary>The name above its line and the length below; the number in a circle where they are too long.</summary>
    private static string[] Words(PicturedRun run) =>
        run.Length.Length == 0 ? [run.Name] : [run.Name, run.Length];

    private void Label(Canvas canvas, PicturedRun run, PagePoint from, double right)
    {
        if (run.Kind == ConnectionKind.ScrewedIn)
        {
            return;
        }

        var room = right - from.X - 1.5;
        var middle = (from.X + right) / 2;
        string[] words = [.. Words(run).Select(_measure.Printable)];
        if (Array.Exists(words, word => Style.Width(word) > room))
        {
            var number = PictureWords.Number(run.Number);
            var half = Math.Max(PictureLabels.Radius, (TextStyle.Label.Width(number) / 2) + 1);
            canvas.Bubble(number, TextStyle.Label, from.X + half + 0.5, from.Y, half, PictureLabels.Radius);
            return;
        }

        canvas.Text(words[0], Style, middle, from.Y - 2.1, Align.Centre);
        if (words.Length > 1)
        {
            canvas.Text(words[1], Style, middle, from.Y + 1.9 + Style.CapHeight, Align.Centre);
        }
    }

    private void Box(Canvas canvas, DiagramBox box, PagePoint middle)
    {
        var (left, right) = (middle.X - (_boxWidth / 2), middle.X + (_boxWidth / 2));
        var (top, bottom) = (middle.Y - (BoxHeight / 2), middle.Y + (BoxHeight / 2));
        if (box.IsAgain)
        {
            PagePoint[] outline = [new(left, top), new(right, top), new(right, bottom), new(left, bottom), new(left, top)];
            canvas.DashedPath(outline, Canvas.Medium);
        }
        else if (box.Node.Part is not null)
        {
            canvas.Box(left, top, _boxWidth, BoxHeight, box.Node.Part.IsSource ? Canvas.Thick : Canvas.Medium);
        }

        var lines = Wrapped(box.Node.Name);
        if (lines.Count > 2 && box.Node.Part is { } part)
        {
            lines = [PictureWords.Number(part.Number)];
        }

        // The words of an end that goes to no part stand in the table.
        lines = lines.Count > 2 ? [PictureWords.More(lines[0])] : lines;
        for (var i = 0; i < lines.Count; i++)
        {
            var off = (i - ((lines.Count - 1) / 2.0)) * Style.LineHeight;
            canvas.Text(lines[i], Style, middle.X, middle.Y + off + (Style.CapHeight / 2), Align.Centre);
        }
    }
}
