using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Survey.Pieces;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Bench;

/// <summary>One line taken all the way from its template to its bench plan.</summary>
/// <param name="Template">As it is made: adjusted, on the car.</param>
/// <param name="Layout">Carried over to the tool's radius; null where the template cannot be.</param>
/// <param name="Centreline">In space; null where a leg is too short for its bends.</param>
/// <param name="Plan">What the hands do; null where there is no centreline.</param>
/// <param name="Findings">All that is to be said about this line.</param>
public sealed record SolvedLine(
    LineTemplate Template,
    RouteLayout? Layout,
    TubeCentreline? Centreline,
    BenchPlan? Plan,
    ImmutableArray<Finding> Findings)
{
    /// <summary>As it was typed, with what its ports say of it.</summary>
    public LineTemplate Typed { get => field ?? Template; init; }

    /// <summary>What its measurements came to; null where it has no bend or no shape.</summary>
    public LineSurvey? Survey { get; init; }

    /// <summary>What the piece in hand came out as; null where nothing was measured on one.</summary>
    public PieceInHand? Piece { get; init; }

    /// <summary>Where its clips go; null where the file asks for none.</summary>
    public ClipPlan? Clips { get; init; }

    /// <summary>The same line with more to be said about it.</summary>
    public SolvedLine With(IEnumerable<Finding> more) => this with { Findings = [.. Findings, .. more] };
}
