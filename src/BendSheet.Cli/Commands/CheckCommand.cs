using System.Collections.Immutable;
using BendSheet.Cli.Output;
using BendSheet.Core.Findings;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet check</c>: is the file right, and can the lines be made?</summary>
internal sealed class CheckCommand : CarCommand
{
    public CheckCommand(Surroundings surroundings)
        : base(
            surroundings,
            "check",
            "Reads the file and says everything that is wrong with it, or cannot be made, and what would make it right.",
            byLine: true,
            ("bendsheet check finch.yaml", "Looks at every line of the file."))
    {
        AddWatch();
    }

    protected override IEnumerable<Finding> Findings(Asked asked) => CheckFindings.Of(asked.Plan);

    protected override int Write(Asked asked, ImmutableArray<Finding> findings, Surroundings surroundings)
    {
        surroundings.Output.WriteLine(Wrapped.Text(CheckSummary.Write(asked.Name, asked.Plan, findings), surroundings.OutputWidth));
        return ExitCodes.For(findings.Verdict());
    }
}
