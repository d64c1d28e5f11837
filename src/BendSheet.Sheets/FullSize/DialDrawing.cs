using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.FullSize;

/// <summary>The dial: a tick for each degree, clockwise from the top, the tube's hole in the middle, and this line's stops.</summary>
internal static class DialDrawing
{
    /// <summary>Of the rim: a degree is a little more than a millimetre there, and it fits across both papers.</summary>
    public const double Rim = 72;

    private const double FigureRadius = Rim - 9.5;
    private const double StopStart = Rim - 13;
    private const double FirstRing = Rim - 17;
    private const double RingStep = 5.2;
    private const double CrossOver = 4;
    private const double Around = 2;
    private const double PointerLength = 60;
    private const double PointerHeight = 14;

    /// <summary>A longer list of bends is printed in words below.</summary>
    private const int MostBendsShown = 10;

    private static readonly TextStyle FigureStyle = TextStyle.Small;
    private static readonly TextStyle StopStyle = TextStyle.Heading;

    /// <summary>Whether the hole leaves room for the stops around it.</summary>
    public static bool HasRoom(SheetContent sheet) => sheet.TubeDiameter.Millimetres / 2 < FirstRing - RingStep - CrossOver;

    /// <summary>The dial in the middle of the page.</summary>
    public static Block Of(SheetContent sheet, TextMeasure measure) => new((2 * Rim) + (2 * Around), (canvas, top) =>
    {
        var centre = new PagePoint(canvas.Width / 2, top + Around + Rim);
        canvas.Circle(centre, Rim);
        for (var degree = 0; degree < 360; degree++)
        {
            var length = degree % 10 == 0 ? 6 : degree % 5 == 0 ? 4.5 : 2.8;
            Radial(canvas, centre, Rim, Rim - length, degree, degree % 10 == 0 ? Canvas.Medium : Canvas.Thin);
        }

        for (var degree = 0; degree < 360; degree += 10)
        {
            var style = degree % 30 == 0 ? FigureStyle with { Bold = true } : FigureStyle;
            var at = centre + GaugeShape.OnCircle(FigureRadius, degree);
            canvas.Text(FormattableString.Invariant($"{degree}"), style, at.X, at.Y + (style.CapHeight / 2), Align.Centre);
        }

        DrawHole(canvas, centre, sheet.TubeDiameter.Millimetres / 2, sheet);
        DrawStops(canvas, centre, sheet, measure);
    });

    /// <summary>A strip with an arrowhead, to be fixed beside the dial.</summary>
    public static Block Pointer(SheetContent sheet, TextMeasure measure)
    {
        var name = measure.Wrap($"pointer – {sheet.Line}", TextStyle.Small, PointerLength - 26)[0];
        return new(PointerHeight + 3, (canvas, top) =>
        {
            var (left, right) = ((canvas.Width / 2) - (PointerLength / 2), (canvas.Width / 2) + (PointerLength / 2));
            var (y, middle) = (top + 1, top + 1 + (PointerHeight / 2));
            canvas.Line(left + 8, y, right, y);
            canvas.Line(left + 8, y + PointerHeight, right, y + PointerHeight);
            canvas.Line(right, y, right, y + PointerHeight);
            canvas.Line(left + 8, y, left, middle);
            canvas.Line(left + 8, y + PointerHeight, left, middle);
            canvas.Line(left, middle, left + 18, middle, Canvas.Thick);
            canvas.Text(name, TextStyle.Small, left + 22, middle + (TextStyle.Small.CapHeight / 2));
        });
    }

