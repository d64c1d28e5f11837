using System.Buffers.Binary;

namespace BendSheet.Sheets.Fonts;

/// <summary>
/// Which glyph a character prints with: a font's <c>cmap</c> subtable of format 4 (OpenType 1.9, "cmap"), which covers the
/// characters up to U+FFFF.
/// </summary>
internal sealed class CharacterMap
{
    private readonly byte[] _font;
    private readonly int _endCodes;
    private readonly int _segmentBytes;

    /// <summary>The map of a TrueType file; writing to the map writes into <paramref name="font"/>.</summary>
    /// <exception cref="InvalidDataException">The font has no Windows map of format 4.</exception>
    public CharacterMap(byte[] font)
    {
        const int Windows = 3;
        const int UnicodeBmp = 1;
        const int SegmentMapping = 4;

        _font = font;
        var cmap = TrueType.TableOffset(font, "cmap"u8);
        var subtableCount = TrueType.UInt16(font, cmap + 2);
        for (var record = cmap + 4; record < cmap + 4 + (8 * subtableCount); record += 8)
        {
            var subtable = cmap + (int)TrueType.UInt32(font, record + 4);
            if (TrueType.UInt16(font, record) == Windows
                && TrueType.UInt16(font, record + 2) == UnicodeBmp
                && TrueType.UInt16(font, subtable) == SegmentMapping)
            {
                _segmentBytes = TrueType.UInt16(font, subtable + 6);
                _endCodes = subtable + 14;
                return;
            }
        }

        throw new InvalidDataException("The font has no character map of format 4.");
    }

    /// <summary>The glyph's number; 0 when the font has none.</summary>
    public ushort this[char character]
    {
        get
        {
            var (delta, entry) = Find(character);
            if (entry is null)
            {
                return delta is null ? (ushort)0 : (ushort)(character + delta);
            }

            var glyph = TrueType.UInt16(_font, entry.Value);
            return glyph == 0 ? (ushort)0 : (ushort)(glyph + delta!.Value);
        }
    }

    /// <summary>Lets a character print with another glyph.</summary>
    /// <exception cref="InvalidDataException">The character lies in a segment that has no entry of its own for each character.</exception>
    public void Replace(char character, ushort glyph)
    {
        var (delta, entry) = Find(character);
        if (entry is null)
        {
            throw new InvalidDataException("The font's map has no single entry for this character.");
        }

        BinaryPrimitives.WriteUInt16BigEndian(_font.AsSpan(entry.Value), (ushort)(glyph - delta!.Value));
    }

    /// <summary>The segment's delta (none: no segment) and the place of the character's own entry (none: the delta is all).</summary>
    private (ushort? Delta, int? Entry) Find(char character)
    {
        var startCodes = _endCodes + _segmentBytes + 2;
        var segment = FirstSegmentUpTo(character);
        var start = segment < _segmentBytes ? TrueType.UInt16(_font, startCodes + segment) : char.MaxValue + 1;
        if (start > character)
        {
            return (null, null);
        }

        var delta = TrueType.UInt16(_font, startCodes + _segmentBytes + segment);
        var rangeOffset = startCodes + (2 * _segmentBytes) + segment;
        var range = TrueType.UInt16(_font, rangeOffset);
        return (delta, range == 0 ? null : rangeOffset + range + (2 * (character - start)));
    }

    /// <summary>The place of the first segment that does not end before the character; they lie in order.</summary>
    private int FirstSegmentUpTo(char character)
    {
        var (low, high) = (0, _segmentBytes / 2);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = TrueType.UInt16(_font, _endCodes + (2 * middle)) < character ? (middle + 1, high) : (low, middle);
        }

        return 2 * low;
    }
}
