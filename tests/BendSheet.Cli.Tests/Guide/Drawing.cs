using System.Globalization;
using System.Text;

namespace BendSheet.Cli.Tests.Guide;

/// <summary>An SVG drawing of the guide: black on white, so that it is readable on any page. Points are pixels, y downwards.</summary>
/// <param name="width">In pixels.</param>
/// <param name="height">In pixels.</param>
/// <param name="title">What it shows, for somebody who has it read out.</param>
internal sealed class Drawing(int width, int height, string title)
{
    private readonly StringBuilder _body = new();

    /// <summary>Bold lines are the wire, thin ones measure, dashed ones are not there.</summary>
    public void Line(string style, params (double X, double Y)[] points) => _body.Append(CultureInfo.InvariantCulture,
        $"  <polyline {Stroke(style)} points=\"{string.Join(' ', points.Select(Text))}\"/>\n");

    /// <summary>A line with a head at its end.</summary>
    public void Arrow(string style, (double X, double Y) from, (double X, double Y) to)
    {
        Line(style, from, to);
        var (x, y) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Sqrt((x * x) + (y * y));
        (x, y) = (x / length * 9, y / length * 9);
        Line(style, (to.X - x - (y / 2), to.Y - y + (x / 2)), to, (to.X - x + (y / 2), to.Y - y - (x / 2)));
    }

    public void Circle(string style, (double X, double Y) middle, double radius) => _body.Append(CultureInfo.InvariantCulture,
        $"  <circle {Stroke(style)} cx=\"{middle.X:0.#}\" cy=\"{middle.Y:0.#}\" r=\"{radius:0.#}\"/>\n");

    /// <summary>One line of text.</summary>
    /// <param name="style">label, small, or name (bold).</param>
    /// <param name="at">Its anchor, on the baseline.</param>
    /// <param name="anchor">start, middle or end.</param>
    /// <param name="text">Without characters that XML wants escaped.</param>
    public void Write(string style, (double X, double Y) at, string anchor, string text) => _body.Append(CultureInfo.InvariantCulture,
        $"  <text {Font(style)} x=\"{at.X:0.#}\" y=\"{at.Y:0.#}\" text-anchor=\"{anchor}\">{text}</text>\n");

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $$"""
        <svg xmlns="http://www.w3.org/2000/svg" width="{{width}}" height="{{height}}" viewBox="0 0 {{width}} {{height}}" role="img">
          <title>{{title}}</title>
          <rect width="{{width}}" height="{{height}}" fill="#fff"/>

        """) + _body + "</svg>\n";

    /// <summary>Attributes of their own instead of a style sheet, which not every viewer reads.</summary>
    private static string Stroke(string style) => style switch
    {
        "wire" => Attributes("none", "#000", 6, " stroke-linejoin=\"round\" stroke-linecap=\"round\""),
        "next" => Attributes("none", "#777", 4, string.Empty),
        "edge" => Attributes("none", "#ccc", 9, string.Empty),
        "dash" => Attributes("none", "#000", 1.2, " stroke-dasharray=\"6 4\""),
        "knot" => Attributes("#fff", "#000", 1.5, string.Empty),
        "end" => Attributes("#000", "#000", 1.2, string.Empty),
        _ => Attributes("none", "#000", 1.2, string.Empty),
    };

    private static string Attributes(string fill, string stroke, double width, string more) =>
        string.Create(CultureInfo.InvariantCulture, $"fill=\"{fill}\" stroke=\"{stroke}\" stroke-width=\"{width}\"{more}");

    private static string Font(string style) => "font-family=\"sans-serif\" " + style switch
    {
        "small" => "font-size=\"13\"",
        "name" => "font-size=\"15\" font-weight=\"bold\"",
        _ => "font-size=\"15\"",
    };

    private static string Text((double X, double Y) point) =>
        string.Create(CultureInfo.InvariantCulture, $"{point.X:0.#},{point.Y:0.#}");
}
