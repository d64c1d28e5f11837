using System.Collections.Immutable;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Fittings;

/// <summary>What a publication says of one flare on tube of one size.</summary>
/// <param name="Flare">How the end is formed.</param>
/// <param name="TubeSize">The tube's outside diameter.</param>
/// <param name="Smallest">The finished flare's smallest outside diameter.</param>
/// <param name="Largest">Its largest: more fouls the nut.</param>
/// <param name="LargestWall">The thickest wall that is flared so, where the publication says it.</param>
/// <param name="Source">Where it stands.</param>
public sealed record FlareSize(Flare Flare, Length TubeSize, Length Smallest, Length Largest, Length? LargestWall, PublishedSource Source)
{
    private static PublishedSource Aircraft { get; } = new("MS33584", Confidence.FromMemory);

    private static PublishedSource Industrial { get; } = new("SAE J533", Confidence.FromMemory);

    private static PublishedSource Automotive { get; } = new("SAE J533", Confidence.SecondHand);

    /// <summary>
    /// Every row, one for each flare and size. For 37° both publications have 1/4 to 1/2 in: the aircraft's narrower limits lie inside the
    /// others, so they serve both.
    /// </summary>
    public static ImmutableArray<FlareSize> All { get; } =
    [
        Inches(1.0 / 8, 0.190, 0.200, Aircraft),
        Inches(3.0 / 16, 0.292, 0.302, Aircraft),
        Inches(1.0 / 4, 0.349, 0.359, Aircraft),
        Inches(5.0 / 16, 0.411, 0.421, Aircraft),
        Inches(3.0 / 8, 0.474, 0.484, Aircraft),
        Inches(1.0 / 2, 0.646, 0.656, Aircraft),
        Inches(5.0 / 8, 0.760, 0.790, Industrial),
        Inches(3.0 / 4, 0.920, 0.950, Industrial),
        Inches(1, 1.170, 1.200, Industrial),
        Millimetres(Flare.Single45, 3.18, 4.4, 4.6, 0.89),
        Millimetres(Flare.Single45, 4.76, 6.1, 6.3, 0.89),
        Millimetres(Flare.Single45, 6.35, 8.0, 8.3, 1.24),
        Millimetres(Flare.Single45, 7.94, 9.9, 10.3, 1.24),
        Millimetres(Flare.Double45, 3.18, 5.0, 5.4, 0.63),
        Millimetres(Flare.Double45, 4.76, 6.7, 7.1, 0.71),
        Millimetres(Flare.Double45, 6.35, 8.7, 9.1, 0.83),
        Millimetres(Flare.Double45, 7.94, 10.4, 10.8, 0.89),
    ];

    /// <summary>The row for a flare on a tube; null where no publication that is known here has it.</summary>
    public static FlareSize? For(Flare flare, Tube tube) => All.FirstOrDefault(row => row.Flare == flare && tube.IsOfSize(row.TubeSize));

    private static FlareSize Inches(double size, double smallest, double largest, PublishedSource source) => new(
        Flare.Single37, Length.FromInches(size), Length.FromInches(smallest), Length.FromInches(largest), null, source);

    private static FlareSize Millimetres(Flare flare, double size, double smallest, double largest, double wall) => new(
        flare,
        Length.FromMillimetres(size),
        Length.FromMillimetres(smallest),
        Length.FromMillimetres(largest),
        Length.FromMillimetres(wall),
        Automotive);
}
