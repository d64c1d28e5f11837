using System.Collections.Immutable;
using BendSheet.Core.Picture;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Picture;

namespace BendSheet.Sheets;

/// <summary>The car in one picture, alone as SVG 1.1, in millimetres, with its key.</summary>
/// <param name="Svg">The whole file; the same bytes for the same content.</param>
/// <param name="MissingCharacters">Characters that the font lacks, drawn as a stand-in, each as it reads in a sentence.</param>
public sealed record CarDrawing(ReadOnlyMemory<byte> Svg, ImmutableArray<string> MissingCharacters)
{
    /// <summary>Around the drawing, white.</summary>
    private const double Border = 3;

    /// <summary>Width and most height of the views: those of an A4 page, which lies across where much is drawn.</summary>
    private static readonly (double Width, double Height) Upright = (190, 190);
    private static readonly (double Width, double Height) Across = (277, 175);

    /// <summary>Draws it.</summary>
    public static CarDrawing Of(CarPicture picture)
    {
        ArgumentNullException.ThrowIfNull(picture);
        var measure = new TextMeasure();
        var (width, most) = PicturePages.IsCrowded(picture) ? Across : Upright;
        var blocks = PicturePages.Alone(picture, measure, width, most);
        var ink = new SvgPage();
        var (canvas, top) = (new Canvas(ink, Border, width), Border);
        foreach (var block in blocks)
        {
            block.Draw(canvas, top);
            top += block.Height;
        }

        var svg = SvgFile.Of(
            measure.Printable(PictureWords.Heading(picture)),
            PictureWords.Alternative(picture, denominator: null),
            width + (2 * Border),
            top + Border,
            ink);
        return new(svg, [.. measure.Missing]);
    }
}
