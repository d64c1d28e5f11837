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
        "Pictures: the former is the circle, A on the left, the black jaws hold. Outlined: before the pull; dashed: after it. Bends out of "
        + "the plane look shorter; long straights are drawn short, with a break. Line at: as seen from the held end, the former at 12.";

    /// <summary>Above the figure.</summary>
    public const string LineAt = "line at";

    /// <summary>Above the figure.</summary>
    public const string Pull = "pull to";

    /// <summary>Above the figure.</summary>
    public static string Mark(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return $"mark, {sheet.Notation.Symbol} from {sheet.DatumName}";
    }

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

    /// <summary>An end that is flared is touched at its face, another at its cut.</summary>
    internal static string End(TubeEnd end, bool flared) => flared ? $"face of {end}" : $"cut end of {end}";

    internal static string Back(int number) => FormattableString.Invariant($"back of {number}");
}
