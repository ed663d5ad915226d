namespace Layshaft.Book.Yaml;

/// <summary>
/// Gives equal short texts one string: a book of ten seasons writes the same few hundred keys and names a million times.
/// Of fixed size, so that no book can make it grow; texts that meet in one slot take turns in it.
/// </summary>
internal static class SharedTexts
{
    private const int Slots = 8192;
    private const int Longest = 80;

    private static readonly string?[] Texts = new string?[Slots];

    /// <summary>The text itself, or an equal one met before.</summary>
    public static string Of(string text)
    {
        if (text.Length > Longest)
        {
            return text;
        }

        ref var slot = ref Texts[string.GetHashCode(text, StringComparison.Ordinal) & (Slots - 1)];
        var held = slot;
        if (held is not null && held == text)
        {
            return held;
        }

        slot = text;
        return text;
    }
}
