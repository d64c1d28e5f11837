namespace BendSheet.Sheets.Pdf;

/// <summary>
/// The 128-bit FNV-1a hash (draft-eastlake-fnv): enough to tell files apart, which is all that a PDF's identifier is for.
/// A cryptographic one would load the system's library for it, which takes longer than drawing a page and is not on
/// every machine.
/// </summary>
internal static class FileIdentifier
{
    private const int HexDigits = 32;

    // The offset basis, and the prime 2^88 + 0x13B.
    private const ulong BasisHigh = 0x6C62272E07BB0142;
    private const ulong BasisLow = 0x62B821756295C58D;
    private const ulong PrimeLow = 0x13B;
    private const int PrimeShift = 88 - 64;

    /// <summary>The hash in 32 upper-case hexadecimal digits.</summary>
    public static string Of(ReadOnlySpan<byte> bytes)
    {
        var high = BasisHigh;
        var low = BasisLow;
        foreach (var value in bytes)
        {
            low ^= value;
            var carry = Math.BigMul(low, PrimeLow, out var product);
            high = (high * PrimeLow) + (low << PrimeShift) + carry;
            low = product;
        }

        return string.Create(HexDigits, (high, low), static (digits, hash) =>
        {
            _ = hash.high.TryFormat(digits, out _, "X16", null);
            _ = hash.low.TryFormat(digits[(HexDigits / 2)..], out _, "X16", null);
        });
    }
}
