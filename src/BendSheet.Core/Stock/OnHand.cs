using System.Collections.Immutable;
using System.Globalization;
using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Stock;

/// <summary>
/// Takes what is on hand off the list. A name means the things that have all its words, and one of them says what sort of thing it
/// is: <c>tee</c>, <c>an3 nut</c>, <c>inverted bulkhead</c>.
/// </summary>
public static class OnHand
{
    /// <summary>More choices would not be read.</summary>
    private const int MostChoices = 4;

    /// <summary>Tube counts by its length and not by pieces: it is typed in `stock`, not in `have`.</summary>
    private static readonly ListedName Tube = new("tube", string.Empty);

    /// <summary>A name that several things answer to.</summary>
    public static Rule Unclear { get; } = new("have-unclear", RuleSubject.File, "A nut of one size cannot stand in for another.");

    /// <summary>A name that nothing answers to.</summary>
    public static Rule NotNeeded { get; } = new(
        "have-not-needed", RuleSubject.File, "What is on hand but not on the shopping list may have another name there.");

    /// <summary>What is on hand was counted before the lines that are made took theirs.</summary>
    public static Rule UsedSince { get; } = new(
        "have-used", RuleSubject.File, "Hardware on finished lines is no longer on hand, unless you have counted since.");

    /// <summary>The list with what is there already.</summary>
    /// <param name="items">What is needed from now on.</param>
    /// <param name="used">What the lines that are made have used.</param>
    /// <param name="have">As typed.</param>
    public static ShoppingList Subtract(
        ImmutableArray<ShoppingItem> items, IReadOnlyCollection<ShoppingItem> used, ImmutableArray<InTheDrawer> have)
    {
        var left = WithUsed(items, used).ToImmutableArray().ToBuilder();
        var names = left.Select(ListedName.Of).ToList();
        var loosely = names.ConvertAll(name => name.Loosely());
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var drawer in have)
        {
            var (meant, sure) = Meant(drawer.Name, names) is { Items.Count: > 0 } exactly
                ? exactly
                : Meant(ListedName.Loosely(drawer.Name), loosely);
            if (sure && meant is [var only])
            {
                var item = left[only];
                var gone = drawer.IsLeft ? 0 : Math.Min(drawer.Count, item.Used);
                left[only] = item with { Have = Math.Min(item.Count, item.Have + drawer.Count - gone), Used = item.Used - gone };
                if (gone > 0)
                {
                    findings.Add(UsedSince.Note(drawer.At, WhatIsUsed(drawer, gone)));
                }
            }
            else if (!sure && Tube.IsNamedIn(drawer.Name))
            {
                findings.Add(NotNeeded.Note(
                    drawer.At,
                    $"`{drawer.Name}` in `have` takes nothing off: type tube that is there in `stock`, such as `stock: [{{length: 25 ft, "
                        + $"left: 5 m}}]`"));
            }
            else if (meant.Count > 0)
            {
                var why = sure ? "may be several things on the list" : "does not say what sort of thing it is";
                findings.Add(
                    Unclear.Warning(drawer.At, $"`{drawer.Name}` in `have` {why}, so none is taken off: write {Choices(meant, names)}"));
            }
            else
            {
                findings.Add(NotNeeded.Note(drawer.At, $"`{drawer.Name}` in `have` {WhyNotNeeded(drawer.Name, names)}"));
            }
        }

        return new([.. left.Take(items.Length)], findings.ToImmutable());
    }

    /// <summary>What nobody needs any more stands at the end: what is on hand of it was for lines that are made.</summary>
    private static IEnumerable<ShoppingItem> WithUsed(ImmutableArray<ShoppingItem> items, IReadOnlyCollection<ShoppingItem> used)
    {
        static (string, string, string) Thing(ShoppingItem item) => (item.Sort, item.Kind, item.Specification);
        var gone = used.ToDictionary(Thing, item => item.Count);
        var needed = items.Select(Thing).ToHashSet();
        return items.Select(item => item with { Used = gone.GetValueOrDefault(Thing(item)) })
            .Concat(used.Where(item => !needed.Contains(Thing(item))).Select(item => item with { Count = 0, Used = item.Count }));
    }

    private static string WhatIsUsed(InTheDrawer drawer, int gone)
    {
        var left = drawer.Count - gone;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"`{drawer.Name}: {drawer.Count}` in `have`: lines that are made used {gone}, so {left} {Counted.Noun(left, "is", "are")} "
                + $"counted as left; once you have counted them, write `{drawer.Name}: {{left: {left}}}`");
    }

    private static string Choices(List<int> meant, List<ListedName> names)
    {
        var more = meant.Count > MostChoices
            ? FormattableString.Invariant($", or the name of one of {meant.Count - MostChoices} more as the list prints it") : string.Empty;
        return string.Join(" or ", meant.Take(MostChoices).Select(i => $"`{names[i].Told(names)}`")) + more;
    }

    /// <summary>Things of the sort that is typed, those first that have other words nearly as they are typed; or else all sorts.</summary>
    private static string WhyNotNeeded(string typed, List<ListedName> names)
    {
        if (names.Count == 0)
        {
            return "is not needed: nothing is on the list";
        }

        var ofSort = Enumerable.Range(0, names.Count).Where(i => names[i].IsNamedIn(typed))
            .OrderByDescending(i => names[i].NearWords(typed)).ToList();
        return ofSort.Count > 0
            ? $"is not on the list in these words: write {Choices(ofSort, names)} if it is what is meant"
            : "is not on the list, which has "
                + $"{string.Join(", ", names.Select(name => $"`{name.Sort}`").Distinct(StringComparer.Ordinal).Take(12))}";
    }

    /// <summary>The things that answer to a name: by the whole of its name, or else by its sort, or else by a word of its sort.</summary>
    /// <returns>Not sure where no word says what sort of thing it is.</returns>
    private static (List<int> Items, bool Sure) Meant(string typed, List<ListedName> names)
    {
        foreach (var answers in new Func<ListedName, string, bool>[]
        {
            (name, text) => name.IsWholly(text),
            (name, text) => name.IsOfSort(text),
            (name, text) => name.IsOfSortInShort(text),
        })
        {
            var found = Enumerable.Range(0, names.Count).Where(i => answers(names[i], typed)).ToList();
            if (found.Count > 0)
            {
                return (found, true);
            }
        }

        return ([.. Enumerable.Range(0, names.Count).Where(i => names[i].Has(typed))], false);
    }
}
