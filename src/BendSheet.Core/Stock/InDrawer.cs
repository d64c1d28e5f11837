using System.Collections.Immutable;
using BendSheet.Core.Findings;

namespace BendSheet.Core.Stock;

/// <summary>Takes what lies in the drawer off the list. A name of one word or more means the things whose name and specification have all its words.</summary>
public static class InDrawer
{
    /// <summary>A name that several things answer to.</summary>
    public static Rule Unclear { get; } = new("have-unclear", RuleSubject.File, "A nut of one size does not replace one of another.");

    /// <summary>A name that nothing answers to.</summary>
    public static Rule NotNeeded { get; } = new("have-not-needed", RuleSubject.File, "What lies in the drawer and is not on the list may be called something else there.");

    /// <summary>The list with what is there already.</summary>
    public static ShoppingList Subtract(ImmutableArray<ShoppingItem> items, ImmutableArray<InTheDrawer> have)
    {
        var left = items.ToBuilder();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var drawer in have)
        {
            var meant = Enumerable.Range(0, left.Count).Where(i => Means(drawer.Name, left[i])).ToList();
            if (meant.Count == 1)
            {
                var item = left[meant[0]];
                left[meant[0]] = item with { Have = Math.Min(item.Count, item.Have + drawer.Count) };
            }
            else if (meant.Count > 1)
            {
                var choices = string.Join(" or ", meant.Take(4).Select(i => $"`{left[i].Name} {Tells(left[i], [.. meant.Select(other => left[other])])}`"));
                findings.Add(Unclear.Warning(drawer.At, $"`{drawer.Name}` in `have` may be several things on the list, so none is taken off: write {choices}"));
            }
            else
            {
                findings.Add(NotNeeded.Note(drawer.At, items.IsEmpty
                    ? $"`{drawer.Name}` in `have` is not needed: nothing is on the list"
                    : $"`{drawer.Name}` in `have` is not on the list, which has {string.Join(", ", items.Select(item => $"`{item.Name}`").Distinct(StringComparer.Ordinal).Take(12))}"));
            }
        }

        return new(left.ToImmutable(), findings.ToImmutable());
    }

    /// <summary>The first word of its specification that none of the others has; the whole of it where there is none.</summary>
    private static string Tells(ShoppingItem item, IReadOnlyList<ShoppingItem> all)
    {
        var others = all.Where(other => other != item).SelectMany(other => Words(other.Specification)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return Words(item.Specification).FirstOrDefault(word => !others.Contains(word)) ?? item.Specification;
    }

    private static bool Means(string typed, ShoppingItem item)
    {
        var name = Words(item.Name);
        var all = name.Concat(Words(item.Specification)).ToList();
        var words = Words(typed);
        return words.Length > 0
            && words.All(word => all.Exists(known => Same(word, known)))
            && name.All(own => words.Any(word => Same(word, own)));
    }

    /// <summary>People count in the plural: <c>nuts: 4</c>.</summary>
    private static bool Same(string typed, string known) =>
        typed.Equals(known, StringComparison.OrdinalIgnoreCase) || typed.Equals(known + "s", StringComparison.OrdinalIgnoreCase);

    private static string[] Words(string text) => text.Split([' ', ',', '(', ')'], StringSplitOptions.RemoveEmptyEntries);
}
