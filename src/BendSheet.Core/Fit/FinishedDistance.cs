using System.Collections.Immutable;
using BendSheet.Core.Centreline;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Fit;

/// <summary>A straight-line distance that somebody measured on the finished piece.</summary>
/// <param name="From">0 is finished end A, then each corner by the number of its bend; one more than there are bends is finished end B.</param>
/// <param name="To">Counted alike, larger than <paramref name="From"/>.</param>
/// <param name="Distance">As measured, to the centreline.</param>
/// <param name="At">Where it was typed.</param>
public sealed record FinishedDistance(int From, int To, Length Distance, SourcePosition At);

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
               select new FinishedCheck(measured, Length.FromMillimetres(expected), $"{Place(measured.From, corners.Length)} to {Place(measured.To, corners.Length)}"),
        ];
    }

    private static string Place(int number, int count) =>
        number == 0 ? "A" : number == count - 1 ? "B" : FormattableString.Invariant($"corner {number}");
}
