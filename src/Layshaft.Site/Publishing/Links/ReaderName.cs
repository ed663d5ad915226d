using System.Text;

namespace Layshaft.Site.Publishing.Links;

/// <summary>Tells whether two names can be of one person or firm: only case, spacing and punctuation may differ.</summary>
internal static class ReaderName
{
    /// <summary>Whether two names are the same but for case, spacing and punctuation.</summary>
    internal static bool AreSame(string one, string other) => Letters(one) == Letters(other);

    private static string Letters(string name)
    {
        var letters = new StringBuilder();
        foreach (var rune in name.Normalize(NormalizationForm.FormKC).EnumerateRunes())
        {
            // Marks belong to the letters of many scripts.
            if (Rune.IsLetterOrDigit(rune) || Rune.GetUnicodeCategory(rune) is System.Globalization.UnicodeCategory.NonSpacingMark or System.Globalization.UnicodeCategory.SpacingCombiningMark)
            {
                letters.Append(Rune.ToUpperInvariant(rune));
            }
        }

        // Of a name without a letter all of it counts.
        return letters.Length > 0 ? letters.ToString() : name.Trim();
    }
}
