namespace Layshaft.Book.Problems;

/// <summary>Finds the known word that a mistyped one was probably meant to be.</summary>
public static class NearestWord
{
    /// <summary>
    /// The known word with the smallest optimal string alignment distance (Damerau 1964: insert, delete, replace,
    /// swap neighbours), or null when none is near enough: at most a third of the word's length, and at least 1.
    /// </summary>
    public static string? Of(string word, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(word);
        ArgumentNullException.ThrowIfNull(known);
        if (word.Length > 60)
        {
            return null;
        }

        if (Same(word, known) is { } same)
        {
            return same;
        }

        var folded = word.ToLowerInvariant().Replace(' ', '_').Replace('-', '_');
        string? best = null;
        var bestDistance = Math.Max(1, (word.Length + 2) / 3) + 1;
        foreach (var candidate in known)
        {
            var distance = Distance(folded, candidate.ToLowerInvariant().Replace(' ', '_').Replace('-', '_'));
            if (distance < bestDistance)
            {
                (best, bestDistance) = (candidate, distance);
            }
        }

        return best;
    }

    /// <summary>The nearest known word as a sentence, or, when none is near, the list of the known ones.</summary>
    public static string Advice(string word, IReadOnlyCollection<string> known)
    {
        ArgumentNullException.ThrowIfNull(known);
        if (known.Count == 0)
        {
            return string.Empty;
        }

        return Of(word, known) is { } near
            ? $"Did you mean '{near}'?"
            : $"Write one of: {string.Join(", ", known.Take(24))}{(known.Count > 24 ? ", …" : "")}.";
    }

    /// <summary>The known word with the same letters and digits in the same order, as 'fork-34' for 'Fork 3-4'; null for none.</summary>
    public static string? Same(string word, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(word);
        ArgumentNullException.ThrowIfNull(known);
        return Letters(word) is { Length: > 1 } letters ? known.FirstOrDefault(k => Letters(k) == letters) : null;
    }

    private static string Letters(string word) => string.Concat(word.ToLowerInvariant().Where(char.IsLetterOrDigit));

    private static int Distance(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            d[i, 0] = i;
        }

        for (var j = 0; j <= b.Length; j++)
        {
            d[0, j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var replace = d[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                var best = Math.Min(replace, Math.Min(d[i - 1, j] + 1, d[i, j - 1] + 1));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    best = Math.Min(best, d[i - 2, j - 2] + 1);
                }

                d[i, j] = best;
            }
        }

        return d[a.Length, b.Length];
    }
}
