using System.IO.Compression;
using PdfSharp.Pdf;

namespace BendSheet.Pdf;

/// <summary>
/// A drawn document as the bytes of a file, which depend on nothing but the document: not on the time, the time zone, the
/// run or the way the program was compiled. What PDFsharp makes up at random is made regular, its streams are compressed
/// here (its own way leaves out the checksum at the end), and its metadata is written anew.
/// </summary>
internal static class FinishedPdf
{
    private const string Creator = "BendSheet";

    /// <summary>What four faces take before they are compressed, ordinarily, in bytes.</summary>
    private const int SizeOfFonts = 256 * 1024;

    /// <summary>What a page takes beside its content, ordinarily, in bytes.</summary>
    private const int SizeOfPage = 512;

    /// <summary>A file must not know today's date, so all have the same.</summary>
    private static readonly DateTime Created = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <summary>The file.</summary>
    /// <param name="document">Drawn to the end, every graphics object disposed of. It cannot be changed afterwards.</param>
    /// <param name="title">What a viewer shows in its title bar. Any text.</param>
    /// <exception cref="InvalidDataException">PDFsharp wrote something unknown: a defect, or another version of it.</exception>
    public static byte[] Of(PdfDocument document, string title) => Of(document, title, CompressionLevel.Fastest, structure: null).ToArray();

    /// <summary>The file with its structure.</summary>
    /// <param name="document">Its pages have their content; the catalogue says that there is a structure.</param>
    /// <param name="title">What a viewer shows in its title bar. Any text.</param>
    /// <param name="contentSize">Of all pages together, in bytes.</param>
    /// <param name="structure">Of the whole document.</param>
    internal static ReadOnlyMemory<byte> Of(PdfDocument document, string title, int contentSize, StructureTree structure) =>
        Of(document, title, CompressionLevel.Fastest, structure, contentSize);

    /// <summary>The same file with readable streams, to be compared: another runtime may compress to other bytes.</summary>
    /// <inheritdoc cref="Of(PdfDocument, string)"/>
    public static byte[] Uncompressed(PdfDocument document, string title) =>
        Of(document, title, CompressionLevel.NoCompression, structure: null).ToArray();

    private static ReadOnlyMemory<byte> Of(
        PdfDocument document, string title, CompressionLevel compression, StructureTree? structure, int contentSize = 0)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(title);
        document.Info.Title = title;
        document.Info.Creator = Creator;
        document.Info.CreationDate = Created;
        document.ViewerPreferences.DisplayDocTitle = true;
        document.ViewerPreferences.Elements.SetName("/PrintScaling", "/None"); // full size, where the viewer heeds it
        document.Options.CompressContentStreams = false;
        document.Options.NoCompression = true;

        // Room enough from the start: each large block that is outgrown costs a full garbage collection.
        using var written = new MemoryStream(contentSize + SizeOfFonts + (document.PageCount * SizeOfPage));
        document.Save(written, closeStream: false);
        var raw = new RawPdf(written.GetBuffer().AsSpan(0, (int)written.Length));
        var metadata = MetadataPacket.Of(title, Creator, document.Info.Producer, Created);
        var writer = new ObjectWriter((int)written.Length + (structure?.ExpectedSize ?? 0), compression);
        return Finish(raw, metadata, structure, [.. document.Pages.Cast<PdfPage>().Select(page => page.Reference!.ObjectNumber)], writer);
    }

    private static ReadOnlyMemory<byte> Finish(
        RawPdf raw, ReadOnlySpan<byte> metadata, StructureTree? structure, int[] pages, ObjectWriter writer)
    {
        var root = 0;
        var tags = new SubsetTags();
        writer.Header(raw.Header);
        writer.Header(OwnMark.Line);
        for (var number = 1; number < raw.Count; number++)
        {
            var body = raw.Body(number);
            var syntax = writer.Begin(number);
            if (body.StartsWith("<</Type/Metadata"u8))
            {
                writer.WriteStream("<</Type/Metadata/Subtype/XML/Length "u8, [], metadata, mayCompress: false);
            }
            else if (structure is not null && body.StartsWith("<</Type/StructTreeRoot"u8))
            {
                root = number;
                structure.WriteRoot(syntax, raw.Count);
            }
            else if (RawPdf.TryStream(body, out var before, out var after, out var data))
            {
                writer.WriteStream(before, after, data, mayCompress: before.IndexOf("/Filter"u8) < 0 && after.IndexOf("/Filter"u8) < 0);
            }
            else if (body.StartsWith("<</Type/Font"u8))
            {
                syntax.Raw(tags.MadeRegular(body));
            }
            else
            {
                syntax.Raw(body);
            }

            writer.End();
        }

        structure?.WriteElements(writer, raw.Count, root, pages);
        return writer.Close(Reference(raw.Trailer, "/Root "u8), Reference(raw.Trailer, "/Info "u8));
    }

    /// <summary>The object that the trailer names, as <c>/Root 2 0 R</c>.</summary>
    private static ReadOnlySpan<byte> Reference(ReadOnlySpan<byte> trailer, ReadOnlySpan<byte> key)
    {
        var entry = trailer[Math.Max(0, trailer.IndexOf(key))..];
        return entry.IndexOf(" R"u8) is > 0 and var end && entry.StartsWith(key)
            ? entry[..(end + " R".Length)]
            : throw new InvalidDataException("PDFsharp wrote a file without a catalogue.");
    }
}
