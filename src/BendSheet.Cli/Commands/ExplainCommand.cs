using System.CommandLine;
using System.CommandLine.Completions;
using BendSheet.Cli.Explain;
using BendSheet.Cli.Output;
using BendSheet.Core.Findings;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet explain</c>: why a rule is there, with an example.</summary>
internal sealed class ExplainCommand : ExampleCommand
{
    private readonly Argument<string?> _rule = new("RULE")
    {
        Description = "The word in [brackets] at the end of a finding. Without it, all rules are listed.",
        Arity = ArgumentArity.ZeroOrOne,
        HelpName = "RULE",
    };

    public ExplainCommand(Surroundings surroundings)
        : base(
            "explain",
            "Says why a rule is there, and shows a file that breaks it, the same made right, and the source.",
            ("bendsheet explain leg-too-short", "The rule in [brackets] at the end of a finding."),
            ("bendsheet explain", "Lists all rules."))
    {
        Add(_rule);
        _rule.Validators.Add(UsageErrors.RefuseOption);
        _rule.CompletionSources.Add(_ => EveryRule.All.Select(rule => new CompletionItem(rule.Name)));
        SetAction(parsed => Write(parsed.GetValue(_rule), surroundings));
    }

    public override bool IsOfTheWork => false;

    private static int Write(string? typed, Surroundings surroundings)
    {
        if (typed is null)
        {
            surroundings.Output.Write(ExplanationText.List(surroundings.OutputWidth));
            return ExitCodes.Done;
        }

        // As it stands in a finding, brackets and all.
        var name = typed.Trim('[', ']', ' ').ToLowerInvariant();
        if (Explanations.Of(name) is { } one)
        {
            surroundings.Output.Write(ExplanationText.Of(one, surroundings.OutputWidth));
            return ExitCodes.Done;
        }

        var cure = NearestWord.Among(name, EveryRule.All.Select(rule => rule.Name)) is { } nearest
            ? $"did you mean `{nearest}`?"
            : "`bendsheet explain` lists them all.";
        surroundings.Say($"there is no rule `{Visible.Text(typed)}`: {cure}");
        return ExitCodes.WrongInput;
    }
}
