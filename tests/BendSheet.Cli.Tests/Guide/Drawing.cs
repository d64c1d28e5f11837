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
        $"  <polyline class=\"{style}\" points=\"{string.Join(' ', points.Select(Text))}\"/>\n");

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
        $"  <circle class=\"{style}\" cx=\"{middle.X:0.#}\" cy=\"{middle.Y:0.#}\" r=\"{radius:0.#}\"/>\n");

    /// <summary>One line of text.</summary>
    /// <param name="style">label, small, or name (bold).</param>
    /// <param name="at">Its anchor, on the baseline.</param>
    /// <param name="anchor">start, middle or end.</param>
    /// <param name="text">Without characters that XML wants escaped.</param>
    public void Write(string style, (double X, double Y) at, string anchor, string text) => _body.Append(CultureInfo.InvariantCulture,
        $"  <text class=\"{style}\" x=\"{at.X:0.#}\" y=\"{at.Y:0.#}\" text-anchor=\"{anchor}\">{text}</text>\n");

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $$"""
        <svg xmlns="http://www.w3.org/2000/svg" width="{{width}}" height="{{height}}" viewBox="0 0 {{width}} {{height}}" role="img">
          <title>{{title}}</title>
          <style>
            polyline, circle { fill: none; stroke: #000; stroke-width: 1.2 }
            polyline.wire { stroke-width: 6; stroke-linejoin: round; stroke-linecap: round }
            polyline.next { stroke-width: 4; stroke-linecap: round; stroke: #555 }
            polyline.dash { stroke-dasharray: 6 4 }
            polyline.edge { stroke-width: 9; stroke: #ccc }
            circle.end { fill: #000 }
            circle.knot { fill: #fff; stroke-width: 1.5 }
            text { font-family: sans-serif; font-size: 15px; fill: #000 }
            text.small { font-size: 13px }
            text.name { font-weight: bold }
          </style>
          <rect width="{{width}}" height="{{height}}" fill="#fff"/>

        """) + _body + "</svg>\n";

    private static string Text((double X, double Y) point) =>
        string.Create(CultureInfo.InvariantCulture, $"{point.X:0.#},{point.Y:0.#}");
}
