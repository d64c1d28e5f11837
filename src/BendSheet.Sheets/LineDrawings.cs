using System.Collections.Immutable;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Elements;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets;

/// <summary>One drawing of a line, alone.</summary>
/// <param name="Name">Which one: <c>strip</c>, <c>pictorial</c>, <c>top</c>, <c>side</c> or <c>end</c>.</param>
/// <param name="Svg">The whole file; the same bytes for the same content.</param>
public sealed record LineDrawing(string Name, ReadOnlyMemory<byte> Svg);

/// <summary>The drawings of a line's sheet, each alone as SVG 1.1, in millimetres.</summary>
/// <param name="Drawings">The strip, the pictorial view and the three flat ones.</param>
/// <param name="MissingCharacters">Characters that the font lacks, drawn as a stand-in, each as it reads in a sentence.</param>
public sealed record LineDrawings(ImmutableArray<LineDrawing> Drawings, ImmutableArray<string> MissingCharacters)
{
    /// <summary>As wide as the type area of an A4 page.</summary>
    private const double Width = 190;
    private const double MostHeight = 150;

    /// <summary>Around each drawing, white.</summary>
    private const double Border = 3;

    /// <summary>Draws a line.</summary>
    public static LineDrawings Of(SheetContent sheet)
    {
        var measure = new TextMeasure();
        var line = measure.Printable(sheet.Line);
        var strip = StripDrawing.Of(sheet, measure, Width).Skip(1).ToList();
        var drawings = new List<LineDrawing>
        {
            Drawn("strip", StripWords.Heading(sheet), strip.Sum(block => block.Height), (canvas, top) =>
            {
                foreach (var block in strip)
                {
                    block.Draw(canvas, top);
                    top += block.Height;
                }
            }),
        };
        drawings.AddRange(ShapeViews.Alone(sheet, measure, Width, MostHeight)
            .Select(
                view => Drawn(view.Name, DrawingWords.OfViewAlone(sheet, view.Caption), view.Height, view.Draw)));
        return new([.. drawings], [.. measure.Missing]);

        LineDrawing Drawn(string name, string words, double height, Action<Canvas, double> draw)
        {
            var ink = new SvgPage();
            draw(new Canvas(ink, Border, Width), Border);
            return new(name, SvgFile.Of(
                $"{line}: {name}",
                DrawingWords.OfFile(sheet, words),
                Width + (2 * Border),
                height + (2 * Border),
                ink));
        }
    }
}
