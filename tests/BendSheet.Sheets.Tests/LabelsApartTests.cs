using System.Globalization;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Elements;
using BendSheet.Sheets.FullSize;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Tests;

/// <summary>On the strip, on full-size tiles and in the views no two labels meet, whatever the line.</summary>
public class LabelsApartTests
{
    private const int Seed = 20261125;
    private const int Lines = 500;

    /// <summary>Letters of two labels may come so near, in millimetres.</summary>
    private const double Touch = 0.05;

    [Fact]
    public void No_two_labels_of_a_drawing_meet_on_five_hundred_random_lines()
    {
        var random = new Random(Seed);
        var labels = 0;
        for (var line = 0; line < Lines; line++)
        {
            var yaml = Line(random);
            var sheet = Printed.AnyContents(yaml)[0];
            foreach (var (name, texts) in Drawings(sheet))
            {
                labels += texts.Count;
                for (var i = 0; i < texts.Count; i++)
                {
                    for (var j = i + 1; j < texts.Count; j++)
                    {
                        Assert.False(Meet(texts[i].Box, texts[j].Box), $"seed {Seed}, {name}: {texts[i]} and {texts[j]}, on\n{yaml}");
                    }
                }
            }
        }

        Assert.True(labels > 20 * Lines);
    }

    private static IEnumerable<(string Name, List<DrawnThing> Texts)> Drawings(SheetContent sheet)
    {
        var measure = new TextMeasure();
        foreach (var block in StripDrawing.Of(sheet, measure, 190).Skip(1))
        {
            yield return ("strip", Texts(canvas => block.Draw(canvas, 10)));
        }

        foreach (var block in StripPages.Blocks(sheet, measure, 277, 180))
        {
            yield return ("tile", Texts(canvas => block.Draw(canvas, 10)));
        }

        foreach (var view in ShapeViews.Alone(sheet, measure, 190, 150))
        {
            yield return (view.Name, Texts(canvas => view.Draw(canvas, 10)));
        }
    }

    private static List<DrawnThing> Texts(Action<Canvas> draw)
    {
        var page = new RecordingPage();
        draw(new Canvas(page, 10, 190));
        return [.. page.Things.Where(thing => !string.IsNullOrWhiteSpace(thing.Text))];
    }

    private static bool Meet(PageBox one, PageBox other) =>
        Math.Min(one.Left + one.Width, other.Left + other.Width) - Math.Max(one.Left, other.Left) > Touch
        && Math.Min(one.Top + one.Height, other.Top + other.Height) - Math.Max(one.Top, other.Top) > Touch;

    /// <summary>In any planes: one to ten bends as on a car, or up to twenty-five near one another.</summary>
    private static string Line(Random random)
    {
        var (most, shortest, longest, largest) = random.Next(2) == 0 ? (10, 60, 400, 120) : (25, 26, 60, 45);
        var rows = Enumerable.Range(0, random.Next(1, most + 1)).Select(i => string.Create(
            CultureInfo.InvariantCulture,
            $"    - {{straight: {random.Next(shortest, longest)}, rotate: {(i == 0 ? 0 : random.Next(-180, 181))}, "
                + $"bend: {random.Next(10, largest + 1)}}}\n"));
        return Printed.Head + "  random:\n" + string.Concat(rows) + "    - {straight: 60}\n";
    }
}
