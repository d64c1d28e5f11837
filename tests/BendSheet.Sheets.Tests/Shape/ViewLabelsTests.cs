using System.Globalization;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Tests.Shape;

public class ViewLabelsTests
{
    public static TheoryData<string, double> Shapes()
    {
        var coil = string.Concat(Enumerable.Repeat("    - {straight: 30, rotate: 4, bend: 90}\n", 24));
        (string Rows, double Scale)[] shapes =
        [
            ("    - {straight: 300}\n", 5),
            ("    measured: straight\n    rows:\n      - {straight: 60, bend: 180}\n      - {straight: 70}\n", 1),
            ("    - {straight: 4500, bend: 90}\n    - {straight: 4500}\n", 150),
            ("    - {straight: 20, bend: 20}\n    - {straight: 20}\n", 1),
            (coil + "    - {straight: 30}\n", 3),
            (Printed.ManyBends(60)[Printed.Head.Length..].Replace("  many:\n", string.Empty, StringComparison.Ordinal), 20),
        ];
        var cases = new TheoryData<string, double>();
        foreach (var (rows, scale) in shapes)
        {
            cases.Add(rows, scale);
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Every_bend_keeps_its_number_and_no_label_touches_the_tube_or_another(string rows, double scale)
    {
        var line = Printed.Solved(
            Printed.Head.Replace("lines:", "wire: {diameter: 2.4, radius: 9/16 in}\nlines:", StringComparison.Ordinal) + "  line:\n"
                + rows)[0];
        var shape = Polyline.Of(line.Centreline!);
        Projection[] views = [ViewDirection.Best(line.Centreline!, 4.76), .. Projection.Flat];
        Assert.All(views, view =>
        {
            var (width, height) = DrawnTube.Size(shape, view, 4.76);
            var cell = new ViewCell(
                0, 0, Math.Max(38, (width / scale) + (2 * ViewLayout.Margin)), (height / scale) + (2 * ViewLayout.Margin));
            var drawn = DrawnTube.Of(shape, line.Centreline!, view, 4.76, scale, cell);
            var labels = ViewLabels.Of(drawn, cell, []);
            Assert.Equal(["A", "B"], labels.Take(2).Select(label => label.Text), StringComparer.Ordinal);
            Assert.Equal(Enumerable.Range(1, line.Centreline!.Arcs.Length), labels.Skip(2).SelectMany(Numbers));
            Clear(labels, drawn);
        });
    }

    [Fact]
    public void Bends_that_fall_on_one_another_share_a_label()
    {
        var line = Printed.Solved(
            Printed.Head
                + "  line:\n    - {straight: 60, bend: 90}\n    - {straight: 80, rotate: 90, bend: 90}\n    - {straight: 60}\n")[0];
        var shape = Polyline.Of(line.Centreline!);
        var cell = new ViewCell(0, 0, 80, 80);

        // Seen along the middle leg at a small scale.
        var drawn = DrawnTube.Of(shape, line.Centreline!, Projection.Side, 4.76, 20, cell);
        Assert.Equal(["A", "B", "1–2"], ViewLabels.Of(drawn, cell, []).Select(label => label.Text), StringComparer.Ordinal);
    }

    private static void Clear(IReadOnlyList<ViewLabel> labels, DrawnTube drawn)
    {
        var pieces = drawn.Points.Zip(drawn.Points.Skip(1), (from, to) => new Segment(from, to)).ToList();
        foreach (var label in labels)
        {
            Assert.True(
                pieces.TrueForAll(piece => piece.DistanceTo(label.Core) > ViewLabel.Radius + (drawn.Width / 2)),
                $"{label.Text} on the tube");
            foreach (var other in labels.Where(other => other != label))
            {
                Assert.True(label.Core.DistanceTo(other.Core) > 2 * ViewLabel.Radius, $"{label.Text} on {other.Text}");
                Assert.True(
                    other.Leaders.All(leader => label.Core.DistanceTo(leader) > ViewLabel.Radius),
                    $"{label.Text} on the line of {other.Text}");
            }
        }
    }

    private static IEnumerable<int> Numbers(ViewLabel label)
    {
        var ends = label.Text.Split('–').Select(number => int.Parse(number, CultureInfo.InvariantCulture)).ToList();
        return Enumerable.Range(ends[0], ends[^1] - ends[0] + 1);
    }
}
