namespace BendSheet.Cli.Output;

/// <summary>How a table for a person may look.</summary>
/// <param name="Width">In columns; null where it may be as wide as it comes.</param>
/// <param name="Drawing">With drawings made of characters.</param>
internal sealed record View(int? Width, bool Drawing)
{
    /// <summary>What the output can show.</summary>
    /// <param name="surroundings">With the output.</param>
    /// <param name="wide">Asked for as wide as it comes.</param>
    public static View On(Surroundings surroundings, bool wide) => new(wide ? null : surroundings.OutputWidth, surroundings.Drawing);
}
