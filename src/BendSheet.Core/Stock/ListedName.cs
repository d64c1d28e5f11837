namespace BendSheet.Core.Stock;

/// <summary>A thing's name on the shopping list as the words that a person may type for it.</summary>
/// <param name="Sort">What sort of thing it is: <c>nut</c>, <c>master-cylinder</c>, <c>sealing washer for banjo M10x1</c>.</param>
/// <param name="Details">What tells it from others of its sort: size, thread, seat.</param>
internal sealed record ListedName(string Sort, string Details)
{
    /// <summary>Shorter words, such as counts and units, tell nobody which thing is meant.</summary>
    private const int ShortestTelling = 3;

    /// <summary>What stands before the first comma is the sort.</summary>
    public static ListedName Of(ShoppingItem item) => item.Name.Split(',', 2) is [var sort, var rest]
        ? new(sort, $"{rest.Trim()}, {item.Specification}".TrimEnd(',', ' '))
        : new(item.Name, item.Specification);

    /// <summary>Every word of the thing is typed, and nothing else.</summary>
    public bool IsWholly(string typed) => Has(typed) && All().All(own => Typed(typed).Any(word => Same(word, own)));

    /// <summary>Every word of its sort is typed.</summary>
    public bool IsOfSort(string typed) => Has(typed) && Words(Sort).All(own => Typed(typed).Any(word => Same(word, own)));

    /// <summary>One word of its sort is typed.</summary>
    public bool IsOfSortInShort(string typed) => Has(typed) && Words(Sort).Any(own => Typed(typed).Any(word => Same(word, own)));

    /// <summary>It has every word that is typed.</summary>
    public bool Has(string typed) => Typed(typed) is { Length: > 0 } words && words.All(word => All().Any(own => Same(word, own)));

    /// <summary>The shortest name that means nothing else on the list: its sort, or its sort and one more word, or else all of it.</summary>
    public string Told(IReadOnlyList<ListedName> list) => Words(Details).Where(word => word.Length >= ShortestTelling)
        .Select(word => $"{Sort} {word}").Prepend(Sort).FirstOrDefault(name => list.Count(other => other.Has(name)) == 1)
        ?? string.Join(' ', All()).Replace('×', 'x');

    private IEnumerable<string> All() => Words(Sort).Concat(Words(Details));

    /// <summary>A sort with a hyphen may be typed with a blank: <c>master cylinder</c>. Nobody has a × on the keys.</summary>
    private string[] Typed(string text) => Words(Sort.Contains('-', StringComparison.Ordinal)
        ? text.Replace(Sort.Replace('-', ' '), Sort, StringComparison.OrdinalIgnoreCase)
        : text);

    /// <summary>People count in the plural: <c>nuts: 4</c>.</summary>
    private static bool Same(string typed, string known) =>
        typed.Equals(known, StringComparison.OrdinalIgnoreCase) || typed.Equals(known + "s", StringComparison.OrdinalIgnoreCase)
        || (known is "×" && typed is "x" or "X");

    private static string[] Words(string text) => text.Split([' ', ',', '(', ')'], StringSplitOptions.RemoveEmptyEntries);
}
