namespace BendSheet.Core.Sheet;

/// <summary>What stands around the figures of a line's sheet: headings, the words of its head and its foot.</summary>
public static class SheetWords
{
    /// <summary>Of a document whose file names no project.</summary>
    public const string Untitled = "Bend sheets";

    /// <summary>Above the cut length.</summary>
    public const string CutLength = "CUT LENGTH";

    /// <summary>Heading of what must be known before the first mark.</summary>
    public const string ReadFirst = "Read first, with the cautions";

    /// <summary>In the place of the bend table.</summary>
    public const string NothingToBend = "A straight tube: nothing to bend";

    /// <summary>Heading of the order of work.</summary>
    public const string Order = "Order of work";

    /// <summary>At the foot of a page that is printed the wrong way round.</summary>
    public const string Mirrored = "Mirrored: copy it face down";

    /// <summary>How the figures of the bend table are meant.</summary>
    public const string BelowTable = Cautions.Rounded + " " + Cautions.Rotation;

    /// <summary>What the line belongs to, and that it exists already; empty where there is nothing to say.</summary>
    public static string Project(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        const string Made = "this line is made already";
        return !sheet.Made ? sheet.Project : sheet.Project.Length == 0 ? Made : $"{sheet.Project} – {Made}";
    }

    /// <summary>Below the name: ends, tube and bender, each any length of text.</summary>
    public static IReadOnlyList<string> Head(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return [sheet.Ends, "Tube: " + sheet.Tube, "Bender: " + sheet.Bender];
    }

    /// <summary>Below the cut length.</summary>
    public static string DevelopedLength(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return $"developed length {sheet.DevelopedLength.Main}";
    }

    /// <summary>Head of the pages that follow.</summary>
    public static string Continued(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return $"{sheet.Line}, continued – cut length {sheet.CutLength.Main}";
    }

    /// <summary>The clips, with the symbol that stands for them in the drawing.</summary>
    public static string Clips(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return $"Clips (triangles): {string.Join(' ', sheet.Clips)}";
    }

    /// <summary>The number by which a page of the line is told from one of another version of it.</summary>
    public static string Fingerprint(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return Numbered(sheet.Fingerprint);
    }

    /// <summary>A sheet's number.</summary>
    internal static string Numbered(string fingerprint) => $"sheet {fingerprint}";

    /// <summary>Number of a page.</summary>
    /// <param name="number">From 1.</param>
    /// <param name="count">How many there are of the same part.</param>
    public static string Page(int number, int count) => FormattableString.Invariant($"page {number} of {count}");
}
