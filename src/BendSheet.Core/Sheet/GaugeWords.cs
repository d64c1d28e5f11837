namespace BendSheet.Core.Sheet;

/// <summary>What stands at the gauges of a line's bends.</summary>
public static class GaugeWords
{
    /// <summary>How they are used.</summary>
    public static IEnumerable<string> HowTo(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        yield return "Curve: lay the bend on it. The tube must lie between its two faces along both legs; the ticks are where the bend "
            + "starts and ends, the dashes the centreline.";
        yield return "Wedge: glue the page on to card, cut the wedge out along the middle of its line, and hold it into the bend: both "
            + "straight edges must touch their legs without light between.";
        if (sheet.Gauges.Any(gauge => gauge.PullLabel is not null))
        {
            yield return "The thin line beside a leg is the centreline as pulled, while the tool still holds it; released, the bend must "
                + "spring back to the curve.";
        }
    }

    /// <summary>Above a curve, one below the other.</summary>
    public static IReadOnlyList<string> OfCurve(BendGauge gauge)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        var curve = $"curve of {gauge.Bends}";
        return gauge.PullLabel is { } pull ? [curve, Radius(gauge), $"thin line: pulled to {pull}"] : [curve, Radius(gauge)];
    }

    /// <summary>Above a wedge, one below the other.</summary>
    public static IReadOnlyList<string> OfWedge(BendGauge gauge)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        return [$"wedge for {gauge.Bends}", Radius(gauge)];
    }

    /// <summary>In the place of a curve that has no room.</summary>
    public static string TooLarge(BendGauge gauge)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        return $"{Told(gauge)}, does not fit on this paper: from tangent point to tangent point measure {gauge.Chord}.";
    }

    /// <summary>All gauges for somebody who does not see them.</summary>
    public static string Alternative(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return $"Curves and wedges at full size: {string.Join("; ", sheet.Gauges.Select(Told))}.";
    }

    private static string Told(BendGauge gauge) => $"{gauge.Bends}, {gauge.TurnLabel}, {Radius(gauge)}";

    private static string Radius(BendGauge gauge) => $"radius {gauge.RadiusLabel}";
}
