using System.Globalization;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;
using BendSheet.Sheets.Shape;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;

namespace BendSheet.Sheets.Tests;

/// <summary>The drawings measured on the printed page, against the figures they stand for.</summary>
public class DrawnTrueTests
{
    private const double PointsPerMm = 72 / 25.4;

    /// <summary>A printed point is written with three decimals, and a bend is drawn as chords of four degrees.</summary>
    private const double ToleranceMm = 0.02;

    [Fact]
    public void Each_view_has_the_shapes_true_proportions_at_the_stated_scale()
    {
        var line = Printed.Solved(Printed.WorkedExample)[0];
        var page = Printed.Pages(Printed.Sheets(Printed.WorkedExample))[0];
        var text = Printed.Text([page]);
        var scale = StatedScale(text, "shape,scale1:");
        var scaleOfPictorial = StatedScale(text, "view,scale1:");
        var pictorial = ViewDirection.Best(line.Centreline!, line.Template.Tube.OutsideDiameter.Millimetres);
        var points = Sampled(line.Centreline!);
        var views = page.Paths.Where(
            path => path is { IsStroked: true } && path.LineWidth >= 0.79 && path.Count == 1 && path[0].Commands.Count > 10).ToList();
        Assert.Equal(4, views.Count);

        Assert.All(views.Zip(new (double Scale, Func<Vector3D, double> Right, Func<Vector3D, double> Up)[]
        {
            (scaleOfPictorial, pictorial.Right.Dot, pictorial.Up.Dot),
            (scale, p => p.X, p => p.Y),
            (scale, p => p.X, p => p.Z),
            (scale, p => -p.Y, p => p.Z),
        }), pair =>
        {
            var (of, right, up) = pair.Second;
            var drawn = Ends(pair.First);
            Assert.Equal((right(points[^1]) - right(points[0])) / of, drawn.Right, ToleranceMm);
            Assert.Equal((up(points[^1]) - up(points[0])) / of, drawn.Up, ToleranceMm);
            var box = pair.First.GetBoundingRectangle()!.Value;
            Assert.Equal((points.Max(right) - points.Min(right)) / of, box.Width / PointsPerMm, ToleranceMm);
            Assert.Equal((points.Max(up) - points.Min(up)) / of, box.Height / PointsPerMm, ToleranceMm);
        });
    }

    [Fact]
    public void The_strips_marks_lie_where_their_figures_say()
    {
        var plan = Printed.Solved(Printed.WorkedExample)[0].Plan!;
        var page = Printed.Pages(Printed.Sheets(Printed.WorkedExample))[0];
        var tube = Assert.Single(page.Paths.Select(path => path.GetBoundingRectangle()).OfType<PdfRectangle>(),
            box => Math.Abs((box.Height / PointsPerMm) - 3) < 0.01 && box.Width / PointsPerMm > 100);
        var marks = page.Paths
            .Where(path => path.IsStroked && Math.Abs(path.LineWidth - 0.6) < 0.001 && path.Count == 1)
            .Select(path => path.GetBoundingRectangle()!.Value)
            .Where(box => box.Width < 0.01 && box.Top > tube.Top && box.Bottom < tube.Bottom)
            .Select(box => box.Left)
            .Order()
            .ToList();
        Assert.Equal(plan.Bends.Length, marks.Count);
        Assert.All(plan.Bends.Zip(marks), pair => Assert.Equal(
            pair.First.Mark / plan.CutLength * tube.Width / PointsPerMm,
            (pair.Second - tube.Left) / PointsPerMm,
            ToleranceMm));
    }

    private static List<Vector3D> Sampled(TubeCentreline centreline)
    {
        var points = new List<Vector3D> { centreline.EndA };
        foreach (var arc in centreline.Arcs)
        {
            for (var i = 0; i <= 500; i++)
            {
                points.Add(arc.PointAt(Angle.FromDegrees(arc.Turn.Degrees * i / 500)));
            }
        }

        points.Add(centreline.EndB);
        return points;
    }

    private static (double Right, double Up) Ends(PdfPath path)
    {
        var from = ((PdfSubpath.Move)path[0].Commands[0]).Location;
        var to = ((PdfSubpath.Line)path[0].Commands[^1]).To;
        return ((to.X - from.X) / PointsPerMm, (to.Y - from.Y) / PointsPerMm);
    }

    /// <summary>The figure behind some words on the page.</summary>
    private static double StatedScale(string text, string words)
    {
        var from = text.IndexOf(words, StringComparison.Ordinal) + words.Length;
        var to = from;
        while (char.IsAsciiDigit(text[to]) || text[to] == '.')
        {
            to++;
        }

        return double.Parse(text[from..to], CultureInfo.InvariantCulture);
    }
}
