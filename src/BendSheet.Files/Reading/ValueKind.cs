using System.Collections.Immutable;

namespace BendSheet.Files.Reading;

/// <summary>What may stand after a word of the file, as an editor needs to know it: wider than what is read, never narrower.</summary>
public abstract record ValueKind
{
    /// <summary>A length, an angle, a rotation or a number, in any notation of the file.</summary>
    /// <param name="Meaning">What it is and how it may be typed.</param>
    public sealed record Figure(string Meaning) : ValueKind;

    /// <summary>A person's own words, or a name.</summary>
    /// <param name="Meaning">What it is.</param>
    public sealed record Text(string Meaning) : ValueKind;

    /// <summary>One of a few words, in upper or lower case.</summary>
    /// <param name="Known">All of them.</param>
    public sealed record Choice(ImmutableArray<string> Known) : ValueKind;

    /// <summary>Words with values.</summary>
    /// <param name="Place">Whose words.</param>
    public sealed record Words(Vocabulary Place) : ValueKind;

    /// <summary>Names that the person gives, each with a value.</summary>
    /// <param name="Of">Of each of them.</param>
    public sealed record Named(ValueKind Of) : ValueKind;

    /// <summary>A list.</summary>
    /// <param name="Of">Of each of its items.</param>
    public sealed record Several(ValueKind Of) : ValueKind;

    /// <summary>One of several kinds.</summary>
    /// <param name="Kinds">At least two.</param>
    public sealed record Either(ImmutableArray<ValueKind> Kinds) : ValueKind;

    /// <summary>Nothing need be typed.</summary>
    public sealed record Empty : ValueKind;
}
