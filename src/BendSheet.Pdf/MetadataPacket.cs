using System.Text;

namespace BendSheet.Pdf;

/// <summary>
/// The document's metadata as XMP (ISO 16684-1), instead of PDFsharp's, which does not escape the title. It names no author
/// and claims no conformance.
/// </summary>
internal static class MetadataPacket
{
    /// <summary>The packet as UTF-8.</summary>
    /// <param name="title">Any text; what XML cannot hold becomes U+FFFD.</param>
    /// <param name="creator">The program that the pages come from.</param>
    /// <param name="producer">The library that wrote them.</param>
    /// <param name="created">Universal time.</param>
    public static byte[] Of(string title, string creator, string producer, DateTime created) =>
        Encoding.UTF8.GetBytes(FormattableString.Invariant(
        $"""
        <?xpacket begin="{'\uFEFF'}" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
        <dc:format>application/pdf</dc:format>
        <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{Escaped(title)}</rdf:li></rdf:Alt></dc:title>
        <xmp:CreatorTool>{Escaped(creator)}</xmp:CreatorTool>
        <xmp:CreateDate>{created:yyyy-MM-ddTHH:mm:ssZ}</xmp:CreateDate>
        <pdf:Producer>{Escaped(producer)}</pdf:Producer>
        </rdf:Description>
        </rdf:RDF>
        </x:xmpmeta>
        <?xpacket end="r"?>
        """).ReplaceLineEndings("\n"));

    private static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            _ = rune.Value switch
            {
                '&' => escaped.Append("&amp;"),
                '<' => escaped.Append("&lt;"),
                '>' => escaped.Append("&gt;"),
                '\t' or '\n' or '\r' => escaped.Append(' '),
                < ' ' or 0xFFFE or 0xFFFF => escaped.Append('\uFFFD'),
                _ => escaped.Append(rune),
            };
        }

        return escaped.ToString();
    }
}
