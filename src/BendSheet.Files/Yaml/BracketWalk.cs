using BendSheet.Core.Findings;

namespace BendSheet.Files.Yaml;

/// <summary>
/// Reads a broken text again by its brackets, quotes and commas alone, the way a person looks for the forgotten one. The parser only knows
/// where it could not go on, which may be many lines below.
/// </summary>
internal sealed class BracketWalk(SourceLines source)
{
    private readonly TextCursor _cursor = new(source);
    private readonly List<OpenBracket> _open = [];
    private Finding? _slip;

    /// <summary>The indent of the line on which the outermost bracket opened, and whether that bracket is the first thing on it.</summary>
    private (int Indent, bool IsFirst) _outermost;

    /// <summary>A quote or the outermost bracket just closed on this line, so that nothing but a colon or a comment may follow.</summary>
    private bool _isClosed;

    private enum Before
    {
        Nothing,
        Plain,
        Closed,
    }

    /// <summary>The first slip, or null when brackets, quotes and commas are in order. Takes time in proportion to the text.</summary>
    public Finding? FirstSlip()
    {
        while (!_cursor.IsAtEnd && _slip is null)
        {
            var c = _cursor.Current;
            if (c is '\n' or '\r')
            {
                _cursor.At++;
                StartLine();
            }
            else if (TextCursor.IsBlank(c))
            {
                _cursor.At++;
            }
            else if (c == '#' && _cursor.IsBehindBlank)
            {
                _cursor.SkipLine();
            }
            else if (_open.Count > 0)
            {
                TakeInside(c, _open[^1]);
            }
            else
            {
                TakeOutside(c);
            }
        }

        if (_slip is null && _open.Count > 0)
        {
            ReportNotClosed(source.End.Line);
        }

        return _slip;
    }

    private void StartLine()
    {
        _isClosed = false;
        var start = _cursor.At;
        _cursor.SkipBlanks();
        if (_open.Count == 0 || _cursor.IsAtEnd)
        {
            return;
        }

        var isItem = _cursor.Current == '-' && _cursor.IsBeforeBlank;
        var isOutside = _cursor.At - start <= _outermost.Indent && !_outermost.IsFirst;
        if (isItem || (isOutside && _cursor.IsAtEntry()))
        {
            ReportNotClosed(source.LineAbove(source.AtOffset(_cursor.At).Line));
        }
    }

    private void TakeOutside(char c)
    {
        if (c is '-' or '?' or ':' && _cursor.IsBeforeBlank)
        {
            _isClosed = false;
            _cursor.At++;
        }
        else if (c is ']' or '}')
        {
            Report(YamlRules.BracketNotOpened, $"this {c} closes nothing: delete it, or put the bracket that opens it before the values");
        }
        else if (_isClosed && c == ',')
        {
            Report(YamlRules.StrayComma, "no comma belongs after the closing bracket here: delete it");
        }
        else if (_isClosed)
        {
            Report(YamlRules.YamlBroken,
                $"nothing more may come after the closing bracket: put {AsTyped.Show(_cursor.Word)} inside it or on a line of its own");
        }
        else if (c is '[' or '{')
        {
            Open(c);
        }
        else if (c is '"' or '\'')
        {
            TakeQuoted(c);
            _isClosed = true;
        }
        else if (c is '|' or '>')
        {
            _cursor.SkipBlockText();
        }
        else
        {
            _cursor.SkipPlain(isInside: false);
        }
    }

    private void TakeInside(char c, OpenBracket inside)
    {
        if (c is ']' or '}')
        {
            Close(c, inside);
        }
        else if (c == ',')
        {
            if (!inside.HasColon && inside.Last == Before.Nothing)
            {
                Report(YamlRules.StrayComma, "a comma with nothing before it: delete it, or type the value that is missing");
            }

            (inside.HasColon, inside.Last) = (false, Before.Nothing);
            _cursor.At++;
        }
        else if (c == ':' && (_cursor.IsBeforeBlank || inside.Last == Before.Closed || _cursor.Next is ',' or ']' or '}'))
        {
            TakeColon(inside);
        }
        else if (inside.Last == Before.Closed || (inside.Last == Before.Plain && c is '[' or '{'))
        {
            Report(YamlRules.CommaMissing, $"a comma is missing before {AsTyped.Show(_cursor.Word)}");
        }
        else if (c is '[' or '{')
        {
            Open(c);
        }
        else if (c is '"' or '\'' && inside.Last == Before.Nothing)
        {
            TakeQuoted(c);
            inside.Last = Before.Closed;
        }
        else
        {
            inside.LastWord = _cursor.SkipPlain(isInside: true);
            inside.Last = Before.Plain;
        }
    }

