using BendSheet.Core.Fittings;

namespace BendSheet.Core.Sheet;

/// <summary>What stands at the drawing of the straight tube.</summary>
public static class StripWords
{
    /// <summary>At the piece that is cut off end B on the car.</summary>
    public const string Trim = "trim";

    /// <summary>Above it: what it is, and what its figures count from.</summary>
    public static string Heading(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var hatched = sheet.Rows.IsEmpty ? string.Empty : " (hatched: what becomes the bend)";
        return $"The straight tube, marks in {sheet.Notation.UnitName} from {sheet.DatumName}{hatched}";
    }

    /// <summary>Below an end; empty where nothing is on it.</summary>
    /// <param name="flared">It gets a flare.</param>
    /// <param name="hardware">What is slid on, from the end inwards.</param>
    public static string AtEnd(bool flared, IReadOnlyCollection<EndHardware> hardware)
    {
        ArgumentNullException.ThrowIfNull(hardware);
        var pieces = string.Join(", ", Pieces(flared, hardware));
        return hardware.Count == 0 ? pieces : "from the end: " + pieces;
    }

    /// <summary>What is on an end, by name, from the end inwards.</summary>
    internal static IEnumerable<string> Pieces(bool flared, IEnumerable<EndHardware> hardware) =>
        [.. flared ? ["flare"] : Array.Empty<string>(), .. hardware.Select(piece => piece.Name)];
}
