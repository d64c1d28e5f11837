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

        Assert.Equal(plan.Bends.Select(bend => bend.LineAt), strip.Bends.Select(bend => bend.LineAt));

        // Made in the order 3, 2, 1, held from A, at the dial readings 45°, 90°, 0°.
        Assert.Equal(["1:30", "10:30", "12:00"], strip.Bends.Select(bend => bend.LineClock), StringComparer.Ordinal);
        Assert.True(strip.FlaredA);
        Assert.True(strip.FlaredB);
        Assert.Equal(25, strip.Trim.Millimetres);
        Assert.Equal(plan.Datum, strip.Datum);
        Assert.Equal(plan.Bends.Select(bend => bend.Held.ToString()), strip.Bends.Select(bend => bend.Held), StringComparer.Ordinal);
        Assert.Equal(["45°", "315°", "0°"], strip.Bends.Select(bend => bend.LineFigure), StringComparer.Ordinal);
    }

    [Fact]
    public void What_goes_on_first_lies_furthest_from_the_end()
    {
        var strip = FullLine.Content(FullLine.Template).Strip;
        Assert.Equal(["sleeve", "nut"], strip.HardwareA.Select(piece => piece.Name), StringComparer.Ordinal);
        Assert.Equal(["tube nut"], strip.HardwareB.Select(piece => piece.Name), StringComparer.Ordinal);
    }

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
