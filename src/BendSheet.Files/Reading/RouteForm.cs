using System.Collections.Immutable;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>A route and how it lies.</summary>
/// <param name="Route">Legs and bends.</param>
/// <param name="Start">End A, in the car's axes where somebody said so.</param>
/// <param name="LiesOnCar">Somebody said how it lies.</param>
internal sealed record LineRoute(Route Route, Frame Start, bool LiesOnCar)
{
    /// <summary>It was measured on a wire; false where its corners were measured on the car.</summary>
    public bool HasWire { get; init; } = true;

    /// <summary>It says where A lies from the corner that all places count from.</summary>
    public bool HasPlace { get; init; }

    /// <summary>Its corners, where the route was measured by them.</summary>
    public ImmutableArray<CornerPoint> Corners { get; init; } = [];

    /// <summary>What the taped distances came to, where the route was measured so.</summary>
    public TapedFit? Taped { get; init; }
}

/// <summary>A route as it was typed, for the reader of its form.</summary>
/// <param name="Line">The line with all its words.</param>
/// <param name="Value">What follows the form's word.</param>
/// <param name="Bender">The line's tool; null where it could not be read.</param>
/// <param name="IsClear">Nothing else of the line says its route as well: only then findings about its shape are of use.</param>
internal sealed record TypedRoute(FieldReader Line, YamlValue Value, Bender? Bender, bool IsClear);

/// <summary>
/// A way to say a line's route: its words, how it is read and what it comes to. A new one is an entry here and in <see cref="All"/>: which
/// words a line may have, what a rough or a mirrored line may not have, and what a line without a route is told follow from it.
/// </summary>
/// <param name="Word">That says the route.</param>
/// <param name="Words">It and those that belong to it alone, in the order in which the format lists them.</param>
/// <param name="IsCorners">Corner points, which lie on the car as they are.</param>
/// <param name="Elsewhere">Why the words that belong to it do nothing beside another form.</param>
/// <param name="Read">From what was typed to the route; null after findings.</param>
internal sealed record RouteForm(
    string Word, IReadOnlyList<string> Words, bool IsCorners, string Elsewhere, Func<LineRouteReader, TypedRoute, LineRoute?> Read)
{
    /// <summary>Instead of a route: the name of the line that this one is the mirror image of.</summary>
    public const string Mirror = "mirror";

    /// <summary>Instead of a route: about how long the line will be.</summary>
    public const string Rough = "rough";

    /// <summary>Straights and bends of a template, one row after the other.</summary>
    public static RouteForm Rows { get; } = new(
        "rows",
        ["measured", "start", "rows"],
        IsCorners: false,
        "corner points say already how the line lies and where its corners are",
        (reader, typed) => reader.OfRows(typed));

    /// <summary>The corners as points.</summary>
    public static RouteForm Corners { get; } = new(
        "corners", ["corners"], IsCorners: true, string.Empty, (reader, typed) => reader.OfCorners(typed, CornersReader.Coordinates));

    /// <summary>The way from each corner to the next.</summary>
    public static RouteForm Legs { get; } = new(
        "legs", ["legs"], IsCorners: true, string.Empty, (reader, typed) => reader.OfCorners(typed, CornersReader.Moves));

    /// <summary>How far the corners are from each other.</summary>
    public static RouteForm Distances { get; } = new(
        "distances",
        ["distances", "side"],
        IsCorners: true,
        "other ways to say a route leave no side open",
        (reader, typed) => reader.OfDistances(typed));

    /// <summary>All of them, in the order in which the format lists them.</summary>
    public static IReadOnlyList<RouteForm> All { get; } = [Rows, Corners, Legs, Distances];

    /// <summary>The words of all forms.</summary>
    public static IReadOnlyList<string> AllWords { get; } = [.. All.SelectMany(form => form.Words)];

    /// <summary>The words that mean something only beside that of their form.</summary>
    public IReadOnlyList<string> WordsBeside { get; } = [.. Words.Where(word => !string.Equals(word, Word, StringComparison.Ordinal))];

    /// <summary>Whether the words beside its own do nothing in a line that says its route in these forms.</summary>
    public bool IsElsewhere(List<RouteForm> said) => IsCorners ? !said.Contains(this) : said.Exists(form => form.IsCorners);
}
