namespace BendSheet.Pdf;

/// <summary>The characters that were drawn with a face.</summary>
internal sealed class DrawnCharacters
{
    /// <summary>One bit for each character of ASCII: nearly all that is drawn.</summary>
    private UInt128 _ascii;

    private readonly HashSet<char> _others = [];

    /// <summary>Each once, in no order.</summary>
    public IEnumerable<char> All =>
        Enumerable.Range(0, 128).Where(character => (_ascii >> character & 1) == 1).Select(character => (char)character).Concat(_others);

    /// <summary>Adds one.</summary>
    public void Add(char character)
    {
        if (character < 128)
        {
            _ascii |= UInt128.One << character;
        }
        else
        {
            _others.Add(character);
        }
    }
}
