using System.Buffers.Binary;

namespace BendSheet.Sheets.Fonts;

/// <summary>
/// A TrueType file's table directory and its numbers, which are big-endian (OpenType 1.9, "Organization of an OpenType font").
/// </summary>
internal static class TrueType
{
    /// <summary>Where a table begins.</summary>
    /// <param name="font">A whole TrueType file.</param>
    /// <param name="tag">Four letters, such as <c>cmap</c>.</param>
    /// <exception cref="InvalidDataException">The font has no such table.</exception>
    public static int TableOffset(ReadOnlySpan<byte> font, ReadOnlySpan<byte> tag)
    {
        var tableCount = UInt16(font, 4);
        for (var entry = 12; entry < 12 + (16 * tableCount); entry += 16)
        {
            if (font.Slice(entry, 4).SequenceEqual(tag))
            {
                return (int)UInt32(font, entry + 8);
            }
        }

        throw new InvalidDataException("The font lacks a table.");
    }

    public static ushort UInt16(ReadOnlySpan<byte> font, int offset) => BinaryPrimitives.ReadUInt16BigEndian(font[offset..]);

    public static uint UInt32(ReadOnlySpan<byte> font, int offset) => BinaryPrimitives.ReadUInt32BigEndian(font[offset..]);
}
