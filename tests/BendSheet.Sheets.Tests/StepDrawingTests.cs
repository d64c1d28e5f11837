using System.Globalization;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Shape;
using BendSheet.Sheets.Steps;

namespace BendSheet.Sheets.Tests;

/// <summary>The tube in the tool, measured on the page.</summary>
public class StepDrawingTests
{
    private const double Pen = Canvas.Thick;

    /// <summary>As wide and as high as a panel has room for.</summary>
    private static readonly ViewCell Cell = new(1.5, 1.5, 96.5, 44);

    /// <summary>A former of less is a dot at arm's length; the circle is drawn inside the tube.</summary>
    private const double LeastAcross = 10;

    [Fact]
    public void The_tool_is_never_a_dot_however_much_of_the_tube_is_bent()
    {
        var drawn = Enumerable.Range(1, 40).SelectMany(seed => Panels(RandomLine(seed))).ToList();
        Assert.True(drawn.Count > 150, $"{drawn.Count} panels");
        Assert.All(drawn, panel =>
        {
            var page = Drawn(panel);
            Assert.True(Former(page).Width >= LeastAcross, $"bend {panel.Number}: {Former(page)}");
            Assert.All(page.Things, thing =>
            {
                // A bubble's pen may lie on the edge.
                const double Half = Canvas.Medium / 2;
                Assert.InRange(thing.Box.Left, Cell.Left - Half, Cell.Left + Cell.Width - thing.Box.Width + Half);
                Assert.InRange(thing.Box.Top, Cell.Top - Half, Cell.Top + Cell.Height - thing.Box.Height + Half);
            });
        });
    }

    /// <summary>What is left out has no number, and what is drawn has one: those next to the tool at least.</summary>
    [Fact]
    public void Only_bends_that_are_made_are_numbered_and_the_ends_always_are() => Assert.All(
        Enumerable.Range(1, 40).SelectMany(seed => Panels(RandomLine(seed))), panel =>
        {
            var texts = Drawn(panel).Things.Select(thing => thing.Text).OfType<string>().ToList();
            Assert.Contains("A", texts, StringComparer.Ordinal);
            Assert.Contains("B", texts, StringComparer.Ordinal);
            Assert.Equal(texts.Count, texts.Distinct(StringComparer.Ordinal).Count());
            Assert.All(
                texts.Where(text => char.IsAsciiDigit(text[0]) && !string.Equals(text, panel.Number, StringComparison.Ordinal)),
                text => Assert.Contains(int.Parse(text, CultureInfo.InvariantCulture) - 1, panel.Picture.Made));
        });

    /// <summary>
    /// The circle ends where the tube begins: a thick tube on a tight former leaves the least room. There the number has to be smaller than
    /// usual, or would lie over the circle.
    /// </summary>
    [Theory]
    [InlineData("9/16 in", "3/16 in", 9)]
    [InlineData("14", "10", 9)]
    [InlineData("14", "16", TextStyle.SmallestPoints)]
    public void A_number_of_two_digits_stands_inside_the_former(string radius, string od, double points)
    {
        var yaml = Printed.ManyBends(12).Replace("radius: 9/16 in", $"radius: {radius}", StringComparison.Ordinal)
            .Replace("od: 3/16 in", $"od: {od}", StringComparison.Ordinal);
        var panels = Panels(yaml).Where(panel => panel.Number.Length == 2).ToList();
        Assert.Equal(3, panels.Count);
        Assert.All(panels, panel =>
        {
            var page = Drawn(panel);
            var former = Former(page);
            var text = Assert.Single(page.Things, thing => string.Equals(thing.Text, panel.Number, StringComparison.Ordinal)).Box;
            var (x, y) = (former.Left + (former.Width / 2), former.Top + (former.Height / 2));
            var corner = double.Hypot(
                Math.Max(x - text.Left, text.Left + text.Width - x), Math.Max(y - text.Top, text.Top + text.Height - y));
            Assert.InRange(corner, 0, (former.Width / 2) - Pen);
            Assert.Equal(new TextStyle(points).CapHeight, text.Height, 0.1);
        });
    }

    /// <summary>Bent tube may pass in front of the former: an end's letter there looks for another place.</summary>
    [Fact]
    public void No_letter_or_number_lies_over_the_number_of_the_bend() => Assert.All(
        Enumerable.Range(1, 200).SelectMany(seed => Panels(RandomLine(seed))), panel =>
        {
            var page = Drawn(panel);
            var texts = page.Things.Where(thing => thing.Text is not null).ToLookup(
                thing => string.Equals(thing.Text, panel.Number, StringComparison.Ordinal), thing => thing.Box);
            var number = Assert.Single(texts[true]);
            Assert.All(texts[false], box => Assert.True(
                box.Left > number.Left + number.Width || box.Left + box.Width < number.Left
                    || box.Top > number.Top + number.Height || box.Top + box.Height < number.Top,
                $"{box} over {number}"));
        });

    private static IEnumerable<BendStepFigures> Panels(string yaml) => Printed.Solved(yaml).Where(line => line.Plan is not null)
        .SelectMany(line => StepWriter.Of(line, Printed.Contents(Printed.WorkedExample)[0].Notation))
        .Select(step => step.Bend).OfType<BendStepFigures>();

    private static RecordingPage Drawn(BendStepFigures panel)
    {
        var page = new RecordingPage();
        new StepDrawing(panel.Picture, panel.Number, Cell).Draw(new Canvas(page, 0, Cell.Width + Cell.Left), 0);
        return page;
    }

    /// <summary>The only circle that is not a label: recorded as dots along it.</summary>
    private static PageBox Former(RecordingPage page)
    {
        var dots = page.Things.Select(thing => thing.Box)
            .Where(box => Math.Abs(box.Width - Pen) < 1e-9 && Math.Abs(box.Height - Pen) < 1e-9).ToList();
        Assert.Equal(37, dots.Count);
        var (left, top) = (dots.Min(dot => dot.Left), dots.Min(dot => dot.Top));
        return new(left, top, dots.Max(dot => dot.Left) + Pen - left, dots.Max(dot => dot.Top) + Pen - top);
    }

    /// <summary>Legs from what a 25 mm former just bends to half a metre, all on one bender.</summary>
    private static string RandomLine(int seed)
    {
        var random = new Random(seed);
        int[] turns = [15, 30, 45, 60, 90, 90, 120];
        var (rows, before) = (string.Empty, 0.0);
        for (var bend = 0; bend < (seed % 10) + 1; bend++)
        {
            var turn = turns[random.Next(turns.Length)];
            var setback = 25 * Math.Tan(turn * Math.PI / 360);
            rows += string.Create(
                CultureInfo.InvariantCulture,
                $"    - {{straight: {before + setback + random.Next(45, random.Next(60, 500)):F0}, rotate: {15 * random.Next(-11, 12)}, "
                + $"bend: {turn}}}\n");
            before = setback;
        }

        return Printed.Head.Replace("9/16 in", "25", StringComparison.Ordinal)
            + FormattableString.Invariant($"  random:\n{rows}    - {{straight: {before + 90:F0}}}\n");
    }
}
