using System.Buffers;
using System.Buffers.Text;
using System.Text;

namespace BendSheet.Pdf;

/// <summary>Writes the syntax of a PDF (ISO 32000-1, 7.2 and 7.3): words, numbers, texts as glyphs.</summary>
/// <param name="expectedSize">In bytes; it may become more.</param>
internal sealed class SyntaxWriter(int expectedSize)
{
    /// <summary>Four decimals: on a page, a ten thousandth of a millimetre.</summary>
    private const int PartsOfOne = 10_000;

    /// <summary>Longer than any number.</summary>
    private const int LongestNumber = 32;

    private readonly ArrayBufferWriter<byte> _bytes = new(expectedSize);

    /// <summary>How much has been written, in bytes.</summary>
    public int Length => _bytes.WrittenCount;

    /// <summary>What has been written.</summary>
    public ReadOnlyMemory<byte> Written => _bytes.WrittenMemory;

    /// <summary>Forgets what has been written, to begin anew in the same room.</summary>
    public void Clear() => _bytes.ResetWrittenCount();

    /// <summary>Writes what is syntax already.</summary>
    public SyntaxWriter Raw(ReadOnlySpan<byte> syntax)
    {
        _bytes.Write(syntax);
        return this;
    }

    /// <summary>Writes what is syntax already.</summary>
    /// <param name="syntax">ASCII.</param>
    public SyntaxWriter Raw(string syntax)
    {
        _bytes.Advance(Encoding.ASCII.GetBytes(syntax, _bytes.GetSpan(syntax.Length)));
        return this;
    }

    /// <summary>A whole number.</summary>
    public SyntaxWriter Integer(long value)
    {
        Utf8Formatter.TryFormat(value, _bytes.GetSpan(LongestNumber), out var length);
        _bytes.Advance(length);
        return this;
    }

    /// <summary>A whole number with zeros before it.</summary>
    public SyntaxWriter Integer(long value, byte digits)
    {
        Utf8Formatter.TryFormat(value, _bytes.GetSpan(LongestNumber), out var length, new('D', digits));
        _bytes.Advance(length);
        return this;
    }

    /// <summary>A number, rounded to four decimals, and a space.</summary>
    public SyntaxWriter Number(double value)
    {
        var span = _bytes.GetSpan(LongestNumber);
        var at = 0;
        var parts = (long)Math.Round(value * PartsOfOne);
        if (parts < 0)
        {
            span[at++] = (byte)'-';
            parts = -parts;
        }

        var (whole, rest) = Math.DivRem(parts, PartsOfOne);
        Utf8Formatter.TryFormat(whole, span[at..], out var digits);
        at += digits;
        if (rest > 0)
        {
            span[at++] = (byte)'.';
            for (var place = PartsOfOne / 10; rest > 0; place /= 10)
            {
                (var digit, rest) = Math.DivRem(rest, place);
                span[at++] = (byte)('0' + digit);
            }
        }

        span[at++] = (byte)' ';
        _bytes.Advance(at);
        return this;
    }

    /// <summary>A code of two bytes inside a literal string (ISO 32000-1, 7.3.4.2).</summary>
    public SyntaxWriter Code(ushort code)
    {
        var span = _bytes.GetSpan(4);
        var length = 0;
        foreach (var part in (ReadOnlySpan<byte>)[(byte)(code >> 8), (byte)code])
        {
            // Brackets and the backslash would end or begin something else; a line end of any kind would be read as a line feed.
            if (part is (byte)'(' or (byte)')' or (byte)'\\' or (byte)'\r')
            {
                span[length++] = (byte)'\\';
            }

            span[length++] = part is (byte)'\r' ? (byte)'r' : part;
        }

        _bytes.Advance(length);
        return this;
    }
}
