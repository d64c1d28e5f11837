using BendSheet.Core.Car;
using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Sheets;
using BendSheet.Sheets.FullSize;

namespace BendSheet.Cli.Commands;

/// <summary>What is to be printed.</summary>
/// <param name="Pages">Which kinds; a cover only where there are several lines.</param>
/// <param name="Paper">To print on.</param>
/// <param name="Notation">How lengths are shown.</param>
/// <param name="Each">A file for each line.</param>
/// <param name="Mirrored">The wrong way round.</param>
/// <param name="FullSize">Pages drawn at full size, after each sheet.</param>
/// <param name="Steps">A panel for each thing done, after each sheet.</param>
internal sealed record WantedPrint(
    PrintedPages Pages, Paper Paper, LengthNotation Notation, bool Each, bool Mirrored, FullSizePages FullSize,
    bool Steps)
{
    /// <summary>Pages of this kind are to be printed.</summary>
    public bool Has(PrintedPages pages) => Pages.HasFlag(pages);

    /// <summary>What only the file shows to be a wrong combination, in a sentence; null where all can be printed.</summary>
    public string? WhyNot(CarPlan plan)
    {
        if (Pages == PrintedPages.Cover && !plan.HasCover && plan.Printable.Count() + plan.RoughLines.Length == 1)
        {
            return "there is no cover for one line alone: leave `--pages cover` out.";
        }

        if ((WhyNot(PrintedPages.Commissioning, plan, plan.Commissioning, "`parts:` with their ports, so that it knows every joint")
            ?? WhyNot(PrintedPages.Car, plan, plan.Picture, "a line whose place is known, or `parts:` with their ports")) is { } why)
        {
            return why;
        }

        var alike = plan.Printable.Select(line => line.Template.Name).GroupBy(name => name, StringComparer.OrdinalIgnoreCase)
            .FirstOrDefault(names => names.Count() > 1);
        return Each && alike is not null
            ? $"the lines `{string.Join("` and `", alike)}` would be one file on many disks: give them names that differ in more than "
                + "capitals, or leave `--each` out."
            : null;
    }

    /// <summary>Whether nothing is printed where no line has a sheet.</summary>
    public bool NeedsSheets(CarPlan plan) =>
        (Pages & PrintedPages.Usual) != PrintedPages.None || (Pages == PrintedPages.Tags && plan.RoughLines.IsEmpty);

    private string? WhyNot(PrintedPages kind, CarPlan plan, Func<LengthNotation?, object?> content, string needed)
    {
        if (!Has(kind))
        {
            return null;
        }

        var pages = $"`--pages {PrintOptions.WordFor(kind)}`";
        if (!plan.IsWhole)
        {
            return $"{pages} is about the whole car: leave it or `--line` out.";
        }

        return content(null) is null ? $"{pages} needs {needed}: add them, and mend what is wrong with the file, or leave it out." : null;
    }

    /// <summary>All lines in one file.</summary>
    public PrintJob Set(CarPlan plan, IReadOnlyList<SheetContent> sheets) => new(Has(PrintedPages.Sheets) ? [.. sheets] : [], Paper)
    {
        Title = plan.Measured.Project,
        Cover = Has(PrintedPages.Cover) && plan.HasCover ? plan.Cover(Notation) : null,
        Car = Has(PrintedPages.Car) || (Has(PrintedPages.Cover) && plan.HasCover && plan.IsWhole) ? plan.Picture(Notation) : null,
        Commissioning = Has(PrintedPages.Commissioning) ? plan.Commissioning(Notation) : null,
        Tags = Has(PrintedPages.Tags) ? plan.Tags(Notation) : null,
        Mirrored = Mirrored,
        FullSize = FullSize,
    };

    /// <summary>One line in a file of its own.</summary>
    public PrintJob One(SheetContent sheet) => new([sheet], Paper)
    {
        Title = sheet.Project.Length > 0 ? $"{sheet.Project}: {sheet.Line}" : sheet.Line,
        Mirrored = Mirrored,
        FullSize = FullSize,
    };
}
