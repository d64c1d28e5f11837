using System.Collections.Immutable;
using BendSheet.Core.Fittings;
using BendSheet.Core.Sheet;
using BendSheet.Core.Workshop;

namespace BendSheet.Files.Reading;

/// <summary>
/// What may stand after each word of each <see cref="Vocabulary"/>, for editors. A word without a kind, and a kind without a word, fail
/// a test; so does a sample or a notation that is read and would be refused.
/// </summary>
public static class FormatKinds
{
    private static readonly ValueKind Length = new ValueKind.Figure("A length: 310, 310 mm, 12 5/16 in, 2 ft 3 1/2 in.");
    private static readonly ValueKind Angle = new ValueKind.Figure("Degrees: 45, 45°.");
    private static readonly ValueKind Rotation = new ValueKind.Figure("A rotation, looking from A: 90 cw, 45 ccw, -45.");
    private static readonly ValueKind Number = new ValueKind.Figure("A number.");
    private static readonly ValueKind Count = new ValueKind.Figure("A whole number.");
    private static readonly ValueKind Percent = new ValueKind.Figure("Of the lines still to be made: 10 %.");
    private static readonly ValueKind Name = new ValueKind.Text("A name that the file gives.");
    private static readonly ValueKind Own = new ValueKind.Text("Your own words.");
    private static readonly ValueKind Port = new ValueKind.Text("Thread and seat, such as 3/8-24 flare 37, or a standard port: an-3.");
    private static readonly ValueKind Thread = new ValueKind.Text("A thread, such as 3/8-24 or M10x1.");
    private static readonly ValueKind Place = new ValueKind.Text("A part and its port, such as front-tee.left, or your own words.");
    private static readonly ValueKind Point = new ValueKind.Text("A, B, or the number of a corner.");
    private static readonly ValueKind YesNo = Choice(YesOrNo.Choices.Select(choice => choice.Word));
    private static readonly ValueKind Measured = Choice(MeasuredToWords.All.Select(choice => choice.Word));

    /// <summary>What a row may say with its own deviation.</summary>
    private static readonly ValueKind
        RowLength = Either(Length, Words(Vocabulary.LengthWithin)),
        RowAngle = Either(Angle, Words(Vocabulary.AngleWithin)),
        RowRotation = Either(Rotation, Words(Vocabulary.AngleWithin));

    private static readonly ValueKind Rows = Several(Words(Vocabulary.Row));

    private static readonly ValueKind Practice = Words(Vocabulary.Practice);

    private static readonly ValueKind Clipped =
        Either(new ValueKind.Choice(["none"]), Words(Vocabulary.Clips));

    private static readonly Dictionary<Vocabulary, (string Name, Dictionary<string, ValueKind> Kinds)> Table =
        new(ReferenceEqualityComparer.Instance);

    static FormatKinds()
    {
        AddTubeAndTools();
        AddFittingsAndMeasuring();
        AddStores();
        AddParts();
        AddPlaces();
        AddLines();
        AddMeasured();
        AddTop();
    }

    /// <summary>Every place of the file with words, each with its name, and what may stand after each of its words.</summary>
    public static IEnumerable<(string Name, Vocabulary Place, IReadOnlyDictionary<string, ValueKind> Kinds)> All =>
        Vocabulary.All.Where(Table.ContainsKey)
            .Select(place => (Table[place].Name, place, (IReadOnlyDictionary<string, ValueKind>)Table[place].Kinds));

    /// <summary>The name of a place, in one word.</summary>
    public static string NameOf(Vocabulary place) => Table[place].Name;

    /// <summary>What cannot be left out.</summary>
    public static IReadOnlyList<string> Required(Vocabulary place) =>
        place == Vocabulary.File ? ["units"]
        : place == Vocabulary.Tube ? ["od"]
        : place == Vocabulary.Bender ? ["radius"]
        : place == Vocabulary.Fitting ? ["flare"]
        : place == Vocabulary.Part ? ["kind"]
        : place == Vocabulary.Roll ? ["length"]
        : place == Vocabulary.Clips ? ["every"]
        : [];

