using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Templates;

/// <summary>A straight-line distance that somebody measured on the finished piece.</summary>
/// <param name="From">0 is finished end A, then each corner by the number of its bend; one more than there are bends is finished end
/// B.</param>
/// <param name="To">Counted alike, larger than <paramref name="From"/>.</param>
/// <param name="Distance">As measured, to the centreline.</param>
/// <param name="At">Where it was typed.</param>
public sealed record FinishedDistance(int From, int To, Length Distance, SourcePosition At);
