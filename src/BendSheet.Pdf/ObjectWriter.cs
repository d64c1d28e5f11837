using System.IO.Compression;
using System.Text;
using BendSheet.Core.Sheet;

namespace BendSheet.Pdf;

/// <summary>
/// Writes a PDF file object by object, remembers where each begins, and closes it with the table of them (ISO 32000-1, 7.5).
/// </summary>
/// <param name="expectedSize">In bytes; the file may become larger.</param>
/// <param name="compression">Of streams; with none they stay readable.</param>
internal sealed class ObjectWriter(int expectedSize, CompressionLevel compression)
{
    private readonly SyntaxWriter _file = new(expectedSize);
    private readonly List<int> _offsets = [0];

    /// <summary>Writes what stands before the objects.</summary>
    public void Header(ReadOnlySpan<byte> header) => _file.Raw(header);

    /// <summary>Opens the next object; they come in the order of their numbers, from 1.</summary>
    /// <returns>Where its body goes.</returns>
    public SyntaxWriter Begin(int number)
    {
        _offsets.Add(_file.Length);
        return _file.Integer(number).Raw(" 0 obj\n"u8);
    }

    public void End() => _file.Raw("\nendobj\n"u8);

    /// <summary>A stream object's body.</summary>
    /// <param name="beforeLength">The dictionary from its start to the number of its length.</param>
    /// <param name="afterLength">The entries after the length.</param>
    /// <param name="data">As it is to be read.</param>
    /// <param name="mayCompress">Not for data that has a filter, nor for what other programs look for in the file.</param>
    public void WriteStream(ReadOnlySpan<byte> beforeLength, ReadOnlySpan<byte> afterLength, ReadOnlySpan<byte> data, bool mayCompress)
    {
        if (data.StartsWith("/CIDInit"u8) && data.Contains((byte)'\r'))
        {
            // The one stream whose line ends are those of the platform: a font's map back to Unicode.
            data = Encoding.Latin1.GetBytes(Encoding.Latin1.GetString(data).Replace("\r", "", StringComparison.Ordinal));
        }

        var filter = ""u8;
        if (mayCompress && compression != CompressionLevel.NoCompression)
        {
            data = Flate.Packed(data, compression);
            filter = "/Filter/FlateDecode"u8;
        }

        _file.Raw(beforeLength).Integer(data.Length).Raw(filter).Raw(afterLength).Raw(">>\nstream\n"u8).Raw(data).Raw("\nendstream"u8);
    }

    /// <summary>The whole file, its identifier made from all that is before it.</summary>
    /// <param name="root">The trailer's entry for the catalogue, as <c>/Root 2 0 R</c>.</param>
    /// <param name="info">The trailer's entry for the document information.</param>
    public ReadOnlyMemory<byte> Close(ReadOnlySpan<byte> root, ReadOnlySpan<byte> info)
    {
        var table = _file.Length;
        _file.Raw("xref\n0 "u8).Integer(_offsets.Count).Raw("\n0000000000 65535 f \n"u8);
        for (var number = 1; number < _offsets.Count; number++)
        {
            _file.Integer(_offsets[number], digits: 10).Raw(" 00000 n \n"u8);
        }

        var id = ContentHash.Of(_file.Written.Span);
        _file.Raw("trailer\n<</Size "u8).Integer(_offsets.Count).Raw(root).Raw(info)
            .Raw("/ID[<"u8).Raw(id).Raw("><"u8).Raw(id).Raw(">]>>\nstartxref\n"u8).Integer(table).Raw("\n%%EOF\n"u8);
        return _file.Written;
    }
}
