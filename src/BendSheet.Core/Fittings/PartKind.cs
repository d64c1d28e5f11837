using System.Collections.Immutable;

namespace BendSheet.Core.Fittings;

/// <summary>What a part does in the system.</summary>
public enum PartKind
{
    /// <summary>Where the pressure comes from.</summary>
    MasterCylinder,

    /// <summary>One line becomes two.</summary>
    Tee,

    /// <summary>One line becomes three.</summary>
    Cross,

    /// <summary>A line goes through a panel.</summary>
    Bulkhead,

    /// <summary>Two ends of one sort.</summary>
    Union,

    /// <summary>Two ends of different sorts.</summary>
    Adapter,

    /// <summary>The brake-light switch that pressure works.</summary>
    Switch,

    /// <summary>A proportioning, residual or check valve.</summary>
    Valve,

    /// <summary>At a wheel with a disc.</summary>
    Caliper,

    /// <summary>At a wheel with a drum.</summary>
    WheelCylinder,

    /// <summary>What works a clutch.</summary>
    SlaveCylinder,

    /// <summary>Holds fluid or fuel.</summary>
    Reservoir,

    /// <summary>Moves fuel.</summary>
    Pump,

    /// <summary>Cleans fuel.</summary>
    Filter,

    /// <summary>Closes a port.</summary>
    Plug,

    /// <summary>Anything else with ports.</summary>
    Other,
}

/// <summary>How kinds are written, and the ports they have where the trade has no doubt about them.</summary>
public static class PartKinds
{
    /// <summary>The name of a port that takes a bleed screw.</summary>
    public const string Bleeder = "bleeder";

    /// <summary>Every kind with the word a file has for it.</summary>
    public static IReadOnlyList<(PartKind Kind, string Word)> All { get; } =
    [
        (PartKind.MasterCylinder, "master-cylinder"),
        (PartKind.Tee, "tee"),
        (PartKind.Cross, "cross"),
        (PartKind.Bulkhead, "bulkhead"),
        (PartKind.Union, "union"),
        (PartKind.Adapter, "adapter"),
        (PartKind.Switch, "switch"),
        (PartKind.Valve, "valve"),
        (PartKind.Caliper, "caliper"),
        (PartKind.WheelCylinder, "wheel-cylinder"),
        (PartKind.SlaveCylinder, "slave-cylinder"),
        (PartKind.Reservoir, "reservoir"),
        (PartKind.Pump, "pump"),
        (PartKind.Filter, "filter"),
        (PartKind.Plug, "plug"),
        (PartKind.Other, "other"),
    ];

    /// <summary>The kind as a file has it.</summary>
    public static string Word(this PartKind kind) => All.First(known => known.Kind == kind).Word;

    /// <summary>Whether it brakes a wheel.</summary>
    public static bool IsWheel(this PartKind kind) => kind is PartKind.Caliper or PartKind.WheelCylinder;

    /// <summary>The names of its ports where the file does not say them; none where they differ from one to the next.</summary>
    public static ImmutableArray<string> UsualPorts(this PartKind kind) => kind switch
    {
        PartKind.Tee => ["in", "left", "right"],
        PartKind.Cross => ["in", "left", "right", "out"],
        PartKind.Bulkhead or PartKind.Union or PartKind.Adapter or PartKind.Valve or PartKind.Pump or PartKind.Filter => ["in", "out"],
        PartKind.Caliper or PartKind.WheelCylinder or PartKind.SlaveCylinder => ["inlet", Bleeder],
        PartKind.Switch or PartKind.Plug => ["end"],
        _ => [],
    };
}
