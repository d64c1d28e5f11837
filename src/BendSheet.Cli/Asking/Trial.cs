using System.Collections.Immutable;
using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Sheet;
using BendSheet.Core.Survey;
using BendSheet.Files.Reading;

namespace BendSheet.Cli.Asking;

/// <summary>What was said, read by the file's own reader: its findings are worded as in every other command.</summary>
internal sealed class Trial
{
    private readonly ImmutableArray<Finding> _findings;

    private Trial(TemplateFile file, CarPlan plan, Func<Finding, bool> counts)
    {
        File = file;
        Plan = plan;
        _findings = [.. Told(plan).Where(counts)];
    }

    /// <summary>As read.</summary>
    public TemplateFile File { get; }

    /// <summary>What can be made of it.</summary>
    public CarPlan Plan { get; }

    /// <summary>
    /// Reads what was said. A last leg that may or may not end the line is said to be too short only where it is so both
    /// ways: as the last one, and with the smallest bend there is after it.
    /// </summary>
    /// <param name="name">Of the file that is asked for.</param>
    /// <param name="said">So far.</param>
    public static Trial Of(string name, Said said)
    {
        var (file, plan) = Read(name, said, Onwards.Straight);
        if (said.Line is not { Rows: [.., { Bend: null }] })
        {
            return new(file, plan, _ => true);
        }

        var row = file.Source.End.Line;
        var either = Told(Read(name, said, Onwards.Bends).Plan).Any(IsError);
        return new(file, plan, finding => finding.Rule.Subject == RuleSubject.File || finding.Position.Line != row
            || (either && IsError(finding)));

        bool IsError(Finding finding) => finding.Severity == Severity.Error && finding.Position.Line == row;
    }

    /// <summary>Reads what was said of the last line as if that were all.</summary>
    /// <param name="name">Of the file that is asked for.</param>
    /// <param name="said">So far.</param>
    public static Trial OfAllThere(string name, Said said)
    {
        var (file, plan) = Read(name, said, Onwards.Ends);
        return new(file, plan, _ => true);
    }

    /// <summary>What is wrong now and was not before.</summary>
    public ImmutableArray<Finding> Since(Trial before) =>
        [.. _findings.Where(finding => !before._findings.Any(known => known with { Position = finding.Position } == finding))];

    /// <summary>The last line as it would be if it ended here; null where it cannot be made.</summary>
    public SheetContent? Sheet => Plan.Lines.Length == 0 ? null
        : Plan.Sheets().FirstOrDefault(sheet => string.Equals(sheet.Line, Plan.Measured.LineNames[^1], StringComparison.Ordinal));

    /// <summary>How many bends the last line has as it was read; 0 where it cannot be read.</summary>
    /// <param name="said">So far.</param>
    public static int Bends(Said said)
    {
        var file = TypedFile(string.Empty, said, Onwards.Straight);
        return file.Lines is [.., var line] && string.Equals(line.Name, file.LineNames[^1], StringComparison.Ordinal)
            ? line.Route.Bends.Length
            : 0;
    }

    private static TemplateFile TypedFile(string name, Said said, Onwards onwards) =>
        TemplateReader.Read(name, new MemoryStream(Encoding.UTF8.GetBytes(new AnsweredFile(said).Trial(onwards))));

    private static (TemplateFile File, CarPlan Plan) Read(string name, Said said, Onwards onwards)
    {
        var file = TypedFile(name, said, onwards);
        return (file, CarPlan.Of(file, []));
    }

    /// <summary>Without notes, and without how sure the far end is: that is said when the line is whole.</summary>
    private static IEnumerable<Finding> Told(CarPlan plan) =>
        plan.Findings.Where(finding => finding.Severity != Severity.Note && finding.Rule != SurveyRules.FarEndUnsure);
}
