using System.CommandLine;
using BendSheet.Cli.Input;
using BendSheet.Cli.Output;
using BendSheet.Core.Sheet;
using BendSheet.Sheets;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet print</c>: the sheets to tape to the bench.</summary>
internal static class PrintCommand
{
    private const string StandardOutput = "-";
    private const string Pdf = "pdf";
    private const string Svg = "svg";

    public static Command Create(Surroundings surroundings)
    {
        var file = FileOptions.File();
        var line = FileOptions.Line();
        var output = new Option<string>("--output", "-o")
        {
            Description = "The PDF to write, - for standard output. Without it, a PDF beside the file, by its name. For svg a folder, or what the names begin with.",
            HelpName = "PDF",
        };
        var paper = new Option<string>("--paper")
        {
            Description = "Paper to print on; without it what the file says, or else A4 for a metric file and Letter for one in inches or feet.",
            HelpName = string.Join('|', Papers.All.Select(known => known.Word)),
        };
        paper.AcceptOnlyFromAmong([.. Papers.All.Select(known => known.Word)]);
        var format = new Option<string>("--format")
        {
            Description = "pdf, the sheets; or svg, each drawing of each line as a file of its own.",
            HelpName = $"{Pdf}|{Svg}",
            DefaultValueFactory = _ => Pdf,
        };
        format.AcceptOnlyFromAmong(Pdf, Svg);
        var command = new ExampleCommand(
            "print",
            "Prints a sheet for every line as PDF, to tape to the bench.",
            ("bendsheet print finch.yaml", "Writes finch.pdf with a sheet for every line."),
            ("bendsheet print finch.yaml --line rear --paper letter -o rear.pdf", "One line, on Letter paper."),
            ("bendsheet print finch.yaml --format svg", "The strip and each view of every line as a drawing of its own, beside the file."))
        {
            file,
            line,
            output,
            paper,
            format,
        };
        command.SetAction(parsed =>
        {
            var solved = FileOptions.ReadAndReport(parsed, file, line, surroundings);
            if (solved.ExitCode != ExitCodes.Done)
            {
                surroundings.Error.WriteLine("bendsheet: no sheet was printed.");
                return solved.ExitCode;
            }

            var name = parsed.GetRequiredValue(file);
            if (string.Equals(parsed.GetValue(format), Svg, StringComparison.Ordinal))
            {
                return WriteDrawings(solved, name, parsed.GetValue(output), surroundings);
            }

            var target = parsed.GetValue(output) ?? DefaultTarget(name, parsed.GetValue(line) ?? []);
            if (target is null)
            {
                surroundings.Error.WriteLine("bendsheet: name the PDF to write with -o, because the measurements come from standard input.");
                return ExitCodes.WrongInput;
            }

            var wanted = parsed.GetValue(paper);
            var onPaper = wanted is null ? solved.File.Paper : Papers.All.First(known => string.Equals(known.Word, wanted, StringComparison.Ordinal)).Paper;
            return Write(PrintedSheets.Of([.. solved.Sheets()], onPaper), target, surroundings);
        });
        return command;
    }

    private static int WriteDrawings(SolvedFile solved, string name, string? target, Surroundings surroundings)
    {
        var piped = string.Equals(name, TypedFile.StandardInput, StringComparison.Ordinal);
        if (string.Equals(target, StandardOutput, StringComparison.Ordinal) || (piped && target is null))
        {
            surroundings.Error.WriteLine("bendsheet: name a folder for the drawings with -o, because there are several.");
            return ExitCodes.WrongInput;
        }

        return DrawingFiles.Write([.. solved.Sheets()], target, piped ? null : name, surroundings);
    }

    private static int Write(PrintedSheets printed, string target, Surroundings surroundings)
    {
        foreach (var missing in printed.MissingCharacters)
        {
            surroundings.Error.WriteLine($"bendsheet: the font has no sign for {missing}; □ stands in its place.");
        }

        if (string.Equals(target, StandardOutput, StringComparison.Ordinal))
        {
            using var stream = surroundings.StandardOutput();
            stream.Write(printed.Pdf.Span);
            return ExitCodes.Done;
        }

        if (OutputFile.ReplaceSheet(target, printed.Pdf.Span) is { } problem)
        {
            surroundings.Error.WriteLine($"bendsheet: {Visible.Of(target)} was not written: {problem}");
            return ExitCodes.NotWritten;
        }

        var lines = printed.Lines == 1 ? "1 line" : $"{printed.Lines} lines";
        var pages = printed.Pages == 1 ? "1 page" : $"{printed.Pages} pages";
        surroundings.Output.WriteLine($"{Visible.Of(target)}: {lines} on {pages}. Print it at 100 %, not fitted to the page.");
        return ExitCodes.Done;
    }

    /// <summary>Beside the typed file, by its name and the lines asked for; null for standard input.</summary>
    private static string? DefaultTarget(string name, string[] lines) =>
        string.Equals(name, TypedFile.StandardInput, StringComparison.Ordinal)
            ? null
            : Path.ChangeExtension(name, null) + string.Concat(lines.Distinct(StringComparer.Ordinal).Select(line => "-" + line)) + ".pdf";
}
