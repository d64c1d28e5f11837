using System.Collections.Immutable;
using BendSheet.Core.Fittings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Plumbing;

/// <summary>Pieces of one sort that the plumbing needs.</summary>
/// <param name="Name">What to ask for: kind, and threads and seats as far as they are known.</param>
/// <param name="UsedAt">Where each is used, in the order of the file.</param>
/// <param name="Count">How many.</param>
/// <param name="Have">How many of them lie in the drawer already, by the file.</param>
public sealed record PlumbingNeed(string Name, ImmutableArray<string> UsedAt, int Count, int Have);

/// <summary>
/// What the plumbing of a car needs beside tube and the fittings of its lines: parts, hoses, washers for banjos, and sealant where a taper
/// thread is used.
/// </summary>
public static class PlumbingNeeds
{
    /// <summary>An eye between two flat faces has a washer on each side.</summary>
    private const int WashersForBanjo = 2;

    /// <summary>Everything, equal pieces together, in the order of the file; sealant and washers last.</summary>
    public static ImmutableArray<PlumbingNeed> Of(PipeNetwork network, LengthNotation notation)
    {
        var parts = network.Car.Parts.Select(part => (Name: Name(part), UsedAt: part.Name, part.Have));
        var hoses = network.Car.Hoses.Select(hose => (Name: Name(hose, notation), UsedAt: Way(hose), hose.Have));
        return
        [
            .. parts.Concat(hoses).GroupBy(piece => piece.Name, StringComparer.Ordinal)
                .Select(same => new PlumbingNeed(same.Key, [.. same.Select(piece => piece.UsedAt)], same.Count(), same.Sum(piece => piece.Have))),
            .. Sealing(network, Seat.Banjo, WashersForBanjo, "sealing washer for banjo"),
            .. Sealing(network, Seat.Taper, 1, "thread sealant that stands the fluid, for a taper thread"),
        ];
    }

    /// <summary>For each place where either side is known to need it, by thread.</summary>
    private static IEnumerable<PlumbingNeed> Sealing(PipeNetwork network, Seat seat, int each, string name) => network.Uses
        .SelectMany(uses => uses.Take(1))
        .Where(use => !IsOwnPort(use))
        .Where(use => use.Place.Port.Spec.Seat == seat || use.End.Spec.Seat == seat)
        .GroupBy(use => (use.Place.Port.Spec.Thread ?? use.End.Spec.Thread)?.InWords ?? string.Empty, StringComparer.Ordinal)
        .Select(same => new PlumbingNeed(
            same.Key.Length == 0 ? name : $"{name} {same.Key}", [.. same.Select(use => use.Place.InWords)], each * same.Count(), 0));

    /// <summary>A part that sits in another one is one place, and counts at the other part's port.</summary>
    private static bool IsOwnPort(PortUse use) => use.Connection.Kind == ConnectionKind.ScrewedIn && ReferenceEquals(use.End, use.Connection.A);

    /// <summary><c>tee, 3 × 3/8-24 flare 37</c>.</summary>
    private static string Name(Part part)
    {
        var ports = part.Ports.Where(port => !port.IsBleeder && port.Spec.InWords.Length > 0)
            .GroupBy(port => port.Spec.InWords, StringComparer.Ordinal)
            .Select(same => same.Count() == 1 ? same.Key : FormattableString.Invariant($"{same.Count()} × {same.Key}"));
        return string.Join(", ", ports.Prepend(part.Kind.Word()));
    }

    /// <summary><c>hose, 350.0 mm, 3/8-24 flare 37 to M10x1 banjo</c>: by its own ends, or else by the ports they go to.</summary>
    private static string Name(Hose hose, LengthNotation notation)
    {
        var ends = new[] { hose.From, hose.To }.Select(end => end.Spec != PortSpec.Unknown ? end.Spec.InWords : end.Port?.Port.Spec.InWords ?? string.Empty)
            .Where(words => words.Length > 0).ToList();
        string?[] words = ["hose", hose.Length is { } length ? notation.WithUnit(length) : null, ends.Count == 0 ? null : string.Join(" to ", ends)];
        return string.Join(", ", words.OfType<string>());
    }

    private static string Way(Hose hose) => $"{hose.Name} ({hose.From.At ?? "?"} to {hose.To.At ?? "?"})";
}
