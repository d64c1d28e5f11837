using System.Collections.Immutable;
using BendSheet.Cli.Input;
using BendSheet.Cli.Output;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Picture;
using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Pdf;
using BendSheet.Sheets;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet print</c>: the sheets to tape to the bench.</summary>
internal sealed class PrintCommand : CarCommand
{
    private readonly PrintOptions _options = new();

    /// <summary>The sheet was opened: its viewer shows the new one by itself, or is asked to by hand.</summary>
    private bool _shown;

    public PrintCommand(Surroundings surroundings)
        : base(
            surroundings,
            "print",
            "Prints a sheet for every line as PDF, to tape to the bench; before several lines, a cover with all of them.",
            byLine: true,
            ("bendsheet print finch.yaml", "Writes finch.pdf with a cover and a sheet for every line."),
            ("bendsheet print finch.yaml --line rear --paper letter -o rear.pdf", "One line, on Letter paper."),
            ("bendsheet print finch.yaml --pages cover -o cover.pdf", "Only the cover: all lines with their lengths, to tick off."),
            ("bendsheet print finch.yaml --pages commissioning -o after.pdf", "Every joint, hose and bleed screw, to tick off at the car."),
            (
                "bendsheet print finch.yaml --each --units in",
                "A file for each line, beside finch.yaml: finch-rear.pdf and so on, in inches."),
            ("bendsheet print finch.yaml --line rear --full-size all", "After the line's own sheet the full-size strip, the gauges of "
                + "its bends, and its dial."),
            ("bendsheet print finch.yaml --line rear --steps", "After the line's own sheet a panel for each thing done."),
            ("bendsheet print finch.yaml --format svg", "The strip and each view of every line as a drawing of its own, beside the file."),
            ("bendsheet print finch.yaml --line rear --mirror -o board.pdf", "The wrong way round, to be copied on to a board face down."))
    {
        foreach (var option in _options.All)
        {
            Add(option);
        }

        Validators.Add(_options.Check);
        AddWatch();
        Validators.Add(result =>
        {
            if (Watches(result) && string.Equals(result.GetValue(_options.Output), PrintTarget.StandardOutput, StringComparison.Ordinal))
            {
                result.AddError("`--watch` prints again and again, which standard output cannot take: name a PDF with -o.");
            }
        });
    }

    protected override int Write(Asked asked, ImmutableArray<Finding> findings, Surroundings surroundings)
    {
        var plan = asked.Plan;
        if (plan.Verdict != Verdict.Good && !plan.Printable.Any())
        {
            surroundings.Say("no sheet was printed.");
            return ExitCodes.For(plan.Verdict);
        }

        WarnOfAlike(plan, surroundings);
        var target = asked.Options.GetValue(_options.Output);
        var wanted = _options.In(asked.Options, plan.Measured);
        var printing = _options.WantsSvg(asked.Options)
            ? PrintDrawings(
                [.. plan.SheetsToPrint(wanted.Notation)],
                plan.IsWhole ? plan.Picture(wanted.Notation) : null,
                asked.Name,
                target,
                surroundings)
            : PrintPages(plan, PrintTarget.Of(asked.Name, target), wanted, asked.Lines, surroundings);
        SayWhatIsMissing(plan, printing, surroundings);
        if (printing == Printing.Done && asked.Options.GetValue(_options.Open) && !_shown)
        {
            _shown = true;
            Open(PrintTarget.Of(asked.Name, target)!.OfSet(asked.Lines), surroundings);
        }

        return ExitCodes.For(printing, plan.Verdict);
    }

    /// <summary>A PDF that nothing shows is written all the same.</summary>
    private static void Open(string pdf, Surroundings surroundings)
    {
        if (!Viewer.Shows(pdf))
        {
            surroundings.Say($"no program of this system shows {Visible.Text(pdf)}: it is written, open it by hand.");
        }
    }

    /// <summary>A file whose other lines were printed looks whole on paper.</summary>
    private static void SayWhatIsMissing(CarPlan plan, Printing printing, Surroundings surroundings)
    {
        List<string> missing = [.. plan.NotPrinted];
        if (printing == Printing.Done && missing.Count > 0)
        {
            surroundings.Say(
                $"no sheet of {Visible.Text(string.Join(", ", missing))}: see above what is wrong with "
                    + $"{(missing.Count == 1 ? "it" : "them")}.");
        }
    }

    private static void WarnOfAlike(CarPlan plan, Surroundings surroundings)
    {
        foreach (var warning in AlikeOnPaper.Warnings(
            plan.Printable.Select(read => read.Template.Name).Concat(plan.RoughLines.Select(read => read.Name))))
        {
            surroundings.Say($"{warning}");
        }
    }

