using System.Globalization;
using BendSheet.Core.Centreline;
using BendSheet.Core.Units;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;

namespace BendSheet.Sheets.Tests;

/// <summary>The drawings measured on the printed page, against the figures they stand for.</summary>
public class DrawnTrueTests
{
    private const double PointsPerMm = 72 / 25.4;
    private static readonly double Cos30 = Math.Sqrt(3) / 2;

    /// <summary>A printed point is written with three decimals, and a bend is drawn as chords of four degrees.</summary>
    private const double ToleranceMm = 0.02;

    [Fact]
    public void Each_view_has_the_shapes_true_proportions_at_the_stated_scale()
    {
        var line = Printed.Solved(Printed.WorkedExample)[0];
        var page = Printed.Pages(Printed.Sheets(Printed.WorkedExample))[0];
        var scale = StatedScale(Printed.Text([page]));
        var points = Sampled(line.Centreline!);
        var views = page.Paths.Where(path => path is { IsStroked: true } && path.LineWidth >= 0.79 && path.Count == 1 && path[0].Commands.Count > 10).ToList();
        Assert.Equal(4, views.Count);

        Assert.All(views.Zip(new (Func<Vector3D, double> Right, Func<Vector3D, double> Up)[]
        {
            (p => (p.X - p.Y) * Cos30, p => ((p.X + p.Y) / 2) + p.Z),
            (p => p.X, p => p.Y),
            (p => p.X, p => p.Z),
            (p => -p.Y, p => p.Z),
        }), pair =>
        {
            var drawn = Ends(pair.First);
            Assert.Equal((pair.Second.Right(points[^1]) - pair.Second.Right(points[0])) / scale, drawn.Right, ToleranceMm);
            Assert.Equal((pair.Second.Up(points[^1]) - pair.Second.Up(points[0])) / scale, drawn.Up, ToleranceMm);
            var box = pair.First.GetBoundingRectangle()!.Value;
            Assert.Equal((points.Max(pair.Second.Right) - points.Min(pair.Second.Right)) / scale, box.Width / PointsPerMm, ToleranceMm);
            Assert.Equal((points.Max(pair.Second.Up) - points.Min(pair.Second.Up)) / scale, box.Height / PointsPerMm, ToleranceMm);
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

    /// <summary>What stands behind "scale 1 :" on the page, up to the bracket.</summary>
    private static double StatedScale(string text)
    {
        var from = text.IndexOf("scale1:", StringComparison.Ordinal) + "scale1:".Length;
        return double.Parse(text[from..text.IndexOf('(', from)], CultureInfo.InvariantCulture);
    }
}
