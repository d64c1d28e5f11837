using BendSheet.Core.Units;

namespace BendSheet.Core.Templates;

/// <summary>How well a template was measured: one standard deviation of each figure.</summary>
/// <param name="Straight">Of a leg.</param>
/// <param name="Bend">Of a bend.</param>
/// <param name="Rotate">Of a rotation.</param>
public sealed record MeasuringTolerance(Length Straight, Angle Bend, Angle Rotate);
