using BendSheet.Core.Fittings;

namespace BendSheet.Core.Sheet;

/// <summary>Where a line runs from and to. An end that was given no place is called by its letter.</summary>
internal static class EndWords
{
    /// <summary>The place of end A.</summary>
    public static string A(LineEnd end) => end.At ?? "end A";

    /// <summary>The place of end B.</summary>
    public static string B(LineEnd end) => end.At ?? "end B";

    /// <summary>What a piece that is slid on looks like, as its name tells.</summary>
    public static HardwareShape Shape(EndHardware piece) =>
        piece.Name.Contains("sleeve", StringComparison.OrdinalIgnoreCase) ? HardwareShape.Sleeve
        : piece.Name.Contains("nut", StringComparison.OrdinalIgnoreCase) ? HardwareShape.Nut
        : HardwareShape.Ring;

    /// <summary>Which side of a piece that is slid on faces the end.</summary>
    public static string Facing(EndHardware piece) => Shape(piece) switch
    {
        HardwareShape.Sleeve => "coned end",
        HardwareShape.Nut => "threaded end",
        _ => "the side that seats",
    };

    /// <summary>Both, with the letters that stand on the tube.</summary>
    public static string WithLetters(string endA, string endB) => $"A: {endA} → B: {endB}";
}
