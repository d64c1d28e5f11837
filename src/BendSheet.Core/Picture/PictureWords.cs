using System.Globalization;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Units;

namespace BendSheet.Core.Picture;

/// <summary>What stands around the picture of the car.</summary>
public static class PictureWords
{
    /// <summary>In the outline of the document, and the name of the drawing.</summary>
    public const string Entry = "Car";

    /// <summary>Caption of the plan.</summary>
    public const string Above = "from above";

    /// <summary>Caption of the side view.</summary>
    public const string Left = "from the left";

    /// <summary>Caption of the front view.</summary>
    public const string Front = "from the front";

    /// <summary>At the arrow that points to the front of the car.</summary>
    public const string Forward = "forward";

    /// <summary>At the arrow that points to the left of the car.</summary>
    public const string ToTheLeft = "left";

    /// <summary>At the arrow that points up.</summary>
    public const string Up = "up";

    /// <summary>Above what has no place.</summary>
    public const string NotDrawnHeading = "Not in the picture";

    /// <summary>Above the table.</summary>
    public const string KeyHeading = "Lines and hoses";

    /// <summary>A solid line.</summary>
    public const string Made = "line, made";

    /// <summary>A dashed line.</summary>
    public const string NotMade = "line, not made yet";

    /// <summary>Two thin lines.</summary>
    public const string Hose = "hose";

    /// <summary>The way of a hose in the views.</summary>
    public const string HoseBetweenPorts = "hose, drawn straight";

    /// <summary>A part with its ports.</summary>
    public const string Part = "part and its ports";

    /// <summary>A box of the diagram.</summary>
    public const string PartOfDiagram = "part";

    /// <summary>A box of the diagram that stands once more.</summary>
    public const string Again = "part that stands in another row as well";

    /// <summary>Nothing between two parts.</summary>
    public const string ScrewedIn = "one part sits in the other";

    /// <summary>Where some item has no label in some view.</summary>
    public const string Crowded = "Where a view has no room for a number, look for it in the other views.";

    /// <summary>Where the views are there twice.</summary>
    public const string DrawnAgain = "The views are drawn again for what found no room for its label in the first ones.";

    /// <summary>In a box of what is made.</summary>
    public const string Tick = "✓";

    private static readonly double[] MetricSteps = [1, 2, 5, 10];

    /// <summary>In inches.</summary>
    private static readonly double[] ImperialSteps = [0.5, 1, 2, 4, 6, 12];

    /// <summary>Hatched.</summary>
    public const string Zone = "to keep clear";

    /// <summary>Above the columns of the table: number, name, ends, length, circuit, box to tick.</summary>
    public static IReadOnlyList<string> Columns { get; } = ["no.", "name", "from → to", "length", "circuit", "made, on hand"];

    /// <summary>Above the page.</summary>
    public static string Heading(CarPicture picture)
    {
        ArgumentNullException.ThrowIfNull(picture);
        var what = picture.HasPlaces ? "The car in one picture" : "The plumbing as a diagram, not to scale";
        return picture.Project.Length == 0 ? what : $"{what}: {picture.Project}";
    }

    /// <summary>The scale of the views.</summary>
    public static string Scale(double denominator) => string.Create(CultureInfo.InvariantCulture, $"scale 1 : {denominator:0.#}");

    /// <summary>A bar of a round length, and its words.</summary>
    /// <param name="notation">Of the picture.</param>
    /// <param name="mostMm">It is at most so long, on the car.</param>
    public static (Length Length, string Words) Bar(LengthNotation notation, double mostMm)
    {
        ArgumentNullException.ThrowIfNull(notation);
        var most = Length.FromMillimetres(mostMm);
        var (unit, steps) = notation.Imperial ? (most.Inches, ImperialSteps) : (most.Millimetres, MetricSteps);
        var scale = notation.Imperial && unit <= 2 * steps[^1] ? 1 : Math.Pow(10, Math.Floor(Math.Log10(unit / steps[0])));
        var figure = steps.Select(step => step * scale).Where(step => step <= unit).DefaultIfEmpty(unit).Max();
        var length = notation.Imperial ? Length.FromInches(figure) : Length.FromMillimetres(figure);
        return (length, string.Create(CultureInfo.InvariantCulture, $"{figure:0.###} {notation.Symbol}"));
    }

    /// <summary>At a line or hose that has room for it.</summary>
    public static string Label(PicturedRun run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return run.Length.Length == 0 ? run.Name : $"{run.Name}, {run.Length}";
    }

