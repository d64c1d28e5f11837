using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// SAE J512 (June 1990): the seats of inverted-flare fittings assume double-flared tube; before a single flare their maker is to be
/// asked. A warning and not a note, because the sheet must say it to whoever flares. The message does not name the line, so that every
/// end with the fitting says it once.
/// </summary>
public static class FlareAndSeat
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "flare-and-seat",
        RuleSubject.Making,
        "Inverted-flare seats are made for double-flared tube; a single flare in them may leak or split.");

    /// <summary>A warning at the flare of each fitting with a 45° single flare.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template) => new[] { template.From, template.To }
        .Select(end => end.Fitting)
        .OfType<Fitting>()
        .Where(fitting => fitting.Flare == Flare.Single45)
        .Distinct()
        .Select(fitting => Rule.Warning(
            fitting.FlareAt,
            $"fitting {fitting.Name} has a 45° single flare, and inverted-flare seats are made for double-flared tube (SAE J512): make "
                + "it `double 45`, or ask the fitting's maker whether single flares may be used"));
}
