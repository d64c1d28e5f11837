using System.Globalization;
using System.Text;
using BendSheet.Cli.Output;
using BendSheet.Core.Workshop;

namespace BendSheet.Cli.Asking;

/// <summary>The line as far as it was said: how long, how it looks, what room is left.</summary>
internal static class LineSoFar
{
    /// <summary>After a leg or a bend; empty where there is nothing to say.</summary>
    /// <param name="name">Of the file that is asked for.</param>
    /// <param name="said">So far.</param>
    /// <param name="drawing">Whether it can be drawn.</param>
    public static string Write(string name, Said said, bool drawing)
    {
        if (said.Line is not { Rows: [.., var row] } line)
        {
            return string.Empty;
        }

        return line.TapingDone ? string.Empty
            : line.Taped.Count > 0 ? Taping(said)
            : line.HasEnded ? AfterLeg(Trial.OfAllThere(name, said), line, drawing) + Taping(said)
            : row.Bend is null ? AfterLeg(Trial.OfAllThere(name, said), line, drawing)
            : AfterBend(name, said);
    }

    private static string AfterLeg(Trial trial, SaidLine line, bool drawing)
    {
        if (trial.Sheet is not { } sheet)
        {
            return string.Empty;
        }

        var text = new StringBuilder();
        if (drawing)
        {
            foreach (var row in LinePicture.Rows(sheet))
            {
                text.Append(("  " + row).TrimEnd()).Append('\n');
            }
        }

        text.Append(line.HasEnded ? "  The line is " : "  If it ended here: ").Append("cut ").Append(sheet.CutLength.Main).Append(" (")
            .Append(sheet.CutLength.Other).Append(')');
        var solved = trial.Plan.Lines[^1];
        if (!line.HasEnded && solved.Layout is { } layout && IsByCorners(line))
        {
            // Both bends of a leg share what its corners leave: a bend whose setback alone is more than that cannot be there.
            var room = layout.Legs[^1].StraightLeft;
            var most = 2 * Math.Atan(room.Millimetres / solved.Template.Bender.Radius.Millimetres) * 180 / Math.PI;
            text.Append(". Room for the next bend: ").Append(trial.Plan.Measured.Notation.InBoth(room))
                .Append(string.Create(CultureInfo.InvariantCulture, $"; no bend of more than {Math.Floor(most)}° fits there"));
        }

        return text.Append(".\n").ToString();
    }

    /// <summary>What the bend uses up of the leg after it.</summary>
    private static string AfterBend(string name, Said said)
    {
        var line = said.Line!;
        var trial = Trial.Of(name, said);
        if (line.Rows[^1].Roll is null || !IsByCorners(line) || trial.Plan.Lines is not [.., { Layout: { } layout }]
            || layout.Bends is not [.., { Setback: { } setback }])
        {
            return string.Empty;
        }

        var used = trial.Plan.Measured.Notation.InBoth(setback);
        return $"  Bend {line.Bends} uses up {used} of the next leg, which has to be longer.\n";
    }

    /// <summary>How sure the far end is, and what makes it surer.</summary>
    private static string Taping(Said said) =>
        Questions.NextToTape(said) is { Words.Length: > 0 } next ? $"  {next.Words}\n" : string.Empty;

    private static bool IsByCorners(SaidLine line) =>
        MeasuredToWords.All.Any(known => known.Habit == MeasuredTo.Corner
            && string.Equals(known.Word, line.Measured, StringComparison.OrdinalIgnoreCase));
}
