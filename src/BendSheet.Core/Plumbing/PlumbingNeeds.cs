using System.Collections.Immutable;
using BendSheet.Core.Fittings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Plumbing;

/// <summary>Pieces of one sort that the plumbing needs.</summary>
/// <param name="Sort">What to ask for: <c>tee</c>, <c>hose</c>.</param>
/// <param name="Kind">Threads and seats as far as they are known, and the like; empty for none.</param>
/// <param name="UsedAt">Where each is used, in the order of the file.</param>
/// <param name="Count">How many.</param>
/// <param name="Have">How many of them are on hand, by the file.</param>
public sealed record PlumbingNeed(string Sort, string Kind, ImmutableArray<string> UsedAt, int Count, int Have)
{
    /// <summary>What it is by itself, without what it is for: <c>sealing washer</c>.</summary>
    public string Article { get; init; } = Sort;

    /// <summary>Both in a row: <c>tee, 3 × 3/8-24 flare 37</c>.</summary>
    public string Name => Kind.Length == 0 ? Sort : $"{Sort}, {Kind}";
}

/// <summary>
/// What the plumbing of a car needs beside tube and the fittings of its lines: parts, hoses, washers for banjos, and sealant where a taper
/// thread is used.
/// </summary>
public static class PlumbingNeeds
{
    /// <summary>An eye between two flat faces has a washer on each side.</summary>
    private const int WashersForBanjo = 2;

    private const string Washer = "sealing washer";

    /// <summary>Everything, equal pieces together, in the order of the file; sealant and washers last.</summary>
    public static ImmutableArray<PlumbingNeed> Of(PipeNetwork network, LengthNotation notation)
    {
        var parts = network.Car.Parts.Select(part => (Sort: part.Kind.Word(), Kind: Kind(part), UsedAt: part.Name, part.Have));
        var hoses = network.Car.Hoses.Select(hose => (Sort: "hose", Kind: Kind(hose, notation), UsedAt: Way(hose), hose.Have));
        return
        [
            .. parts.Concat(hoses).GroupBy(piece => (piece.Sort, piece.Kind))
                .Select(
                    same => new PlumbingNeed(
                        same.Key.Sort, same.Key.Kind, [.. same.Select(piece => piece.UsedAt)], same.Count(), same
                            .Sum(piece => piece.Have))),
            .. Sealing(network, Seat.Banjo, WashersForBanjo, $"{Washer} for banjo", string.Empty)
                .Select(need => need with { Article = Washer }),
            .. Sealing(network, Seat.Taper, 1, "thread sealant that stands the fluid", "for a taper thread"),
        ];
    }

    /// <summary>For each place where either side is known to need it, by thread.</summary>
    private static IEnumerable<PlumbingNeed> Sealing(PipeNetwork network, Seat seat, int each, string sort, string kind) => network.Uses
        .SelectMany(uses => uses.Take(1))
        .Where(use => !IsOwnPort(use))
        .Where(use => use.Place.Port.Spec.Seat == seat || use.End.Spec.Seat == seat)
        .GroupBy(use => (use.Place.Port.Spec.Thread ?? use.End.Spec.Thread)?.InWords ?? string.Empty, StringComparer.Ordinal)
        .Select(same => new PlumbingNeed(
            kind.Length > 0 || same.Key.Length == 0 ? sort : $"{sort} {same.Key}",
            kind.Length == 0 || same.Key.Length == 0 ? kind : $"{kind} {same.Key}",
            [.. same.Select(use => use.Place.InWords)], each * same.Count(), 0));

    /// <summary>A part that sits in another one is one place, and counts at the other part's port.</summary>
    private static bool IsOwnPort(PortUse use) =>
        use.Connection.Kind == ConnectionKind.ScrewedIn && ReferenceEquals(use.End, use.Connection.A);

    /// <summary><c>3 × 3/8-24 flare 37</c>.</summary>
    private static string Kind(Part part)
    {
        var ports = part.Ports.Where(port => !port.IsBleeder && port.Spec.InWords.Length > 0)
            .GroupBy(port => port.Spec.InWords, StringComparer.Ordinal)
            .Select(same => same.Count() == 1 ? same.Key : FormattableString.Invariant($"{same.Count()} × {same.Key}"));
        return string.Join(", ", ports);
    }

    /// <summary><c>350.0 mm, 3/8-24 flare 37 to M10x1 banjo</c>: by its own ends, or else by the ports they go to.</summary>
    private static string Kind(Hose hose, LengthNotation notation)
    {
        var ends = new[]
        {
            hose.From,
            hose.To,
        }.Select(end => end.Spec != PortSpec.Unknown ? end.Spec.InWords : end.Port?.Port.Spec.InWords ?? string.Empty)
            .Where(words => words.Length > 0).ToList();
        string?[] words =
        [
            hose.Length is { } length ? notation.WithUnit(length) : null,
            ends.Count == 0 ? null : string.Join(" to ", ends),
        ];
        return string.Join(", ", words.OfType<string>());
    }

    private static string Way(Hose hose) => $"{hose.Name} ({hose.From.At ?? "?"} to {hose.To.At ?? "?"})";
}
