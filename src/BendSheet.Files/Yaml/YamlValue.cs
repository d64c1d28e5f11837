using BendSheet.Core.Findings;

namespace BendSheet.Files.Yaml;

/// <summary>Something that was typed: a text, a list or a map. At most <see cref="YamlDocument.DeepestNesting"/> levels deep.</summary>
/// <param name="Position">The first character of it.</param>
public abstract record YamlValue(SourcePosition Position);

/// <summary>A single word, number or text. Nothing is made of it here: <c>yes</c>, <c>010</c> and <c>1_000</c> stay as typed.</summary>
/// <param name="Text">As typed, without the quotes.</param>
/// <param name="IsPlain">Typed without quotes (and not as a block of text after <c>|</c> or <c>&gt;</c>).</param>
/// <param name="Position">The first character, or the opening quote; of a missing value the place after the colon or dash.</param>
public sealed record YamlText(string Text, bool IsPlain, SourcePosition Position) : YamlValue(Position)
{
    /// <summary>What it means is not clear, which was reported already.</summary>
    public bool IsUnclear { get; init; }

    /// <summary>Nothing was typed, or YAML's own word for nothing. <c>""</c> is a text, not a missing one.</summary>
    public bool IsEmpty => IsPlain && Text is ("" or "~" or "null" or "Null" or "NULL");
}

/// <summary>A list, with dashes or in <c>[…]</c>.</summary>
/// <param name="Items">In the order of the file.</param>
/// <param name="Position">The first dash or the bracket.</param>
public sealed record YamlList(IReadOnlyList<YamlValue> Items, SourcePosition Position) : YamlValue(Position);

/// <summary>A map, on lines of its own or in <c>{…}</c>.</summary>
/// <param name="Entries">In the order of the file. No word comes twice: the second one was reported and left out.</param>
/// <param name="Position">The first word or the brace.</param>
public sealed record YamlMap(IReadOnlyList<YamlEntry> Entries, SourcePosition Position) : YamlValue(Position)
{
    /// <summary>Words that came again, in the order of the file: reported, and left out with what stands after them.</summary>
    public IReadOnlyList<YamlText> Again { get; init; } = [];
}

/// <summary>A word with its value.</summary>
/// <param name="Key">The word before the colon.</param>
/// <param name="Value">What follows the colon; an empty <see cref="YamlText"/> when nothing does.</param>
public sealed record YamlEntry(YamlText Key, YamlValue Value);
