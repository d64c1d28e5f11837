using BendSheet.Core.Findings;

namespace BendSheet.Files.Yaml;

/// <summary>A text by lines and columns, counted from 1 as an editor does. A line ends with LF, CR LF or CR.</summary>
public sealed class SourceLines
{
    private readonly string _fileName;
    private readonly List<int> _starts = [0];
    private readonly int _contentEnd;

    /// <summary>Finds the lines of <paramref name="text"/>.</summary>
    public SourceLines(string fileName, string text)
    {
        _fileName = fileName;
        Text = text;
        _contentEnd = text.AsSpan().TrimEnd(" \t\r\n").Length;
        for (var at = 0; at < text.Length; at++)
        {
            if (text[at] == '\n' || (text[at] == '\r' && (at + 1 == text.Length || text[at + 1] != '\n')))
            {
                _starts.Add(at + 1);
            }
        }
    }

    /// <summary>The whole text.</summary>
    public string Text { get; }

    /// <summary>At least 1; a line end at the end of the text begins one more line, which is empty.</summary>
    public int Count => _starts.Count;

    /// <summary>The place behind the last character that is not blank.</summary>
    public SourcePosition End => AtOffset(_contentEnd);

    /// <summary>A line without its line end.</summary>
    /// <param name="line">From 1 to <see cref="Count"/>.</param>
    public ReadOnlySpan<char> this[int line]
    {
        get
        {
            var start = _starts[line - 1];
            var end = line < Count ? _starts[line] : Text.Length;
            return Text.AsSpan(start, end - start).TrimEnd("\r\n");
        }
    }

    /// <summary>A place by line and column; one that lies behind the end of its line or of the text is moved back to that end.</summary>
    public SourcePosition At(long line, long column)
    {
        if (line < 1)
        {
            return new SourcePosition(_fileName, 1, 1);
        }

        if (line > Count || _starts[(int)line - 1] > _contentEnd)
        {
            return End;
        }

        return new SourcePosition(_fileName, (int)line, (int)Math.Clamp(column, 1, this[(int)line].Length + 1));
    }

    /// <summary>The place of a character.</summary>
    /// <param name="offset">From 0 to the length of the text.</param>
    public SourcePosition AtOffset(int offset)
    {
        var index = _starts.BinarySearch(offset);
        var line = index >= 0 ? index : ~index - 1;
        return new SourcePosition(_fileName, line + 1, offset - _starts[line] + 1);
    }

    /// <summary>The character's index in <see cref="Text"/>.</summary>
    internal int OffsetOf(SourcePosition position) => _starts[position.Line - 1] + position.Column - 1;

    /// <summary>The index in <see cref="Text"/> of a line's first character.</summary>
    internal int StartOf(int line) => _starts[line - 1];

    /// <summary>How many blanks a line begins with.</summary>
    internal int IndentOf(int line) => this[line].Length - this[line].TrimStart(' ').Length;

    /// <summary>The nearest line above with something on it that is not a comment; 0 when there is none.</summary>
    internal int LineAbove(int line)
    {
        for (var above = line - 1; above > 0; above--)
        {
            var content = this[above].Trim();
            if (content.Length > 0 && content[0] != '#')
            {
                return above;
            }
        }

        return 0;
    }
}
