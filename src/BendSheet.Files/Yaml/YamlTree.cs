using BendSheet.Core.Findings;
using BendSheet.Core.Units;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace BendSheet.Files.Yaml;

/// <summary>From the parser's events to the tree, without recursion and within limits: the parser needs quadratic time for deep brackets,
/// and throws exceptions of many kinds for a forgotten one.</summary>
/// <param name="text">As it is to be read.</param>
/// <param name="findings">Takes what is wrong with it.</param>
internal sealed class YamlTree(RepairedText text, List<Finding> findings)
{
    private readonly Stack<OpenValue> _open = [];
    private readonly SourceLines _source = text.Source;
    private YamlValue? _root;
    private bool _isStarted;
    private bool _isStopped;
    private int _values;

    /// <summary>Something is known to be wrong already, so that a text with nothing in it needs no finding of its own.</summary>
    public bool IsExplained { get; init; }

    /// <summary>Where a slip in the layout stopped the reading, in the text as it was read; null where none did.</summary>
    public Finding? Broken { get; private set; }

    /// <summary>The tree; null when there is nothing in the text, or when it was not read to its end.</summary>
    public YamlValue? Build()
    {
        var scanner = new Scanner(new StringReader(text.Lines.Text), skipComments: true);
        var parser = new Parser(scanner);
        while (!_isStopped && Advance(parser, scanner))
        {
            Take(parser.Current!);
        }

        if (_isStopped)
        {
            return _root;
        }

        if (_root is null or YamlText { IsEmpty: true } && findings.Count == 0 && !IsExplained)
        {
            findings.Add(YamlRules.FileEmpty.Error(_source.At(1, 1),
                "nothing is typed in this file yet: `bendsheet start` writes one to fill in"));
            return null;
        }

        return _root;
    }

    /// <summary>The one place where the parser runs. If the text makes it throw anything, the text is broken.</summary>
    private bool Advance(Parser parser, Scanner scanner)
    {
        try
        {
            return parser.MoveNext();
        }
        catch (Exception thrown) when (thrown is not OutOfMemoryException)
        {
            var reached = scanner.CurrentPosition;
            var mark = thrown is YamlException { Start.Line: > 0 } broken ? broken.Start : reached;
            var lines = text.Lines;
            Broken = new BrokenPlace(lines, lines.At(mark.Line, mark.Column), (int)Math.Min(reached.Line, lines.Count)).Explain();
            Stop(Broken with { Position = text.AsTyped(Broken.Position) });
            return false;
        }
    }

    private void Take(ParsingEvent parsed)
    {
        switch (parsed)
        {
            case DocumentStart when _isStarted:
                findings.Add(YamlRules.SecondDocument.Error(At(parsed.Start),
                    "a second `---` begins another file here: delete this line, or put what follows into a file of its own"));
                _isStopped = true;
                break;
            case DocumentStart:
                _isStarted = true;
                break;
            case AnchorAlias alias:
                TakeAlias(alias);
                break;
            case NodeEvent node:
                TakeNode(node);
                break;
            case MappingEnd or SequenceEnd:
                Add(_open.Pop().Close());
                break;
        }
    }

    private void TakeNode(NodeEvent node)
    {
        var position = At(node.Start);
        if (++_values > YamlDocument.MostValues)
        {
            Stop(YamlRules.TooManyValues.Error(position,
                $"this file holds more than {Counted.Large(YamlDocument.MostValues, "value")}: split it, or give another file"));
            return;
        }

        RefuseMarks(node, position);
        if (node is Scalar scalar)
        {
            // Names that look the same are the same, however a keyboard puts an accent on a letter.
            Add(new YamlText(Composed.Of(scalar.Value), scalar.Style == ScalarStyle.Plain, position));
            return;
        }

        if (_open.Count == YamlDocument.DeepestNesting)
        {
            Stop(YamlRules.NestedTooDeep.Error(position,
                $"more than {YamlDocument.DeepestNesting} lists or brackets are open here: close those that were forgotten before it"));
            return;
        }

        if (_open.TryPeek(out var around) && around is OpenMap { WantsKey: true })
        {
            Report(YamlRules.WordExpected.Error(position,
                "a word with a colon is wanted here, not a list or a second bracket: take these brackets away, or put a word and a colon "
                    + "before them"));
        }

        _open.Push(node is MappingStart map
            ? new OpenMap(position, _source, map.Style == MappingStyle.Flow, Report)
            : new OpenList(position));
    }

    private void RefuseMarks(NodeEvent node, SourcePosition position)
    {
        if (!node.Anchor.IsEmpty)
        {
            Report(YamlRules.AnchorOrAlias.Error(position,
                "a value cannot begin with &: put the text in quotes, or use `templates:` for rows that come twice"));
        }

        if (!node.Tag.IsEmpty)
        {
            Report(YamlRules.Tag.Error(position, "a value cannot begin with !: put the text in quotes"));
        }
    }

    private void TakeAlias(AnchorAlias alias)
    {
        if (!_open.TryPeek(out var around) || around is not OpenMap { RefusesValue: true })
        {
            Report(YamlRules.AnchorOrAlias.Error(At(alias.Start),
                "a value cannot begin with *: put the text in quotes, or use `templates:` for rows that come twice"));
        }

        Add(null);
    }

    private void Add(YamlValue? value)
    {
        if (_open.TryPeek(out var around))
        {
            around.Add(value);
        }
        else
        {
            _root = value;
        }
    }

    private void Report(Finding finding)
    {
        if (_isStopped)
        {
            return;
        }

        findings.Add(finding);
        if (findings.Count >= YamlDocument.MostFindings)
        {
            Stop(YamlRules.TooManyMistakes.Error(finding.Position,
                $"{YamlDocument.MostFindings} mistakes up to here: put these right first, the rest of the file was not read"));
        }
    }

    private void Stop(Finding finding)
    {
        findings.Add(finding);
        _isStopped = true;
        _root = null;
    }

    private SourcePosition At(Mark mark) => text.AsTyped(text.Lines.At(mark.Line, mark.Column));
}
