using System.Collections.Immutable;
using BendSheet.Core.Stock;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using BendSheet.Files.Typed;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads what lies there: rolls of tube, hardware on hand, and what the work uses up beside the lines.</summary>
/// <param name="tubes">Of the file.</param>
/// <param name="context">For findings.</param>
internal sealed class StoresReader(NameTable<Tube> tubes, FileContext context)
{
    /// <summary>What the top of the file says.</summary>
    public Stores Read(FieldReader file) => new(
        file.Value("stock") is { } stock ? Rolls(stock) : [],
        file.Length("cutting-loss", Range.CuttingLoss) ?? Stores.UsualCuttingLoss,
        (file.Text("spare") is { } spare ? PerCent(spare) : null) / 100 ?? 0,
        file.Value("practice") is { } practice ? new PracticeReader(tubes, context).Read(practice) : [],
        file.Value("have") is { } have ? Have(have) : []);

    private ImmutableArray<Roll> Rolls(YamlValue stock)
    {
        if (stock is not YamlList { Items.Count: > 0 } list)
        {
            context.Report(FileRules.WrongKind.Error(
                stock.Position,
                $"`stock` lists the rolls and sticks of tube, such as `stock: [{Vocabulary.Roll.Example}]`, and this is "
                    + $"{FieldReader.Kind(stock)}"));
            return [];
        }

        var rolls = list.Items.Select(Roll).ToList();
        var called = rolls.OfType<Roll>().Select(roll => roll.Name).ToLookup(name => name, StringComparer.OrdinalIgnoreCase);
        return
        [
            .. rolls.Select((roll, i) => roll is { HasOwnName: false } && called[roll.Name].Count() > 1
                ? roll with { Name = FormattableString.Invariant($"{roll.Name}, no. {i + 1} in the list of stock") }
                : roll).OfType<Roll>(),
        ];
    }

    private Roll? Roll(YamlValue value)
    {
        if (FieldReader.Of(value, Vocabulary.Roll, context) is not { } map)
        {
            return null;
        }

        var kind = map.Choice("kind", Kinds) ?? RollKind.Roll;
        var typedName = map.Text("name");
        var hasName = typedName is null || NameCheck.CanBePrinted(typedName, "a roll", context);
        var tube = TubeOf(map, "this roll", tubes, context);
        var length = map.Length("length", Range.RollLength);
        var left = map.Length("left", Range.LengthOrZero);
        var price = map.Number("price", Range.Price);
        var count = map.Text("count") is { } typed ? FigureReader.Count(typed, "count", Range.Rolls, context) : null;
        if (!map.Has("length"))
        {
            map.ReportMissing(
                "a roll needs the length it is bought in: add `length`, such as `length: 25 ft`; `left` is what is left of it");
        }

        if (left > length && left.Value - length.Value > Tolerances.SamePoint)
        {
            context.Report(
                FileRules.OutOfRange.Error(
                    map.PositionOf("left"), "more is left than the roll was long: check `length` and `left`, and their units"));
            return null;
        }

        return tube is null || length is not { } bought || !hasName
            ? null
            : new(
                typedName?.Text ?? WhatIsSeen(kind, map.Text("length")!), tube, bought, left ?? bought, map.Position)
            {
                Kind = kind,
                HasOwnName = typedName is not null,
                Count = count ?? 1,
                LeftIsTyped = left is not null,
                Price = price is { } money ? Math.Round((decimal)money, 2) : null,
            };
    }

    /// <summary>The length as it was typed, with its unit.</summary>
    private string WhatIsSeen(RollKind kind, YamlText length) =>
        $"{Kinds.First(one => one.Kind == kind).Word} of {length.Text}"
        + (char.IsAsciiDigit(length.Text[^1]) ? $" {context.UnitAt(length.Position).Symbol()}" : string.Empty);

    internal static (RollKind Kind, string Word)[] Kinds { get; } = [(RollKind.Roll, "roll"), (RollKind.Stick, "stick")];

    /// <summary>The tube that a map names, or the only one of the file; null after a finding.</summary>
    internal static Tube? TubeOf(FieldReader map, string what, NameTable<Tube> tubes, FileContext context)
    {
        if (map.Has("tube"))
        {
            return map.Text("tube") is { } name ? tubes.Find(name, context) : null;
        }

        if (tubes.HasSeveral && !map.HasUnknownWord)
        {
            context.Report(
                FileRules.MissingWord.Error(
                    map.Position, $"the file has several tubes and {what} does not say which: add `tube:` with the name of one"));
        }

        return tubes.OnlyOne;
    }

    private double? PerCent(YamlText text)
    {
        var wrong = PerCentText.Read(text.Text, out var perCent);
        return FigureReader.Checked("spare", text, wrong, FileRules.UnreadableNumber, perCent, Range.PerCent, context);
    }

    private ImmutableArray<InTheDrawer> Have(YamlValue value)
    {
        if (value is not YamlMap { Entries.Count: > 0 } map)
        {
            context.Report(FileRules.WrongKind.Error(
                value.Position,
                $"`have` says how many of each are on hand, such as `have: {{nut: 4, sleeve: 4}}`, and this is "
                    + $"{FieldReader.Kind(value)}"));
            return [];
        }

        var have = ImmutableArray.CreateBuilder<InTheDrawer>();
        foreach (var (key, typed) in map.Entries)
        {
            var hasName = NameCheck.CanBePrinted(key, "a thing on hand", context);
            if (Counted(key.Text, typed) is { } counted && hasName)
            {
                have.Add(new(key.Text, counted.Count, key.Position) { IsLeft = counted.IsLeft });
            }
        }

        return have.ToImmutable();
    }

    /// <summary>How many there were at first, <c>4</c>, or how many there are now, <c>{left: 4}</c>; null after a finding.</summary>
    private (int Count, bool IsLeft)? Counted(string name, YamlValue typed)
    {
        if (typed is YamlMap { Entries.Count: > 0 })
        {
            var map = FieldReader.Of(typed, Vocabulary.OnHand, context);
            return map?.Text("left") is { } left && FigureReader.Count(left, "left", Range.Pieces, context) is { } now ? (now, true) : null;
        }

        if (typed is YamlText { IsEmpty: false } text)
        {
            return FigureReader.Count(text, name, Range.Pieces, context) is { } count ? (count, false) : null;
        }

        context.Report(FileRules.WrongKind.Error(
            typed.Position,
            $"after {AsTyped.Show(name)} type how many there are, such as `4`; this is {FieldReader.Kind(typed)}"));
        return null;
    }
}
