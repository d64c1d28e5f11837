using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.FullSize;

/// <summary>Every different bend of a line at full size: its curve to lay it on, and a wedge to cut out and hold into it.</summary>
internal static class GaugePages
{
    private const double LongestLeg = 35;

    /// <summary>Less would not show where a leg points.</summary>
    private const double ShortestLeg = 5;

    /// <summary>How far the tick where the bend begins or ends reaches beyond the tube at each side.</summary>
    private const double TickOver = 2;

    /// <summary>How far the thin line of the pulled angle reaches beyond the leg.</summary>
    private const double PulledOver = 5;

    /// <summary>From the curve to the far side of a wedge, so that fingers can hold it.</summary>
    private const double WedgeDepth = 22;

    /// <summary>Beyond a U-bend the legs come together again, and no wedge goes in between them.</summary>
    private static Angle LastWedge => Angle.FromDegrees(180);

    /// <summary>The line to cut along: thicker than a face's, and not so thick that it matters on which side of it one cuts.</summary>
    private const double WedgePen = 0.4;

    /// <summary>How they are used, then all of them.</summary>
    public static IEnumerable<Block> Blocks(SheetContent sheet, TextMeasure measure, double width, double height)
    {
        var diameter = sheet.TubeDiameter.Millimetres;
        var bar = ProvingBar.Of(sheet.Notation, measure, width);
        List<GaugeCell> cells = [];
        List<string> tooLarge = [];
        foreach (var gauge in sheet.Gauges)
        {
            var longest = Math.Clamp(gauge.Leg.Millimetres, ShortestLeg, LongestLeg);
            if (Largest(longest, leg => Curve(new(gauge, diameter, leg), measure), width, height) is { } curve)
            {
                cells.Add(curve);
            }
            else
            {
                tooLarge.Add(GaugeWords.TooLarge(gauge));
            }

            if (gauge.Turn <= LastWedge && Largest(longest, leg => Wedge(new(gauge, diameter, leg), measure), width, height) is { } wedge)
            {
                cells.Add(wedge);
            }
        }

        var told = GaugeWords.Alternative(sheet);
        return
        [
            bar,
            .. GaugeWords.HowTo(sheet).SelectMany(text => Paragraph.Of(text, TextStyle.Body, measure, width)),
            .. tooLarge.SelectMany(text => Paragraph.Of(text, TextStyle.Body, measure, width)),
            Block.Space(3),
            .. GaugeCell.Rows(cells, width).Select(row => row with { Repeated = bar, Role = Role.Figure, Alternative = told }),
        ];
    }

    /// <summary>With legs as long as fit; null where even short ones do not.</summary>
    private static GaugeCell? Largest(double longest, Func<double, GaugeCell> cell, double width, double height)
    {
        for (var leg = longest; leg >= ShortestLeg; leg -= 3)
        {
            var one = cell(leg);
            if (one.Width <= width && one.Height <= height / 2)
            {
                return one;
            }
        }

        var shortest = cell(ShortestLeg);
        return shortest.Width <= width && shortest.Height <= height - 60 ? shortest : null;
    }

    private static GaugeCell Curve(GaugeShape shape, TextMeasure measure) => GaugeCell.Of(
        shape.Gauge.TurnLabel,
        GaugeWords.OfCurve(shape.Gauge),
        CurveOutline(shape),
        measure,
        (canvas, origin) => DrawCurve(canvas, origin, shape));

    private static List<PagePoint> CurveOutline(GaugeShape shape)
    {
        var most = shape.OuterRadius + TickOver;
        List<PagePoint> points = [.. Enumerable.Range(-100, 201).Select(i => GaugeShape.OnCircle(most, shape.Half * i / 100))];
        foreach (var side in new[] { -1, 1 })
        {
            points.AddRange(
                [
                    shape.LegEnd(shape.InnerRadius - TickOver, side),
                    shape.LegEnd(most, side),
                    GaugeShape.OnCircle(shape.InnerRadius - TickOver, side * shape.Half),
                ]);
        }

        if (shape.Gauge.PullLabel is not null)
        {
            points.Add(PulledEnd(shape));
        }

        return points;
    }