    private static Printing PrintPages(
        CarPlan plan, PrintTarget? target, WantedPrint wanted, IReadOnlyCollection<string> lines, Surroundings surroundings)
    {
        if (target is null)
        {
            surroundings.Say(
                "name the PDF to write with -o, because the measurements come from standard input.");
            return Printing.WrongInput;
        }

        if (target.IsStandardOutput && surroundings.OutputWidth is not null)
        {
            surroundings.Say(
                "a PDF cannot be read on a terminal: name a file with -o, or send it on with `-o - > FILE` or `-o - | PROGRAM`.");
            return Printing.WrongInput;
        }

        if (target.IsForDrawings)
        {
            surroundings.Say(
                $"{Visible.Text(target.Named!)} is the name of a drawing: say `--format svg` for drawings, or name a PDF");
            return Printing.WrongInput;
        }

        if (wanted.WhyNot(plan) is { } why)
        {
            surroundings.Say($"{why}");
            return Printing.WrongInput;
        }

        var sheets = plan.SheetsToPrint(wanted.Notation, wanted.Steps).ToList();
        if (sheets.Count == 0 && wanted.NeedsSheets(plan))
        {
            return NothingToPrint(surroundings);
        }

        return wanted.Each
            ? PrintEach(sheets, wanted, target, surroundings)
            : Write(PrintedSheets.Of(wanted.Set(plan, sheets), new PdfPress()), target.OfSet(lines), surroundings);
    }

    /// <summary>Stops at the first file that cannot be written: the next ones would fail alike.</summary>
    private static Printing PrintEach(List<SheetContent> sheets, WantedPrint wanted, PrintTarget target, Surroundings surroundings)
    {
        foreach (var sheet in sheets)
        {
            if (Write(PrintedSheets.Of(wanted.One(sheet), new PdfPress()), target.OfLine(sheet.Line), surroundings) is not Printing.Done
                and var stopped)
            {
                return stopped;
            }
        }

        return Printing.Done;
    }

    private static Printing NothingToPrint(Surroundings surroundings)
    {
        surroundings.Say(
            "no sheet was printed: there is no line with a template to print one of. `stock` reckons with rough lines.");
        return Printing.NothingToPrint;
    }

    private static Printing PrintDrawings(
        IReadOnlyList<SheetContent> sheets, CarPicture? car, string name, string? target, Surroundings surroundings)
    {
        var piped = string.Equals(name, TypedFile.StandardInput, StringComparison.Ordinal);
        if (string.Equals(target, PrintTarget.StandardOutput, StringComparison.Ordinal) || (piped && target is null))
        {
            surroundings.Say("name a folder for the drawings with -o, because there are several.");
            return Printing.WrongInput;
        }

        if (sheets.Count == 0)
        {
            return NothingToPrint(surroundings);
        }

        if (target is not null && DrawingFiles.WhyNot(target, sheets[0].Line) is { } why)
        {
            surroundings.Say($"{why}");
            return Printing.WrongInput;
        }

        return DrawingFiles.Write(sheets, car, target, piped ? null : name, surroundings);
    }

    private static Printing Write(PrintedSheets printed, string target, Surroundings surroundings)
    {
        foreach (var missing in printed.MissingCharacters)
        {
            surroundings.Say($"the font has no sign for {missing}; □ stands in its place.");
        }

        if (string.Equals(target, PrintTarget.StandardOutput, StringComparison.Ordinal))
        {
            using var stream = surroundings.StandardOutput();
            stream.Write(printed.Pdf.Span);
            return Printing.Done;
        }

        if (OutputFile.ReplaceSheet(target, printed.Pdf.Span) is { } problem)
        {
            surroundings.Say($"{Visible.Text(target)} was not written: {problem}");
            return Printing.NotWritten;
        }

        var pages = Counted.Words(printed.Pages, "page");
        surroundings.Output.WriteLine(
            $"{Visible.Text(target)}: {InWords(printed.Job)} on {pages}. Print it at 100 %, not fitted to the page.");
        return Printing.Done;
    }

    /// <summary>What was printed; the cover goes without saying where sheets follow it.</summary>
    private static string InWords(PrintJob job)
    {
        List<string> said = [];
        if (job.Lines.Length > 0)
        {
            said.Add(Counted.Words(job.Lines.Length, "line"));
        }
        else if (job.Cover is not null)
        {
            said.Add("the cover");
        }

        if (job is { Car: not null, Cover: null })
        {
            said.Add("the picture of the car");
        }

        if (job.Commissioning is not null)
        {
            said.Add("the commissioning page");
        }

        if (job.Tags is { } tags)
        {
            said.Add(Counted.Words(tags.Tags.Length, "tag"));
        }

        return string.Join(" and ", said);
    }
}
