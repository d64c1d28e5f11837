using BendSheet.Core.Findings;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Survey;

/// <summary>
/// What has to be taped before the corners have places: one distance to the neighbour gives the leg, one over a corner its bend, one over
/// two corners the size of the rotation between them.
/// </summary>
internal static class TapedNext
{
    /// <summary>A finding for each distance to measure next, along the line.</summary>
    public static IEnumerable<Finding> Check(DistanceTable table, SourcePosition at)
    {
        for (var to = 1; to <= table.Last; to++)
        {
            for (var from = to - 1; from >= Math.Max(0, to - 3); from--)
            {
                if (table.Between(from, to) is null)
                {
                    var name = TapedDistance.NameOf(from, to);
                    yield return TapedRules.DistanceMissing
                        .Error(at, $"distance {name} is missing: measure it next, it gives {Gives(from, to)}");
                }
            }
        }
    }

    private static string Gives(int from, int to) => (to - from) switch
    {
        1 => $"leg {to}",
        2 => $"the bend at corner {to - 1}",
        _ => $"the rotation from bend {from + 1} to bend {from + 2}",
    };
}
