using System.Collections.Immutable;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>A strip to lay along a rail and drill its holes by, at full size.</summary>
/// <param name="Name">Whose holes: <c>rear, straight 3</c>.</param>
/// <param name="Length">From the edge to just beyond the last hole.</param>
/// <param name="Holes">From the edge on.</param>
public sealed record DrillingStrip(string Name, Length Length, ImmutableArray<DrillingHole> Holes)
{
    /// <summary>What the edge is.</summary>
    public required string Edge { get; init; }

    /// <summary>Which ends of the lines lie towards the edge.</summary>
    public required string Left { get; init; }

    /// <summary>Which ends of the lines lie the other way.</summary>
    public required string Right { get; init; }

    /// <summary>What there is to say about it before it is used, a sentence or more each.</summary>
    public required ImmutableArray<string> HowTo { get; init; }

    /// <summary>For somebody who does not see it.</summary>
    public required string Alternative { get; init; }
}

/// <summary>A hole on the strip.</summary>
/// <param name="Number">From the edge on, from 1.</param>
/// <param name="Place">From the edge.</param>
/// <param name="Label">The same as it is printed, without the unit.</param>
/// <param name="Clips">What it is for, one below the other: <c>front 3</c>; none where one line is alone on the strip.</param>
/// <param name="Width">Of the clip, along the rail.</param>
/// <param name="Drill">Diameter; null where the file does not say it.</param>
public sealed record DrillingHole(int Number, Length Place, string Label, ImmutableArray<string> Clips, Length Width, Length? Drill);
