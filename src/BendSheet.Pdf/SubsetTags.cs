namespace BendSheet.Pdf;

/// <summary>
/// The six letters before the name of a font that is embedded in part (ISO 32000-1, 9.6.4). PDFsharp picks them at random; here
/// the first font of a file gets AAAAAA, the second AAAAAB.
/// </summary>
internal sealed class SubsetTags
{
    private const int TagLength = 6;

    private readonly List<byte[]> _lots = [];

    /// <summary>A font's dictionary with its tag replaced; as it was when it has none.</summary>
    public ReadOnlySpan<byte> MadeRegular(ReadOnlySpan<byte> dictionary)
    {
        var tag = TagIn(dictionary, "/FontName/"u8) ?? TagIn(dictionary, "/BaseFont/"u8);
        if (tag is null)
        {
            return dictionary;
        }

        var regular = dictionary.ToArray();
        Regular(IndexOf(regular.AsSpan(tag.Value, TagLength))).CopyTo(regular.AsSpan(tag.Value));
        return regular;
    }

    private static int? TagIn(ReadOnlySpan<byte> dictionary, ReadOnlySpan<byte> key) =>
        dictionary.IndexOf(key) is >= 0 and var at && dictionary[at + key.Length + TagLength] == '+' ? at + key.Length : null;

    private static byte[] Regular(int index)
    {
        var letters = new byte[TagLength];
        for (var at = TagLength - 1; at >= 0; at--)
        {
            letters[at] = (byte)('A' + (index % 26));
            index /= 26;
        }

        return letters;
    }

    private int IndexOf(ReadOnlySpan<byte> lot)
    {
        for (var index = 0; index < _lots.Count; index++)
        {
            if (lot.SequenceEqual(_lots[index]))
            {
                return index;
            }
        }

        _lots.Add(lot.ToArray());
        return _lots.Count - 1;
    }
}
