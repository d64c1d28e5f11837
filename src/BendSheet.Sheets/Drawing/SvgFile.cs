using System.Text;

namespace BendSheet.Sheets.Drawing;

/// <summary>An SVG as a file of its own (SVG 1.1): one user unit is a millimetre, the ground is white.</summary>
public static class SvgFile
{
    /// <summary>What every drawing of this program begins with, and none that another program has saved again.</summary>
    public static ReadOnlySpan<byte> Begins => "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!-- Drawn by BendSheet -->\n"u8;

    /// <summary>The whole file in UTF-8.</summary>
    /// <param name="title">What it shows, in a few words.</param>
    /// <param name="description">The same for somebody who cannot see it.</param>
    /// <param name="width">In millimetres.</param>
    /// <param name="height">In millimetres.</param>
    /// <param name="ink">What was drawn.</param>
    internal static byte[] Of(string title, string description, double width, double height, SvgPage ink)
    {
        var head = FormattableString.Invariant(
            $"""
            <svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="{width:0.###}mm" height="{height:0.###}mm" viewBox="0 0 {width:0.###} {height:0.###}" role="img" aria-labelledby="title desc" font-family="Inter, 'DejaVu Sans', Arial, sans-serif">
            <title id="title">{SvgPage.Escaped(title)}</title>
            <desc id="desc">{SvgPage.Escaped(description)}</desc>
            <rect width="{width:0.###}" height="{height:0.###}" fill="white"/>

            """).ReplaceLineEndings("\n");
        return [.. Begins, .. Encoding.UTF8.GetBytes(head + ink.Elements + "</svg>\n")];
    }
}
