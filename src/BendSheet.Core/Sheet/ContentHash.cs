using System.IO.Hashing;

namespace BendSheet.Core.Sheet;

/// <summary>
/// Tells contents apart; it protects from nothing. XXH128, because a cryptographic hash would load the system's library for it, which
/// takes longer than drawing a page and is not on every machine.
/// </summary>
public static class ContentHash
{
    /// <summary>32 lower-case hexadecimal digits.</summary>
    public static string Of(ReadOnlySpan<byte> content) => Convert.ToHexStringLower(XxHash128.Hash(content));
}
