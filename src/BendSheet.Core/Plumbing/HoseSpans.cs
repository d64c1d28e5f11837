using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Plumbing;

/// <summary>From fitting to fitting of a hose, along the way that it lies, in the positions of wheel and steering that stretch it.
/// </summary>
/// <param name="Droop">With the wheel hanging; null where nobody measured.</param>
/// <param name="Bump">With the suspension pressed in.</param>
/// <param name="Lock">With the steering at the lock that takes the hose furthest.</param>
/// <param name="At">Where the longest was typed.</param>
public sealed record HoseSpans(Length? Droop, Length? Bump, Length? Lock, SourcePosition At)
{
    /// <summary>A hose is 5 to 8 % longer than its way, because pressure shortens it: FAA-H-8083-30, p. 7-19.</summary>
    public const double LeastSlack = 0.05;

    /// <summary>The same.</summary>
    public const double MostSlack = 0.08;

    /// <summary>Each position with its word, as far as they were measured.</summary>
    public IEnumerable<(string Word, Length Span)> All => new[] { ("droop", Droop), ("bump", Bump), ("lock", Lock) }
        .Where(position => position.Item2 is not null).Select(position => (position.Item1, position.Item2!.Value));

    /// <summary>The position that stretches it most.</summary>
    public (string Word, Length Span) Longest => All.MaxBy(position => position.Span);

    /// <summary>The shortest hose that has slack enough everywhere.</summary>
    public Length Least => (1 + LeastSlack) * Longest.Span;

    /// <summary>With the most slack of the published range.</summary>
    public Length Most => (1 + MostSlack) * Longest.Span;
}
