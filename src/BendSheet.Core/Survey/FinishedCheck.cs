using System.Collections.Immutable;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>A measured distance beside the one that the sheet asks for.</summary>
/// <param name="Measured">On the finished piece.</param>
/// <param name="Expected">On the solved centreline.</param>
/// <param name="Name">Both places: <c>A to corner 2</c>.</param>
public sealed record FinishedCheck(FinishedDistance Measured, Length Expected, string Name)
{
    /// <summary>Measured less expected: positive where the piece is longer there.</summary>
    public Length Residual => Measured.Distance - Expected;

    /// <summary>Every distance that was measured, in the order of the file.</summary>
    public static ImmutableArray<FinishedCheck> Of(LineTemplate template, TubeCentreline centreline)
    {
        var corners = centreline.Corners;
        return
        [
            .. from measured in template.Checks
               where corners[measured.From] is not null && corners[measured.To] is not null
               let expected = corners[measured.From]!.Value.DistanceTo(corners[measured.To]!.Value)
               select new FinishedCheck(
                   measured,
                   Length.FromMillimetres(expected),
                   $"{Place(measured.From, corners.Length)} to {Place(measured.To, corners.Length)}"),
        ];
    }

    private static string Place(int number, int count) =>
        number == 0 ? "A" : number == count - 1 ? "B" : FormattableString.Invariant($"corner {number}");
}
