using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Elements;

/// <summary>The head of a sheet: what the line is, and the cut length large.</summary>
internal static class Title
{
    private const double CutWidth = 62;
    private const double CutHeight = 20;

    /// <summary>Between the name and what stands beside it.</summary>
    private const double AfterName = 4;

    /// <summary>The full head of the first page.</summary>
    public static IEnumerable<Block> Of(SheetContent sheet, TextMeasure measure, double width)
    {
        var textWidth = width - CutWidth - 5;
        var name = measure.Printable(sheet.Line);
        var nameStyle = TextStyle.Title.Fitting(name, textWidth);
        var lines = measure.Wrap(sheet.Line, nameStyle, textWidth).Select((line, i) => new HeadLine(line, nameStyle, Role.Title, i > 0))
            .ToList();
        var project = SheetWords.Project(sheet);
        var besideName = nameStyle.Width(name) + AfterName;
        var hasRoom = besideName + TextStyle.Body.Width(measure.Printable(project)) <= textWidth;
        if (hasRoom)
        {
            lines[0] = lines[0] with { Beside = measure.Printable(project), BesideAt = besideName };
        }

        foreach (var text in SheetWords.Head(sheet).Prepend(hasRoom ? string.Empty : project))
        {
            if (text.Length > 0)
            {
                lines.AddRange(
                    measure.Wrap(text, TextStyle.Body, textWidth)
                        .Select((line, i) => new HeadLine(line, TextStyle.Body, Role.Text, i > 0)));
            }
        }

        // As many lines as fit beside the cut length are one block with it; what is longer flows on below.
        var beside = 0;
        var height = 0.0;
        while (beside < lines.Count && height + (lines[beside].Style.LineHeight / 2) <= CutHeight)
        {
            height += lines[beside].Style.LineHeight;
            beside++;
        }

        var cutStyle = TextStyle.CutLength.Fitting(sheet.CutLength.Main, CutWidth - 6);
        yield return new(Math.Max(height, CutHeight) + 1, (canvas, top) =>
        {
            var y = top;
            foreach (var line in lines.Take(beside))
            {
                line.DrawOn(canvas, y);
                y += line.Style.LineHeight;
            }

            DrawCutLength(canvas, top, sheet, cutStyle);
        })
        {
            Role = Role.Nothing,
        };
        foreach (var line in lines.Skip(beside))
        {
            yield return line.AsBlock();
        }
    }

    /// <summary>The short head of the pages that follow.</summary>
    public static Block Continued(SheetContent sheet, TextMeasure measure, double width)
    {
        var text = measure.Printable(SheetWords.Continued(sheet));
        var lines = measure.Wrap(text, TextStyle.Heading.Fitting(text, width), width);
        var style = TextStyle.Heading.Fitting(text, width);
        return new((lines.Count * style.LineHeight) + 3, (canvas, top) =>
        {
            for (var i = 0; i < lines.Count; i++)
            {
                canvas.Text(lines[i], style, 0, top + style.Ascent + (i * style.LineHeight));
            }

            var rule = top + (lines.Count * style.LineHeight) + 1;
            canvas.Line(0, rule, canvas.Width, rule, Canvas.Thin);
        })
        {
            Role = Role.Decoration,
        };
    }

    private static void DrawCutLength(Canvas canvas, double top, SheetContent sheet, TextStyle style)
    {
        var left = canvas.Width - CutWidth;
        canvas.Decoration(() => canvas.Box(left, top, CutWidth, CutHeight, Canvas.Thick));
        canvas.As(Role.Text, () =>
        {
            canvas.Text(SheetWords.CutLength, TextStyle.Small with { Bold = true }, left + 3, top + 4.1);
            canvas.Text(sheet.CutLength.Main, style, left + 3, top + 11.5);
            canvas.Text(sheet.CutLength.Other, TextStyle.Small, left + 3, top + 15.2);
        });
        canvas.As(Role.Text, () => canvas.Text(SheetWords.DevelopedLength(sheet), TextStyle.Small, left + 3, top + 18.7));
    }

    private sealed record HeadLine(string Text, TextStyle Style, Role Role, bool Continues)
    {
        /// <summary>On the same baseline.</summary>
        public string Beside { get; init; } = string.Empty;

        public double BesideAt { get; init; }

        public void DrawOn(Canvas canvas, double top)
        {
            AsBlock().DrawOn(canvas, top);
            if (Beside.Length > 0)
            {
                canvas.As(Role.Text, () => canvas.Text(Beside, TextStyle.Body, BesideAt, top + Style.Ascent));
            }
        }

        public Block AsBlock() =>
            new(Style.LineHeight, (canvas, top) => canvas.Text(Text, Style, 0, top + Style.Ascent)) { Role = Role, Continues = Continues };
    }
}