    private static void AddTop() => Add("file", Vocabulary.File, new(StringComparer.Ordinal)
    {
        [Inclusion.Word] = Either(new ValueKind.Text("A file beside this one."), Several(new ValueKind.Text("A file beside this one."))),
        ["project"] = Own,
        ["units"] = Choice(TemplateReader.UnitChoices.Select(choice => choice.Word)),
        ["paper"] = Choice(Papers.All.Select(choice => choice.Word)),
        ["fractions"] = Choice(TemplateReader.FractionChoices.Select(choice => choice.Word)),
        ["tube"] = Words(Vocabulary.Tube),
        ["tubes"] = Named(Words(Vocabulary.Tube)),
        ["bender"] = Words(Vocabulary.Bender),
        ["benders"] = Named(Words(Vocabulary.Bender)),
        ["fittings"] = Named(Words(Vocabulary.Fitting)),
        ["wire"] = Words(Vocabulary.Wire),
        ["tolerance"] = Words(Vocabulary.Tolerance),
        ["wanted"] = Words(Vocabulary.Wanted),
        ["clips"] = Clipped,
        ["templates"] = Named(Rows),
        ["parts"] = Named(Words(Vocabulary.Part)),
        ["hoses"] = Named(Words(Vocabulary.Hose)),
        ["pedal-switch"] = YesNo,
        ["keep-clear"] = Named(Words(Vocabulary.Zone)),
        ["clearance"] = Length,
        ["lines"] = Named(Either(Rows, Words(Vocabulary.Line))),
        ["stock"] = Several(Words(Vocabulary.Roll)),
        ["cutting-loss"] = Length,
        ["spare"] = Percent,
        ["practice"] = Either(new ValueKind.Figure("Pieces to try flares and bends on: 6 flares, 3 bends."), Practice, Several(Practice)),
        ["have"] = Named(Either(Count, Words(Vocabulary.OnHand))),
    });

    private static void AddTubeAndTools()
    {
        Add("tube", Vocabulary.Tube, new(StringComparer.Ordinal)
        {
            ["od"] = Length,
            ["wall"] = Length,
            ["material"] = Own,
            ["smallest-radius"] = Length,
        });
        Add("bender", Vocabulary.Bender, new(StringComparer.Ordinal)
        {
            ["radius"] = Length,
            ["mark"] = Choice(WorkshopReader.MarkPlaces.Select(choice => choice.Word)),
            ["line"] = Own,
            ["offset"] = Length,
            ["grip"] = Length,
            ["follow"] = Length,
            ["largest-bend"] = Angle,
            ["arc-factor"] = Number,
            ["room"] = Length,
            ["clear-below"] = Length,
            ["body"] = Length,
            ["scatter"] = Words(Vocabulary.Scatter),
            ["tests"] = Several(Words(Vocabulary.Test)),
        });
        Add("scatter", Vocabulary.Scatter, new(StringComparer.Ordinal) { ["mark"] = Length, ["bend"] = Angle, ["roll"] = Angle });
        Add("test", Vocabulary.Test, new(StringComparer.Ordinal)
        {
            ["pull"] = Angle,
            ["got"] = Angle,
            ["included"] = Angle,
            ["length"] = Length,
            ["legs"] = Several(Length),
            ["measured"] = Measured,
            ["mark"] = Length,
            ["tube"] = Name,
        });
    }

    private static void AddFittingsAndMeasuring()
    {
        Add("fitting", Vocabulary.Fitting, new(StringComparer.Ordinal)
        {
            ["flare"] = Choice(Flares.All.Select(choice => choice.Words)),
            ["takes"] = Length,
            ["countersink"] = Length,
            ["slide-on"] = Either(Several(Named(Length)), Named(Length)),
            ["straight"] = Length,
            ["thread"] = Thread,
        });
        Add("wire", Vocabulary.Wire, new(StringComparer.Ordinal) { ["diameter"] = Length, ["radius"] = Length });
        Add("tolerance", Vocabulary.Tolerance, new(StringComparer.Ordinal)
        {
            ["straight"] = Length,
            ["bend"] = Angle,
            ["rotate"] = Angle,
            ["tape"] = Length,
            ["square"] = Angle,
        });
        Add("wanted", Vocabulary.Wanted, new(StringComparer.Ordinal) { ["miss"] = Length, ["askew"] = Angle });
        Add("clips", Vocabulary.Clips, new(StringComparer.Ordinal)
        {
            ["every"] = Length,
            ["from-ends"] = Length,
            ["hole"] = Length,
            ["width"] = Length,
            ["rail"] = Name,
        });
    }

