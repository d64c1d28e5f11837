namespace BendSheet.Files.Reading;

/// <summary>The words that may stand in one place of a file.</summary>
/// <param name="Place">In a sentence: <c>a row</c>.</param>
/// <param name="Example">What a sound one begins with, as it is typed.</param>
/// <param name="Known">Words that are read.</param>
public sealed record Vocabulary(string Place, string Example, IReadOnlyList<string> Known)
{
    private readonly HashSet<string> _known = new(Known, StringComparer.Ordinal);

    /// <summary>Words that people type for one of them, with the one that they mean.</summary>
    public IReadOnlyDictionary<string, string> Synonyms { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>Whether the word is read.</summary>
    public bool Knows(string word) => _known.Contains(word);

    /// <summary>The top of a file.</summary>
    public static Vocabulary File { get; } = new(
        "the top of the file",
        "units: mm",
        [
            "project",
            "units",
            "paper",
            "fractions",
            "tube",
            "tubes",
            "bender",
            "benders",
            "fittings",
            "wire",
            "tolerance",
            "wanted",
            "clips",
            "templates", "parts",
            "hoses", "pedal-switch", "keep-clear", "clearance", "lines",
            "stock", "cutting-loss", "spare", "practice", "have", Inclusion.Word,
        ]);

    /// <summary>The top of a file that another one includes.</summary>
    public static Vocabulary Included { get; } = new(
        "a file that is included",
        "units: mm",
        ["units", "tube", "tubes", "bender", "benders", "fittings", "wire", "tolerance", "hoses", "stock", "cutting-loss", "have"]);

    /// <summary>A tube.</summary>
    public static Vocabulary Tube { get; } = new("a tube", "{od: 3/16 in}", ["od", "wall", "material", "smallest-radius"]);

    /// <summary>A bender.</summary>
    public static Vocabulary Bender { get; } = new(
        "a bender",
        "{radius: 9/16 in}",
        [
            "radius", "mark", "line", "offset", "grip", "follow", "largest-bend", "arc-factor", "room", "clear-below", "body", "scatter",
            "tests",
        ]);

    /// <summary>A test of a bender.</summary>
    public static Vocabulary Test { get; } = new(
        "a test", "{pull: 93, got: 90}", ["pull", "got", "included", "length", "legs", "measured", "mark", "tube"]);

    /// <summary>A fitting.</summary>
    public static Vocabulary Fitting { get; } = new(
        "a fitting", "{flare: single 37, straight: 35 mm}", ["flare", "takes", "countersink", "slide-on", "straight", "thread"]);

    /// <summary>The template's wire.</summary>
    public static Vocabulary Wire { get; } = new("the wire", "{diameter: 2.4 mm, radius: 4 mm}", ["diameter", "radius"]);

    /// <summary>How well the template was measured.</summary>
    public static Vocabulary Tolerance { get; } = new(
        "the tolerance", "{straight: 1 mm, bend: 1.5, rotate: 3}", ["straight", "bend", "rotate", "tape", "square"]);

    /// <summary>How well lines have to fit.</summary>
    public static Vocabulary Wanted { get; } = new("`wanted`", "{miss: 3 mm, askew: 2}", ["miss", "askew"]);

    /// <summary>A line that is more than a list of rows.</summary>
    public static Vocabulary Line { get; } = new(
        "a line",
        "{rows: […]}",
        [
            "tube", "bender", "from", "to", .. RouteForm.AllWords, RouteForm.Mirror, "clips", RouteForm.Rough, TapedReader.Word,
            .. PieceReader.Words, "made",
        ]);

    /// <summary>A measurement that is less sure than the tape, or to the backs of bends.</summary>
    public static Vocabulary Taped { get; } = new("a measurement", "{distance: 344 mm, within: 3 mm}", ["distance", "within", "to"]);

    /// <summary>A length of a row that is more or less sure than the others.</summary>
    public static Vocabulary LengthWithin { get; } = new("a length", "{length: 120 mm, within: 3 mm}", ["length", "within"]);

    /// <summary>An angle of a row that is more or less sure than the others.</summary>
    public static Vocabulary AngleWithin { get; } = new("an angle", "{angle: 45, within: 1}", ["angle", "within"]);

    /// <summary>A way on the car from one place to another.</summary>
    public static Vocabulary TapedWay { get; } = new(
        "a way on the car", "{forward: 285 mm, up: -40 mm}", ["forward", "left", "up", "within"]);

    /// <summary>A distance on the finished piece.</summary>
    public static Vocabulary Check { get; } = new("a check", "{from: A, to: B, distance: 1632 mm}", ["from", "to", "distance", "within"]);

    /// <summary>A distance on the piece that is less sure than the tape.</summary>
    public static Vocabulary CheckedDistance { get; } = new(
        "a distance on the piece", "{distance: 344 mm, within: 3 mm}", ["distance", "within"]);

    /// <summary>Where a port was found when the piece was offered up.</summary>
    public static Vocabulary TrialFit { get; } = new("`trial-fit`", "{ahead: 6 mm, aside: -4 mm}", ["ahead", "aside"]);

    /// <summary>How far off a bender comes out.</summary>
    public static Vocabulary Scatter { get; } = new("`scatter`", "{mark: 1 mm, bend: 1.5, roll: 2}", ["mark", "bend", "roll"]);

    /// <summary>A distance of a route of distances, where these are a list.</summary>
    public static Vocabulary Distance { get; } = new(
        "a distance", "{from: A, to: 2, distance: 168 mm}", ["from", "to", "distance", "within"]);

    /// <summary>How a line is held.</summary>
    public static Vocabulary Clips { get; } = new("`clips`", "{every: 300 mm}", ["every", "from-ends", "hole", "width", "rail"]);

    /// <summary>A roll or a stick of tube.</summary>
    public static Vocabulary Roll { get; } = new(
        "a roll", "{name: roll 1, length: 25 ft, left: 5400 mm}", ["name", "kind", "tube", "length", "left", "count", "price"]);

    /// <summary>Flares and bends that are tried first.</summary>
    public static Vocabulary Practice { get; } = new(
        "`practice`", "{flares: 6, bends: 3}", ["flares", "done", "length", "bends", "bends-done", "bend-length", "tube"]);

    /// <summary>Things on hand that were counted after lines were made.</summary>
    public static Vocabulary OnHand { get; } = new("what is on hand", "{left: 4}", ["left"]);

    /// <summary>How a line lies on the car.</summary>
    public static Vocabulary Start { get; } = new("the start of a line", "{heading: up, towards: left}", ["heading", "towards", "at"]);

    private static IReadOnlyList<string> WordsOfWays => ["forward", "back", "left", "right", "up", "down"];

    /// <summary>A move from one corner to the next.</summary>
    public static Vocabulary Move { get; } = new("a move", "{forward: 120}", WordsOfWays);

    /// <summary>One end of a line.</summary>
    public static Vocabulary End { get; } = new("an end of a line", "{at: master cylinder}", ["at", "fitting", "trim"]);

    /// <summary>A part of the car with ports.</summary>
    public static Vocabulary Part { get; } = new(
        "a part", "{kind: tee, ports: an-3}", ["kind", "ports", "at", "faces", "mounted", "screws-into", "have"]);

    /// <summary>A port of a part, where more than its thread and seat is said.</summary>
    public static Vocabulary Port { get; } = new("a port", "{is: 3/8-24 inverted 45, circuit: front}", ["is", "circuit", "at", "faces"]);

    /// <summary>A hose.</summary>
    public static Vocabulary Hose { get; } = new(
        "a hose", "{from: left-bracket.out, to: left-caliper.inlet}", ["from", "to", "length", "bent-to", "spans", "have"]);

    /// <summary>One end of a hose, where more than its place is said.</summary>
    public static Vocabulary HoseEnd { get; } = new("an end of a hose", "{at: left-caliper.inlet, is: M10x1 banjo}", ["at", "is"]);

    /// <summary>How far it is between the ends of a hose while the car moves.</summary>
    public static Vocabulary Spans { get; } = new(
        "`spans`", "{droop: 310 mm, bump: 260 mm, lock: 330 mm}", ["droop", "bump", "lock"]);

    /// <summary>A place on the car, from one corner of the owner's choosing.</summary>
    public static Vocabulary Spot { get; } = new("a place", "{forward: 1200 mm, left: 350 mm, up: 420 mm}", WordsOfWays);

    /// <summary>Where a port lies.</summary>
    public static Vocabulary PortPlace { get; } = new("`at`", "{forward: 1200 mm, left: 350 mm, up: 420 mm}", [.. WordsOfWays, "within"]);

    /// <summary>What lines keep away from.</summary>
    public static Vocabulary Zone { get; } = new(
        "a zone",
        "{box: {from: {forward: 0 mm}, to: {forward: 900 mm, left: 80 mm, up: 60 mm}}, clearance: 60 mm}",
        ["box", "cylinder", "clearance", "why"]);

    /// <summary>A box along the axes of the car.</summary>
    public static Vocabulary ZoneBox { get; } = new(
        "a box", "{from: {forward: 0 mm}, to: {forward: 900 mm, left: 80 mm, up: 60 mm}}", ["from", "to"]);

    /// <summary>A cylinder any way on the car.</summary>
    public static Vocabulary ZoneCylinder { get; } = new(
        "a cylinder", "{from: {forward: 0 mm}, to: {forward: 900 mm}, radius: 25 mm}", ["from", "to", "radius"]);

    /// <summary>A row.</summary>
    public static Vocabulary Row { get; } = new("a row", "{straight: 120, bend: 45}", RowKind.AllWords)
    {
        Synonyms = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase)
        {
            ["angle"] = "bend",
            ["turn"] = "bend",
            ["leg"] = "straight",
            ["length"] = "straight",
            ["distance"] = "straight",
            ["rotation"] = "rotate",
            ["roll"] = "rotate",
            ["twist"] = "rotate",
        },
    };

    /// <summary>All of them, for the format's page and its test.</summary>
    public static IReadOnlyList<Vocabulary> All { get; } =
    [
        File,
        Included,
        Tube,
        Bender,
        Scatter,
        Test,
        Fitting,
        Wire,
        Tolerance,
        Wanted,
        Clips,
        Roll,
        Practice,
        OnHand,
        Part,
        Port,
        Hose,
        HoseEnd,
        Line,
        Taped,
        TapedWay,
        Check,
        CheckedDistance,
        TrialFit,
        Distance,
        End,
        Start,
        Move,
        Spans,
        Spot,
        PortPlace,
        Zone,
        ZoneBox,
        ZoneCylinder,
        Row,
        LengthWithin,
        AngleWithin,
    ];
}
