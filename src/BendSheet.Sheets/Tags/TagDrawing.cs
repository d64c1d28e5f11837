using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Tags;

/// <summary>
/// A tag ready to be cut out: a half with the text, what goes round the tube, and the other half with the same text, so that it can be read
/// from both sides when the halves are back to back.
/// </summary>
internal sealed class TagDrawing
{
    /// <summary>In points: a name is shrunk down to this, and broken into lines where that is not enough.</summary>
    public const double SmallestName = 9;

    /// <summary>From the edge of the tag and from the fold, so that a hand may cut beside the line.</summary>
    private const double Inset = 2;

    /// <summary>Added to the length round the tube: paper never lies on it without a gap.</summary>
    private const double Slack = 1;

    /// <summary>Half a tag is never narrower, however thick the tube.</summary>
    private const double LeastHalf = 20;

    private readonly List<(string Text, TextStyle Style)> _lines = [];
    private readonly IReadOnlyList<string> _middle;
    private readonly double _width;
    private readonly double _neck;

    private TagDrawing(TagContent tag, TextMeasure measure, double width)
    {
        Tag = tag;
        _width = width;
        _neck = Math.Min(Neck(tag.TubeDiameter), width - (2 * LeastHalf));
        _middle = measure.Wrap(TagWords.Middle, TextStyle.Small, _neck - Inset);
        var room = Half - (2 * Inset);
        var style = NameStyle(measure.Printable(tag.Name), room);
        Add(tag.Name, style);
        AddEnd(tag.EndA);
        AddEnd(tag.EndB);
        Add(tag.Length, TextStyle.Label);
        Add(tag.LengthOther, TextStyle.Small);
        Add(tag.Sheet, TextStyle.Small);
        Height = Math.Max(
            _lines.Sum(line => line.Style.LineHeight), _middle.Count * TextStyle.Small.LineHeight) + (2 * Inset);

        void Add(string text, TextStyle of) => _lines.AddRange(measure.Wrap(text, of, room).Select(line => (line, of)));

        // Smaller where that is enough, or else the port below its part.
        void AddEnd(string text)
        {
            var printable = measure.Printable(text);
            var of = TextStyle.Body.Fitting(printable, room);
            var port = of.Width(printable) <= room ? -1 : printable.LastIndexOf('.');
            Add(port > 0 ? printable[..port] : printable, of);
            if (port > 0)
            {
                Add(printable[port..], of);
            }
        }
    }

    /// <summary>What it says.</summary>
    public TagContent Tag { get; }

    /// <summary>Of the whole tag, in millimetres.</summary>
    public double Width => _width;

    /// <summary>Of the whole tag, in millimetres.</summary>
    public double Height { get; }

    /// <summary>Width of each half with the text.</summary>
    public double Half => (_width - _neck) / 2;

    /// <summary>Goes once round the tube.</summary>
    /// <param name="diameter">Of the tube, outside.</param>
    public static double Neck(Length diameter) => (Math.PI * diameter.Millimetres) + Slack;

    /// <summary>Lays a tag out.</summary>
    /// <param name="tag">What it says.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of the whole tag.</param>
    public static TagDrawing Of(TagContent tag, TextMeasure measure, double width) => new(tag, measure, width);

    /// <summary>Draws it.</summary>
    /// <param name="canvas">With its left side at the tag's.</param>
    /// <param name="top">Of the tag.</param>
    /// <param name="height">At least its own: tags in a row are cut in one go.</param>
    public void Draw(Canvas canvas, double top, double height)
    {
        canvas.Box(0, top, _width, height);
        foreach (var fold in new[] { Half, Half + _neck })
        {
            canvas.DashedLine(fold, top, fold, top + height);
        }

        DrawText(canvas, Inset, top);
        canvas.Decoration(() => DrawText(canvas, Half + _neck + Inset, top));
        var first = top + ((height - (_middle.Count * TextStyle.Small.LineHeight)) / 2) + TextStyle.Small.Ascent;
        for (var i = 0; i < _middle.Count; i++)
        {
            canvas.Text(_middle[i], TextStyle.Small, _width / 2, first + (i * TextStyle.Small.LineHeight), Align.Centre);
        }
    }

    private void DrawText(Canvas canvas, double left, double top)
    {
        var y = top + Inset;
        foreach (var (text, style) in _lines)
        {
            canvas.Text(text, style, left, y + style.Ascent);
            y += style.LineHeight;
        }
    }

    private static TextStyle NameStyle(string printable, double room)
    {
        var style = TextStyle.TagName;
        var wanted = style.Width(printable);
        return wanted <= room ? style : style.At(Math.Max(SmallestName, style.Points * room / wanted));
    }
}