    private static void DrawCurve(Canvas canvas, PagePoint origin, GaugeShape shape)
    {
        foreach (var radius in new[] { shape.InnerRadius, shape.OuterRadius })
        {
            canvas.Arc(origin, radius, -shape.Half, 2 * shape.Half);
        }

        canvas.Arc(origin, shape.Radius, -shape.Half, 2 * shape.Half, Canvas.Thin, dashed: true);
        foreach (var side in new[] { -1, 1 })
        {
            Line(GaugeShape.OnCircle(shape.InnerRadius, side * shape.Half), shape.LegEnd(shape.InnerRadius, side));
            Line(GaugeShape.OnCircle(shape.OuterRadius, side * shape.Half), shape.LegEnd(shape.OuterRadius, side));
            Line(
                GaugeShape.OnCircle(shape.InnerRadius - TickOver, side * shape.Half),
                GaugeShape.OnCircle(shape.OuterRadius + TickOver, side * shape.Half), Canvas.Thin);
            var (from, to) = (origin + GaugeShape.OnCircle(shape.Radius, side * shape.Half), origin + shape.LegEnd(shape.Radius, side));
            canvas.DashedLine(from.X, from.Y, to.X, to.Y);
        }

        if (shape.Gauge.PullLabel is not null)
        {
            Line(GaugeShape.OnCircle(shape.Radius, Pulled(shape)), PulledEnd(shape), Canvas.Thin);
        }

        void Line(PagePoint from, PagePoint to, double pen = Canvas.Medium) =>
            canvas.Line(origin.X + from.X, origin.Y + from.Y, origin.X + to.X, origin.Y + to.Y, pen);
    }

    /// <summary>Where the pulled bend ends, in degrees from the top: the left leg stays as drawn, the right one is further round.</summary>
    private static double Pulled(GaugeShape shape) => shape.Gauge.Pull.Degrees - shape.Half;

    private static PagePoint PulledEnd(GaugeShape shape)
    {
        var end = Pulled(shape);
        var (sin, cos) = Math.SinCos(end * Math.PI / 180);
        return GaugeShape.OnCircle(shape.Radius, end) + ((shape.Leg + PulledOver) * new PagePoint(cos, sin));
    }

    private static GaugeCell Wedge(GaugeShape shape, TextMeasure measure) => GaugeCell.Of(
        shape.Gauge.TurnLabel,
        GaugeWords.OfWedge(shape.Gauge),
        [
            shape.LegEnd(shape.InnerRadius, -1),
            shape.LegEnd(shape.InnerRadius, 1),
            GaugeShape.OnCircle(shape.InnerRadius, 0),
            WedgeFoot(shape),
        ],
        measure,
        (canvas, origin) =>
        {
            canvas.Arc(origin, shape.InnerRadius, -shape.Half, 2 * shape.Half, WedgePen);
            var foot = origin + WedgeFoot(shape);
            foreach (var side in new[] { -1, 1 })
            {
                var tangent = origin + GaugeShape.OnCircle(shape.InnerRadius, side * shape.Half);
                var end = origin + shape.LegEnd(shape.InnerRadius, side);
                canvas.Line(tangent.X, tangent.Y, end.X, end.Y, WedgePen);
                canvas.Line(end.X, end.Y, foot.X, foot.Y, WedgePen);
            }

            // Its name is cut out with it.
            var top = origin.Y - shape.InnerRadius;
            canvas.Text(shape.Gauge.TurnLabel, TextStyle.Label, origin.X, top + (WedgeDepth / 2) + TextStyle.Label.CapHeight, Align.Centre);
        });

    /// <summary>
    /// The middle of the wedge's far side: straight across from leg to leg, or lower where that is too near to the curve.
    /// </summary>
    private static PagePoint WedgeFoot(GaugeShape shape) =>
        new(0, Math.Max(shape.LegEnd(shape.InnerRadius, 1).Y, WedgeDepth - shape.InnerRadius));
}
