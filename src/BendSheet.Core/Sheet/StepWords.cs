using BendSheet.Core.Fittings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Sheet;

/// <summary>What stands on the step pages.</summary>
public static class StepWords
{
    /// <summary>Name of the pages.</summary>
    public const string Part = "Steps";

    /// <summary>Below the head of the first page.</summary>
    public const string Legend =
        "Pictures of bends: the circle is the former, A on the left, black jaws hold. Outlined: before the pull; dashed: after it; "
        + "long straights are drawn short, with a break; beyond a break beside A or B the rest of the tube is left out. Where B is held, "
        + "the tool is seen from its other side. Line at: as seen from the held end, the former at 12. Then: measure at once; a number is "
        + "the back (outermost point) of that bend, A and B are the flare face, or the cut end where it is not flared yet.";

    /// <summary>Above the figure.</summary>
    public const string LineAt = "line at";

    /// <summary>Above the figure.</summary>
    public const string Pull = "pull to";

    /// <summary>Above the figure.</summary>
    public static string Mark(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return $"mark, {sheet.Notation.Symbol}";
    }

    /// <summary>What to do at a flip, however the tool is mounted.</summary>
    internal static string Flip(string step) =>
        step + " Former beside the tube (tool lying flat): the top side goes to the bottom. Former above it (tool upright): swing the tube "
            + "round, its top stays up. In the picture the tool stays where it is.";

    /// <summary>Below the tube before it is turned round.</summary>
    internal static string Was(TubeEnd held) => $"{held} side held until now";

    /// <summary>Below the tube after it is turned round.</summary>
    internal static string IsNow(TubeEnd held) => $"now hold the {held} side";

    /// <summary>Beside a piece that is slid on.</summary>
    internal static string Piece(EndHardware piece, TubeEnd end) => $"{piece.Name}: {EndWords.Facing(piece)} towards {end}";

    /// <summary>The picture of an end.</summary>
    internal static string OfEnd(TubeEnd end, IEnumerable<PieceOnEnd> pieces, string standsOut) =>
        $"End {end} before it is finished: {string.Join("; ", pieces.Select(piece => piece.InWords).Append(standsOut)
            .Where(text => text.Length > 0))}.";

    /// <summary>Of an end.</summary>
    internal static string Heading(WorkKind kind, Fitting fitting) =>
        fitting.Flare != Flare.None ? Heading(kind) : kind == WorkKind.EndA ? "End A" : "End B";

    internal static string Heading(WorkKind kind) => kind switch
    {
        WorkKind.Begun => "Go on",
        WorkKind.Cut => "Cut",
        WorkKind.EndA => "Flare A",
        WorkKind.EndB => "Flare B",
        WorkKind.Mark => "Mark",
        WorkKind.Flip => "Flip",
        WorkKind.Check => "Check",
        WorkKind.Trim => "Trim",
        _ => "Finish",
    };

    /// <summary>Where no distance shows the bend.</summary>
    internal static string ByProtractor => "then by protractor";

    /// <summary>What to measure after a bend.</summary>
    internal static string Check(string from, string to, LengthNotation notation) => $"then {from} to {to}, {notation.Symbol}";
}
