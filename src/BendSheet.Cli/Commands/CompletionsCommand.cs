using System.CommandLine;
using System.CommandLine.Completions;
using BendSheet.Cli.Output;
using BendSheet.Core.Findings;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet completions</c>: lets a shell complete what is typed after the program's name.</summary>
internal sealed class CompletionsCommand : ExampleCommand
{
    private readonly Argument<string> _shell = new("SHELL")
    {
        Description = "One of bash, zsh, fish and powershell.",
    };

    public CompletionsCommand(Surroundings surroundings)
        : base(
            "completions",
            "Prints what a shell needs to complete commands, options and the names of lines and benders. How to load it stands at its top.",
            ("bendsheet completions bash", "Also zsh, fish and powershell."))
    {
        Add(_shell);
        string[] shells = [.. ShellCompletions.Scripts.Select(known => known.Shell)];
        _shell.CompletionSources.Add(_ => shells.Select(shell => new CompletionItem(shell)));
        _shell.Validators.Add(typed =>
        {
            if (typed.Tokens is [{ Value: var word }] && !shells.Contains(word, StringComparer.Ordinal))
            {
                var cure = NearestWord.Among(word, shells) is { } nearest
                    ? $"did you mean `{nearest}`?"
                    : $"type `{string.Join("`, `", shells[..^1])}` or `{shells[^1]}`.";
                typed.AddError($"`{word}` is no shell that completions are made for: {cure}");
            }
        });
        SetAction(parsed =>
        {
            surroundings.Output.Write(ShellCompletions.Of(parsed.GetRequiredValue(_shell)));
            return ExitCodes.Done;
        });
    }

    public override bool IsOfTheWork => false;
}
