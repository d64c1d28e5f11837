using BendSheet.Core.Fittings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>What the drawings show, in words, for somebody who does not see them. The figures are those of the sheet.</summary>
public static class DrawingWords
{
    /// <summary>The tube drawn straight: how long, where the marks are, what is on the ends.</summary>
    public static string OfStrip(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var strip = sheet.Strip;
        var text = $"The straight tube, {sheet.CutLength.Main} long, ";
        text += strip.Bends.IsEmpty
            ? "with no marks."
            : "with marks at "
                + string.Join(", ", strip.Bends.Select(bend => $"{bend.Label} (bend {bend.Number}, line at {bend.LineClock})"))
                + $", in {sheet.Notation.UnitName} from {sheet.DatumName}.";
        text += End('A', strip.FlaredA, strip.HardwareA) + End('B', strip.FlaredB, strip.HardwareB);
        if (strip.Trim > Length.Zero)
        {
            text += $" {sheet.Notation.WithUnit(strip.Trim)} to trim at B.";
        }

        return strip.Clips.IsEmpty ? text : text + FormattableString.Invariant($" Clips: {strip.Clips.Length}.");
    }

    /// <summary>The finished shape from A to B.</summary>
    /// <param name="sheet">Whose shape it is.</param>
    /// <param name="caption">How one looks at it.</param>
    public static string OfShape(SheetContent sheet, string caption)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var rows = sheet.Rows.ToDictionary(row => row.Number);
        var way = sheet.Strip.Bends.Select(bend => rows[bend.Number] is var row
            ? $"bend {row.Number} of {row.Bend}{(bend.Rolled.Length == 0 ? string.Empty : ", rotated " + bend.Rolled)}, "
                + $"{row.StraightAfter} {sheet.Notation.Symbol} straight"
            : string.Empty);
        return sheet.Strip.Bends.IsEmpty
            ? $"The finished shape, {caption}: a straight tube from A to B."
            : $"The finished shape, {caption}, the tube from A to B: straight, {string.Join("; ", way)}. {Box(sheet)}";
    }

    /// <summary>One of the flat views.</summary>
    /// <param name="sheet">Whose shape it is.</param>
    /// <param name="caption">How one looks at it.</param>
    public static string OfFlatView(SheetContent sheet, string caption)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return $"The same shape seen {caption}. {Box(sheet)}";
    }

    /// <summary>One of the views where it is a file of its own.</summary>
    /// <param name="sheet">Whose shape it is.</param>
    /// <param name="caption">How one looks at it, and its scale.</param>
    public static string OfViewAlone(SheetContent sheet, string caption)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return $"{caption}. {sheet.Axes}. Box over the outside: {sheet.Envelope}";
    }

    /// <summary>What a drawing that is a file of its own has beside its title.</summary>
    /// <param name="sheet">Of the line.</param>
    /// <param name="what">It shows, without the full stop.</param>
    public static string OfFile(SheetContent sheet, string what)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return FormattableString.Invariant(
            $"{what}. {sheet.Rows.Length} bends, cut length {sheet.CutLength.Main}. Sheet {sheet.Fingerprint}.");
    }

    private static string Box(SheetContent sheet) => $"Over the outside, X × Y × Z, it is {sheet.Envelope}.";

    private static string End(char letter, bool flared, IEnumerable<EndHardware> hardware)
    {
        var pieces = string.Join(", ", StripWords.Pieces(flared, hardware));
        return pieces.Length == 0 ? string.Empty : $" At {letter}, from the end inwards: {pieces}.";
    }
}
