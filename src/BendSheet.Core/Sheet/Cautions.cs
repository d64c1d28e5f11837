namespace BendSheet.Core.Sheet;

/// <summary>The cautions every sheet carries. Brake lines carry people.</summary>
public static class Cautions
{
    /// <summary>Above them.</summary>
    public const string Heading = "Cautions";

    /// <summary>In one place, in this order, on every sheet.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "A brake line is a safety part. This sheet gives geometry: it does not approve a brake system. Local rules, the makers' "
            + "instructions and a licensed mechanic's inspection come first.",
        "On brakes use only tube sold for hydraulic brakes, of the right size: never plain copper, never compression fittings.",
        "Match flare and seat: 37° and 45° do not mix. Single flares only where the fitting's standard calls for them.",
        "Nuts and sleeves go on before the flare. Nothing goes on flare seats; sealant only on taper threads whose maker allows it.",
        "Deburr, clean and blow out every piece, with eye protection. Lubricate and wash with brake fluid or denatured alcohol only, never "
            + "mineral oil or solvent (TM 5-3825-226-24).",
        "Support the line and keep it clear of heat, edges and moving parts through full steering and suspension travel.",
        "Leak-test under pressure, and check every joint again, before driving.",
    ];

    /// <summary>How the + or − after a length is meant.</summary>
    public const string Rounded = "+/−: a little more/less.";

    /// <summary>How the figures of the table are meant; a bend made in the wrong plane is the commonest spoilt tube.</summary>
    public const string Rotation =
        "Line at: the pen line, seen from the held end, the former (inside of the bend) at 12. Held: the side in the grip; look along the "
        + "arrow. Swing: reach from the former's middle. Rotate: from the bend made before; dial: from A; cw: clockwise seen from A.";
}
