using System.Collections.Immutable;
using BendSheet.Core.Units;

namespace BendSheet.Core.Workshop;

/// <summary>The smallest bend radius that a publication gives for tube of one material and size.</summary>
/// <param name="Material">What the publication calls it.</param>
/// <param name="TubeSize">The tube's outside diameter.</param>
/// <param name="Smallest">Bend radius to the centreline.</param>
/// <param name="Source">Where it stands.</param>
public sealed record PublishedRadius(TubeMaterial Material, Length TubeSize, Length Smallest, PublishedSource Source)
{
    /// <summary>NAVEDTRA 14105: a radius of 2.5 to 3 times the inside diameter lets the fluid through with little friction.</summary>
    public const double IdealInsideDiameters = 2.5;

    private static PublishedSource ServiceManual { get; } = new(
        "a truck service manual, for DIN 74234 brake pipe and a pliers-type bender", Confidence.Confirmed);

    private static PublishedSource TubeData { get; } = new("FAA AC 43.13-1B, table of tube data", Confidence.FromMemory);

    /// <summary>Where the rule for tube of no known row stands: an ideal, not a limit of the tube.</summary>
    public static PublishedSource Ideal { get; } = new("NAVEDTRA 14105, p. 5-4", Confidence.Confirmed);

    /// <summary>Every row; of two for one tube the surer one comes first.</summary>
    public static ImmutableArray<PublishedRadius> All { get; } =
    [
        new(TubeMaterial.Steel, Length.FromMillimetres(4.75), Length.FromMillimetres(25), ServiceManual),
        Aluminium(1.0 / 8, 0.375),
        Aluminium(3.0 / 16, 0.4375),
        Aluminium(1.0 / 4, 0.5625),
        Aluminium(5.0 / 16, 0.75),
        Aluminium(3.0 / 8, 0.9375),
        Aluminium(1.0 / 2, 1.25),
        Aluminium(5.0 / 8, 1.5),
        Aluminium(3.0 / 4, 1.75),
        Aluminium(1, 3),
        Steel(3.0 / 16, 0.65625),
        Steel(1.0 / 4, 0.875),
        Steel(5.0 / 16, 1.125),
        Steel(3.0 / 8, 1.3125),
        Steel(1.0 / 2, 1.75),
        Steel(5.0 / 8, 2.1875),
        Steel(3.0 / 4, 2.625),
        Steel(1, 3.5),
    ];

    /// <summary>The row for a tube; null where its material is not recognized or no row has its size.</summary>
    /// <remarks>The table's steel includes stainless steel; brake pipe to DIN 74234 is not stainless.</remarks>
    public static PublishedRadius? For(Tube tube)
    {
        var material = TubeMaterials.Recognize(tube.Material);
        return All.FirstOrDefault(row => tube.IsOfSize(row.TubeSize) && (row.Material == material
            || (material == TubeMaterial.StainlessSteel && row.Material == TubeMaterial.Steel && row.Source == TubeData)));
    }

    private static PublishedRadius Aluminium(double size, double smallest) => Row(TubeMaterial.Aluminium, size, smallest);

    private static PublishedRadius Steel(double size, double smallest) => Row(TubeMaterial.Steel, size, smallest);

    private static PublishedRadius Row(TubeMaterial material, double size, double smallest) =>
        new(material, Length.FromInches(size), Length.FromInches(smallest), TubeData);
}