    /// <summary>At a circuit's mark.</summary>
    public static string Circuit(string name) => $"circuit {name}";

    /// <summary>Both ends, for the table.</summary>
    public static string Ends(PicturedRun run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return $"{run.A.InWords} → {run.B.InWords}";
    }

    /// <summary>What the name in the table says beside itself.</summary>
    public static string NameInKey(PicturedRun run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return run.Kind == ConnectionKind.Hose ? $"{run.Name} (hose)" : run.Name;
    }

    /// <summary>Of parts and zones that have a number in the picture instead of a name.</summary>
    public static string ByNumber(CarPicture picture, IReadOnlySet<int>? numbers)
    {
        ArgumentNullException.ThrowIfNull(picture);
        if (numbers is null)
        {
            return string.Empty;
        }

        var parts = picture.Parts.Where(part => numbers.Contains(part.Number)).Select(part => $"{Number(part.Number)} {part.Name}");
        var zones = picture.Zones.Where(zone => numbers.Contains(zone.Number)).Select(zone => $"{Number(zone.Number)} {zone.Name}");
        var all = string.Join("; ", parts.Concat(zones));
        return all.Length == 0 ? string.Empty : $"Numbers in square boxes: {all}.";
    }

    /// <summary>The air about each zone; empty without zones.</summary>
    public static string KeptClear(CarPicture picture)
    {
        ArgumentNullException.ThrowIfNull(picture);
        return picture.Zones.IsEmpty
            ? string.Empty
            : $"Air to keep to each zone: {string.Join("; ", picture.Zones.Select(zone => $"{zone.Name} {zone.Clearance}"))}.";
    }

    /// <summary>The beginning of words that have no room.</summary>
    public static string More(string begin) => begin.Length < 4 ? begin : $"{begin[..^3]}…";

    /// <summary>As figures are written.</summary>
    public static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The picture in words, for somebody who does not see it.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="denominator">Its scale is 1 : this; null where there is none to speak of.</param>
    public static string Alternative(CarPicture picture, double? denominator)
    {
        ArgumentNullException.ThrowIfNull(picture);
        var runs = string.Join("; ", picture.Shown.Select(run => $"{Kind(run)} {Label(run)}, {Ends(run)}"));
        var scale = denominator is { } known ? $", {Scale(known)}" : string.Empty;
        return picture.HasPlaces
            ? $"The car from above, from the left and from the front{scale}. Drawn: {runs}. Forward is to the left."
            : $"What leads where, from the master cylinders outwards: {runs}.";
    }

    /// <summary>The second of two ends is called B.</summary>
    internal static string EndWithoutName(int index) => index == 0 ? "end A" : "end B";

    /// <summary>Of a rough length.</summary>
    internal static string About(string length) => $"about {length}";

    /// <summary>What the views leave out, a sentence for each reason.</summary>
    internal static IEnumerable<string> NotDrawn(
        bool hasPlaces,
        IEnumerable<PicturedRun> runs,
        IEnumerable<PicturedPart> parts,
        IReadOnlyCollection<string> rough,
        IReadOnlyCollection<string> mistyped)
    {
        if (hasPlaces)
        {
            List<PicturedRun> missing = [.. runs.Where(run => !run.IsPlaced)];
            List<PicturedRun> lines = [.. missing.Where(run => run.Kind == ConnectionKind.Line)];
            var waiting = rough.ToHashSet(StringComparer.Ordinal);
            foreach (var sentence in Sentence(
                    "Lines without a known place", lines.Where(line => !waiting.Contains(line.Name)).Select(Measured))
                .Concat(Sentence("Lines without a template", lines.Where(line => waiting.Contains(line.Name)).Select(Measured)))
                .Concat(Sentence(
                    "Hoses without a known place at both ends",
                    missing.Where(run => run.Kind == ConnectionKind.Hose).Select(Measured)))
                .Concat(Sentence("Parts without a known place", parts.Where(part => part.Places.IsEmpty).Select(part => part.Name))))
            {
                yield return sentence;
            }
        }

        foreach (var sentence in Sentence("Lines with a mistake in the file", mistyped))
        {
            yield return sentence;
        }
    }

    private static string Kind(PicturedRun run) => run.Kind == ConnectionKind.Hose ? "hose" : "line";

    private static string Measured(PicturedRun run) => run.Length.Length == 0 ? run.Name : $"{run.Name} ({run.Length})";

    private static IEnumerable<string> Sentence(string what, IEnumerable<string> names)
    {
        var all = string.Join(", ", names);
        return all.Length == 0 ? [] : [$"{what}: {all}."];
    }
}
