using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Rules;

/// <summary>How findings call a tube.</summary>
internal static class TubeNames
{
    /// <summary><c>tube main</c>, or <c>the tube</c> where a short file gives it no name.</summary>
    public static string InWords(Tube tube) => tube.Name.Length == 0 ? "the tube" : $"tube {tube.Name}";
}
