using System.Collections.Immutable;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench;

/// <summary>A clip that holds the line.</summary>
/// <param name="AlongTube">Its middle from the finished end A, along the finished tube.</param>
/// <param name="Mark">Its middle from the cut end of A, along the still straight tube: penned on together with the bends.</param>
/// <param name="Free">Where on its straight its middle may stand.</param>
public sealed record Clip(Length AlongTube, Length Mark, ClipGap Free);

/// <summary>A stretch along the finished tube from the finished end A.</summary>
/// <param name="From">Nearer to A.</param>
/// <param name="To">Nearer to B.</param>
public sealed record ClipGap(Length From, Length To)
{
    /// <summary>How long it is.</summary>
    public Length Length => To - From;
}

/// <summary>
/// Where the clips go. They stand on straights only: a clip on a bend does not sit round the tube, and one on a nut or a sleeve keeps it
/// from being slid back. From the whole width of a clip a tube's diameter is left to bends, ends and hardware (common practice, no source).
/// The ends are held by their fittings and count as places.
/// </summary>
/// <param name="Clips">From end A.</param>
/// <param name="TooLong">Stretches longer than the clips may be apart in which no clip finds a place.</param>
public sealed record ClipPlan(ImmutableArray<Clip> Clips, ImmutableArray<ClipGap> TooLong)
{
    /// <summary>More on one line come from a slip in the unit.</summary>
    public const int Most = 1000;

    /// <summary>More than <see cref="Most"/> would be needed, so none is placed.</summary>
    public bool TooMany { get; private init; }

    /// <summary>The longest way between two clips.</summary>
    public Length Longest => Clips.Skip(1).Select((clip, i) => clip.AlongTube - Clips[i].AlongTube).DefaultIfEmpty(Length.Zero).Max();

    /// <summary>The plan of a line with no straight below zero; null where nobody asked for clips.</summary>
    public static ClipPlan? Of(LineTemplate template, RouteLayout layout, StraightTube tube)
    {
        if (template.Clips is not { } wish)
        {
            return null;
        }

        var (free, length) = FreePlaces(template, wish.Beside(template.Tube), layout, tube);
        if (length / wish.Every > Most)
        {
            return new([], []) { TooMany = true };
        }

        var places = ClipPlaces.Of(
            [.. free.Select(place => place.Range)],
            length.Millimetres,
            wish.Every.Millimetres,
            wish.FromEnds.Millimetres,
            wish.Width.Millimetres);
        var clips = places.Select(place =>
        {
            var (range, toMark) = free.First(one => place <= one.Range.To);
            var along = Length.FromMillimetres(place);
            return new Clip(along, along + toMark, new(Length.FromMillimetres(range.From), Length.FromMillimetres(range.To)));
        });
        double[] held = [0, .. places, length.Millimetres];
        return new(
            [.. clips],
            [
                .. held.Skip(1).Select((place, i) => new ClipGap(Length.FromMillimetres(held[i]), Length.FromMillimetres(place)))
                    .Where(gap => wish.Every.FallsShortOf(gap.Length)),
            ]);
    }

    /// <summary>Where a clip's middle may stand, what lies from there to its mark, and the length of the finished tube.</summary>
    private static (List<(FreePlace Range, Length ToMark)> Free, Length Length) FreePlaces(
        LineTemplate template, Length margin, RouteLayout layout, StraightTube tube)
    {
        var free = new List<(FreePlace Range, Length ToMark)>();
        var along = Length.Zero;
        for (var i = 0; i < layout.Legs.Length; i++)
        {
            var toMark = (i == 0 ? template.From.FlareAllowance : tube.Bends[i - 1].End) - along;
            var from = along + margin + (i == 0 ? template.From.Fitting?.HardwareLength ?? Length.Zero : Length.Zero);
            along += layout.Legs[i].StraightLeft;
            var to = along - margin - (i == layout.Bends.Length ? template.To.Fitting?.HardwareLength ?? Length.Zero : Length.Zero);
            if (from <= to)
            {
                free.Add((new(from.Millimetres, to.Millimetres), toMark));
            }

            if (i < layout.Bends.Length)
            {
                along += layout.Bends[i].Arc;
            }
        }

        return (free, along);
    }
}
