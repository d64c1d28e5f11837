using System.Text;
using BendSheet.Cli.Output;
using BendSheet.Core.Workshop;

namespace BendSheet.Cli.Asking;

/// <summary>What was said, as a file that reads as if it had been typed by hand.</summary>
/// <param name="said">So far.</param>
internal sealed class AnsweredFile(Said said)
{
    /// <summary>Where comments begin, as in the file that <c>start</c> writes.</summary>
    private const int CommentColumn = 30;

    private readonly StringBuilder _text = new();

    /// <summary>
    /// Something stands in for all that is not said yet, so that the reader finds what is wrong with what is said, and nothing else.
    /// </summary>
    private bool _isTrial;

    private Onwards _onwards;

    /// <summary>The file that was asked for.</summary>
    public string Whole() => Write(StarterFile.FirstLine);

    /// <summary>The file as far as it was asked for.</summary>
    /// <param name="next">The question that was not answered.</param>
    public string Unfinished(string next) => Write(
        $"{StarterFile.FirstLine}\n# Not finished: the next question was \"{Visible.Text(next)}\".\n"
            + "# `bendsheet check FILE` says what is missing; it can be typed in here.");

    /// <summary>A whole file with what was said in it, to be read and never kept.</summary>
    /// <param name="onwards">What the last line is taken to go on with.</param>
    public string Trial(Onwards onwards)
    {
        _isTrial = true;
        _onwards = onwards;
        return Write(StarterFile.FirstLine);
    }

    private string Write(string head)
    {
        _text.Append(head).Append('\n').AppendJoin('\n', StarterFile.Commands).Append("\n\n");
        if (said.Units is { } units)
        {
            Add($"units: {YamlWord.Of(units)}", StarterFile.CommentOn("units"));
        }

        AddTube();
        AddBender();
        AddFittings();
        AddWire();
        AddLines();
        return _text.ToString().TrimEnd('\n') + "\n";
    }

    private void AddTube()
    {
        if ((said.Od ?? (_isTrial ? "10 mm" : null)) is { } od)
        {
            Add($"\ntube: {Map(("od", od), ("wall", said.Wall), ("material", said.Material))}", string.Empty);
        }
    }

    private void AddBender()
    {
        if (said.Radius is null && !_isTrial)
        {
            return;
        }

        Add("\nbender:", string.Empty);
        AddWord("  ", "radius", said.Radius ?? "1 m");
        AddWord("  ", "mark", said.Mark);
        AddWord("  ", "grip", said.Grip);
        AddWord("  ", "follow", said.Follow);
        if (said.Tests.Count > 0)
        {
            // A test says nothing without what it came back to: a trial leaves it out, the file keeps the half that was typed.
            var tests = said.Tests.Where(test => !_isTrial || test.Got is not null)
                .Select(test => Map(("pull", test.Pull), ("got", test.Got))).ToList();
            Add(tests.Count == 0 ? string.Empty : $"  tests: [{string.Join(", ", tests)}]", string.Empty);
        }
    }

    private void AddFittings()
    {
        if (said.Fittings.Count == 0)
        {
            return;
        }

        Add("\nfittings:", string.Empty);
        foreach (var fitting in said.Fittings)
        {
            Add($"  {YamlWord.Of(fitting.Name)}:", string.Empty);
            AddWord("    ", "flare", fitting.Flare ?? (_isTrial ? "none" : null));
            AddWord("    ", "takes", fitting.Takes);
            var slideOn = new[] { ("nut", fitting.Nut), ("sleeve", fitting.Sleeve) }
                .Where(piece => piece.Item2 is { Length: > 0 }).Select(piece => Map(piece)).ToList();
            if (slideOn.Count > 0)
            {
                Add($"    slide-on: [{string.Join(", ", slideOn)}]", StarterFile.CommentOn("slide-on"));
            }

            AddWord("    ", "straight", fitting.Straight);
        }
    }

    private void AddWire()
    {
        var diameter = said.WireDiameter ?? (_isTrial && said.Needs(MeasuredToWords.NeedsWireDiameter) ? "2 mm" : null);
        var radius = said.WireRadius ?? (_isTrial && said.Needs(MeasuredToWords.NeedsWireRadius) ? "1 m" : null);
        if (diameter is not null || radius is not null)
        {
            Add($"\nwire: {Map(("diameter", diameter), ("radius", radius))}", string.Empty);
        }
    }

