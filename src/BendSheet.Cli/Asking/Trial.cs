using System.Collections.Immutable;
using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Sheet;
using BendSheet.Core.Survey;
using BendSheet.Files.Reading;

namespace BendSheet.Cli.Asking;

/// <summary>What was said, read by the file's own reader: what it says is said in the words of every other command.</summary>
internal sealed class Trial
{
    private readonly ImmutableArray<Finding> _findings;

    private Trial(TemplateFile file, CarPlan plan)
    {
        File = file;
        Plan = plan;
        _findings = [.. plan.Findings.Where(finding => finding.Severity != Severity.Note && finding.Rule != SurveyRules.FarEndUnsure)];
    }

    /// <summary>As read.</summary>
    public TemplateFile File { get; }

    /// <summary>What can be made of it.</summary>
    public CarPlan Plan { get; }

    /// <summary>Reads what was said.</summary>
    /// <param name="name">Of the file that is asked for.</param>
    /// <param name="said">So far.</param>
    /// <param name="goesOn">With something that stands in for what the last line goes on with.</param>
    public static Trial Of(string name, Said said, bool goesOn = true)
    {
        var text = new AnsweredFile(said).Trial(goesOn);
        var file = TemplateReader.Read(name, new MemoryStream(Encoding.UTF8.GetBytes(text)));
        return new(file, CarPlan.Of(file, []));
    }

    /// <summary>What is wrong now and was not before.</summary>
    public ImmutableArray<Finding> Since(Trial before) =>
        [.. _findings.Where(finding => !before._findings.Any(known => known with { Position = finding.Position } == finding))];

    /// <summary>The last line as it would be if it ended here; null where it cannot be made.</summary>
    public SheetContent? Sheet => Plan.Lines.Length == 0 ? null
        : Plan.Sheets().FirstOrDefault(sheet => string.Equals(sheet.Line, Plan.Measured.LineNames[^1], StringComparison.Ordinal));
}
