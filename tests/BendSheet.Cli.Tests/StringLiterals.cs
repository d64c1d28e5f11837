using System.Text;

namespace BendSheet.Cli.Tests;

/// <summary>
/// The string literals of C# source outside comments, each with the number of its line; of an interpolated one, what is typed out, with
/// <see cref="Hole"/> where something is put in. Literals inside such a hole stand for themselves.
/// </summary>
internal sealed class StringLiterals
{
    /// <summary>Stands for what is put in.</summary>
    public const char Hole = '□';

    private readonly string _source;
    private readonly List<(int Line, string Text)> _found = [];
    private int _at;

    private StringLiterals(string source) => _source = source;

    /// <summary>All of them; those inside a hole come before the one that has it.</summary>
    public static IReadOnlyList<(int Line, string Text)> Of(string source)
    {
        var literals = new StringLiterals(source);
        literals.Code(isHole: false);
        return literals._found;
    }

    /// <summary>Up to the end of the source, or behind the brace that closes a hole.</summary>
    private void Code(bool isHole)
    {
        for (var open = 1; _at < _source.Length; _at++)
        {
            open += _source[_at] switch { '{' => 1, '}' => -1, _ => 0 };
            if (isHole && open == 0)
            {
                _at++;
                return;
            }

            if (Begins("//"))
            {
                _at = _source.IndexOf('\n', _at);
            }
            else if (_source[_at] == '\'')
            {
                _at = _source.IndexOf('\'', _at + (_source[_at + 1] == '\\' ? 3 : 2));
            }
            else if (_source[_at] == '"')
            {
                Literal(hasHoles: _source[_at - 1] == '$');
            }
        }
    }

    /// <summary>From its first quote to its last one.</summary>
    private void Literal(bool hasHoles)
    {
        var line = _source.AsSpan(0, _at).Count('\n') + 1;
        var quotes = Begins("\"\"\"") ? "\"\"\"" : "\"";
        var text = new StringBuilder();
        for (_at += quotes.Length; !Begins(quotes);)
        {
            if (hasHoles && _source[_at] == '{' && _source[_at + 1] != '{')
            {
                _at++;
                Code(isHole: true);
                text.Append(Hole);
                continue;
            }

            // Of a sign behind a backslash, and of a doubled brace, it does not matter here which it is.
            _at += (quotes.Length == 1 && _source[_at] == '\\') || (hasHoles && _source[_at] is '{' or '}') ? 1 : 0;
            text.Append(_source[_at++]);
        }

        _at += quotes.Length - 1;
        _found.Add((line, text.ToString()));
    }

    private bool Begins(string what) => string.CompareOrdinal(_source, _at, what, 0, what.Length) == 0;
}
