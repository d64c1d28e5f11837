using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Sheet;

public class ClipWordsTests
{
    [Fact]
    public void The_sheet_says_how_many_what_to_drill_and_where()
    {
        Assert.Equal(
            [
                "4 clips, at most 293.5 mm apart, 4 holes of 5.5 mm.",
                "Middles from the cut end of A, to be marked before it is fitted: 60.0, 353.5, 646.5, 940.0 mm.",
            ],
            [.. FullLine.Content(Line(1000, 5.5)).Clips]);
        Assert.Equal(
            [60, 353.5, 646.5, 940], FullLine.Content(Line(1000, 5.5)).Strip.Clips.Select(place => Math.Round(2 * place.Millimetres) / 2));
    }

    [Fact]
    public void In_inches_and_without_a_hole() => Assert.Equal(
        ["2 clips, at most 10 in apart.", "Middles from the cut end of A, to be marked before it is fitted: 2 3/8, 12 3/8 in."],
        [.. FullLine.Content(Line(14.75 * 25.4, null, fromEnds: 2.375 * 25.4), FullLine.Metric.Other).Clips]);

    [Fact]
    public void One_clip_is_one() => Assert.Equal(
        ["1 clip, 1 hole of 1/4 in.", "Middles from the cut end of A, to be marked before it is fitted: 50.0 mm."],
        [.. FullLine.Content(Line(100, 6.35)).Clips]);

    [Fact]
    public void Without_clips_there_is_nothing_to_say() => Assert.Empty(FullLine.Content(FullLine.Template).Clips);

    private static LineTemplate Line(double length, double? hole, double fromEnds = 60) => Lines.Of(Lines.Bender(10), [length]) with
    {
        Clips = new Clipping(Lines.Mm(300), Lines.NameAt, Lines.Mm(fromEnds), hole is { } drill ? Lines.Mm(drill) : null),
    };
}
