using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>A measurement that would say most of what is not sure yet.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Name">As it is typed: <c>B ahead</c>.</param>
/// <param name="Expected">What it should be, if nothing was misread.</param>
/// <param name="Within">One standard deviation of such a measurement.</param>
/// <param name="Miss">How far B may be off after it, and after those before it in the list.</param>
/// <param name="Askew">How far off square the last straight may enter after it.</param>
public sealed record NextMeasurement(
    TapedQuantity Quantity, string Name, Length Expected, Length Within, Length Miss, Angle Askew)
{
    /// <summary>Said after a figure that is below zero, so that nobody takes its sign for a slip.</summary>
    public string WhereBelowZero => Quantity.Kind == TapedKind.Ahead && Expected < Length.Zero ? ": behind A" : string.Empty;
}
