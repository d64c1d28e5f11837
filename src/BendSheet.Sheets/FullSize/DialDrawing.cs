using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Labels;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.FullSize;

/// <summary>
/// The dial: a tick for each degree, the tube's hole in the middle, and this line's stops. It goes round with the tube, 0° on the pen line,
/// and is read at a pointer that stays still. Its figures run anticlockwise, so that the reading says where the line stands clockwise.
/// </summary>
internal static class DialDrawing
{
    /// <summary>Radius of the rim in mm: a degree is a little more than a millimetre there, and it fits across both papers.</summary>
    public const double Rim = 72;

    private const double FigureRadius = Rim - 9.5;
    private const double StopStart = Rim - 13;
    private const double FirstRing = Rim - 21;
    private const double RingStep = 5.5;
    private const double CrossOver = 4;
    private const double Around = 2;
    private const double BoxPadding = 1;
    private const double PointerLength = 60;
    private const double PointerHeight = 14;

    /// <summary>A longer list of bends is printed below.</summary>
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
            var at = centre + OnDial(FigureRadius, degree);
            canvas.Text(FormattableString.Invariant($"{degree}"), style, at.X, at.Y + (style.CapHeight / 2), Align.Centre);
        }

        var hole = sheet.TubeDiameter.Millimetres / 2;
        DrawHole(canvas, centre, hole);
        DrawSlit(canvas, centre, hole, sheet.DialStops);
        var placer = new LabelPlacer<Box>((box, placed) => !placed.Any(box.Meets), (_, _) => 0);
        DrawName(canvas, centre, hole, sheet, measure, placer);
        DrawStops(canvas, centre, hole, sheet.DialStops, placer);
    });

    /// <summary>A strip with an arrowhead, to be fixed beside the dial.</summary>
    public static Block Pointer(SheetContent sheet, TextMeasure measure)
    {
        var name = measure.Wrap(DialWords.OnPointer(sheet), TextStyle.Small, PointerLength - 26)[0];
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

    private static void DrawHole(Canvas canvas, PagePoint centre, double hole)
    {
        canvas.Circle(centre, hole);
        canvas.Line(centre.X - hole - CrossOver, centre.Y, centre.X + hole + CrossOver, centre.Y, Canvas.Thin);
        canvas.Line(centre.X, centre.Y - hole - CrossOver, centre.X, centre.Y + hole + CrossOver, Canvas.Thin);
    }

    /// <summary>In the lower half, between two figures, and as far from the stops as helps.</summary>
    private static void DrawSlit(Canvas canvas, PagePoint centre, double hole, IReadOnlyList<DialStop> stops)
    {
        const double FarEnough = 12;
        var slit = Enumerable.Range(0, 17).Select(i => 185.0 + (i % 2 == 0 ? i * 5 : -(i + 1) * 5))
            .MaxBy(degrees => Math.Min(FarEnough, stops.Min(stop => Apart(stop.Reading.Degrees, degrees))));
        var (from, to) = (centre + OnDial(Rim, slit), centre + OnDial(hole, slit));
        canvas.DashedLine(from.X, from.Y, to.X, to.Y, Canvas.Medium);
    }

    /// <summary>Above the hole, where there is room.</summary>
    private static void DrawName(
        Canvas canvas, PagePoint centre, double hole, SheetContent sheet, TextMeasure measure, LabelPlacer<Box> placer)
    {
        const double NameWidth = 50;
        var lines = DialWords.OnDial(sheet).Select(line => measure.Wrap(line, TextStyle.Small, NameWidth)[0]).ToArray();
        var bottom = centre.Y - hole - CrossOver - 1.5;
        var top = bottom - (lines.Length * TextStyle.Small.LineHeight);
        if (centre.Y - top > FirstRing - RingStep)
        {
            return;
        }

        var half = lines.Max(line => TextStyle.Small.Width(line)) / 2;
        placer.Place([new(0, 0, new(new(centre.X, (top + bottom) / 2), half, (bottom - top) / 2))]);
        for (var i = 0; i < lines.Length; i++)
        {
            canvas.Text(lines[i], TextStyle.Small, centre.X, top + TextStyle.Small.Ascent + (i * TextStyle.Small.LineHeight), Align.Centre);
        }
    }

    /// <summary>Bend numbers in boxes, each on the line of its reading, the further in the more of them there are.</summary>
    private static void DrawStops(Canvas canvas, PagePoint centre, double hole, IReadOnlyList<DialStop> stops, LabelPlacer<Box> placer)
    {
        var boxes = new List<(string Text, Box Box)>();
        foreach (var stop in stops)
        {
            var text = stop.BendsShown(MostBendsShown);
            var inner = StopStart - 3;

            // Where there is no room, the list of stops has to do.
            if (placer.Place(Inwards(centre, hole, stop.Reading.Degrees, (StopStyle.Width(text) / 2) + BoxPadding)) is { } box)
            {
                boxes.Add((text, box));
                inner = (box.Middle - centre).Norm;
            }

            Radial(canvas, centre, StopStart, inner, stop.Reading.Degrees, Canvas.Medium);
            Arrowhead(canvas, centre, stop.Reading.Degrees);
        }

        // Over the lines, so that none runs through a number.
        foreach (var (text, (middle, halfWidth, halfHeight)) in boxes)
        {
            var (left, top) = (middle.X - halfWidth, middle.Y - halfHeight);
            canvas.Blank(left, top, 2 * halfWidth, 2 * halfHeight);
            canvas.Box(left, top, 2 * halfWidth, 2 * halfHeight, Canvas.Thin);
            canvas.Text(text, StopStyle, middle.X, middle.Y + (StopStyle.CapHeight / 2), Align.Centre);
        }
    }

    /// <summary>Places on a reading's line, from the outside inwards.</summary>
    private static IEnumerable<Candidate<Box>> Inwards(PagePoint centre, double hole, double degrees, double halfWidth)
    {
        var halfHeight = (StopStyle.CapHeight / 2) + BoxPadding;
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);

        // So far from the rim that the nearest corner of the box still lies inside the ring.
        var reach = (halfWidth * Math.Abs(sin)) + (halfHeight * Math.Abs(cos));
        for (var radius = FirstRing - reach; radius > hole + CrossOver + reach; radius -= RingStep)
        {
            yield return new(-radius, -radius, new(centre + OnDial(radius, degrees), halfWidth, halfHeight));
        }
    }

    /// <summary>At the end of the ticks, pointing outwards: which of them is a stop.</summary>
    private static void Arrowhead(Canvas canvas, PagePoint centre, double degrees)
    {
        var tip = centre + OnDial(StopStart + 1, degrees);
        foreach (var side in new[] { -1, 1 })
        {
            var foot = centre + OnDial(StopStart - 1.8, degrees + (1.2 * side));
            canvas.Line(tip.X, tip.Y, foot.X, foot.Y);
        }
    }

    private static void Radial(Canvas canvas, PagePoint centre, double from, double to, double degrees, double pen)
    {
        var (outer, inner) = (centre + OnDial(from, degrees), centre + OnDial(to, degrees));
        canvas.Line(outer.X, outer.Y, inner.X, inner.Y, pen);
    }

    /// <summary>A place on the card: readings run against the clock.</summary>
    private static PagePoint OnDial(double radius, double reading) => GaugeShape.OnCircle(radius, -reading);

    private static double Apart(double a, double b)
    {
        var apart = Math.Abs(a - b) % 360;
        return Math.Min(apart, 360 - apart);
    }

    private sealed record Box(PagePoint Middle, double HalfWidth, double HalfHeight)
    {
        private const double Apart = 0.6;

        public bool Meets(Box other) =>
            Math.Abs(Middle.X - other.Middle.X) < HalfWidth + other.HalfWidth + Apart
            && Math.Abs(Middle.Y - other.Middle.Y) < HalfHeight + other.HalfHeight + Apart;
    }
}
