using System.Collections.Immutable;
using System.Text;
using BendSheet.Cli.Output;
using BendSheet.Core.Findings;

namespace BendSheet.Cli.Asking;

/// <summary>
/// Asks one question after the other. An answer that the file's reader does not understand is asked for again; one that cannot be made is
/// said at once, and kept where it is typed a second time, because what was measured stays what was measured.
/// </summary>
/// <param name="path">The file that is asked for.</param>
/// <param name="withSchema">Its first line names the schema, which is written beside it.</param>
/// <param name="surroundings">To talk through.</param>
internal sealed class Conversation(string path, bool withSchema, Surroundings surroundings)
{
    private const string Back = "back";
    private const string Explain = "?";
    private const string LeftOut = "-";

    private readonly Lock _writing = new();
    private ImmutableList<string> _answers = [];
    private bool _isWritten;

    /// <summary>Asks until all is said or nothing more comes, and writes the file.</summary>
    /// <returns>One of <see cref="ExitCodes"/>.</returns>
    public int Run()
    {
        using var typed = new StreamReader(surroundings.StandardInput(), Encoding.UTF8);
        Tell($"Answers become {Visible.Text(path)}, as you type them: 120, 30 mm, 1 3/16 in, 3'-2 1/2\". `{Explain}` explains a question, "
            + $"`{Back}` goes back to the one before, `{LeftOut}` leaves one out. A leg or a turn may have a note: `120 # over the axle`. "
            + "Ctrl-C stops, and what you said is kept.");
        string? refused = null;
        while (true)
        {
            var said = Questions.After(_answers);
            if (Questions.Next(said) is not { } question)
            {
                return Finish(said);
            }

            surroundings.Output.Write(surroundings.OutputWidth is null ? $"{question.Prompt(said)}: \n" : $"{question.Prompt(said)}: ");
            surroundings.Output.Flush();
            if (typed.ReadLine()?.Trim() is not { } answer)
            {
                surroundings.Output.WriteLine();
                return EndsHere(said) ? Finish(said) : Stop(ExitCodes.WrongInput);
            }

            refused = Hear(answer, question, said, refused);
        }
    }

    /// <summary>Writes what was said so far, once, from whatever stops the conversation.</summary>
    /// <param name="code">The exit code for what stopped it.</param>
    /// <returns>That code.</returns>
    public int Stop(int code)
    {
        lock (_writing)
        {
            var said = Questions.After(_answers);
            if (_answers.Count == 0)
            {
                Tell("Nothing was answered, and nothing is written.");
            }
            else if (!_isWritten && Write(new AnsweredFile(said).Unfinished(Questions.Next(said)?.Asks(said) ?? "none")) is { } file)
            {
                Tell($"Not finished: what you said is in {Visible.Text(file)}. Type in what is missing: `bendsheet check "
                    + $"{Visible.Text(file)}` says what.");
            }

            _isWritten = true;
            return code;
        }
    }

    /// <summary>Takes an answer, or says why not.</summary>
    /// <returns>The answer, where it was refused and is taken when it is typed again.</returns>
    private string? Hear(string answer, Question question, Said said, string? refused)
    {
        switch (answer)
        {
            case Back:
                Tell(_answers.Count == 0 ? "This is the first question." : "Back:");
                _answers = _answers.Count == 0 ? _answers : _answers.RemoveAt(_answers.Count - 1);
                return null;
            case Explain:
                Tell($"  {question.Help} For example: {question.Example}");
                return refused;
            case LeftOut when question.MayBeLeftOut:
                return Take(string.Empty, question, said, refused);
            case "" when question.Default(said) is not { } value:
                Tell($"  This has to be answered. For example: {question.Example}");
                return refused;
            case "":
                return Take(question.Default(said)!, question, said, refused);
            default:
                if (question.Wrong(answer) is { } wrong)
                {
                    Tell($"  {wrong}");
                    return refused;
                }

                return Take(answer, question, said, refused);
        }
    }

    private string? Take(string answer, Question question, Said before, string? refused)
    {
        var answers = _answers.Add(answer);
        var said = Questions.After(answers);
        var trial = Trial.Of(path, said);
        var wrong = trial.Since(Trial.Of(path, before));
        var width = surroundings.OutputWidth;
        surroundings.Output.Write(FindingText.Write(wrong, trial.File.Source, surroundings.Colour && width is not null, width));
        if (wrong.Any(finding => finding is { Severity: Severity.Error, Rule.Subject: RuleSubject.File }))
        {
            return null;
        }

        if (wrong.Any(finding => finding.Severity == Severity.Error) && !string.Equals(answer, refused, StringComparison.Ordinal))
        {
            if (said.Line is { Rows: [.., { Bend: null }] })
            {
                Tell("  Said as if the line ended with this leg; with another bend after it, it cannot be made either.");
            }

            Tell($"  Answer anew, type `{Back}` to change what came before, or type the same again to keep it as it is.");
            return answer;
        }

        _answers = answers;
        if (question.Shapes)
        {
            surroundings.Output.Write(Wrapped.Text(LineSoFar.Write(path, said, surroundings.Drawing), surroundings.OutputWidth));
        }

        return null;
    }

    /// <summary>Only whether there is another line is left to ask: input that ends here has said all.</summary>
    private static bool EndsHere(Said said) => Questions.Next(said) == Questions.All[^1];

    private int Finish(Said said)
    {
        lock (_writing)
        {
            _isWritten = true;
            if (Write(new AnsweredFile(said).Whole()) is not { } file)
            {
                return ExitCodes.NotWritten;
            }

            Tell($"{Visible.Text(file)} is written. Next: `bendsheet check {Visible.Text(file)}`, then `bendsheet print "
                + $"{Visible.Text(file)}`.");
            return ExitCodes.Done;
        }
    }

    /// <summary>
    /// Writes a new file: under another name where somebody took this one meanwhile, or on the screen where no disk takes it.
    /// </summary>
    /// <returns>The file's name, or null where there is none.</returns>
    private string? Write(string text)
    {
        const int MostNames = 9;
        string? problem = null;
        text = withSchema ? FormatSchema.Head + text : text;
        foreach (var name in Enumerable.Range(2, MostNames - 1)
            .Select(number => $"{Path.ChangeExtension(path, null)}-{number}{Path.GetExtension(path)}").Prepend(path))
        {
            problem = OutputFile.WriteNew(name, Encoding.UTF8.GetBytes(text));
            if (problem is null)
            {
                if (withSchema)
                {
                    FormatSchema.WriteBeside(name, surroundings);
                }

                return name;
            }
        }

        surroundings.Say($"{Visible.Text(path)} was not written: {problem}. This is what you said:");
        surroundings.Output.Write(text);
        return null;
    }

    private void Tell(string sentence) => surroundings.Output.WriteLine(Wrapped.Text(sentence, surroundings.OutputWidth));
}