    private static void AddStores()
    {
        Add("roll", Vocabulary.Roll, new(StringComparer.Ordinal)
        {
            ["name"] = Own,
            ["kind"] = Choice(StoresReader.Kinds.Select(choice => choice.Word)),
            ["tube"] = Name,
            ["length"] = Length,
            ["left"] = Length,
            ["count"] = Count,
            ["price"] = Number,
        });
        Add("practice", Vocabulary.Practice, new(StringComparer.Ordinal)
        {
            ["flares"] = Count,
            ["done"] = Count,
            ["length"] = Length,
            ["bends"] = Count,
            ["bends-done"] = Count,
            ["bend-length"] = Length,
            ["tube"] = Name,
        });
        Add("on-hand", Vocabulary.OnHand, new(StringComparer.Ordinal) { ["left"] = Count });
    }

    private static void AddParts()
    {
        Add("part", Vocabulary.Part, new(StringComparer.Ordinal)
        {
            ["kind"] = Choice(PartKinds.All.Select(choice => choice.Word)),
            ["ports"] = Either(Port, Several(Own), Named(Either(Port, Words(Vocabulary.Port), new ValueKind.Empty()))),
            ["at"] = Words(Vocabulary.PortPlace),
            ["faces"] = Faces,
            ["mounted"] = Choice(PartReader.Mountings.Select(choice => choice.Word)),
            ["screws-into"] = Either(Place, Named(Place)),
            ["have"] = Count,
        });
        Add("port", Vocabulary.Port, new(StringComparer.Ordinal)
        {
            ["is"] = Port,
            ["circuit"] = Own,
            ["at"] = Words(Vocabulary.PortPlace),
            ["faces"] = Faces,
        });
        Add("hose", Vocabulary.Hose, new(StringComparer.Ordinal)
        {
            ["from"] = Either(Place, Words(Vocabulary.HoseEnd)),
            ["to"] = Either(Place, Words(Vocabulary.HoseEnd)),
            ["length"] = Length,
            ["bent-to"] = Length,
            ["spans"] = Words(Vocabulary.Spans),
            ["have"] = Count,
        });
        Add("spans", Vocabulary.Spans, Lengths(Vocabulary.Spans));
        Add("hose-end", Vocabulary.HoseEnd, new(StringComparer.Ordinal) { ["at"] = Place, ["is"] = Port });
    }

    private static void AddPlaces()
    {
        Add("spot", Vocabulary.Spot, Lengths(Vocabulary.Spot));
        Add("port-place", Vocabulary.PortPlace, Lengths(Vocabulary.PortPlace));
        Add("zone", Vocabulary.Zone, new(StringComparer.Ordinal)
        {
            ["box"] = Words(Vocabulary.ZoneBox),
            ["cylinder"] = Words(Vocabulary.ZoneCylinder),
            ["clearance"] = Length,
            ["why"] = Own,
        });
        Add("box", Vocabulary.ZoneBox, new(StringComparer.Ordinal) { ["from"] = Words(Vocabulary.Spot), ["to"] = Words(Vocabulary.Spot) });
        Add("cylinder", Vocabulary.ZoneCylinder, new(StringComparer.Ordinal)
        {
            ["from"] = Words(Vocabulary.Spot),
            ["to"] = Words(Vocabulary.Spot),
            ["radius"] = Length,
        });
    }

