using System.Collections.Immutable;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey.Pieces;

/// <summary>One thing to do by hand to a piece that is bent already.</summary>
/// <param name="Bend">The number of the bend.</param>
/// <param name="IsTwist">The straight before the bend is twisted; otherwise the bend is closed or opened.</param>
/// <param name="By">A bend closed further or a twist clockwise, looking from A: above zero.</param>
/// <param name="Until">What is measured while it is done; null where no tape shows it.</param>
/// <param name="Reads">What that has to read then.</param>
/// <param name="Change">By how much more that is than before.</param>
public sealed record CorrectionStep(int Bend, bool IsTwist, Angle By, PieceQuantity? Until, Length Reads, Length Change)
{
    /// <summary>What is looked at instead at the port, where the piece is offered up while it is done; null at a bench.</summary>
    public PortGap? Gap { get; init; }
}

/// <summary>What is seen at the port when a piece is offered up: A screwed in, the piece rolled so that B comes nearest.</summary>
/// <param name="IsAside">Aside of A's straight; otherwise ahead along it.</param>
/// <param name="Left">How much further the port lies than B; below zero where it lies less far.</param>
public sealed record PortGap(bool IsAside, Length Left);

/// <summary>What brings end B back to where the template has it.</summary>
/// <param name="Steps">In the order in which they are done.</param>
/// <param name="Miss">How far off B then is.</param>
/// <param name="Askew">How far askew it then enters.</param>
public sealed record Correction(ImmutableArray<CorrectionStep> Steps, Length Miss, Angle Askew)
{
    /// <summary>What the piece then is, for each error of it.</summary>
    internal double[] Errors { get; init; } = [];
}
