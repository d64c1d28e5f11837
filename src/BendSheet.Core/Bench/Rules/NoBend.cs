using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// MIL-H-8891A 3.11.4.5: between two fixed ends a line has a bend, so that vibration and heat have somewhere to go. Only where the file
/// says what both ends go to.
/// </summary>
public static class NoBend
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "no-bend", RuleSubject.Making, "A straight tube between two fixed ends cannot give: heat and shaking pull at its flares.");

    /// <summary>A warning at a line without any bend.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template) =>
        template.Route.Bends.IsEmpty && IsFixed(template.From) && IsFixed(template.To)
            ? [Rule.Warning(
                template.At,
                $"line {template.Name} is straight from end to end: between two fixed ends a tube needs at least one bend "
                    + "(MIL-H-8891A 3.11.4.5); lead it round something, or offset it")]
            : [];

    private static bool IsFixed(LineEnd end) => end.At is not null && end.IsFlared;
}
