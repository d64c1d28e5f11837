namespace BendSheet.Core.Findings;

/// <summary>Finds the word that a mistyped one was meant to be.</summary>
public static class NearestWord
{
    /// <summary>A word that somebody mistyped is not longer.</summary>
    private const int LongestWord = 60;

    /// <summary>A typed word is compared with no more than this: a car has fewer of anything.</summary>
    private const int MostCompared = 1000;

    /// <summary>
    /// The known word with the fewest slips (a letter wrong, too many, missing, or two neighbours exchanged: the optimal string alignment
    /// distance). Upper and lower case count as equal. Of equally near words the first.
    /// </summary>
    /// <returns>Null when even the nearest has more slips than a third of the typed word's letters; one slip is always allowed, except in
    /// an empty word.</returns>
    public static string? Among(string typed, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(known);
        if (typed.Length is 0 or > LongestWord)
        {
            return null;
        }

        string? nearest = null;
        var fewest = Math.Max(1, typed.Length / 3) + 1;
        foreach (var word in known.Take(MostCompared))
        {
            // The difference in length is the least number of slips; it also keeps endless words from costing time.
            if (Math.Abs(word.Length - typed.Length) < fewest && Slips(typed, word) is var slips && slips < fewest)
            {
                (nearest, fewest) = (word, slips);
            }
        }

        return nearest;
    }

    /// <summary>
    /// The optimal string alignment distance: the fewest slips that lead from one word to the other, none of them inside an exchanged pair.
    /// </summary>
    public static int Slips(string typed, string word)
    {
        int[] twoAbove = [], above = [.. Enumerable.Range(0, word.Length + 1)];
        for (var i = 1; i <= typed.Length; i++)
        {
            var row = new int[word.Length + 1];
            row[0] = i;
            for (var j = 1; j <= word.Length; j++)
            {
                var isSame = AreSame(typed[i - 1], word[j - 1]);
                row[j] = Math.Min(Math.Min(above[j], row[j - 1]) + 1, above[j - 1] + (isSame ? 0 : 1));
                if (i > 1 && j > 1 && AreSame(typed[i - 1], word[j - 2]) && AreSame(typed[i - 2], word[j - 1]))
                {
                    row[j] = Math.Min(row[j], twoAbove[j - 2] + 1);
                }
            }

            (twoAbove, above) = (above, row);
        }

        return above[word.Length];
    }

    private static bool AreSame(char a, char b) => char.ToLowerInvariant(a) == char.ToLowerInvariant(b);
}
