using System.Buffers.Text;

namespace BendSheet.Pdf;

/// <summary>
/// The parts of a file as PDFsharp writes it with no compression: one cross-reference table at the end, every object in
/// use, every stream's length a plain number in its dictionary.
/// </summary>
internal readonly ref struct RawPdf
{
    private readonly ReadOnlySpan<byte> _file;
    private readonly int[] _offsets;

    /// <exception cref="InvalidDataException">The file is not of that form: PDFsharp has changed.</exception>
    public RawPdf(ReadOnlySpan<byte> file)
    {
        _file = file;
        var end = file.LastIndexOf("startxref\n"u8);
        var table = end < 0 ? -1 : Number(file[(end + "startxref\n".Length)..]);
        if (table < 0 || table > end || !file[table..].StartsWith("xref\n0 "u8))
        {
            throw Unexpected("no cross-reference table");
        }

        // "0 23\n", then 23 entries of 20 bytes, the first for the free object 0.
        var head = file[(table + "xref\n".Length)..];
        var count = Number(head["0 ".Length..]);
        var entries = head[(head.IndexOf((byte)'\n') + 1)..];
        _offsets = new int[count];
        for (var number = 1; number < count; number++)
        {
            var entry = entries.Slice(20 * number, 20);
            _offsets[number] = Number(entry);
            if (entry[17] != 'n' || _offsets[number] <= _offsets[number - 1])
            {
                throw Unexpected("objects are not in order");
            }
        }

        _offsets[0] = table; // so that an object ends where the next one starts, the last one at the table
        Trailer = entries[(20 * count)..(end - (file.Length - entries.Length))];
    }

    /// <summary>One more than the highest object number.</summary>
    public int Count => _offsets.Length;

    /// <summary>The version and the mark of a binary file.</summary>
    public ReadOnlySpan<byte> Header => _file[.._offsets[1]];

    /// <summary>From <c>trailer</c> on.</summary>
    public ReadOnlySpan<byte> Trailer { get; }

    /// <summary>What stands between <c>obj</c> and <c>endobj</c>, numbers from 1.</summary>
    public ReadOnlySpan<byte> Body(int number)
    {
        var body = _file[_offsets[number].._offsets[(number + 1) % Count]];
        var start = body.IndexOf(" obj\n"u8) + " obj\n".Length;
        if (!body.EndsWith("\nendobj\n"u8))
        {
            throw Unexpected("an object has no end");
        }

        return body[start..^"\nendobj\n".Length];
    }

    /// <summary>Divides a stream's body: the dictionary up to the number of its length, the rest of the dictionary, the data.</summary>
    /// <returns>Whether the object is a stream.</returns>
    public static bool TryStream(
        ReadOnlySpan<byte> body, out ReadOnlySpan<byte> beforeLength, out ReadOnlySpan<byte> afterLength, out ReadOnlySpan<byte> data)
    {
        beforeLength = afterLength = data = default;
        if (!body.EndsWith("\nendstream"u8))
        {
            return false;
        }

        // The dictionaries of streams hold nothing that a person has typed, so the words can be looked for.
        var keyword = body.IndexOf(">>\nstream\n"u8);
        var length = body.IndexOf("/Length "u8) + "/Length ".Length;
        var dataStart = keyword + ">>\nstream\n".Length;
        if (keyword < 0 || length < "/Length ".Length || length > keyword)
        {
            throw Unexpected("a stream has no length");
        }

        beforeLength = body[..length];
        var value = body[length..keyword];
        afterLength = value.IndexOfAnyExceptInRange((byte)'0', (byte)'9') is >= 0 and var digits ? value[digits..] : [];
        data = body.Slice(dataStart, Number(value));
        return true;
    }

    private static int Number(ReadOnlySpan<byte> text) =>
        Utf8Parser.TryParse(text, out int value, out _) ? value : throw Unexpected("a number is missing");

    private static InvalidDataException Unexpected(string what) => new($"PDFsharp wrote a file that cannot be finished: {what}.");
}
