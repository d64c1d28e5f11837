using System.Globalization;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using CsCheck;

namespace BendSheet.Core.Tests.Geometry;

/// <summary>A line that can be made, chosen by chance: figures in millimetres and degrees.</summary>
/// <param name="Radius">Of the tool.</param>
/// <param name="Straights">Left between the bends, one more than bends.</param>
/// <param name="Turns">Of the bends, below 180.</param>
/// <param name="Rotations">Before the bends.</param>
public sealed record Shape(double Radius, double[] Straights, double[] Turns, double[] Rotations)
{
    /// <summary>Up to eight bends, hairpins and zero straights among them.</summary>
    internal static Gen<Shape> Any { get; } = Of(0, 8, Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 300]));

    /// <summary>At least one bend, and straights long enough to lose some of it.</summary>
    internal static Gen<Shape> Roomy { get; } = Of(1, 6, Gen.Double[10, 300]);

    /// <summary>Corner to corner, from the setbacks written out here.</summary>
    public double[] Legs => [.. Straights.Select((straight, i) => straight + Setback(i - 1) + Setback(i))];

    public double Setback(int bend) => bend < 0 || bend >= Turns.Length ? 0 : Radius * Math.Tan(Turns[bend] * Math.PI / 360);

    public LineTemplate Template() => Template(Lines.Bender(Radius), Length.FromMillimetres);

    /// <summary>From the straights themselves, so that straights of zero stay zero.</summary>
    public TubeCentreline Centreline() => TubeCentreline.Walk(
        Frame.Default,
        [.. Straights.Select(Lines.Mm)],
        [.. Turns.Select((turn, i) => new ArcAhead(Lines.Deg(Rotations[i]), Lines.Mm(Radius), Lines.Deg(turn)))]);

    /// <summary>For the message of a failed sample, with every figure to its last digit.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"radius {Radius:R}, straights [{Text(Straights)}], turns [{Text(Turns)}], rotations [{Text(Rotations)}]");

    internal LineTemplate Template(Bender bender, Func<double, Length> length) => Lines.Of(
        bender,
        [.. Legs.Select(length)],
        [.. Turns.Select((turn, i) => (Rotations[i], turn))]);

    private static string Text(double[] figures) =>
        string.Join(", ", figures.Select(figure => figure.ToString("R", CultureInfo.InvariantCulture)));

    private static Gen<Shape> Of(int fewest, int most, Gen<double> straight) =>
        from bends in Gen.Int[fewest, most]
        from radius in Gen.Double[5, 60]
        from straights in straight.Array[bends + 1]
        from turns in Gen.Double[1, 150].Array[bends]
        from rotations in Gen.OneOf(Gen.Double[-180, 180], Gen.Int[-1, 2].Select(quarters => 90.0 * quarters)).Array[bends]
        select new Shape(radius, straights, turns, rotations);
}
