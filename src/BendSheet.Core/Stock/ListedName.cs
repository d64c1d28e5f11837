namespace BendSheet.Core.Stock;

/// <summary>A thing's name on the shopping list as the words that a person may type for it.</summary>
/// <param name="Sort">What sort of thing it is: <c>nut</c>, <c>master-cylinder</c>, <c>sealing washer for banjo M10x1</c>.</param>
/// <param name="Details">What tells it from others of its sort: size, thread, seat.</param>
internal sealed record ListedName(string Sort, string Details)
{
    /// <summary>Shorter words, such as counts and units, tell nobody which thing is meant.</summary>
    private const int ShortestTelling = 3;

    /// <summary>As the list writes them after a size.</summary>
    private static readonly string[] Units = ["mm", "in"];

    /// <summary>What it is by itself, without what it is for: <c>sealing washer</c>.</summary>
    public string Article { get; init; } = Sort;

    /// <summary>The words of a thing on the list.</summary>
    public static ListedName Of(ShoppingItem item) =>
        new(item.Sort, string.Join(", ", new[] { item.Kind, item.Specification }.Where(words => words.Length > 0)))
        {
            Article = item.Article,
        };

    /// <summary>Every word of the thing is typed, and nothing else.</summary>
    public bool IsWholly(string typed) => Has(typed) && All().All(own => Typed(typed).Any(word => Same(word, own)));

    /// <summary>Every word of its sort is typed.</summary>
    public bool IsOfSort(string typed) => Has(typed) && Words(Sort).All(own => Typed(typed).Any(word => Same(word, own)));

    /// <summary>One word of its sort is typed.</summary>
    public bool IsOfSortInShort(string typed) => Has(typed) && Words(Sort).Any(own => Typed(typed).Any(word => Same(word, own)));

    /// <summary>It has every word that is typed.</summary>
    public bool Has(string typed) => Typed(typed) is { Length: > 0 } words && words.All(word => All().Any(own => Same(word, own)));

    /// <summary>A word says what it is, such as <c>tee</c>, whatever else is typed.</summary>
    public bool IsNamedIn(string typed) => Words(Article).Any(own => Typed(typed).Any(word => Same(word, own)));

    /// <summary>How many typed words are the beginning of one of its own, as <c>m10</c> is of <c>M10x1</c>.</summary>
    public int NearWords(string typed) =>
        Typed(typed).Count(word => All().Any(own => own.StartsWith(word, StringComparison.OrdinalIgnoreCase)));

    /// <summary>The same without hyphens, to be compared with what <see cref="Loosely(string)"/> makes of typed words.</summary>
    public ListedName Loosely() => new(WithoutHyphens(Sort), WithoutHyphens(Details)) { Article = WithoutHyphens(Article) };

    /// <summary>What is typed, without hyphens and with units that stand by themselves: <c>an-3 17mm</c> is <c>an3 17 mm</c>.</summary>
    public static string Loosely(string typed) => string.Join(' ', Words(WithoutHyphens(typed)).Select(ApartFromUnit));

    /// <summary>
    /// The shortest name that means nothing else on the list: its sort, or its sort and one more word or size, or else all of it.
    /// </summary>
    public string Told(IReadOnlyList<ListedName> list) => Telling(Words(Details))
        .Select(detail => $"{Sort} {detail}").Prepend(Sort).FirstOrDefault(name => list.Count(other => other.Has(name)) == 1)
        ?? string.Join(' ', All()).Replace('×', 'x');

    /// <summary>Words that tell things apart; a size with its unit.</summary>
    private static IEnumerable<string> Telling(string[] words)
    {
        for (var i = 0; i < words.Length; i++)
        {
            if (i + 1 < words.Length && Units.Contains(words[i + 1], StringComparer.Ordinal))
            {
                yield return $"{words[i]} {words[i + 1]}";
            }
            else if (words[i].Length >= ShortestTelling)
            {
                yield return words[i];
            }
        }
    }

    private static string ApartFromUnit(string word) =>
        Array.Find(
            Units, unit => word.Length > unit.Length
                && word.EndsWith(unit, StringComparison.OrdinalIgnoreCase)
                && char.IsAsciiDigit(word[^(unit.Length + 1)])) is { } unit
            ? $"{word[..^unit.Length]} {unit}"
            : word;

    private static string WithoutHyphens(string text) => text.Replace("-", string.Empty, StringComparison.Ordinal);

    private IEnumerable<string> All() => Words(Sort).Concat(Words(Details));

    /// <summary>A sort with a hyphen may be typed with a space: <c>master cylinder</c>.</summary>
    private string[] Typed(string text) => Words(Sort.Contains('-', StringComparison.Ordinal)
        ? text.Replace(Sort.Replace('-', ' '), Sort, StringComparison.OrdinalIgnoreCase)
        : text);

    /// <summary>People count in the plural, <c>nuts: 4</c>, and no keyboard has a ×.</summary>
    private static bool Same(string typed, string known) =>
        typed.Equals(known, StringComparison.OrdinalIgnoreCase) || typed.Equals(known + "s", StringComparison.OrdinalIgnoreCase)
        || (known is "×" && typed is "x" or "X");

    private static string[] Words(string text) => text.Split([' ', ',', '(', ')'], StringSplitOptions.RemoveEmptyEntries);
}
