using System.CommandLine;
using BendSheet.Cli.Input;
using BendSheet.Cli.Output;
using BendSheet.Core.Sheet;
using BendSheet.Sheets;
using BendSheet.Sheets.FullSize;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet print</c>: the sheets to tape to the bench.</summary>
internal static class PrintCommand
{
    private const string StandardOutput = "-";

    private static readonly (string Word, FullSizePages Pages)[] FullSizeWords =
    [
        ("strips", FullSizePages.Strips),
        ("gauges", FullSizePages.Gauges),
        ("dial", FullSizePages.Dial),
        ("all", FullSizePages.All),
    ];

    public static Command Create(Surroundings surroundings)
    {
        var file = FileOptions.File();
        var line = FileOptions.Line();
        var output = new Option<string>("--output", "-o")
        {
            Description = "The PDF to write, - for standard output. Without it, a PDF beside the file, by its name.",
            HelpName = "PDF",
        };
        var paper = new Option<string>("--paper")
        {
            Description = "Paper to print on; without it what the file says, or else A4 for a metric file and Letter for one in inches or feet.",
            HelpName = string.Join('|', Papers.All.Select(known => known.Word)),
        };
        paper.AcceptOnlyFromAmong([.. Papers.All.Select(known => known.Word)]);
        var fullSize = FullSize();
        var command = new ExampleCommand(
            "print",
            "Prints a sheet for every line as PDF, to tape to the bench.",
            ("bendsheet print finch.yaml", "Writes finch.pdf with a sheet for every line."),
            ("bendsheet print finch.yaml --line rear --paper letter -o rear.pdf", "One line, on Letter paper."),
            ("bendsheet print finch.yaml --line rear --full-size all", "Behind the line's own sheet the full-size strip, the gauges of its bends, and its dial."))
        {
            file,
            line,
            output,
            paper,
            fullSize,
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
            var target = parsed.GetValue(output) ?? DefaultTarget(name, parsed.GetValue(line) ?? []);
            if (target is null)
            {
                surroundings.Error.WriteLine("bendsheet: name the PDF to write with -o, because the measurements come from standard input.");
                return ExitCodes.WrongInput;
            }

            var wanted = parsed.GetValue(paper);
            var onPaper = wanted is null ? solved.File.Paper : Papers.All.First(known => string.Equals(known.Word, wanted, StringComparison.Ordinal)).Paper;
            var pages = (parsed.GetValue(fullSize) ?? []).Aggregate(
                FullSizePages.None,
                static (all, word) => all | FullSizeWords.First(known => string.Equals(known.Word, word, StringComparison.Ordinal)).Pages);
            return Write(PrintedSheets.Of([.. solved.Sheets()], onPaper, pages), target, surroundings);
        });
        return command;
    }

    private static Option<string[]> FullSize()
    {
        var option = new Option<string[]>("--full-size")
        {
            Description = "Pages as large as in reality, behind each line's sheet: strips to lay the tube on and mark it, gauges to hold its bends against, a dial to read rotation. Give it again for more than one.",
            HelpName = string.Join('|', FullSizeWords.Select(known => known.Word)),
        };
        option.AcceptOnlyFromAmong([.. FullSizeWords.Select(known => known.Word)]);
        return option;
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
