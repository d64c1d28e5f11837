using System.Collections.Immutable;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench;

/// <summary>The rotations from bend 1 on, summed up, clockwise as seen from A, 0° to below 360°.</summary>
public static class DialReading
{
    /// <summary>The reading for each bend, from end A.</summary>
    public static ImmutableArray<Angle> Of(Route route)
    {
        var readings = ImmutableArray.CreateBuilder<Angle>(route.Bends.Length);
        var sum = Angle.Zero;
        foreach (var bend in route.Bends)
        {
            sum = (sum + bend.Rotation).OnDial();
            readings.Add(sum);
        }

        return readings.MoveToImmutable();
    }
}
