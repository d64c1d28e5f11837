using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.FullSize;

/// <summary>A bar of exactly 100 mm, with the words that say what it proves.</summary>
internal static class ProvingBar
{
    private const double BarHeight = 2.4;
    private const double Division = 10;
    private const double Gap = 3;

    /// <summary>Length of the bar.</summary>
    public static Length Length { get; } = Length.FromMillimetres(100);

    /// <summary>The bar with its words to the right.</summary>
    /// <param name="notation">Of the sheet.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">For both.</param>
    public static Block Of(LengthNotation notation, TextMeasure measure, double width)
    {
        var style = TextStyle.Body;
        var textLeft = Length.Millimetres + Gap;
        var lines = measure.Wrap(FullSizeWords.ProvingBar(Length, notation), style, width - textLeft);
        var height = Math.Max(BarHeight, lines.Count * style.LineHeight) + 1;
        return new(height, (canvas, top) =>
        {
            var y = top + ((height - BarHeight) / 2);
            for (var x = 0.0; x < Length.Millimetres; x += 2 * Division)
            {
                canvas.Black(x, y, Division, BarHeight);
            }

            canvas.Box(0, y, Length.Millimetres, BarHeight, Canvas.Thin);
            for (var i = 0; i < lines.Count; i++)
            {
                canvas.Text(lines[i], style, textLeft, top + 0.4 + style.Ascent + (i * style.LineHeight));
            }
        });
    }
}
