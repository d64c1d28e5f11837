using BendSheet.Core.Sheet;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Sheet;

public class StripTests
{
    [Fact]
    public void Everything_on_it_lies_where_the_plan_has_it()
    {
        var plan = FullLine.Template.Plan();
        var strip = Strip.Of(FullLine.Template, plan, FullLine.Metric);
        Assert.Equal(plan.CutLength, strip.Length);
        Assert.Equal(
            plan.Bends.Select(bend => (bend.Number, bend.Start, bend.End, bend.Mark)),
            strip.Bends.Select(bend => (bend.Number, bend.Start, bend.End, bend.Mark)));

        // Made in the order 3, 2, 1, at the dial readings 45°, 90°, 0°.
        Assert.Equal(
            ["↺ 90° ccw after 2", "↻ 45° cw after 3", "↻ 45° cw"], strip.Bends.Select(bend => bend.Rotation), StringComparer.Ordinal);
        Assert.True(strip.FlaredA);
        Assert.True(strip.FlaredB);
        Assert.Equal(25, strip.Trim.Millimetres);
        Assert.Equal(plan.Datum, strip.Datum);
        Assert.Equal(plan.Bends.Select(bend => bend.Held.ToString()), strip.Bends.Select(bend => bend.Held), StringComparer.Ordinal);
        Assert.Equal(["0°", "90°", "45°"], strip.Bends.Select(bend => bend.Dial), StringComparer.Ordinal);
    }

    [Fact]
    public void Its_rotations_from_the_bend_made_before_are_those_of_the_table()
    {
        foreach (var template in new[]
        {
            FullLine.Template,
            Lines.Of(Lines.Bender(10), [300, 60, 70, 50], (20, 30), (-90, 45), (30, 60)),
            Lines.Of(Lines.Bender(10), [50, 60, 70, 500], (0, 30), (180, 45), (30, 60)),
        })
        {
            var content = FullLine.Content(template);
            Assert.All(content.Rows.Zip(content.Rows.Prepend(null)), pair =>
            {
                var (row, before) = pair;
                var number = row.Number;
                var after = before is null || before.Number == number - 1 ? string.Empty : $" after {before.Number}";
                var rotate = content.Strip.Bends[number - 1].Rotation;
                Assert.Equal(row.Rotate is SheetWriter.Dash or "0°" ? string.Empty : row.Rotate + after, rotate.TrimStart('↻', '↺', ' '));
                Assert.Equal(rotate.Contains('↺', StringComparison.Ordinal), rotate.Contains("ccw", StringComparison.Ordinal));
            });
        }
    }

    [Fact]
    public void What_goes_on_first_lies_furthest_from_the_end()
    {
        var strip = FullLine.Content(FullLine.Template).Strip;
        Assert.Equal(["sleeve", "nut"], strip.HardwareA.Select(piece => piece.Name), StringComparer.Ordinal);
        Assert.Equal(["tube nut"], strip.HardwareB.Select(piece => piece.Name), StringComparer.Ordinal);
    }

    [Fact]
    public void A_bend_in_the_same_plane_as_the_one_before_has_no_rotation_to_print() =>
        Assert.Empty(FullLine.Content(Lines.Of(Lines.Bender(10), [50, 50, 50], (0, 45), (0, 45))).Strip.Bends[1].Rotation);

    [Fact]
    public void Bare_ends_carry_nothing()
    {
        var strip = FullLine.Content(Lines.Of(Lines.Bender(10), [50])).Strip;
        Assert.Empty(strip.HardwareA);
        Assert.Empty(strip.HardwareB);
        Assert.False(strip.FlaredA);
        Assert.False(strip.FlaredB);
        Assert.Equal(Length.Zero, strip.Trim);
    }
}
