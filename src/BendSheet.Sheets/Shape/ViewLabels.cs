using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Shape;

/// <summary>
/// The labels of a view: A, B and the number of every bend. Bends that fall on one another share a label: <c>2–4</c>. Where there is
/// not room enough for all, bends that lie near each other share one as well, and that distance grows until all find a place: no
/// number is ever left out.
/// </summary>
internal static class ViewLabels
{
    /// <summary>
    /// Numbers share a label when the next bend lies nearer than this, on paper. With the last one there is one label for all bends.
    /// </summary>
    private static readonly double[] Nearer = [0.8, 4, 8, 16, 32, double.PositiveInfinity];

    /// <summary>On a small view labels nearer than their own size would pile up.</summary>
    private static readonly double[] NearerOnSmall = [2 * ViewLabel.Radius, 8, 16, 32, double.PositiveInfinity];

    /// <summary>Of every label.</summary>
    public static TextStyle Style { get; } = TextStyle.Small with { Bold = true };

    /// <summary>Places all labels.</summary>
    /// <param name="drawn">What they belong to.</param>
    /// <param name="cell">Where labels may lie.</param>
    /// <param name="taken">Lines of something else that is drawn in the cell.</param>
    /// <param name="small">Beside a larger view that numbers every bend.</param>
    public static IReadOnlyList<ViewLabel> Of(DrawnTube drawn, ViewCell cell, IReadOnlyList<Segment> taken, bool small = false)
    {
        IReadOnlyList<ViewLabel> most = [];
        foreach (var nearer in small ? NearerOnSmall : Nearer)
        {
            var labels = Placed(drawn, new(drawn.Points, drawn.Width, cell, taken), Groups(drawn, nearer));
            if (labels.Complete)
            {
                return labels.Labels;
            }

            most = labels.Labels;
        }

        return most;
    }

    private static (IReadOnlyList<ViewLabel> Labels, bool Complete) Placed(
        DrawnTube drawn, LabelsAround places, List<(int First, int Last)> groups)
    {
        var labels = new List<ViewLabel>(groups.Count + 2);
        var complete = Add("A", [drawn.Points[0]], drawn.AwayFromA) && Add("B", [drawn.Points[^1]], drawn.AwayFromB);
        foreach (var (first, last) in groups)
        {
            if (!complete)
            {
                break;
            }

            PagePoint[] anchors = last == first ? [drawn.Bends[first].Middle] : [drawn.Bends[first].Middle, drawn.Bends[last].Middle];
            complete = Add(
                last == first ? FormattableString.Invariant($"{first + 1}") : FormattableString.Invariant($"{first + 1}–{last + 1}"),
                anchors,
                drawn.Bends[first].Outwards + drawn.Bends[last].Outwards);
        }

        return (labels, complete);

        bool Add(string text, IReadOnlyList<PagePoint> anchors, PagePoint wanted)
        {
            var halfWidth = Math.Max(ViewLabel.Radius, (Style.Width(text) / 2) + 0.9);
            if (places.Place(text, halfWidth, anchors, wanted) is not { } label)
            {
                return false;
            }

            labels.Add(label);
            return true;
        }
    }

    private static List<(int First, int Last)> Groups(DrawnTube drawn, double nearer)
    {
        var groups = new List<(int First, int Last)>();
        for (var i = 0; i < drawn.Bends.Count; i++)
        {
            if (groups.Count > 0 && (drawn.Bends[i].Middle - drawn.Bends[groups[^1].First].Middle).Norm < nearer)
            {
                groups[^1] = (groups[^1].First, i);
            }
            else
            {
                groups.Add((i, i));
            }
        }

        return groups;
    }
}
