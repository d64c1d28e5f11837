using BendSheet.Sheets.Fonts;

namespace BendSheet.Sheets.Drawing;

/// <summary>Every text style of the sheet, in one place. Nothing is smaller than 8 pt: it is read at arm's length.</summary>
/// <param name="Points">Size in points.</param>
/// <param name="Bold">Heavier, for what the eye looks for.</param>
/// <param name="Tabular">Digits of one width, for columns.</param>
public sealed record TextStyle(double Points, bool Bold = false, bool Tabular = false)
{
    /// <summary>The smallest size that is legible on a copy of a copy.</summary>
    public const double SmallestPoints = 8;

    private const double MillimetresPerPoint = 25.4 / 72;

    /// <summary>The line's name.</summary>
    public static TextStyle Title { get; } = new(18, Bold: true);

    /// <summary>Cut length: the first figure anybody needs.</summary>
    public static TextStyle CutLength { get; } = new(22, Bold: true, Tabular: true);

    /// <summary>The mark in the table.</summary>
    public static TextStyle Mark { get; } = new(14, Bold: true, Tabular: true);

    /// <summary>What the hands set beside the mark: the line, the pull, the side that is held.</summary>
    public static TextStyle Set { get; } = new(12, Bold: true, Tabular: true);

    /// <summary>What the hands set, on a step page: read at arm's length.</summary>
    public static TextStyle StepFigure { get; } = new(26, Bold: true, Tabular: true);

    /// <summary>What is done, on a step page.</summary>
    public static TextStyle StepHeading { get; } = new(20, Bold: true);

    /// <summary>Sentences of a step page.</summary>
    public static TextStyle StepText { get; } = new(10.5);

    /// <summary>The line's name on its tag.</summary>
    public static TextStyle TagName { get; } = new(13, Bold: true);

    /// <summary>Headings of the sheet's parts.</summary>
    public static TextStyle Heading { get; } = new(10, Bold: true);

    /// <summary>Figures in tables.</summary>
    public static TextStyle Cell { get; } = new(10, Tabular: true);

    /// <summary>Sentences.</summary>
    public static TextStyle Body { get; } = new(9);

    /// <summary>Figures and letters inside drawings.</summary>
    public static TextStyle Label { get; } = new(9, Bold: true, Tabular: true);

    /// <summary>What stands small beside something else.</summary>
    public static TextStyle Small { get; } = new(SmallestPoints, Tabular: true);

    /// <summary>What it is set in.</summary>
    public Face Face => Face.Of(Bold, Tabular);

    /// <summary>Size in millimetres.</summary>
    public double Size => Points * MillimetresPerPoint;

    /// <summary>From one baseline to the next, in millimetres.</summary>
    public double LineHeight => Size * 1.25;

    /// <summary>From the top of a line to its baseline, in millimetres.</summary>
    public double Ascent => Size * 0.97;

    /// <summary>Height of a capital letter, in millimetres (Inter: 2048 of 2816 units).</summary>
    public double CapHeight => Size * 0.727;

    /// <summary>Width of a text on one line, in millimetres.</summary>
    public double Width(string printable) => Size * Face.Width(printable) / Face.UnitsPerEm;

    /// <summary>The same style, or smaller, down to the smallest legible one, so that a text fits into a width.</summary>
    public TextStyle Fitting(string printable, double width)
    {
        var wanted = Width(printable);
        return wanted <= width ? this : At(Points * width / wanted);
    }

    /// <summary>The same style, smaller.</summary>
    public TextStyle At(double points) => this with { Points = Math.Max(points, SmallestPoints) };
}
