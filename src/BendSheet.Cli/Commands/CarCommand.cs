using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Parsing;
using BendSheet.Cli.Explain;
using BendSheet.Cli.Input;
using BendSheet.Cli.Output;
using BendSheet.Cli.Watching;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Files.Reading;
using BendSheet.Files.Yaml;

namespace BendSheet.Cli.Commands;

/// <summary>
/// A command about a typed file. There is one way through all of them: file and options → <see cref="CarPlan"/> → findings on standard
/// error → the result, written → exit code. A command says which findings it tells and what it writes.
/// </summary>
internal abstract class CarCommand : ExampleCommand
{
    private readonly Argument<string> _file = new("FILE")
    {
        Description = "The file with the measurements; - reads standard input.",
    };

    private readonly Option<string[]> _line = new("--line")
    {
        Description = "Only this line; may be given several times. Without it, every line of the file.",
        HelpName = "NAME",
    };

    private readonly Option<bool> _watch = new("--watch")
    {
        Description = "Runs again each time that the file is saved. Ctrl-C ends it, with exit code 0.",
    };

    /// <param name="surroundings">To read from and to write to.</param>
    /// <param name="name">As typed.</param>
    /// <param name="description">One sentence.</param>
    /// <param name="byLine">Whether lines can be asked for by name.</param>
    /// <param name="examples">Whole lines, each with a remark.</param>
    protected CarCommand(
        Surroundings surroundings, string name, string description, bool byLine, params (string Line, string Remark)[] examples)
        : base(name, description, examples)
    {
        Add(_file);
        _file.Validators.Add(UsageErrors.RefuseOption);
        if (byLine)
        {
            Add(_line);
            OfferNames(_line, car => car.LineNames);
        }

        SetAction(parsed => Options.Contains(_watch) && parsed.GetValue(_watch)
            ? new Watch(surroundings).Run(parsed.GetRequiredValue(_file), () => Run(parsed, surroundings))
            : Run(parsed, surroundings).Code);
    }

    /// <summary>Lets the command run again at every save.</summary>
    protected void AddWatch()
    {
        Add(_watch);
        Validators.Add(result =>
        {
            if (Watches(result) && string.Equals(result.GetValue(_file), TypedFile.StandardInput, StringComparison.Ordinal))
            {
                result.AddError(
                    "`--watch` waits for a file to be saved, and standard input is no file: name one, or leave `--watch` out.");
            }
        });
    }

    /// <summary>Lets a shell complete names from the file that is typed; from standard input nothing is read for it.</summary>
    protected void OfferNames(Option<string[]> option, Func<MeasuredCar, IEnumerable<string>> names) =>
        option.CompletionSources.Add(typed =>
            typed.ParseResult.GetResult(_file) is { Tokens: [{ Value: not TypedFile.StandardInput and var name }] }
            ? names(TypedFile.Read(name, () => Stream.Null)).Select(one => new CompletionItem(one))
            : []);

    /// <summary>Whether it is to run again at every save.</summary>
    protected bool Watches(CommandResult result) => result.GetValue(_watch);

    /// <summary>Reads and writes once.</summary>
    /// <returns>The exit code, and all files that were read.</returns>
    private (int Code, IReadOnlyList<string> Files) Run(ParseResult parsed, Surroundings surroundings)
    {
        var asked = Read(parsed, surroundings.StandardInput);
        var findings = Findings(asked).ToImmutableArray();
        surroundings.Error.Write(FindingText.Write(findings, asked.File.Source, surroundings.Colour, surroundings.ErrorWidth));
        if (surroundings.ErrorWidth is { } width && findings.MaxBy(finding => finding.Severity) is { } worst)
        {
            surroundings.Error.WriteLine(Wrapped.Text(ExplanationText.Hint(worst.Rule.Name), width));
        }

        return (Write(asked, findings, surroundings), [asked.Name, .. asked.File.Source.Included.Select(file => file.FileName)]);
    }

    /// <summary>What is told of the file and its lines.</summary>
    protected virtual IEnumerable<Finding> Findings(Asked asked) => asked.Plan.Findings;

    /// <summary>Writes the result.</summary>
    /// <returns>One of <see cref="ExitCodes"/>.</returns>
    protected abstract int Write(Asked asked, ImmutableArray<Finding> findings, Surroundings surroundings);

    /// <summary>Names on the command line are brought to Unicode's composed form, as those in the file are.</summary>
    protected static string[] Names(ParseResult parsed, Option<string[]> option) =>
        [.. (parsed.GetValue(option) ?? []).Select(Composed.Of)];

    private Asked Read(ParseResult parsed, Func<Stream> standardInput)
    {
        var name = parsed.GetRequiredValue(_file);
        var lines = Options.Contains(_line) ? Names(parsed, _line) : [];
        var file = TypedFile.Read(name, standardInput);
        return new(parsed, name, lines, file, CarPlan.Of(file, lines));
    }
}

/// <summary>What was asked for, and all that is known of it.</summary>
/// <param name="Options">As typed.</param>
/// <param name="Name">Of the file, as typed.</param>
/// <param name="Lines">Asked for by name; none means all.</param>
/// <param name="File">What was read.</param>
/// <param name="Plan">Of the lines asked for.</param>
internal sealed record Asked(ParseResult Options, string Name, IReadOnlyList<string> Lines, TemplateFile File, CarPlan Plan);
