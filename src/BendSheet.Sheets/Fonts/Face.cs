namespace BendSheet.Sheets.Fonts;

/// <summary>
/// One of the four TrueType files that sheets are set in: its glyphs and how wide they are. Cannot be changed; safe for several threads.
/// </summary>
public sealed class Face
{
    /// <summary>Looked up once: nearly all that is printed.</summary>
    private const int Ascii = 128;

    private static readonly Lazy<Face>[] All =
    [
        new(() => new(InterFace.Read(InterFace.Regular), 0)),
        new(() => new(InterFace.Read(InterFace.SemiBold), 1) { Bold = true }),
        new(() => new(TabularDigits.In(InterFace.Read(InterFace.Regular)), 2) { Tabular = true }),
        new(() => new(TabularDigits.In(InterFace.Read(InterFace.SemiBold)), 3) { Bold = true, Tabular = true }),
    ];

    private readonly CharacterMap _map;
    private readonly int _widths;
    private readonly int _lastWidth;
    private readonly ushort[] _glyphs = new ushort[Ascii];

    private Face(byte[] file, int number)
    {
        File = file;
        Number = number;
        _map = new(file);
        UnitsPerEm = TrueType.UInt16(file, TrueType.TableOffset(file, "head"u8) + 18);
        _widths = TrueType.TableOffset(file, "hmtx"u8);
        _lastWidth = TrueType.UInt16(file, TrueType.TableOffset(file, "hhea"u8) + 34) - 1;
        for (var character = 0; character < Ascii; character++)
        {
            _glyphs[character] = _map[(char)character];
        }
    }

    /// <summary>How many faces there are.</summary>
    public static int Count => All.Length;

    /// <summary>The whole TrueType file; not to be written to.</summary>
    public byte[] File { get; }

    /// <summary>Which of the faces it is, from 0.</summary>
    public int Number { get; }

    /// <summary>Semi-bold, to be exact.</summary>
    public bool Bold { get; private init; }

    /// <summary>Its digits are all equally wide.</summary>
    public bool Tabular { get; private init; }

    /// <summary>Units of the font in the height of the em square.</summary>
    public int UnitsPerEm { get; }

    /// <summary>A face by its number.</summary>
    public static Face At(int number) => All[number].Value;

    /// <summary>A face by what it is for.</summary>
    /// <param name="bold">Semi-bold, to be exact.</param>
    /// <param name="tabular">Digits all equally wide.</param>
    public static Face Of(bool bold, bool tabular) => At((tabular ? 2 : 0) + (bold ? 1 : 0));

    /// <summary>The glyph that a character prints with; 0 when there is none.</summary>
    public ushort Glyph(char character) => character < Ascii ? _glyphs[character] : _map[character];

    /// <summary>How wide a text is, in the font's units. Nothing is kerned, so that widths of parts add up.</summary>
    public int Width(ReadOnlySpan<char> text)
    {
        var width = 0;
        foreach (var character in text)
        {
            width += TrueType.UInt16(File, _widths + (4 * Math.Min(Glyph(character), _lastWidth)));
        }

        return width;
    }
}
