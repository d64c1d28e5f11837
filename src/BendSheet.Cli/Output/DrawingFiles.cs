using BendSheet.Core.Picture;
using BendSheet.Core.Sheet;
using BendSheet.Sheets;

namespace BendSheet.Cli.Output;

/// <summary>Writes every drawing of every line as an SVG of its own, named by line and drawing, and the picture of the car.</summary>
internal static class DrawingFiles
{
    internal const string Ending = ".svg";

    /// <summary>Of the picture of the car. No drawing of a line has this name: each of them ends with the name of the drawing.</summary>
    private const string Car = "car";

    /// <summary>Why no drawing's name can begin with what was typed after -o, in a sentence.</summary>
    /// <param name="target">As typed.</param>
    /// <param name="line">One of the lines, for the example.</param>
    public static string? WhyNot(string target, string line)
    {
        var what = target.Length == 0 ? "there is no name after -o"
            : target.EndsWith(PrintTarget.Ending, StringComparison.OrdinalIgnoreCase) && !Directory.Exists(target)
                ? $"{Visible.Text(target)} is the name of a PDF"
            : File.Exists(target) && !target.EndsWith(Ending, StringComparison.OrdinalIgnoreCase) ? $"{Visible.Text(target)} is a file"
            : null;
        return what is null
            ? null
            : $"{what}, and there are several drawings: name a folder with -o, or what their names are to begin with, such as `-o "
                + $"drawing` for drawing-{line}-strip{Ending}";
    }

    /// <summary>Writes them all, or up to the first that the disk does not take.</summary>
    /// <param name="sheets">A line each.</param>
    /// <param name="car">All of them in one picture; null for none.</param>
    /// <param name="target">A folder that is there, or what all names begin with; null puts them beside the file.</param>
    /// <param name="source">The file with the measurements; null for standard input.</param>
    /// <param name="surroundings">To say what was written.</param>
    public static Printing Write(
        IReadOnlyCollection<SheetContent> sheets, CarPicture? car, string? target, string? source, Surroundings surroundings)
    {
        var begins = PrintTarget.Begins(target, Path.ChangeExtension(source, null), Ending);
        if (Path.GetDirectoryName(begins) is { Length: > 0 } folder && !Directory.Exists(folder))
        {
            surroundings.Say($"no drawing was written: there is no folder {Visible.Text(folder)}: make it first, or "
                + "name one that is there with -o");
            return Printing.NotWritten;
        }

        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var missing = new List<string>();
        foreach (var sheet in sheets)
        {
            var drawn = LineDrawings.Of(sheet);
            missing.AddRange(drawn.MissingCharacters.Except(missing, StringComparer.Ordinal));
            var line = Unused(sheet.Line, names);
            foreach (var drawing in drawn.Drawings)
            {
                if (!Wrote($"{begins}{line}-{drawing.Name}{Ending}", drawing.Svg, surroundings))
                {
                    return Printing.NotWritten;
                }
            }
        }

        if (car is not null)
        {
            var drawn = CarDrawing.Of(car);
            missing.AddRange(drawn.MissingCharacters.Except(missing, StringComparer.Ordinal));
            if (!Wrote($"{begins}{Car}{Ending}", drawn.Svg, surroundings))
            {
                return Printing.NotWritten;
            }
        }

        foreach (var sign in missing)
        {
            surroundings.Say($"the font has no sign for {sign}; □ stands in its place.");
        }

        return Printing.Done;
    }

    private static bool Wrote(string path, ReadOnlyMemory<byte> svg, Surroundings surroundings)
    {
        if (OutputFile.ReplaceDrawing(path, svg.Span) is { } problem)
        {
            surroundings.Say($"{Visible.Text(path)} was not written: {problem}");
            return false;
        }

        surroundings.Output.WriteLine(Visible.Text(path));
        return true;
    }

    /// <summary>Of two lines whose names differ only in capitals, which many disks take for one name, the second gets a number.</summary>
    private static string Unused(string name, HashSet<string> names)
    {
        var free = name;
        for (var number = 2; !names.Add(free); number++)
        {
            free = FormattableString.Invariant($"{name}-{number}");
        }

        return free;
    }
}
