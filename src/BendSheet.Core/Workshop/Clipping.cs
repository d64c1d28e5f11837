using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Workshop;

/// <summary>How a line is to be held along its way.</summary>
/// <param name="Every">No more than this along the tube between two clips.</param>
/// <param name="EveryAt">Where that was typed.</param>
/// <param name="FromEnds">The first and the last clip stand as near to this from the finished ends as there is room for them.</param>
/// <param name="Hole">What to drill for each clip's fastener, where the file says so.</param>
public sealed record Clipping(Length Every, SourcePosition EveryAt, Length FromEnds, Length? Hole)
{
    /// <summary>Of a common P-clip's band (common practice, no source).</summary>
    public static Length UsualWidth => Length.FromMillimetres(12);

    /// <summary>What a clip takes of the tube, along it.</summary>
    public Length Width { get; init; } = UsualWidth;

    /// <summary>The rail that its clips sit on, where other lines' clips sit on it too; null where the file does not say it.</summary>
    public string? Rail { get; init; }

    /// <summary>From a clip's middle to the next bend: its whole body keeps a tube's diameter clear of it.</summary>
    public Length Beside(Tube tube) => (0.5 * Width) + tube.OutsideDiameter;
}
