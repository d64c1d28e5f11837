namespace BendSheet.Core.Sheet;

/// <summary>What stands on the dial, its pointer, and the page they are cut out of.</summary>
public static class DialWords
{
    /// <summary>In the place of a dial whose hole would leave nothing of it.</summary>
    public const string TooThick = "The tube is too thick for a dial on this paper.";

    /// <summary>Heading of the list of stops.</summary>
    public const string StopsHeading = "All stops";

    /// <summary>The pointer for somebody who does not see it.</summary>
    public const string PointerAlternative = "The pointer, to be fixed beside the dial.";

    /// <summary>How they are made and used, a step each.</summary>
    public static IReadOnlyList<string> HowTo { get; } =
    [
        "Glue the page on to card. Cut the dial out, cut its hole, and slit it along the dashed line from the rim to the hole.",
        "Put it round the tube on the side that is held, behind the tool, its print towards the held end. Set its 0° on the pen line and "
            + "tape it to the tube, over the slit.",
        "Cut the pointer out and fix it to tool or bench, its tip at the rim, on the side of the former: 12 o'clock.",
        "For each bend turn the tube until the arrow of the bend's boxed number stands at the pointer: the pen line then stands where the "
            + "table says. If the dial is in the way, move it along the tube, with its 0° on the line.",
        "When the other end is held, put the dial on that side: its print towards the held end again, its 0° on the line.",
    ];

    /// <summary>Every stop with its bends.</summary>
    public static string Stops(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return string.Join("; ", sheet.DialStops.Select(stop => $"{stop.Label}: {stop.BendsInWords}")) + ".";
    }

    /// <summary>The dial for somebody who does not see it.</summary>
    public static string Alternative(SheetContent sheet) =>
        $"A dial of 360 degrees, to be looked at from the held end, with a stop at {Stops(sheet)}";

    /// <summary>
    /// On the dial, one below the other, because it is cut out and lies about: which line it is for, of which any length, which version of
    /// it, and from where it is looked at.
    /// </summary>
    public static IReadOnlyList<string> OnDial(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return [sheet.Line, SheetWords.Fingerprint(sheet), "look from the held end"];
    }

    /// <summary>On the pointer; any length of text.</summary>
    public static string OnPointer(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return $"pointer – {sheet.Line}";
    }
}
