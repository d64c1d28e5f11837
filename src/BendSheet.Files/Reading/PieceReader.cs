using System.Collections.Immutable;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>What a line says of the piece in hand.</summary>
/// <param name="Checks">What was measured on it.</param>
/// <param name="Bent">The bends that are made; none means all.</param>
/// <param name="TrialFit">Where its port was found; null where it was not offered up.</param>
internal sealed record TypedPiece(ImmutableArray<PieceMeasurement> Checks, ImmutableArray<int> Bent, TrialFit? TrialFit);

/// <summary>
/// Reads what was measured on a tube that is bent: <c>A-3: 344</c>, <c>B ahead: 225</c>, <c>bend 2: 34</c>, <c>roll 3: 47 cw</c>, each with
/// its own <c>within</c> where it is less sure, or a list of <c>{from: A, to: 3, distance: 344}</c>; which bends are made, and where its
/// port was found.
/// </summary>
internal sealed class PieceReader
{
    /// <summary>What may be said of the piece in hand.</summary>
    public static readonly string[] Words = [ChecksWord, BentWord, TrialWord];

    private const string ChecksWord = "checks";
    private const string BentWord = "bent";
    private const string TrialWord = "trial-fit";

    private static readonly (string Suffix, PieceKind Kind)[] Sides = [(" ahead", PieceKind.Ahead), (" aside", PieceKind.Aside)];
    private static readonly (string Prefix, PieceKind Kind)[] Angles = [("bend ", PieceKind.Bend), ("roll ", PieceKind.Roll)];

    private readonly FileContext _context;
    private readonly PlaceReader? _places;

    private PieceReader(Route? route, ImmutableArray<int> bent, FileContext context)
    {
        _context = context;
        _places = route is null ? null : new PlaceReader(route, "the piece", context) { ToBacks = true, Bent = bent };
    }

    /// <summary>What the line says; what cannot be read is left out after a finding.</summary>
    /// <param name="line">The line.</param>
    /// <param name="route">Its route; null where it cannot be read, and then the places are not looked at.</param>
    /// <param name="context">For findings.</param>
    public static TypedPiece Read(FieldReader line, Route? route, FileContext context)
    {
        // Where nobody can tell which bends are made, what was measured on them says nothing.
        var bent = new PieceReader(route, [], context).Bent(line);
        var checks = new PieceReader(bent is null ? null : route, bent ?? [], context).Checks(line);
        var trial = Trial(line, context);
        return bent is { } made ? new(checks, made, trial) : new([], [], null);
    }

    /// <summary>The bends that are made; null after a finding.</summary>
    private ImmutableArray<int>? Bent(FieldReader line)
    {
        var isReadable = !line.Has(BentWord) || line.Typed(BentWord) is not YamlText { IsEmpty: true };
        var typed = line.Value(BentWord) switch
        {
            null => [],
            YamlList { Items: var items } => items,
            var one => [one],
        };
        var bent = new List<int>();
        foreach (var item in typed)
        {
            if (item is not YamlText text)
            {
                _context.Report(FileRules.WrongKind.Error(
                    item.Position, $"`{BentWord}` has the numbers of the bends that are made, such as `{BentWord}: [3, 2]`"));
                isReadable = false;
            }
            else if (_places is not null)
            {
                var bend = _places.Bend(text.Text, text.Position);
                bent.Add(bend ?? 0);
                isReadable &= bend is not null;
            }
        }

        return isReadable ? [.. bent.Distinct()] : null;
    }

    private static TrialFit? Trial(FieldReader line, FileContext context)
    {
        if (line.Value(TrialWord) is not { } value || FieldReader.Of(value, Vocabulary.TrialFit, context) is not { } map)
        {
            return null;
        }

        var ahead = map.Length("ahead", Range.SignedLength);
        var aside = map.Length("aside", Range.SignedLength);
        if (!map.Has("ahead") && !map.Has("aside"))
        {
            map.ReportMissing($"a trial fit says how much further than B the port lies: write it like `{Vocabulary.TrialFit.Example}`");
            return null;
        }

        return new(ahead ?? Length.Zero, aside ?? Length.Zero, value.Position);
    }

    private ImmutableArray<PieceMeasurement> Checks(FieldReader line)
    {
        if (line.Value(ChecksWord) is not { } value)
        {
            return [];
        }

        List<PieceMeasurement> checks;
        switch (value)
        {
            case YamlList { Items.Count: > 0 } list:
                checks = [.. list.Items.Select(Listed).OfType<PieceMeasurement>()];
                break;
            case YamlMap { Entries.Count: > 0 } map:
                checks = [.. map.Entries.Select(Check).OfType<PieceMeasurement>()];
                break;
            default:
                _context.Report(FileRules.WrongKind.Error(
                    value.Position,
                    $"`{ChecksWord}` has what was measured on the piece, such as `{ChecksWord}: {{A-2: 344, bend 2: 34}}`, and this is "
                        + FieldReader.Kind(value)));
                return [];
        }

        foreach (var again in checks.GroupBy(check => check.Quantity).SelectMany(same => same.Skip(1)))
        {
            _context.Report(TapedRules.DistanceSaidTwice.Error(
                again.At, "this is here a second time: keep one of the two, or measure again"));
        }

        return [.. checks];
    }

