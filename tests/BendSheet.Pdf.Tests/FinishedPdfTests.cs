using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using BendSheet.Sheets.Fonts;

using PdfSharp.Drawing;
using UglyToad.PdfPig;

namespace BendSheet.Pdf.Tests;

#pragma warning disable MA0009 // The expressions only read files that the test itself has made.

public class FinishedPdfTests
{
    private static readonly XNamespace DublinCore = "http://purl.org/dc/elements/1.1/";

    [Fact]
    public void The_same_document_gives_the_same_bytes() =>
        Assert.Equal(FinishedPdf.Of(Drawn.Varied(), "Twice"), FinishedPdf.Of(Drawn.Varied(), "Twice"));

    [Fact]
    public void Documents_made_in_parallel_are_all_the_same()
    {
        var expected = FinishedPdf.Of(Drawn.Varied(), "Many");
        var files = new byte[64][];
        Parallel.For(0, files.Length, new ParallelOptions { MaxDegreeOfParallelism = 8 },
            number => files[number] = FinishedPdf.Of(Drawn.Varied(), "Many"));

        Assert.All(files, file => Assert.Equal(expected, file));
    }

    [Fact]
    public void Another_text_gives_another_identifier()
    {
        var first = Identifier(Drawn.File(graphics => graphics.DrawString("1", Typeface.Font(Face.At(0), 4), XBrushes.Black, 10, 10)));
        var second = Identifier(Drawn.File(graphics => graphics.DrawString("2", Typeface.Font(Face.At(0), 4), XBrushes.Black, 10, 10)));

        Assert.NotEqual(first, second, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_table_points_at_every_object(bool uncompressed)
    {
        var file = uncompressed ? FinishedPdf.Uncompressed(Drawn.Varied(), "Table") : FinishedPdf.Of(Drawn.Varied(), "Table");
        var text = Encoding.Latin1.GetString(file);

        var end = Regex.Match(text, @"\nstartxref\n(\d+)\n%%EOF\n$");
        Assert.True(end.Success);
        var table = text[Number(end.Groups[1])..];
        var head = Regex.Match(table, @"^xref\n0 (\d+)\n0000000000 65535 f \n((?:\d{10} 00000 n \n)+)trailer\n");
        Assert.True(head.Success);
        var offsets = Regex.Matches(head.Groups[2].Value, @"(\d{10}) 00000 n \n").Select(entry => Number(entry.Groups[1])).ToArray();

        Assert.Equal(Number(head.Groups[1]) - 1, offsets.Length);
        Assert.All(offsets.Index(), entry => Assert.StartsWith($"{entry.Index + 1} 0 obj\n<<", text[entry.Item..]));
        Assert.Equal(offsets.Length, Regex.Count(text, @"(?<=\n)\d+ 0 obj\n"));
        Assert.Contains($"/Size {offsets.Length + 1}/", table, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Every_stream_is_as_long_as_it_says(bool uncompressed)
    {
        var file = uncompressed ? FinishedPdf.Uncompressed(Drawn.Varied(), "Streams") : FinishedPdf.Of(Drawn.Varied(), "Streams");
        var text = Encoding.Latin1.GetString(file);
        var streams = Regex.Matches(text, @"/Length (\d+)[^>]*>>\nstream\n");

        Assert.Equal(10, streams.Count); // three pages, three fonts with their maps to Unicode, the metadata
        Assert.All(streams, stream =>
            Assert.StartsWith("\nendstream\nendobj\n", text[(stream.Index + stream.Length + Number(stream.Groups[1]))..]));
    }

    [Fact]
    public void Compressed_streams_hold_what_the_readable_ones_show()
    {
        var packed = Streams(FinishedPdf.Of(Drawn.Varied(), "Both"));
        var plain = Streams(FinishedPdf.Uncompressed(Drawn.Varied(), "Both"));

        Assert.Equal(plain.Count, packed.Count);
        Assert.All(packed.Zip(plain), pair =>
            Assert.Equal(
                pair.Second.Data, pair.First.Dictionary.Contains("/FlateDecode", StringComparison.Ordinal)
                    ? Unpacked(pair.First.Data)
                    : pair.First.Data));
        Assert.All(plain, stream => Assert.DoesNotContain("/Filter", stream.Dictionary, StringComparison.Ordinal));
        Assert.Single(packed, stream => !stream.Dictionary.Contains("/FlateDecode", StringComparison.Ordinal)); // the metadata
    }

    [Theory]
    [InlineData("Left & right <front>", "Left & right <front>")]
    [InlineData("]]> \"quoted\" <?xpacket end=\"w\"?>", "]]> \"quoted\" <?xpacket end=\"w\"?>")]
    [InlineData("Ø ½ Линия γ 管 🔧", "Ø ½ Линия γ 管 🔧")]
    [InlineData("bell\u0007 \uffff", "bell\ufffd \ufffd")]
    [InlineData("two\nlines", "two lines")]
    [InlineData("", "")]
    public void Any_title_makes_well_formed_metadata(string title, string expected)
    {
        var metadata = Metadata(FinishedPdf.Of(Drawn.Varied(), title));

        Assert.Equal(expected, metadata.Descendants(DublinCore + "title").Single().Value);
        Assert.Empty(metadata.Descendants(DublinCore + "creator"));
    }

    [Fact]
    public void Half_a_surrogate_pair_in_the_title_makes_well_formed_metadata() =>
        Assert.Equal("lone\ufffd", Metadata(FinishedPdf.Of(Drawn.Varied(), "lone\ud83d")).Descendants(DublinCore + "title").Single().Value);

    [Fact]
    public void Metadata_claims_no_conformance()
    {
        var metadata = Metadata(FinishedPdf.Of(Drawn.Varied(), "Plain"));

        Assert.DoesNotContain(metadata.Descendants(), element =>
            element.Name.NamespaceName.Contains("pdfa", StringComparison.Ordinal)
                || element.Name.NamespaceName.Contains("pdfua", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_in_the_file_is_of_today()
    {
        var file = Encoding.Latin1.GetString(FinishedPdf.Uncompressed(Drawn.Varied(), "Timeless"));

        Assert.Equal(["(D:20000101000000+00'00')"], Regex.Matches(file, @"\(D:[^)]*\)").Select(date => date.Value), StringComparer.Ordinal);
        Assert.DoesNotContain("/NM", file, StringComparison.Ordinal);
        Assert.DoesNotContain("uuid:", file, StringComparison.Ordinal);
    }

    [Fact]
    public void An_independent_reader_finds_title_pages_and_bookmarks()
    {
        using var pdf = PdfDocument.Open(FinishedPdf.Of(Drawn.Varied(), "Ø & Co"));

        Assert.Equal("Ø & Co", pdf.Information.Title);
        Assert.Equal("BendSheet", pdf.Information.Creator);
        Assert.Null(pdf.Information.Author);
        Assert.Equal(3, pdf.NumberOfPages);
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        Assert.Equal(
            ["Page 1 (of 3)", "Page 2 (of 3)", "Page 3 (of 3)"], bookmarks.GetNodes().Select(node => node.Title), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("(Brackets) and \\backslashes\\ (")]
    [InlineData("Left front)/Author(nobody)>>")]
    [InlineData("endstream\nendobj\n")]
    [InlineData("Линия 🔧")]
    public void Any_title_comes_back_from_the_document_information(string title)
    {
        var document = Drawn.Varied();
        document.Outlines.Add(title, document.Pages[0]);
        using var pdf = PdfDocument.Open(FinishedPdf.Of(document, title));

        Assert.Equal(title, pdf.Information.Title);
        Assert.Null(pdf.Information.Author);
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        Assert.Equal(title, bookmarks.GetNodes().Last().Title);
    }

    [Fact]
    public void The_viewer_is_asked_to_print_at_full_size() =>
        Assert.Contains("/PrintScaling/None", Encoding.Latin1.GetString(Drawn.File(_ => { })), StringComparison.Ordinal);

    private static int Number(Group digits) => int.Parse(digits.Value, CultureInfo.InvariantCulture);

    private static string Identifier(byte[] file)
    {
        var id = Regex.Match(Encoding.Latin1.GetString(file), @"/ID\[<([0-9a-f]{32})><\1>\]");
        Assert.True(id.Success);
        return id.Groups[1].Value;
    }

    private static XDocument Metadata(byte[] file)
    {
        var stream = Streams(file).Single(stream => stream.Dictionary.Contains("/Type/Metadata", StringComparison.Ordinal));
        return XDocument.Parse(Encoding.UTF8.GetString(stream.Data));
    }

    private static List<(string Dictionary, byte[] Data)> Streams(byte[] file) =>
        Regex.Matches(Encoding.Latin1.GetString(file), @"\n(<<[^\n]*/Length (\d+)[^\n]*>>)\nstream\n")
            .Select(head => (head.Groups[1].Value, file.AsSpan(head.Index + head.Length, Number(head.Groups[2])).ToArray()))
            .ToList();

    private static byte[] Unpacked(byte[] data)
    {
        using var unpacked = new MemoryStream();
        using var zlib = new System.IO.Compression.ZLibStream(new MemoryStream(data), System.IO.Compression.CompressionMode.Decompress);
        zlib.CopyTo(unpacked);
        return unpacked.ToArray();
    }
}
