using BendSheet.Core.Findings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Stock;

/// <summary>How tube is sold. Both are cut in the same way.</summary>
public enum RollKind
{
    /// <summary>Wound up.</summary>
    Roll,

    /// <summary>Straight.</summary>
    Stick,
}

/// <summary>Tube that lies in the workshop, and the length it is bought in.</summary>
/// <param name="Name">What the file calls it, or what a person can see of it.</param>
/// <param name="Tube">What it is.</param>
/// <param name="Length">As it is bought, above zero.</param>
/// <param name="Left">What is left of it, from zero (none there, but it can be bought) to <paramref name="Length"/>.</param>
/// <param name="At">Where it was typed.</param>
public sealed record Roll(string Name, Tube Tube, Length Length, Length Left, SourcePosition At)
{
    /// <summary>How it is sold.</summary>
    public RollKind Kind { get; init; }

    /// <summary>The file gives it a name.</summary>
    public bool HasOwnName { get; init; }

    /// <summary>Equal ones, at least 1.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Somebody measured what is left of it; otherwise it is taken as whole.</summary>
    public bool LeftIsTyped { get; init; }

    /// <summary>Of a whole one, in the person's own money.</summary>
    public decimal? Price { get; init; }

    /// <summary>In a sentence: <c>roll</c> or <c>stick</c>.</summary>
    public string KindInWords => Kind == RollKind.Stick ? "stick" : "roll";
}
