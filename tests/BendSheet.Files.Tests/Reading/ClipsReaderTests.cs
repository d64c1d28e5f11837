using BendSheet.Core.Findings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

public class ClipsReaderTests
{
    private const string ForAll = "clips: {every: 300, from-ends: 60, hole: 5.5}\n";

    [Fact]
    public void A_line_says_how_it_is_held() =>
        Assert.Equal(
            Clips(new("car.yaml", 6, 20), 12 * 25.4, 50, 6.35), Only(LongLine("clips: {every: 1 ft, from-ends: 50, hole: 1/4 in}")));

    [Fact]
    public void From_the_ends_it_is_half_of_every_unless_said() =>
        Assert.Equal(Clips(new("car.yaml", 6, 20), 300, 150, null), Only(LongLine("clips: {every: 300}")));

    [Fact]
    public void What_the_top_says_holds_for_every_line_in_both_forms()
    {
        var expected = Clips(new("car.yaml", 4, 16), 300, 60, 5.5);
        var file = Read(Top + ForAll + Line + "  long: {rows: [{straight: 300}]}\n  mirrored: {mirror: fl}\n");
        Assert.Empty(file.Findings);
        Assert.Equal(3, file.Lines.Length);
        Assert.All(file.Lines, line => Assert.Equal(expected, line.Clips));
    }

    [Fact]
    public void What_a_line_says_itself_goes_first()
    {
        var file = Read(
            Top + ForAll + Line + "  own: {clips: {every: 200}, rows: [{straight: 300}]}\n  none: {clips: none, rows: [{straight: 300}]}\n"
            + "  like-own: {mirror: own}\n  without: {mirror: own, clips: none}\n  again: {mirror: without, clips: {every: 100}}\n");
        Assert.Empty(file.Findings);
        Assert.Equal([300, 200, null, 200, null, 100], file.Lines.Select(line => line.Clips?.Every.Millimetres));
    }

    [Theory]
    [InlineData("clips: {every: 300}", 12)]
    [InlineData("clips: {every: 300, width: 1/2 in}", 12.7)]
    [InlineData("clips: {every: 300, width: 0}", 0)]
    public void A_clip_has_a_width(string typed, double width) => Assert.Equal(width, Only(LongLine(typed))!.Width.Millimetres, 1e-9);

    [Theory]
    [InlineData("clips: {every: 30, width: 31}", "6:24 out-of-range")]
    [InlineData("clips: {every: 300, width: 201}", "6:32 out-of-range")]
    public void Clips_do_not_lie_on_one_another(string typed, string places) => Assert.Equal(places, Places(Read(LongLine(typed))));

    [Fact]
    public void Nothing_is_held_unless_somebody_says_so() => Assert.Null(Only(LongLine("made: false")));

    private static Clipping? Only(string typed)
    {
        var file = Read(typed);
        Assert.Empty(file.Findings);
        return Assert.Single(file.Lines).Clips;
    }

    private static Clipping Clips(SourcePosition at, double every, double fromEnds, double? hole) =>
        new(Length.FromMillimetres(every), at, Length.FromMillimetres(fromEnds), hole is { } drill ? Length.FromMillimetres(drill) : null);
}
