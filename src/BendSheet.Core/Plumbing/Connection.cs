using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Plumbing;

/// <summary>What leads from one place of the car to another.</summary>
public enum ConnectionKind
{
    /// <summary>A bent line.</summary>
    Line,

    /// <summary>A hose.</summary>
    Hose,

    /// <summary>Nothing: one part sits in the other.</summary>
    ScrewedIn,
}

/// <summary>One end of what leads from place to place: what it is itself, and the port it goes to.</summary>
/// <param name="Name">In a sentence: <c>end A of line rear</c>.</param>
/// <param name="At">Where it goes, in the person's own words.</param>
/// <param name="Port">Where it goes; null where the words lead to no port.</param>
/// <param name="Spec">Its own thread and seat, as far as they are known; of a line's end only what its fitting says.</param>
/// <param name="Fitting">Of a line's end.</param>
/// <param name="Tube">Of a line.</param>
public sealed record ConnectionEnd(string Name, string? At, PortPlace? Port, PortSpec Spec, Fitting? Fitting, Tube? Tube)
{
    /// <summary>The seats it is made for; null where nobody has said what it is.</summary>
    public IReadOnlyList<Seat>? Seats => Fitting is { } fitting ? Fittings.Seats.For(fitting.Flare) : Spec.Seat is { } seat ? [seat] : null;

    /// <summary>What it is, with its article: <c>a 37° single flare</c>, <c>an inverted 45° seat</c>.</summary>
    public string? InWords => Fitting is { } fitting ? "a " + fitting.Flare.InWords() : Spec.Seat?.InWords();
}

/// <summary>What leads from one port to another.</summary>
/// <param name="Kind">Line, hose, or nothing between them.</param>
/// <param name="Name">Of the line, the hose or the part that sits in the other.</param>
/// <param name="A">End A of a line.</param>
/// <param name="B">Its other end.</param>
/// <param name="Length">Of a hose, where it is known; a line's is known only when it is solved.</param>
/// <param name="Position">Where the name was typed.</param>
public sealed record Connection(ConnectionKind Kind, string Name, ConnectionEnd A, ConnectionEnd B, Length? Length, SourcePosition Position)
{
    /// <summary>Both ends.</summary>
    public IReadOnlyList<ConnectionEnd> Ends => [A, B];

    /// <summary><c>line rear</c>.</summary>
    public string InWords => Kind switch
    {
        ConnectionKind.Line => $"line {Name}",
        ConnectionKind.Hose => $"hose {Name}",
        _ => $"{A.Port!.Part.Kind.Word()} {Name}",
    };

    /// <summary>A line with what its two ends go to.</summary>
    public static Connection Of(LineTemplate line) => OfLine(line.Name, line.From, line.To, line.Tube, null, line.At);

    /// <summary>A line of which only the ends and a rough length are known.</summary>
    public static Connection Of(RoughLine line) => OfLine(line.Name, line.From, line.To, line.Tube, line.Length, line.At);

    private static Connection OfLine(string name, LineEnd from, LineEnd to, Tube? tube, Length? length, SourcePosition position)
    {
        return new(ConnectionKind.Line, name, End(from, 'A'), End(to, 'B'), length, position);

        ConnectionEnd End(LineEnd end, char letter) =>
            new($"end {letter} of line {name}", end.At, end.Port, new(end.Fitting?.Thread, null, null), end.Fitting, tube);
    }

    /// <summary>A hose.</summary>
    public static Connection Of(Hose hose) =>
        new(ConnectionKind.Hose, hose.Name, End(hose, hose.From), End(hose, hose.To), hose.Length, hose.Position);

    /// <summary>A part in another one.</summary>
    public static Connection Of(ScrewedIn screwed)
    {
        // Its own port is compared with the port it sits in, once: at the port it sits in.
        var own = new ConnectionEnd(screwed.Own.InWords, screwed.Own.InWords, screwed.Own, PortSpec.Unknown, null, null);
        var into = new ConnectionEnd(screwed.Own.InWords, screwed.Into.InWords, screwed.Into, screwed.Own.Port.Spec, null, null);
        return new(ConnectionKind.ScrewedIn, screwed.Own.Part.Name, own, into, null, screwed.Into.Position);
    }

    private static ConnectionEnd End(Hose hose, HoseEnd end) => new($"hose {hose.Name}", end.At, end.Port, end.Spec, null, null);
}
