using BendSheet.Core.Fittings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

public class LineReaderTests
{
    [Theory]
    [InlineData("corner", MeasuredTo.Corner)]
    [InlineData("straight", MeasuredTo.Straight)]
    [InlineData("outside", MeasuredTo.Outside)]
    [InlineData("inside", MeasuredTo.Inside)]
    [InlineData("along", MeasuredTo.Along)]
    [InlineData("Outside", MeasuredTo.Outside)]
    public void Legs_are_measured_in_one_of_five_habits(string typed, MeasuredTo habit)
    {
        var file = Read(Top + "wire: {diameter: 2.4, radius: 4}\n" + LongLine($"measured: {typed}")[Top.Length..]);
        Assert.Empty(file.Findings);
        Assert.Equal(habit, file.Lines[0].Habit);
    }

    [Theory]
    [InlineData("corner", "", true)]
    [InlineData("straight", "diameter: 2.4", false)]
    [InlineData("straight", "radius: 4", true)]
    [InlineData("straight", "radius: 0", true)] // a wire folded over an edge
    [InlineData("outside", "radius: 4", false)]
    [InlineData("outside", "diameter: 2.4", true)]
    [InlineData("inside", "radius: 4", false)]
    [InlineData("inside", "diameter: 2.4", true)]
    [InlineData("along", "diameter: 2.4", false)]
    [InlineData("along", "radius: 4", true)]
    public void A_habit_asks_only_for_the_figure_of_the_wire_that_it_needs(string habit, string wire, bool enough)
    {
        var file = Read(Top + (wire.Length == 0 ? "" : $"wire: {{{wire}}}\n") + LongLine($"measured: {habit}")[Top.Length..]);
        Assert.Equal(enough, file.Findings.IsEmpty);
        Assert.Equal(enough ? 1 : 0, file.Lines.Length);
    }

    [Theory]
    [InlineData("from: rear outlet", "rear outlet")]
    [InlineData("from: {at: rear outlet}", "rear outlet")]
    [InlineData("from: 3", "3")]
    [InlineData("from: \"  rear\\n outlet \"", "rear  outlet")]
    [InlineData("from: \"a\\tb\"", "a b")]
    [InlineData("from: \" \"", null)]
    [InlineData("from: {fitting: an3}", null)]
    public void An_end_is_a_name_or_says_more(string typed, string? at)
    {
        var file = Read(Top + "fittings: {an3: {flare: none}}\n" + LongLine(typed)[Top.Length..]);
        Assert.Empty(file.Findings);
        Assert.Equal(at, file.Lines[0].From.At);
        Assert.Null(file.Lines[0].To.At);
    }

    [Theory]
    [InlineData("single 37", Flare.Single37)]
    [InlineData("single 45", Flare.Single45)]
    [InlineData("double 45", Flare.Double45)]
    [InlineData("bubble", Flare.Bubble)]
    [InlineData("none", Flare.None)]
    public void A_fitting_says_how_its_end_is_formed_and_no_more_is_needed(string typed, Flare flare)
    {
        var file = Read(Top + $"fittings: {{x: {{flare: {typed}}}}}\n" + LongLine("to: {fitting: x}")[Top.Length..]);
        Assert.Empty(file.Findings);
        var fitting = file.Lines[0].To.Fitting!;
        Assert.Equal(
            (flare, Length.Zero, Length.Zero, 0), (fitting.Flare, fitting.FlareAllowance, fitting.Straight, fitting.Hardware.Length));
    }

    [Theory]
    [InlineData("[{nut: 17}, {sleeve: 9}]")]
    [InlineData("[nut: 17, sleeve: 9]")]
    public void What_is_slid_on_keeps_its_order(string typed)
    {
        var file = Read(Top + $"fittings: {{x: {{flare: none, slide-on: {typed}}}}}\n" + LongLine("to: {fitting: x}")[Top.Length..]);
        Assert.Empty(file.Findings);
        Assert.Equal(["nut", "sleeve"], file.Lines[0].To.Fitting!.Hardware.Select(piece => piece.Name), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("made: true", true)]
    [InlineData("made: True", true)]
    [InlineData("made: false", false)]
    public void A_line_may_exist_already(string typed, bool made) => Assert.Equal(made, Assert.Single(Read(LongLine(typed)).Lines).Made);
}
