using System.Globalization;
using BendSheet.Core.Findings;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>
/// Reads the places of a line that a tape can be held to: A or 0, its corners by the numbers of their bends, B or one more than there are
/// bends. Null after findings.
/// </summary>
/// <param name="route">Of the line.</param>
/// <param name="piece">What is measured, in a sentence: <c>the finished piece</c>.</param>
/// <param name="context">For findings.</param>
internal sealed class PlaceReader(Route route, string piece, FileContext context)
{
    private int Last => route.Bends.Length + 1;

    /// <summary>A place: 0 is end A, then the corners, then end B.</summary>
    public int? Place(string text, SourcePosition at)
    {
        if (text is "A" or "a" or "0")
        {
            return 0;
        }

        if (text is "B" or "b")
        {
            return Last;
        }

        if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number > Last)
        {
            var corners = route.Bends.Length switch
            {
                0 => "the line has no corner",
                1 => "or 1 for its only corner",
                _ => FormattableString.Invariant($"or the number of a corner, 1 to {route.Bends.Length}"),
            };
            context.Report(TapedRules.NoDistance.Error(at, $"{AsTyped.Show(text)} is no place on {piece}: write A or B, {corners}"));
            return null;
        }

        if (number == Last || route.Bends[number - 1] is { HasCorner: true, FromTangent: false })
        {
            return number;
        }

        context.Report(TapedRules.NoDistance.Error(
            at,
            FormattableString.Invariant($"bend {number} has no corner that a tape could be held to: a U-bend or a coil has none; ")
                + "measure to A, B or another corner"));
        return null;
    }

    /// <summary>Two different places, in the order in which they were typed.</summary>
    public (int From, int To)? Pair(string from, string to, SourcePosition fromAt, SourcePosition toAt)
    {
        var (first, second) = (Place(from, fromAt), Place(to, toAt));
        if (first is not { } start || second is not { } end)
        {
            return null;
        }

        if (start == end)
        {
            context.Report(TapedRules.NoDistance.Error(
                toAt, $"from {AsTyped.Show(to)} to itself there is no distance: write two different places"));
            return null;
        }

        return (start, end);
    }
}
