using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Rules;

/// <summary>How findings call a tool.</summary>
internal static class BenderNames
{
    /// <summary><c>bender hand</c>, or <c>the bender</c> where a short file gives it no name.</summary>
    public static string InWords(Bender bender) => bender.Name.Length == 0 ? "the bender" : $"bender {bender.Name}";
}
