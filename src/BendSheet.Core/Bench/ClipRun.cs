using System.Collections.Immutable;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench;

/// <summary>Clips along one straight of a line, as their holes are drilled in a rail.</summary>
/// <param name="Straight">The straight's number, 1 at end A.</param>
/// <param name="FirstAlongTube">The first clip's middle from the finished end A.</param>
/// <param name="Holes">Each hole's distance from the first one, which is at zero: all from one place, so that errors do not add up.</param>
/// <param name="Hole">What to drill; null where the file does not say it.</param>
public sealed record ClipRun(int Straight, Length FirstAlongTube, ImmutableArray<Length> Holes, Length? Hole)
{
    /// <summary>Where the straight begins, along the tube from the finished end A.</summary>
    public Length Begins { get; init; }

    /// <summary>Where on the straight a clip's middle may stand, along the tube from the finished end A.</summary>
    public required ClipGap Free { get; init; }

    /// <summary>How long the straight is.</summary>
    public Length Length { get; init; }

    /// <summary>The first clip's number on the line, 1 nearest to A.</summary>
    public int FirstNumber { get; init; }

    /// <summary>Every straight with at least two clips, from end A; none where the file asks for no clips.</summary>
    public static ImmutableArray<ClipRun> Of(SolvedLine line) => [.. OfStraights(line).Where(run => run.Holes.Length > 1)];

    /// <summary>Every straight with a clip, from end A; none where the file asks for no clips.</summary>
    public static ImmutableArray<ClipRun> OfStraights(SolvedLine line)
    {
        if (line is not { Clips: { } plan, Layout: { } layout })
        {
            return [];
        }

        var runs = ImmutableArray.CreateBuilder<ClipRun>();
        var along = Length.Zero;
        for (var i = 0; i < layout.Legs.Length; i++)
        {
            var end = along + layout.Legs[i].StraightLeft;
            var clips = plan.Clips.Where(clip => clip.AlongTube >= along && clip.AlongTube <= end).ToList();
            if (clips.Count > 0)
            {
                var first = clips[0].AlongTube;
                runs.Add(new(i + 1, first, [.. clips.Select(clip => clip.AlongTube - first)], line.Template.Clips?.Hole)
                {
                    Begins = along,
                    Length = layout.Legs[i].StraightLeft,
                    Free = clips[0].Free,
                    FirstNumber = 1 + plan.Clips.IndexOf(clips[0]),
                });
            }

            along = end + (i < layout.Bends.Length ? layout.Bends[i].Arc : Length.Zero);
        }

        return runs.ToImmutable();
    }
}
