using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using MathNet.Numerics.LinearAlgebra;

namespace BendSheet.Core.Survey;

/// <summary>How far end B may be out because the template was not measured exactly.</summary>
public static class TemplateError
{
    /// <summary>
    /// The root of the trace of end B's covariance J·S·Jᵀ: one standard deviation of its distance from where it should be. First order;
    /// every leg, bend and rotation (but the first, which only swings the whole line) taken as measured independently.
    /// </summary>
    /// <remarks>
    /// Law of propagation of uncertainty (JCGM 100:2008, 5.1). Corner-to-corner legs are what was measured, so a bend turns about its
    /// corner: the columns of J are d for a leg, axis × arm for a bend, d × arm for a rotation, arm from the corner to end B.
    /// </remarks>
    /// <returns>Null where a bend has no corner.</returns>
    public static Length? AtEndB(TubeCentreline centreline, MeasuringTolerance tolerance)
    {
        var columns = new List<(Vector3D Column, double Deviation)>();
        foreach (var straight in centreline.Straights)
        {
            columns.Add((straight.Start.Direction, tolerance.Straight.Millimetres));
        }

        for (var i = 0; i < centreline.Arcs.Length; i++)
        {
            var arc = centreline.Arcs[i];
            if (arc.Corner is not { } corner)
            {
                return null;
            }

            var arm = centreline.EndB - corner;
            columns.Add((arc.Start.Axis.Cross(arm), tolerance.Bend.Radians));
            if (i > 0)
            {
                columns.Add((arc.Start.Direction.Cross(arm), tolerance.Rotate.Radians));
            }
        }

        var jacobian = Matrix<double>.Build.Dense(3, columns.Count, (row, column) => Component(columns[column].Column, row));
        var variances = Matrix<double>.Build.DiagonalOfDiagonalArray([.. columns.Select(entry => entry.Deviation * entry.Deviation)]);
        var covariance = jacobian * variances * jacobian.Transpose();
        return Length.FromMillimetres(Math.Sqrt(covariance.Trace()));
    }

    private static double Component(Vector3D vector, int row) => row switch
    {
        0 => vector.X,
        1 => vector.Y,
        _ => vector.Z,
    };
}