    private PieceMeasurement? Check(YamlEntry entry)
    {
        var (key, at) = (entry.Key.Text, entry.Key.Position);
        if (TapedReader.Pair(key) is var (from, to))
        {
            return Measured(entry, PieceKind.Distance, _places?.Pair(from, to, at, at) is var (a, b) ? InOrder(a, b) : null);
        }

        foreach (var (suffix, kind) in Sides)
        {
            if (key.EndsWith(suffix, StringComparison.OrdinalIgnoreCase))
            {
                var pair = _places?.Pair("A", key[..^suffix.Length].Trim(), at, at);
                return Measured(entry, kind, pair is var (_, place) ? new(kind, 0, place) : null);
            }
        }

        foreach (var (prefix, kind) in Angles)
        {
            if (key.StartsWith(prefix, StringComparison.OrdinalIgnoreCase))
            {
                return Measured(entry, kind, _places?.Angle(key[prefix.Length..].Trim(), at) is { } bend ? AngleOf(kind, bend, at) : null);
            }
        }

        _context.Report(FileRules.UnknownWord.Error(
            at,
            $"{AsTyped.Show(key)} is nothing that can be measured on a piece: write two of A, B and the numbers of bends with a hyphen, "
                + "such as `A-2`, or `B ahead`, `B aside`, `bend 2`, `roll 2`"));
        return null;
    }

    private PieceQuantity? AngleOf(PieceKind kind, int bend, Core.Findings.SourcePosition at)
    {
        if (kind != PieceKind.Roll || bend > 1)
        {
            return new(kind, 0, bend);
        }

        _context.Report(TapedRules.NoDistance.Error(
            at, "the first bend has no roll: nothing is bent before it that its plane could be held against"));
        return null;
    }

    private static PieceQuantity InOrder(int from, int to) => new(PieceKind.Distance, Math.Min(from, to), Math.Max(from, to));

    /// <summary>A figure, or a figure with how sure it is.</summary>
    private PieceMeasurement? Measured(YamlEntry entry, PieceKind kind, PieceQuantity? quantity)
    {
        var (value, within, at) = (Figure(entry.Value, entry.Key.Text, kind), (double?)null, entry.Value.Position);
        if (entry.Value is YamlMap)
        {
            var isAngle = kind is PieceKind.Bend or PieceKind.Roll;
            var (vocabulary, word) = isAngle ? (Vocabulary.AngleWithin, "angle") : (Vocabulary.CheckedDistance, "distance");
            var map = FieldReader.Of(entry.Value, vocabulary, _context)!;
            if (!map.Has(word))
            {
                map.ReportMissing($"what was measured is missing: write it like `{vocabulary.Example}`");
            }

            value = map.Value(word) is { } figure ? Figure(figure, word, kind) : null;
            within = isAngle ? map.Angle("within", Range.PositiveAngle)?.Radians : map.Length("within", Range.PositiveLength)?.Millimetres;
            at = map.PositionOfValue(word);
            if (map.Has("within") != within.HasValue)
            {
                return null;
            }
        }

        return value is { } read && quantity is { } known ? new(known, read, at) { Within = within } : null;
    }

    private double? Figure(YamlValue value, string word, PieceKind kind) => value is YamlMap
        ? null
        : kind switch
        {
            PieceKind.Bend => FigureReader.Angle(value, word, Range.Turn, _context)?.Radians,
            PieceKind.Roll => FigureReader.Rotation(value, word, _context)?.Radians,
            PieceKind.Ahead => FigureReader.Length(value, word, Range.SignedLength, _context)?.Millimetres,
            _ => FigureReader.Length(value, word, Range.PositiveLength, _context)?.Millimetres,
        };

    private PieceMeasurement? Listed(YamlValue value)
    {
        if (FieldReader.Of(value, Vocabulary.Check, _context) is not { } map)
        {
            return null;
        }

        foreach (var word in Vocabulary.Check.Known.Where(word => word is not "within" && !map.Has(word)))
        {
            map.ReportMissing($"a check needs `{word}`: write it like `{Vocabulary.Check.Example}`");
        }

        var distance = map.Length("distance", Range.PositiveLength);
        var within = map.Length("within", Range.PositiveLength);
        return (!map.Has("within") || within is not null)
            && map.Text("from") is { } from && map.Text("to") is { } to
            && _places?.Pair(from.Text, to.Text, from.Position, to.Position) is var (first, second)
            && distance is { } measured
            ? new(InOrder(first, second), measured.Millimetres, map.PositionOfValue("distance")) { Within = within?.Millimetres }
            : null;
    }
}
