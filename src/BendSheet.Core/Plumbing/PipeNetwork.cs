using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Plumbing;

/// <summary>The whole car: its parts, and what leads from port to port.</summary>
/// <param name="Car">What the file says of parts and hoses.</param>
/// <param name="Joints">Lines, hoses and parts that sit in others, in the order of the file.</param>
public sealed record PipeNetwork(CarParts Car, ImmutableArray<Joint> Joints)
{
    /// <summary>Nothing.</summary>
    public static PipeNetwork None { get; } = new(CarParts.None, []);

    /// <summary>The network of a file's lines.</summary>
    public static PipeNetwork Of(CarParts car, IEnumerable<LineTemplate> lines) => Of(car, lines.Select(Joint.Of));

    /// <summary>The network of lines that may have no template yet.</summary>
    public static PipeNetwork Of(CarParts car, IEnumerable<Joint> lines) => new(
        car,
        [
            .. lines.Concat(car.Hoses.Select(Joint.Of)).Concat(car.ScrewedIns.Select(Joint.Of))
                .OrderBy(joint => joint.Position.Line).ThenBy(joint => joint.Position.Column),
        ]);

    /// <summary>Everything that goes to a port, by the port, each in the order of the file.</summary>
    public ILookup<(string Part, string Port), PortUse> Uses => Joints
        .SelectMany(joint => joint.Ends.Where(end => end.Port is not null), (joint, end) => new PortUse(joint, end, end.Port!))
        .ToLookup(use => (use.Place.Part.Name, use.Place.Port.Name));

    /// <summary>A file of lines only, of which nothing is said about plumbing.</summary>
    public bool IsEmpty => Car.Parts.IsEmpty;
}

/// <summary>Something that goes to a port.</summary>
/// <param name="Joint">What goes there.</param>
/// <param name="End">Which end of it.</param>
/// <param name="Place">The port.</param>
public sealed record PortUse(Joint Joint, JointEnd End, PortPlace Place)
{
    /// <summary>The other end.</summary>
    public JointEnd Other => ReferenceEquals(End, Joint.A) ? Joint.B : Joint.A;

    /// <summary>Where the port was named.</summary>
    public SourcePosition Position => Place.Position;
}
