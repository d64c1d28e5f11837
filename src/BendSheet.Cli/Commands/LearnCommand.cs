using System.Collections.Immutable;
using System.CommandLine;
using BendSheet.Cli.Output;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Survey;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet learn</c>: what the test bends say of each tool, and how sure it is.</summary>
internal sealed class LearnCommand : CarCommand
{
    private readonly Option<string[]> _bender = new("--bender")
    {
        Description = "Only this bender; may be given several times. Without it, every bender of the file.",
        HelpName = "NAME",
    };

    public LearnCommand(Surroundings surroundings)
        : base(
            surroundings,
            "learn",
            "Says what the test bends of each bender show: how far to pull, how much tube a bend uses up, and how sure that is.",
            byLine: false,
            ("bendsheet learn finch.yaml", "Every bender of the file; one without tests gets the steps for making them."))
    {
        Add(_bender);
        OfferNames(_bender, car => car.Benders.Select(bender => bender.Name).Where(name => name.Length > 0));
    }

    /// <summary>How sure a line is says nothing of a tool, and a tool can be learned before any line is typed.</summary>
    protected override IEnumerable<Finding> Findings(Asked asked) =>
    [
        .. Choice.Benders(asked.File, Names(asked.Options, _bender)).Findings,
        .. asked.File.Findings.Verdict() == Verdict.WrongFile
            ? asked.File.FindingsOfTools
            : asked.Plan.Findings.Where(finding => finding.Rule != SurveyRules.FarEndUnsure),
    ];

    protected override int Write(Asked asked, ImmutableArray<Finding> findings, Surroundings surroundings)
    {
        var verdict = findings.Verdict();
        if (verdict != Verdict.WrongFile)
        {
            var (benders, _) = Choice.Benders(asked.File, Names(asked.Options, _bender));
            surroundings.Output.Write(Wrapped.Text(LearnedTools.Write(benders, asked.File.Notation), surroundings.OutputWidth));
        }

        return ExitCodes.For(verdict);
    }
}