    private static void AddLines()
    {
        Add("line", Vocabulary.Line, new(StringComparer.Ordinal)
        {
            ["tube"] = Name,
            ["bender"] = Name,
            ["from"] = Either(Place, Words(Vocabulary.End)),
            ["to"] = Either(Place, Words(Vocabulary.End)),
            ["measured"] = Measured,
            ["start"] = Words(Vocabulary.Start),
            ["rows"] = Rows,
            ["corners"] = Several(Several(Length)),
            ["legs"] = Several(Words(Vocabulary.Move)),
            ["distances"] = Either(Several(Words(Vocabulary.Distance)), Named(Either(Length, Words(Vocabulary.Taped)))),
            ["side"] = Either(Side, Named(Side)),
            [RouteForm.Mirror] = Name,
            ["clips"] = Clipped,
            [RouteForm.Rough] = Length,
            ["taped"] = Named(Either(Length, Words(Vocabulary.Taped), Words(Vocabulary.TapedWay))),
            ["checks"] = Either(
                Several(Words(Vocabulary.Check)),
                Named(Either(Length, Words(Vocabulary.CheckedDistance), Words(Vocabulary.AngleWithin)))),
            ["bent"] = Either(Count, Several(Count)),
            ["trial-fit"] = Words(Vocabulary.TrialFit),
            ["made"] = YesNo,
        });
        Add("row", Vocabulary.Row, new(StringComparer.Ordinal)
        {
            ["straight"] = RowLength,
            ["rotate"] = RowRotation,
            ["bend"] = RowAngle,
            ["included"] = RowAngle,
            ["bender"] = Name,
            ["note"] = Own,
            [RowKind.Exact] = YesNo,
            ["use"] = Name,
            ["reverse"] = YesNo,
            ["mirror"] = YesNo,
            ["offset"] = RowLength,
            ["run"] = RowLength,
            ["saddle"] = RowLength,
            ["bends"] = Choice(BendRowReader.SaddleBends.Select(choice => choice.Word)),
            ["width"] = RowLength,
            ["coil"] = Number,
            ["radius"] = Length,
            ["pitch"] = Length,
            ["winds"] = Choice(BendRowReader.Winds.Select(choice => choice.Word)),
        });
        Add("end", Vocabulary.End, new(StringComparer.Ordinal) { ["at"] = Place, ["fitting"] = Name, ["trim"] = Length });
        Add("start", Vocabulary.Start, new(StringComparer.Ordinal)
        {
            ["heading"] = Way,
            ["towards"] = Way,
            ["at"] = Words(Vocabulary.Spot),
        });
        Add("move", Vocabulary.Move, Lengths(Vocabulary.Move));
    }

    private static ValueKind.Choice Side => Choice(DistancesReader.Sides.Select(choice => choice.Word));

    private static ValueKind.Choice Way => Choice(SpotReader.Ways.Select(choice => choice.Word));

    /// <summary>The way a line leaves a port.</summary>
    private static ValueKind.Either Faces => Either(Way, Several(Number));

    private static void AddMeasured()
    {
        Add("taped", Vocabulary.Taped, new(StringComparer.Ordinal)
        {
            ["distance"] = Length,
            ["within"] = Length,
            ["to"] = Choice(BackReader.Places.Select(choice => choice.Word)),
        });
        Add("way", Vocabulary.TapedWay, Lengths(Vocabulary.TapedWay));
        Add("check", Vocabulary.Check, new(StringComparer.Ordinal)
        {
            ["from"] = Point,
            ["to"] = Point,
            ["distance"] = Length,
            ["within"] = Length,
        });
        Add("checked-distance", Vocabulary.CheckedDistance, new(StringComparer.Ordinal) { ["distance"] = Length, ["within"] = Length });
        Add("trial-fit", Vocabulary.TrialFit, new(StringComparer.Ordinal) { ["ahead"] = Length, ["aside"] = Length });
        Add("distance", Vocabulary.Distance, new(StringComparer.Ordinal)
        {
            ["from"] = Point,
            ["to"] = Point,
            ["distance"] = Length,
            ["within"] = Length,
        });
        Add("length-within", Vocabulary.LengthWithin, new(StringComparer.Ordinal) { ["length"] = Length, ["within"] = Length });
        Add("angle-within", Vocabulary.AngleWithin, new(StringComparer.Ordinal) { ["angle"] = Rotation, ["within"] = Angle });
    }

    private static void Add(string name, Vocabulary place, Dictionary<string, ValueKind> kinds) => Table.Add(place, (name, kinds));

    private static Dictionary<string, ValueKind> Lengths(Vocabulary place) =>
        place.Known.ToDictionary(word => word, _ => Length, StringComparer.Ordinal);

    private static ValueKind.Words Words(Vocabulary place) => new ValueKind.Words(place);

    private static ValueKind.Named Named(ValueKind of) => new ValueKind.Named(of);

    private static ValueKind.Several Several(ValueKind of) => new ValueKind.Several(of);

    private static ValueKind.Either Either(params ImmutableArray<ValueKind> kinds) => new ValueKind.Either(kinds);

    private static ValueKind.Choice Choice(IEnumerable<string> words) => new ValueKind.Choice([.. words]);
}