    private static void DrawHole(Canvas canvas, PagePoint centre, double radius, SheetContent sheet)
    {
        canvas.Circle(centre, radius);
        canvas.Line(centre.X - radius - CrossOver, centre.Y, centre.X + radius + CrossOver, centre.Y, Canvas.Thin);
        canvas.Line(centre.X, centre.Y - radius - CrossOver, centre.X, centre.Y + radius + CrossOver, Canvas.Thin);

        // Between two figures and, where it can be, between two stops.
        var slit = Enumerable.Range(0, 36).Select(i => (i * 10.0) + 185).MaxBy(degree => sheet.DialStops.Min(stop => Apart(stop.Reading.Degrees, degree)) is var least && least > 12 ? 12 : least);
        var (from, to) = (centre + GaugeShape.OnCircle(Rim, slit), centre + GaugeShape.OnCircle(radius, slit));
        canvas.DashedLine(from.X, from.Y, to.X, to.Y, Canvas.Medium);
    }

    private static void DrawStops(Canvas canvas, PagePoint centre, SheetContent sheet, TextMeasure measure)
    {
        var rings = Math.Max(1, (int)((FirstRing - (sheet.TubeDiameter.Millimetres / 2) - CrossOver - RingStep) / RingStep));
        var taken = new List<(double Left, double Top, double Right, double Bottom)>();
        var labels = new List<(string Text, PagePoint Middle)>();
        foreach (var stop in sheet.DialStops)
        {
            var text = Shown(stop.Bends);
            var half = (measure.Width(text, StopStyle) / 2) + 0.8;
            var tall = (StopStyle.CapHeight / 2) + 0.8;
            var at = Enumerable.Range(0, rings)
                .Select(ring => centre + GaugeShape.OnCircle(FirstRing - (ring * RingStep) - (half * Math.Abs(Math.Sin(stop.Reading.Radians))), stop.Reading.Degrees))
                .Where(place => (place - centre).Norm > (sheet.TubeDiameter.Millimetres / 2) + CrossOver + tall)
                .Select(place => (PagePoint?)place)
                .FirstOrDefault(place => taken.TrueForAll(other => place!.Value.X + half <= other.Left || place.Value.X - half >= other.Right || place.Value.Y + tall <= other.Top || place.Value.Y - tall >= other.Bottom));
            var inner = StopStart - 2;
            if (at is { } middle)
            {
                taken.Add((middle.X - half, middle.Y - tall, middle.X + half, middle.Y + tall));
                labels.Add((text, middle));
                inner = (middle - centre).Norm;
            }

            Radial(canvas, centre, StopStart, Math.Min(inner, StopStart), stop.Reading.Degrees, Canvas.Medium);
            Arrowhead(canvas, centre, stop.Reading.Degrees);
        }

        foreach (var (text, middle) in labels)
        {
            var width = measure.Width(text, StopStyle) + 1;
            canvas.Blank(middle.X - (width / 2), middle.Y - (StopStyle.CapHeight / 2) - 0.5, width, StopStyle.CapHeight + 1);
            canvas.Text(text, StopStyle, middle.X, middle.Y + (StopStyle.CapHeight / 2), Align.Centre);
        }
    }

    /// <summary>As many numbers as are read at a glance.</summary>
    private static string Shown(string bends)
    {
        if (bends.Length <= MostBendsShown)
        {
            return bends;
        }

        var comma = bends.LastIndexOf(',', MostBendsShown - 1);
        return bends[..comma] + " …";
    }

    /// <summary>At the end of the ticks, pointing outwards: which of them is a stop.</summary>
    private static void Arrowhead(Canvas canvas, PagePoint centre, double degrees)
    {
        var tip = centre + GaugeShape.OnCircle(StopStart + 0.8, degrees);
        foreach (var side in new[] { -1, 1 })
        {
            var foot = centre + GaugeShape.OnCircle(StopStart - 1.6, degrees + side);
            canvas.Line(tip.X, tip.Y, foot.X, foot.Y);
        }
    }

    private static void Radial(Canvas canvas, PagePoint centre, double from, double to, double degrees, double pen)
    {
        var (outer, inner) = (centre + GaugeShape.OnCircle(from, degrees), centre + GaugeShape.OnCircle(to, degrees));
        canvas.Line(outer.X, outer.Y, inner.X, inner.Y, pen);
    }

    private static double Apart(double a, double b)
    {
        var apart = Math.Abs(a - b) % 360;
        return Math.Min(apart, 360 - apart);
    }
}
