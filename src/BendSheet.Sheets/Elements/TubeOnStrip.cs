using BendSheet.Core.Fittings;
using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Elements;

/// <summary>The straight tube itself, or a part of it: hatched bends, hardware, flares and the trim line; and its clips.</summary>
internal static class TubeOnStrip
{
    /// <summary>Of the tube on paper, whatever its diameter, in millimetres.</summary>
    public const double Height = 3;

    /// <summary>At the right, above the tube, for the word at the trim line, in millimetres.</summary>
    public const double TrimRoom = 8;

    private const double HardwareHeight = 5;
    private const double ClipSize = 0.9;
    private const double HatchPitch = 0.9;

    /// <summary>Draws it between the letters of its ends, or arrows where the tube goes on in another part.</summary>
    public static void Draw(Canvas canvas, StripPart part, Strip strip, double top)
    {
        var a = part.At(part.From);
        var b = part.At(part.To);
        var middle = top + (Height / 2);
        var baseline = middle + (TextStyle.Heading.CapHeight / 2);
        canvas.Text(part.HasA ? "A" : "→", TextStyle.Heading, 1.5, baseline);
        canvas.Text(part.HasB ? "B" : "→", TextStyle.Heading, b + StripPart.EndRoom - 1.5, baseline, Align.Right);
        foreach (var bend in strip.Bends.Where(bend => bend.End > part.From && bend.Start < part.To))
        {
            Hatching.Draw(canvas, Math.Max(a, part.At(bend.Start)), Math.Min(b, part.At(bend.End)), top, Height, HatchPitch);
        }

        canvas.Box(a, top, b - a, Height);
        if (part.HasA)
        {
            DrawHardware(canvas, strip.HardwareA, place => Math.Min(b, part.At(place)), piece => piece, middle);
        }

        if (part.HasB)
        {
            DrawHardware(canvas, strip.HardwareB, place => Math.Max(a, part.At(place)), piece => strip.Length - piece, middle);
        }

        if (strip.FlaredA && part.HasA)
        {
            DrawFlare(canvas, a, a - 1.5, top);
        }

        if (strip.FlaredB && part.HasB)
        {
            DrawFlare(canvas, b, b + 1.5, top);
        }

        if (!part.HasA)
        {
            DrawBreak(canvas, a, top);
        }

        if (!part.HasB)
        {
            DrawBreak(canvas, b, top);
        }

        if (part.HasTrim)
        {
            var cut = part.At(strip.Length - strip.Trim);
            canvas.DashedLine(cut, top - 2, cut, top + Height + 2, Canvas.Medium);
            canvas.Text(StripWords.Trim, TextStyle.Small, canvas.Width, top - 1.2, Align.Right);
        }
    }

    /// <summary>To scale, one after the other from the end inwards; a piece narrower than 1 mm on paper is drawn less high.</summary>
    private static void DrawHardware(
        Canvas canvas, IEnumerable<EndHardware> hardware, Func<Length, double> at, Func<Length, Length> fromEnd, double middle)
    {
        var reached = Length.Zero;
        foreach (var piece in hardware)
        {
            var inner = at(fromEnd(reached + piece.Length));
            var outer = at(fromEnd(reached));
            var height = Math.Abs(inner - outer) < 1 ? HardwareHeight - 1 : HardwareHeight;
            canvas.Box(Math.Min(inner, outer), middle - (height / 2), Math.Abs(inner - outer), height, Canvas.Medium);
            reached += piece.Length;
        }
    }

    /// <summary>Over all lines, so that no mark hides one.</summary>
    public static void DrawClips(Canvas canvas, StripPart part, Strip strip, double top)
    {
        foreach (var clip in strip.Clips.Where(clip => clip >= part.From && (clip < part.To || part.HasB)))
        {
            DrawClip(canvas, part.At(clip), top + Height);
        }
    }

    /// <summary>A black triangle that points at the tube from below, white around it, in the room above the labels.</summary>
    private static void DrawClip(Canvas canvas, double x, double bottom)
    {
        var foot = bottom + (1.6 * ClipSize);
        PagePoint[] outline = [new(x - ClipSize, foot), new(x, bottom + 0.2), new(x + ClipSize, foot), new(x - ClipSize, foot)];
        canvas.Path(outline, ClipSize, white: true);
        canvas.Line(x, bottom, x - ClipSize, foot);
        canvas.Line(x, bottom, x + ClipSize, foot);
        canvas.Line(x - ClipSize, foot, x + ClipSize, foot);
        canvas.Path([new(x - (0.5 * ClipSize), foot - 0.3), new(x, bottom + 0.7), new(x + (0.5 * ClipSize), foot - 0.3)], 0.6);
        canvas.Line(x, bottom + 0.7, x, foot, 0.6);
    }

    private static void DrawFlare(Canvas canvas, double end, double outer, double top)
    {
        canvas.Line(end, top, outer, top - 1.2);
        canvas.Line(end, top + Height, outer, top + Height + 1.2);
    }

    /// <summary>The tube goes on: a gap at its end, with two slanting lines across.</summary>
    private static void DrawBreak(Canvas canvas, double x, double top)
    {
        canvas.Blank(x - 0.5, top - 0.3, 1, Height + 0.6);
        canvas.Line(x - 0.9, top + Height + 0.8, x + 0.3, top - 0.8, Canvas.Thin);
        canvas.Line(x - 0.3, top + Height + 0.8, x + 0.9, top - 0.8, Canvas.Thin);
    }
}
