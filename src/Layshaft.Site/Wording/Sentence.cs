namespace Layshaft.Site.Wording;

/// <summary>One entry of the texts: a sentence, or its forms for one, zero and other counts.</summary>
/// <param name="Other">The form for any count, or the only one.</param>
/// <param name="One">The form for a count of one, or null.</param>
/// <param name="Zero">The form for a count of nought, or null.</param>
internal sealed record Sentence(PlacedText Other, PlacedText? One = null, PlacedText? Zero = null)
{
    internal const string CountName = "count";

    internal bool HasForms => One is not null || Zero is not null;

    internal IReadOnlySet<string> Places { get; } =
        new[] { Other, One, Zero }.SelectMany(w => w?.Places ?? []).ToHashSet(StringComparer.Ordinal);

    internal PlacedText FormFor(long count) => count switch
    {
        1 => One ?? Other,
        0 => Zero ?? Other,
        _ => Other,
    };

    /// <summary>The forms with their names, for messages and fingerprints.</summary>
    internal IEnumerable<(string Name, PlacedText Words)> Forms()
    {
        yield return ("other", Other);
        if (One is not null)
        {
            yield return ("one", One);
        }

        if (Zero is not null)
        {
            yield return ("zero", Zero);
        }
    }
}
