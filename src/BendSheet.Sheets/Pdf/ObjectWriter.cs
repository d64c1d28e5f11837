using System.Globalization;
using System.IO.Compression;
using System.Text;
using BendSheet.Core.Sheet;

namespace BendSheet.Sheets.Pdf;

/// <summary>Writes a PDF file object by object, remembers where each begins, and closes it with the table of them (ISO 32000-1, 7.5).</summary>
internal sealed class ObjectWriter : IDisposable
{
    private readonly MemoryStream _file;
    private readonly MemoryStream _packed = new();
    private readonly List<long> _offsets = [0];
    private readonly CompressionLevel _compression;

    /// <param name="expectedSize">In bytes; the file may become larger.</param>
    /// <param name="compression">Of streams; with none they stay readable.</param>
    public ObjectWriter(int expectedSize, CompressionLevel compression)
    {
        _file = new MemoryStream(expectedSize);
        _compression = compression;
    }

    public void Write(ReadOnlySpan<byte> bytes) => _file.Write(bytes);

    /// <summary>Opens the next object; they come in the order of their numbers, from 1.</summary>
    public void Begin(int number)
    {
        _offsets.Add(_file.Length);
        Write($"{number} 0 obj\n");
    }

    public void End() => Write("\nendobj\n"u8);

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
        if (mayCompress && _compression != CompressionLevel.NoCompression)
        {
            _packed.SetLength(0);
            using (var zlib = new ZLibStream(_packed, _compression, leaveOpen: true))
            {
                zlib.Write(data);
            }

            data = _packed.GetBuffer().AsSpan(0, (int)_packed.Length);
            filter = "/Filter/FlateDecode"u8;
        }

        Write(beforeLength);
        Write($"{data.Length}");
        Write(filter);
        Write(afterLength);
        Write(">>\nstream\n"u8);
        Write(data);
        Write("\nendstream"u8);
    }

    /// <summary>The whole file, its identifier made from all that is before it.</summary>
    /// <param name="root">The trailer's entry for the catalogue, as <c>/Root 2 0 R</c>.</param>
    /// <param name="info">The trailer's entry for the document information.</param>
    public byte[] Close(string root, string info)
    {
        var table = _file.Length;
        Write($"xref\n0 {_offsets.Count}\n0000000000 65535 f \n");
        for (var number = 1; number < _offsets.Count; number++)
        {
            Write($"{_offsets[number]:D10} 00000 n \n");
        }

        var id = ContentHash.Of(_file.GetBuffer().AsSpan(0, (int)_file.Length));
        Write($"trailer\n<</Size {_offsets.Count}{root}{info}/ID[<{id}><{id}>]>>\nstartxref\n{table}\n%%EOF\n");
        return _file.ToArray();
    }

    public void Dispose()
    {
        _file.Dispose();
        _packed.Dispose();
    }

    private void Write(FormattableString text) => Write(Encoding.ASCII.GetBytes(text.ToString(CultureInfo.InvariantCulture)));
}