    private void TakeColon(OpenBracket inside)
    {
        if (inside.HasColon && inside.Last == Before.Plain)
        {
            _cursor.At = inside.LastWord;
            Report(YamlRules.CommaMissing, $"a comma is missing before {AsTyped.Show(_cursor.Word)}");
        }
        else if (inside.HasColon)
        {
            Report(YamlRules.ColonTwice, "a second colon: put a comma between one value and the next word");
        }

        (inside.HasColon, inside.Last) = (true, Before.Nothing);
        _cursor.At++;
    }

    private void Open(char bracket)
    {
        if (_open.Count == 0)
        {
            var position = source.AtOffset(_cursor.At);
            var indent = source.IndentOf(position.Line);
            _outermost = (indent, position.Column == indent + 1);
        }

        _open.Add(new OpenBracket(bracket, _cursor.At));
        _cursor.At++;
    }

    private void Close(char c, OpenBracket inside)
    {
        if (c != inside.Closing)
        {
            var opening = source.AtOffset(inside.Offset);
            Report(YamlRules.BracketNotClosed, FormattableString.Invariant(
                $"this {c} stands where the {inside.Bracket} of line {opening.Line}, column {opening.Column} wants its {inside.Closing}"));
            return;
        }

        _open.RemoveAt(_open.Count - 1);
        _cursor.At++;
        if (_open.Count > 0)
        {
            _open[^1].Last = Before.Closed;
        }
        else
        {
            _isClosed = true;
        }
    }

    /// <summary>From the opening quote to just after the closing one, and a look at what follows.</summary>
    private void TakeQuoted(char quote)
    {
        var opening = _cursor.At;
        var isClosed = _cursor.SkipQuoted();
        var spansLines = source.Text.AsSpan(opening.._cursor.At).ContainsAny('\n', '\r');
        _cursor.SkipBlanks();
        if (isClosed
            && (_cursor.IsAtEnd
            || _cursor.Current is '\n' or '\r' or ':' or '#'
            || (_open.Count > 0 && _cursor.Current is ',' or ']' or '}')))
        {
            return;
        }

        if (!isClosed || spansLines)
        {
            _cursor.At = opening;
            Report(YamlRules.QuoteNotClosed, $"this {quote} was never closed: put another {quote} after the text, or delete this one");
            return;
        }

        Report(YamlRules.TextAfterQuote, quote == '"'
            ? $"the quotes end before {AsTyped.Show(_cursor.Word)}: leave out the quotes around the whole (2' 3-1/2\" needs none)"
            : $"the quotes end before {AsTyped.Show(_cursor.Word)}: put the whole text between \" and \" instead");
    }

    private void ReportNotClosed(int lastLine)
    {
        var bracket = _open[^1];
        _cursor.At = bracket.Offset;
        var where = source.AtOffset(bracket.Offset).Line == lastLine ? "this line" : FormattableString.Invariant($"line {lastLine}");
        Report(YamlRules.BracketNotClosed,
            $"this {bracket.Bracket} was never closed: put a {bracket.Closing} after the last of its values, at the latest at the end "
                + $"of {where}");
    }

    private void Report(Rule rule, string message) => _slip ??= rule.Error(source.AtOffset(_cursor.At), message);

    private sealed class OpenBracket(char bracket, int offset)
    {
        public char Bracket => bracket;

        public char Closing => bracket == '{' ? '}' : ']';

        public int Offset => offset;

        /// <summary>The entry since the last comma has its colon.</summary>
        public bool HasColon { get; set; }

        /// <summary>What stands before the cursor, since the last comma or colon.</summary>
        public Before Last { get; set; }

        /// <summary>Where the last word of the plain text before the cursor begins.</summary>
        public int LastWord { get; set; }
    }
}
