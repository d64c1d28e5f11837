using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>What stands on the step pages.</summary>
public static class StepWords
{
    /// <summary>Name of the pages.</summary>
    public const string Part = "Steps";

    /// <summary>Below the head of the first page.</summary>
    public const string Legend =
        "Pictures: the circle is the former, A on the left, black jaws hold. Outlined: before the pull; dashed: after it; long straights "
        + "are drawn short, with a break. Line at: as seen from the held end, the former at 12. Then: measure at once; a number is the "
        + "back (outermost point) of that bend, A and B are the flare face, or the cut end where it is not flared yet.";

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
