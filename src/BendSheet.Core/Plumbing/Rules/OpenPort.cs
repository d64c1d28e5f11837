using System.Globalization;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Plumbing.Rules;

/// <summary>An open port lets the fluid out. A bleed screw's port is closed by it.</summary>
public static class OpenPort
{
    private const int MostListed = 6;

    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new("open-port", RuleSubject.Making, "An open port leaks.");

    /// <summary>A warning for each part with open ports, at its name: a file may describe only a part of the car.</summary>
    public static IEnumerable<Finding> Check(PipeNetwork network)
    {
        var uses = network.Uses;
        foreach (var part in network.Car.Parts)
        {
            var open = part.Ports.Where(port => IsOpen(uses, part, port)).Select(port => port.Name).ToList();
            if (open.Count > 0)
            {
                var ports = string.Join(", ", open.Take(MostListed))
                    + (open.Count > MostListed
                    ? string.Create(CultureInfo.InvariantCulture, $" and {open.Count - MostListed} more")
                    : string.Empty);
                yield return Rule.Warning(part.At, Message(part, ports, open.Count));
            }
        }
    }

    /// <summary>Whether nothing goes to a port that wants something.</summary>
    public static bool IsOpen(ILookup<(string Part, string Port), PortUse> uses, Part part, Port port) =>
        !port.IsBleeder && !uses.Contains((part.Name, port.Name));

    private static string Message(Part part, string ports, int count) => part.Kind is PartKind.Plug or PartKind.Switch
        ? $"{part.Kind.Word()} {part.Name} sits nowhere: say where with `screws-into`, such as `screws-into: tee.left`, or take it out"
        : $"nothing goes to {part.Name}, {Counted.Noun(count, "port")} {ports}: "
            + $"connect {Counted.Noun(count, "it", "them")}, close with a `plug`, or leave out of its `ports` what is not on your car";
}
