using System.CommandLine;
using System.CommandLine.Parsing;
using BendSheet.Cli.Output;
using BendSheet.Core.Car;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.FullSize;

namespace BendSheet.Cli.Commands;

/// <summary>What can be asked of a print, as typed.</summary>
internal sealed class PrintOptions
{
    private static readonly (string Word, FullSizePages Pages)[] FullSizeWords =
    [
        ("strips", FullSizePages.Strips),
        ("gauges", FullSizePages.Gauges),
        ("dial", FullSizePages.Dial),
        ("clips", FullSizePages.Clips),
        ("all", FullSizePages.All),
    ];

    private const string Pdf = "pdf";
    private const string Svg = "svg";
    private static readonly (string Word, PrintedPages Pages)[] PageWords =
    [
        ("cover", PrintedPages.Cover),
        ("sheets", PrintedPages.Sheets),
        ("commissioning", PrintedPages.Commissioning),
        ("car", PrintedPages.Car),
        ("tags", PrintedPages.Tags),
    ];

    private const string Metric = "mm";
    private const string Imperial = "in";

    public PrintOptions()
    {
        Pages.AcceptOnlyFromAmong([.. PageWords.Select(known => known.Word)]);
        Paper.AcceptOnlyFromAmong([.. Papers.All.Select(known => known.Word)]);
        Units.AcceptOnlyFromAmong(Metric, Imperial);
        Format.AcceptOnlyFromAmong(Pdf, Svg);
        FullSize.AcceptOnlyFromAmong([.. FullSizeWords.Select(known => known.Word)]);
    }

    public Option<string> Output { get; } = new("--output", "-o")
    {
        Description = "The PDF to write, - for standard output. Without it, a PDF beside the file, by its name. For --each and svg a "
            + "folder, or what the names begin with.",
        HelpName = "PDF",
    };

    public Option<string[]> Pages { get; } = new("--pages")
    {
        Description = "Only these pages; may be given several times. Without it, the sheets, and a cover before them where there are "
            + "several lines. commissioning: what to do after the last bend, to tick off. tags: to wrap round finished lines. "
            + "car: the car in one picture, which the cover has as well.",
        HelpName = string.Join('|', PageWords.Select(known => known.Word)),
    };

    public Option<string> Paper { get; } = new("--paper")
    {
        Description =
            "Paper to print on; without it what the file says, or else A4 for a metric file and Letter for one in inches or feet.",
        HelpName = string.Join('|', Papers.All.Select(known => known.Word)),
    };

    public Option<string> Units { get; } = new("--units")
    {
        Description = "Show lengths in millimetres or in inches, whatever the file is in. The file's own figures stay what they are.",
        HelpName = $"{Metric}|{Imperial}",
    };

    public Option<string[]> FullSize { get; } = new("--full-size")
    {
        Description = "Pages at full size (1:1), after each line's sheet: strips to lay the tube on and mark it, gauges to hold its "
            + "bends against, a dial to read rotation, clips to drill their holes by. Give it again for more than one.",
        HelpName = string.Join('|', FullSizeWords.Select(known => known.Word)),
    };

    public Option<bool> Steps { get; } = new("--steps")
    {
        Description = "After each line's sheet a panel for each thing done: the part-bent tube in the tool, its figures large, and one "
            + "distance to check before the next.",
    };

    public Option<string> Format { get; } = new("--format")
    {
        Description = "pdf, the sheets; or svg, each drawing of each line as a file of its own.",
        HelpName = $"{Pdf}|{Svg}",
        DefaultValueFactory = _ => Pdf,
    };

    public Option<bool> Each { get; } = new("--each")
    {
        Description = "A PDF for each line instead of one for all, by the name of the PDF and the line, without a cover.",
    };

    public Option<bool> Mirror { get; } = new("--mirror")
    {
        Description = "Print every page the wrong way round, left and right exchanged, to be pressed or copied on to a board. The foot "
            + "of the page says so.",
    };

    public Option<bool> Open { get; } = new("--open")
    {
        Description = "Opens the PDF in the system's viewer once it is written.",
    };

    /// <summary>All of them, in the order of the help.</summary>
    public IReadOnlyList<Option> All => [Output, Pages, Paper, Units, Each, Mirror, Steps, FullSize, Format, Open];

    /// <summary>Drawings instead of sheets.</summary>
    public bool WantsSvg(ParseResult parsed) => string.Equals(parsed.GetValue(Format), Svg, StringComparison.Ordinal);

    /// <summary>What does not go together, whatever the file holds.</summary>
    public void Check(CommandResult result)
    {
        // An unknown word has an error of its own, and the values cannot be read then.
        if (result.Children.OfType<OptionResult>().Any(option => option.Errors.Any()))
        {
            return;
        }

        if (string.Equals(result.GetValue(Format), Svg, StringComparison.Ordinal))
        {
            Option[] ofPages = [Pages, Paper, Each, Mirror, Steps, FullSize, Open];
            if (ofPages.FirstOrDefault(option => result.GetResult(option) is { Implicit: false }) is { } typed)
            {
                result.AddError($"`{typed.Name}` belongs to the pages of a PDF, and drawings have none: leave it or `--format svg` out.");
            }

            return;
        }

        if (result.GetValue(Open) && (result.GetValue(Each) || ToStandardOutput(result)))
        {
            result.AddError("`--open` shows one PDF that was written: leave it out, or print all lines into one file.");
        }

        if (!result.GetValue(Each))
        {
            return;
        }

        var ofCar = Wanted(result.GetValue(Pages)) & PrintedPages.OfCar;
        if (Array.Find(PageWords, known => ofCar.HasFlag(known.Pages)).Word is { } word)
        {
            result.AddError(
                $"`--each` writes a file for each line, and these pages belong to the car: leave `--each` or `--pages {word}` out.");
        }
        else if (ToStandardOutput(result))
        {
            result.AddError(
                "`--each` writes a file for each line, which standard output cannot take: name a PDF with -o, or leave `--each` out.");
        }
    }

    private bool ToStandardOutput(CommandResult result) =>
        string.Equals(result.GetValue(Output), PrintTarget.StandardOutput, StringComparison.Ordinal);

    private static PrintedPages Wanted(string[]? words) => PageWords
        .Where(known => words?.Contains(known.Word, StringComparer.Ordinal) == true)
        .Aggregate(PrintedPages.None, static (all, known) => all | known.Pages);

    /// <summary>The word that asks for a kind of pages.</summary>
    public static string WordFor(PrintedPages pages) => Array.Find(PageWords, known => known.Pages == pages).Word;

    /// <summary>What was asked for, or else what the file says.</summary>
    public WantedPrint In(ParseResult parsed, MeasuredCar file)
    {
        var paper = parsed.GetValue(Paper);
        var units = parsed.GetValue(Units);
        return new(
            parsed.GetValue(Pages) is { Length: > 0 } pages ? Wanted(pages) : PrintedPages.Usual,
            paper is null ? file.Paper : Papers.All.First(known => string.Equals(known.Word, paper, StringComparison.Ordinal)).Paper,
            units is null ? file.Notation : file.Notation with { Imperial = string.Equals(units, Imperial, StringComparison.Ordinal) },
            parsed.GetValue(Each),
            parsed.GetValue(Mirror),
            (parsed.GetValue(FullSize) ?? []).Aggregate(
                FullSizePages.None,
                static (all, word) => all | FullSizeWords.First(known => string.Equals(known.Word, word, StringComparison.Ordinal)).Pages),
            parsed.GetValue(Steps));
    }
}
