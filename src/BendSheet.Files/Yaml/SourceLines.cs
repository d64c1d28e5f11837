using BendSheet.Core.Findings;

namespace BendSheet.Files.Yaml;

/// <summary>A text by lines and columns, counted from 1 as an editor does. A line ends with LF, CR LF or CR.</summary>
public sealed class SourceLines
{
    private readonly SourcePosition _whole;
    private readonly List<int> _starts = [0];
    private readonly int _contentEnd;

    /// <summary>Finds the lines of <paramref name="text"/>.</summary>
    /// <param name="fileName">As findings name it.</param>
    /// <param name="text">All of it.</param>
    /// <param name="fileNumber">Which of several files it is: 0 for the one that was asked for.</param>
    public SourceLines(string fileName, string text, int fileNumber = 0)
    {
        _whole = SourcePosition.Whole(fileName) with { FileNumber = fileNumber };
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

    /// <summary>The texts that this one includes, in their order.</summary>
    public IReadOnlyList<SourceLines> Included { get; private set; } = [];

    /// <summary>The file's name, as findings have it.</summary>
    public string FileName => _whole.File;

    /// <summary>The same text with those that it includes.</summary>
    internal SourceLines With(IReadOnlyList<SourceLines> included) => included.Count == 0
        ? this
        : new(_whole.File, Text, _whole.FileNumber) { Included = included };

    /// <summary>The text that a place is in: this one, or one that it includes.</summary>
    public SourceLines Of(SourcePosition position) =>
        Included.FirstOrDefault(text => text._whole.FileNumber == position.FileNumber) ?? this;

    /// <summary>At least 1; a line end at the end of the text begins one more line, which is empty.</summary>
    public int Count => _starts.Count;

    /// <summary>The place after the last character that is not a space.</summary>
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

    /// <summary>A place by line and column; one that lies after the end of its line or of the text is moved back to that end.</summary>
    public SourcePosition At(long line, long column)
    {
        if (line < 1)
        {
            return _whole with { Line = 1, Column = 1 };
        }

        if (line > Count || _starts[(int)line - 1] > _contentEnd)
        {
            return End;
        }

        return _whole with { Line = (int)line, Column = (int)Math.Clamp(column, 1, this[(int)line].Length + 1) };
    }

    /// <summary>The place of a character.</summary>
    /// <param name="offset">From 0 to the length of the text.</param>
    public SourcePosition AtOffset(int offset)
    {
        var index = _starts.BinarySearch(offset);
        var line = index >= 0 ? index : ~index - 1;
        return _whole with { Line = line + 1, Column = offset - _starts[line] + 1 };
    }

    /// <summary>The character's index in <see cref="Text"/>.</summary>
    internal int OffsetOf(SourcePosition position) => _starts[position.Line - 1] + position.Column - 1;

    /// <summary>The index in <see cref="Text"/> of a line's first character.</summary>
    internal int StartOf(int line) => _starts[line - 1];

    /// <summary>How many spaces a line begins with.</summary>
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
