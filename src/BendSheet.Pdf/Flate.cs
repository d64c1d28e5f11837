using System.IO.Compression;

namespace BendSheet.Pdf;

/// <summary>Compressed data as the filter FlateDecode reads it (ISO 32000-1, 7.4.4), its checksum at the end.</summary>
internal static class Flate
{
    /// <summary>The data, compressed.</summary>
    public static byte[] Packed(ReadOnlySpan<byte> data, CompressionLevel level = CompressionLevel.Fastest)
    {
        using var packed = new MemoryStream(data.Length / 4);
        using (var zlib = new ZLibStream(packed, level, leaveOpen: true))
        {
            zlib.Write(data);
        }

        return packed.ToArray();
    }
}
