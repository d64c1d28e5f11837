using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Layout;

/// <summary>A part of a sheet that is never broken across pages.</summary>
/// <param name="Height">In millimetres; less than a page.</param>
/// <param name="Draw">Draws it with its top at the given height, across the page's whole type area.</param>
/// <param name="Repeated">Drawn again above it where it begins a page: the heading of a table's columns.</param>
/// <param name="KeepWithNext">Never the last on a page: a heading.</param>
internal sealed record Block(double Height, Action<Canvas, double> Draw, Block? Repeated = null, bool KeepWithNext = false)
{
    /// <summary>What it is to somebody who has the sheet read out.</summary>
    public Role Role { get; init; }

    /// <summary>Of a figure: what somebody needs to know who does not see it.</summary>
    public string? Alternative { get; init; }

    /// <summary>Goes on with the paragraph or step of the block before.</summary>
    public bool Continues { get; init; }

    /// <summary>White space.</summary>
    public static Block Space(double height) => new(height, static (_, _) => { }) { Role = Role.Nothing, IsSpace = true };

    /// <summary>Nothing is drawn in it.</summary>
    public bool IsSpace { get; private init; }

    /// <summary>Draws it as what it is.</summary>
    public void DrawOn(Canvas canvas, double top) =>
        canvas.As(Role, () => Draw(canvas, top), Alternative, new(0, top, canvas.Width, Height), Continues);
}
