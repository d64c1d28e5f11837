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
        var (labels, again) = (0, 0);
        for (var car = 0; car < Cars; car++)
        {
            // Every third one on less paper than there is, so that labels run out of room.
            var (width, height) = car % 3 == 0 ? (150, 100) : (277, 170);
            var all = ViewsDrawing.Of(RandomCar.Placed(random, 1 + (car % 60)), new TextMeasure(), width, height);
            again += all.Count - 1;
            var drawn = all[0].Layout.Drawn[0].Select(one => one.Item.Number).Order();
            var labelled = all.SelectMany(one => one.Labels).SelectMany(view => view).Select(label => label.Item.Number);
            Assert.Equal(drawn, labelled.Distinct().Order());
            labels += all.Sum(views => OffEverything(views, car));
        }

        Assert.True(labels > Cars * 60);
        Assert.InRange(again, 1, Cars);
    }

    private static int OffEverything(ViewsDrawing views, int car)
    {
        for (var view = 0; view < 3; view++)
        {
            var cell = views.Layout.Cells[view];
            var parts = views.Layout.Drawn[view].Where(item => item.Item.Kind == ItemKind.Part).ToList();
            var points = views.Layout.Drawn[view].Where(item => item.Item.Kind == ItemKind.Run).SelectMany(item => item.Pieces)
                .SelectMany(piece => Samples(piece.From, piece.To)).ToList();
            foreach (var label in views.Labels[view])
            {
                Assert.True(Inside(label.Box, cell), $"car {car}: {label} leaves {cell}");
                Assert.False(parts.Exists(part => Meet(part.Box, label.Box)), $"car {car}: {label} on a part");
                Assert.False(points.Exists(point => Contains(label.Box, point)), $"car {car}: {label} on a line");
            }
        }

        return views.Labels.Sum(view => view.Count);
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
