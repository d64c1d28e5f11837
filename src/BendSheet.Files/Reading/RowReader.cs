using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads the rows of a line or of a template. Null after findings that leave the route incomplete.</summary>
/// <param name="bender">The tool of every row that does not name its own; null where it could not be read.</param>
/// <param name="benders">All tools of the file.</param>
/// <param name="templates">That a row may use.</param>
/// <param name="context">For findings.</param>
internal sealed class RowReader(Bender? bender, NameTable<Bender> benders, TemplateLibrary templates, FileContext context)
{
    /// <summary>
    /// A line has at most so many rows, those that only go straight and those of the templates that it uses included: far more than any
    /// line has bends.
    /// </summary>
    public const int MostRows = 1000;

    /// <summary>All lines of a file together have at most so many rows: a dozen cars.</summary>
    public const int MostRowsOfFile = 2000;

    /// <summary>An offset or a saddle stands for no more.</summary>
    private const int MostOfOneRow = 4;

    private int _rows;

    /// <summary>For findings.</summary>
    public FileContext Context => context;

    /// <summary>Whether a row may stand for so many: asked before they are made.</summary>
    /// <param name="rows">How many.</param>
    /// <param name="at">Where the row was typed.</param>
    public bool HasRoomFor(int rows, SourcePosition at)
    {
        if (_rows > MostRows)
        {
            return false;
        }

        _rows += rows;
        if (_rows > MostRows)
        {
            context.Report(FileRules.TooManyRows.Error(
                at,
                $"here the line comes to more than {Counted.Large(MostRows, "row")}, those of templates and coils counted one by one: "
                    + "nothing on a car has so many bends; look at what uses what, and divide the line"));
        }

        return _rows <= MostRows;
    }

    /// <summary>The whole route of a line.</summary>
    public Route? Route(YamlValue value)
    {
        if (Rows(value) is not { } rows || rows[^1] is not { } last)
        {
            return null;
        }

        // With a row missing there is no route, but if its end is wrong, that can be said already.
        var complete = rows.TrueForAll(row => row is not null);
        var (route, findings) = Core.Templates.Route.OfRows(complete ? rows.ConvertAll(row => row!) : [last]);
        foreach (var finding in findings)
        {
            context.Report(finding);
        }

        if (complete && route is { Bends.IsEmpty: true, Legs: [{ Measured.Millimetres: 0 }] })
        {
            context.Report(FileRules.OutOfRange.Error(route.Legs[0].At, "the line has no length: measure its straight"));
            return null;
        }

        return complete && route is not null ? RouteRange.Checked(route, context) : null;
    }

    /// <summary>The rows of a template, which may end in a bend.</summary>
    public TemplatePiece? Piece(YamlValue value) =>
        Rows(value) is { } rows && rows.TrueForAll(row => row is not null)
            ? new(Core.Templates.Route.OfPiece(rows.ConvertAll(row => row!)), _rows)
            : null;

    /// <summary>
    /// Every row, those that an offset, a saddle, a coil or a template stands for included; null in the place of one that cannot be read.
    /// </summary>
    private List<Row?>? Rows(YamlValue value)
    {
        if (value is YamlList { Items.Count: > 0 } list)
        {
            return [.. list.Items.SelectMany(Row)];
        }

        context.Report(FileRules.WrongKind.Error(
            value.Position,
            "a line is a list of rows, each after a dash, such as `- {straight: 120, bend: 45}`; the last one only goes straight"));
        return null;
    }

    private IEnumerable<Row?> Row(YamlValue value)
    {
        var (bare, deviations) = FigureWithin.Taken(value, context);
        if (bare is null || FieldReader.Of(bare, Vocabulary.Row, context) is not { } map)
        {
            return [null];
        }

        var straight = map.Length("straight", Range.LengthOrZero);
        var rotation = map.Rotation("rotate");
        var kind = RowKind.Of(map, context);
        var tool = map.Text("bender") is { } name ? benders.Find(name, context) : map.Has("bender") ? null : bender;
        var note = map.FreeText("note");
        var exact = map.Choice(RowKind.Exact, YesOrNo.Choices) == true;
        if (kind is null)
        {
            return [null];
        }

        if (!kind.StandsForSeveral && !map.Has("straight"))
        {
            map.ReportMissing("a row begins with the straight up to its bend: add `straight` (`straight: 0` where there is none), "
                + "or take the dash out if this belongs to the row above");
        }

        var at = straight is null ? map.PositionOf(kind.Word) : map.Value("straight")!.Position;
        var typed = new TypedRow(
            map, new(straight ?? Length.Zero, at, null), rotation ?? Angle.Zero, tool ?? TemplateLibrary.LinesOwn, note, this)
        {
            IsExact = exact,
            Deviations = deviations,
        };
        if (straight is { } read)
        {
            typed = typed with
            {
                Straight = typed.Straight with { StraightFrom = typed.Observed(ObservationKind.Leg, read.Millimetres, "straight") },
            };
        }

        var isComplete = tool is not null || !kind.NeedsTool;
        var rows = isComplete ? kind.Read(typed) : WithoutTool(kind, typed);
        var hasRoom = kind.CountsItself || HasRoomFor(kind.StandsForSeveral ? MostOfOneRow : 1, map.Position);
        var isReadable = hasRoom && !map.HasUnknownWord
            && (straight is not null || (kind.StandsForSeveral && !map.Has("straight")))
            && (rotation is not null || !map.Has("rotate"));
        return isReadable ? rows : [null];
    }

    /// <summary>Without its tool a row cannot be made; what else is wrong with it is said all the same.</summary>
    private static IEnumerable<Row?> WithoutTool(RowKind kind, TypedRow row)
    {
        _ = kind.Read(row).ToList();
        return [null];
    }

    /// <summary>The rows of a template that is put in here, on the line's tool where they name none.</summary>
    public IEnumerable<Row?> Used(TypedRow row)
    {
        var map = row.Map;
        var reverse = map.Choice("reverse", YesOrNo.Choices);
        var mirror = map.Choice("mirror", YesOrNo.Choices);
        if (map.Text("use") is not { } name || templates.Find(name) is not var (piece, rows)
            || !HasRoomFor(rows + 1, map.PositionOfValue("use"))
            || (map.Has("reverse") && reverse is null) || (map.Has("mirror") && mirror is null))
        {
            return [null];
        }

        piece = reverse == true ? piece.Reversed() : piece;
        piece = mirror == true ? piece.Mirrored() : piece;
        return bender is null
            ? [null]
            : [row.Straight, .. piece.Joined(row.Rotation, row.RotationFrom).ToRows().Select(used => OnTool(used, bender))];
    }

    private static Row OnTool(Row row, Bender tool) =>
        row.Bend?.Bender == TemplateLibrary.LinesOwn ? row with { Bend = row.Bend with { Bender = tool } } : row;
}
