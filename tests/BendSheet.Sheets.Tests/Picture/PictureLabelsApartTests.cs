using BendSheet.Core.Picture;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;
using BendSheet.Sheets.Picture;

namespace BendSheet.Sheets.Tests.Picture;

/// <summary>In the picture of a car and in the diagram no two labels meet, and none hides anything, whatever the car.</summary>
public class PictureLabelsApartTests
{
    private const int Seed = 20261126;
    private const int Cars = 300;

    /// <summary>Letters of two labels may come so near, in millimetres.</summary>
    private const double Touch = 0.05;

    [Fact]
    public void No_two_texts_of_a_page_meet_on_three_hundred_random_cars()
    {
        var random = new Random(Seed);
        for (var i = 0; i < Cars; i++)
        {
            var picture = RandomCar.Placed(random, Lines(random, i));
            NothingMeets(picture, i % 2 == 0 ? PaperSize.A4 : PaperSize.Letter, $"seed {Seed}, car {i}");
        }
    }

    [Fact]
    public void No_two_texts_of_a_diagram_meet_on_three_hundred_random_networks()
    {
        var random = new Random(Seed);
        for (var i = 0; i < Cars; i++)
        {
            var picture = RandomCar.Network(random, Lines(random, i));
            NothingMeets(picture, i % 2 == 0 ? PaperSize.A4 : PaperSize.Letter, $"seed {Seed}, network {i}");
        }
    }

    [Fact]
    public void Every_label_is_off_lines_and_parts_and_everything_has_one_in_some_view()
    {
        var random = new Random(Seed);
        var (labels, unlabelled) = (0, 0);
        for (var car = 0; car < 60; car++)
        {
            var views = ViewsDrawing.Of(RandomCar.Placed(random, 1 + car), new TextMeasure(), 277, 170);
            unlabelled += views.Unlabelled.Count;
            for (var view = 0; view < 3; view++)
            {
                var cell = views.Layout.Cells[view];
                var parts = views.Layout.Drawn[view].Where(item => item.Item.Kind == ItemKind.Part).ToList();
                var pieces = views.Layout.Drawn[view].Where(item => item.Item.Kind == ItemKind.Run).SelectMany(item => item.Pieces)
                    .ToList();
                foreach (var label in views.Labels[view])
                {
                    labels++;
                    Assert.True(Inside(label.Box, cell), $"car {car}: {label} leaves {cell}");
                    Assert.All(parts, part => Assert.False(Meet(part.Box, label.Box), $"car {car}: {label} on a part"));
                    Assert.All(pieces, piece => Assert.True(
                        Samples(piece.From, piece.To).All(point => !Contains(label.Box, point)), $"car {car}: {label} on a line"));
                }
            }
        }

        Assert.True(labels > 60 * 60);
        Assert.InRange(unlabelled, 0, 60);
    }

    private static int Lines(Random random, int car) => car % 10 == 0 ? random.Next(30, 61) : random.Next(1, 25);

    private static void NothingMeets(CarPicture picture, PaperSize paper, string which)
    {
        foreach (var page in PicturePages.Of(picture, new TextMeasure(), paper))
        {
            var recorded = new RecordingPage();
            var canvas = new Canvas(recorded, TypeArea.Margin, TypeArea.Of(page.Size).Width);
            foreach (var (block, top) in page.Blocks)
            {
                block.DrawOn(canvas, TypeArea.Margin + top);
            }

            Assert.All(recorded.Things, thing =>
            {
                Assert.InRange(thing.Box.Left, 0, page.Size.WidthMm - thing.Box.Width);
                Assert.InRange(thing.Box.Top, 0, page.Size.HeightMm - thing.Box.Height);
            });
            var texts = recorded.Things.Where(thing => !string.IsNullOrWhiteSpace(thing.Text)).OrderBy(thing => thing.Box.Top).ToList();
            Assert.NotEmpty(texts);
            for (var i = 0; i < texts.Count; i++)
            {
                for (var j = i + 1; j < texts.Count && texts[j].Box.Top < texts[i].Box.Top + texts[i].Box.Height; j++)
                {
                    Assert.False(Meet(texts[i].Box, texts[j].Box), $"{which}: {texts[i]} and {texts[j]}");
                }
            }
        }
    }

    private static bool Meet(PageBox one, PageBox other) =>
        Math.Min(one.Left + one.Width, other.Left + other.Width) - Math.Max(one.Left, other.Left) > Touch
        && Math.Min(one.Top + one.Height, other.Top + other.Height) - Math.Max(one.Top, other.Top) > Touch;

    private static bool Inside(PageBox box, PageBox cell) =>
        box.Left >= cell.Left && box.Left + box.Width <= cell.Left + cell.Width
        && box.Top >= cell.Top && box.Top + box.Height <= cell.Top + cell.Height;

    private static bool Contains(PageBox box, PagePoint point) =>
        point.X > box.Left && point.X < box.Left + box.Width && point.Y > box.Top && point.Y < box.Top + box.Height;

    private static IEnumerable<PagePoint> Samples(PagePoint from, PagePoint to)
    {
        var steps = (int)Math.Ceiling((to - from).Norm / 0.3) + 1;
        return Enumerable.Range(0, steps + 1).Select(i => from + ((double)i / steps * (to - from)));
    }
}
