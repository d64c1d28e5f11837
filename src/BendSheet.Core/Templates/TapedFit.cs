using System.Collections.Immutable;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Templates;

/// <summary>A taped distance beside the same distance between the corners found.</summary>
/// <param name="Measured">As it was taped.</param>
/// <param name="Reconciled">Between the corners found from all distances together.</param>
public sealed record TapedResidual(TapedDistance Measured, Length Reconciled)
{
    /// <summary>Measured minus reconciled: positive where the tape read more than the others allow.</summary>
    public Length Residual => Measured.Distance - Reconciled;
}

/// <summary>A route found from taped distances.</summary>
/// <param name="Corners">End A, each corner, end B, in millimetres: end A at the origin, the first leg along +X, the first bend turning
/// towards +Y, as for a template that does not say how it lies on the car.</param>
/// <param name="Residuals">One for each distance, in the order they were given; next to zero where nothing had to be reconciled.</param>
/// <param name="RootMeanSquare">Of the residuals.</param>
/// <param name="Worst">The distance that agrees least with the others, null where the distances agree. Not always the one with the
/// largest residual: a distance that few others check pulls the corners after it and hides a part of its own error.</param>
public sealed record TapedFit(
    ImmutableArray<Vector3D> Corners, ImmutableArray<TapedResidual> Residuals, Length RootMeanSquare, TapedResidual? Worst);
