namespace Clomwright.Evidence;

/// <summary>The known word that a mistyped one most likely means.</summary>
public static class Nearest
{
    private const int LongestCompared = 64;

    /// <summary>The word with the smallest distance; the first of equals.</summary>
    public static string To(string typed, IEnumerable<string> words) => words.MinBy(word => Distance(typed, word)) ?? "";

    /// <summary>Letters to insert, delete, replace or swap with a neighbour (optimal string alignment); a capital counts half a replacement.</summary>
    public static double Distance(string typed, string word)
    {
        if (typed.Length > LongestCompared)
        {
            typed = typed[..LongestCompared];
        }

        var (beforeLast, last, row) = (new double[word.Length + 1], new double[word.Length + 1], new double[word.Length + 1]);
        for (var j = 0; j <= word.Length; j++)
        {
            last[j] = j;
        }

        for (var i = 1; i <= typed.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= word.Length; j++)
            {
                var replace = typed[i - 1] == word[j - 1] ? 0 : char.ToLowerInvariant(typed[i - 1]) == char.ToLowerInvariant(word[j - 1]) ? 0.5 : 1;
                row[j] = Math.Min(last[j - 1] + replace, 1 + Math.Min(last[j], row[j - 1]));
                if (i > 1 && j > 1 && typed[i - 1] == word[j - 2] && typed[i - 2] == word[j - 1])
                {
                    row[j] = Math.Min(row[j], beforeLast[j - 2] + 1);
                }
            }

            (beforeLast, last, row) = (last, row, beforeLast);
        }

        return last[word.Length];
    }
}
