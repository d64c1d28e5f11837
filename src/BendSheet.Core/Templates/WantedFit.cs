using BendSheet.Core.Units;

namespace BendSheet.Core.Templates;

/// <summary>How well a line has to fit before it is cut.</summary>
/// <param name="Miss">How far end B may be off its port.</param>
/// <param name="Askew">How far off square its last straight may enter.</param>
public sealed record WantedFit(Length Miss, Angle Askew)
{
    /// <summary>Where a file says nothing: what a nut started by hand still takes up. Common practice, no source.</summary>
    public static WantedFit CommonPractice { get; } = new(Length.FromMillimetres(3), Angle.FromDegrees(2));
}