    private void AddLines()
    {
        List<SaidLine> lines = [.. said.Lines.Where(line => _isTrial || line.Name is not null)];
        if (lines.Count == 0 && !_isTrial)
        {
            return;
        }

        Add("\nlines:", string.Empty);
        foreach (var line in lines)
        {
            Add($"  {YamlWord.Of(line.Name ?? "the next line")}:", string.Empty);
            AddEnd("from", line.From);
            AddEnd("to", line.To);
            AddWord("    ", "measured", line.Measured);
            AddTaped(line);
            AddRows(line);
        }

        if (lines.Count == 0)
        {
            Add("  any:\n    - {straight: 5 m, bend: 90}\n    - {straight: 5 m}", string.Empty);
        }
    }

    private void AddEnd(string word, SaidEnd end)
    {
        if (end.At is { Length: > 0 } || end.Fitting is { Length: > 0 } || end.Trim is { Length: > 0 })
        {
            Add($"    {word}: {Map(("at", end.At), ("fitting", end.Fitting), ("trim", end.Trim))}", string.Empty);
        }
    }

    private void AddTaped(SaidLine line)
    {
        if (line.Taped.Count > 0)
        {
            var taped = line.Taped.Select(one => $"{YamlWord.Of(one.What)}: {Reading(one.Reading)}");
            Add($"    taped: {{{string.Join(", ", taped)}}}", string.Empty);
        }

        static string Reading(string typed) =>
            FileWords.IsInBraces(typed) ? FileWords.InBraces(FileWords.Of(typed)) : YamlWord.Of(typed);
    }

    private void AddRows(SaidLine line)
    {
        if (line.Rows.Count == 0 && !_isTrial)
        {
            return;
        }

        Add("    rows:", string.Empty);
        foreach (var row in line.Rows)
        {
            Add(
                $"      - {FileWords.InBraces([.. Typed(("straight", row.Leg), ("rotate", row.Roll)), .. Bent(row)])}",
                row.Bend is { Length: > 0 } ? string.Empty : row.Note);
        }

        var isOpen = line.Rows is [] or [.., { Bend: not null and not "" }] || _onwards == Onwards.Bends;
        if (_isTrial && _onwards != Onwards.Ends && !line.HasEnded && isOpen)
        {
            Add("      - {straight: 5 m}", string.Empty);
        }
    }

    /// <summary>What the row bends, and its note: the file has notes of bends only, and one of the last leg becomes a comment.</summary>
    private IEnumerable<(string Word, string Value)> Bent(SaidRow row)
    {
        const string Included = " included";
        return row.Bend is null && _onwards == Onwards.Bends ? [("bend", "0.1")]
            : row.Bend is not { Length: > 0 } bend ? []
            : [
                .. row.Several.Count > 0 ? row.Several
                    : bend.EndsWith(Included, StringComparison.OrdinalIgnoreCase)
                    ? [(Included.Trim(), bend[..^Included.Length].Trim())]
                    : [("bend", bend)],
                .. Typed(("note", row.Note)),
            ];
    }

    private void AddWord(string indent, string word, string? value)
    {
        if (value is { Length: > 0 })
        {
            Add($"{indent}{word}: {YamlWord.Of(value)}", StarterFile.CommentOn(word));
        }
    }

    private void Add(string line, string comment)
    {
        if (line.Length > 0)
        {
            _text.Append(comment.Length == 0 ? line : $"{line.PadRight(CommentColumn - 1)} # {comment}").Append('\n');
        }
    }

    private static string Map(params (string Word, string? Value)[] words) => FileWords.InBraces(Typed(words));

    /// <summary>Those that were answered and not left out.</summary>
    private static IEnumerable<(string Word, string Value)> Typed(params (string Word, string? Value)[] words) =>
        words.Where(one => one.Value is { Length: > 0 }).Select(one => (one.Word, one.Value!));
}

/// <summary>How a line goes on that is read before all of it is said.</summary>
internal enum Onwards
{
    /// <summary>Nothing: it ends here.</summary>
    Ends,

    /// <summary>After a bend, with a straight that is long enough for anything; after a leg, it ends.</summary>
    Straight,

    /// <summary>After a leg, with the smallest bend there is.</summary>
    Bends,
}
