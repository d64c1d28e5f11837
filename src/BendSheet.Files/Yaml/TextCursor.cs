using System.Buffers;

namespace BendSheet.Files.Yaml;

/// <summary>A place in the text that moves on over comments, plain and quoted texts.</summary>
internal sealed class TextCursor(SourceLines source)
{
    private static readonly SearchValues<char> WordEnds = SearchValues.Create("\r\n,]}:");

    private readonly string _text = source.Text;

    /// <summary>The index in the text; its length at the end.</summary>
    public int At { get; set; }

    public bool IsAtEnd => At >= _text.Length;

    public char Current => _text[At];

    /// <summary>The next character, or a line end after the last one.</summary>
    public char Next => At + 1 < _text.Length ? _text[At + 1] : '\n';

    public bool IsBeforeBlank => IsBlank(Next) || Next is '\n' or '\r';

    public bool IsBehindBlank => At == 0 || IsBlank(_text[At - 1]) || _text[At - 1] is '\n' or '\r';

    /// <summary>What is left of the line, to its comma, bracket or colon; at least one character.</summary>
    public ReadOnlySpan<char> Word
    {
        get
        {
            var rest = _text.AsSpan(At);
            var length = rest.IndexOfAny(WordEnds);
            return length < 0 ? rest : rest[..Math.Max(1, length)];
        }
    }

    public static bool IsBlank(char c) => c is ' ' or '\t';

    /// <summary>A word and its colon begin here.</summary>
    public bool IsAtEntry()
    {
        var ahead = _text.AsSpan(At);
        for (var i = 0; i < ahead.Length && (char.IsLetterOrDigit(ahead[i]) || ahead[i] is '-' or '_' or ' ' or ':'); i++)
        {
            if (ahead[i] == ':')
            {
                return i > 0 && (i + 1 == ahead.Length || char.IsWhiteSpace(ahead[i + 1]));
            }
        }

        return false;
    }

    public void SkipBlanks()
    {
        while (!IsAtEnd && IsBlank(Current))
        {
            At++;
        }
    }

    public void SkipLine()
    {
        while (!IsAtEnd && Current is not ('\n' or '\r'))
        {
            At++;
        }
    }

    /// <summary>The lines after <c>|</c> or <c>&gt;</c>: all that stand further in than the line with that character.</summary>
    public void SkipBlockText()
    {
        var line = source.AtOffset(At).Line;
        var indent = source.IndentOf(line);
        do
        {
            line++;
        }
        while (line <= source.Count && (source[line].IsWhiteSpace() || source.IndentOf(line) > indent));

        At = line <= source.Count ? source.StartOf(line) : _text.Length;
    }

    /// <summary>From an opening quote to just after the closing one.</summary>
    /// <returns>Whether there was a closing one.</returns>
    public bool SkipQuoted()
    {
        var quote = Current;
        for (At++; !IsAtEnd; At++)
        {
            var isPair = (quote == '"' && Current == '\\') || (quote == '\'' && Current == quote && Next == quote);
            if (isPair)
            {
                At++;
            }
            else if (Current == quote)
            {
                At++;
                return true;
            }
        }

        At = _text.Length;
        return false;
    }

    /// <summary>
    /// To the end of a text without quotes: <c>": "</c>, <c>" #"</c>, the line's end, and inside brackets also a comma or bracket.
    /// </summary>
    /// <returns>Where its last word begins.</returns>
    public int SkipPlain(bool isInside)
    {
        var word = At;
        for (At++; !IsAtEnd; At++)
        {
            if (Current is '\n' or '\r'
                || (isInside && Current is ',' or '[' or ']' or '{' or '}')
                || (Current == '#' && IsBehindBlank)
                || (Current == ':' && (IsBeforeBlank || (isInside && Next is ',' or '[' or ']' or '{' or '}'))))
            {
                break;
            }

            if (!IsBlank(Current) && IsBehindBlank)
            {
                word = At;
            }
        }

        return word;
    }
}
