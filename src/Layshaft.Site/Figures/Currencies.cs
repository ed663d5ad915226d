namespace Layshaft.Site.Figures;

/// <summary>How many decimals a currency has ("minor unit", ISO 4217 table A.1), and its sign.</summary>
internal static class Currencies
{
    private static readonly string[] None =
        ["BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "UYI", "VND", "VUV", "XAF", "XOF", "XPF"];

    private static readonly string[] Three = ["BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"];

    /// <summary>The sign by which every reader knows a currency; null for a code that others share a sign with or that has none.</summary>
    internal static string? Sign(string code) => code switch
    {
        "EUR" => "€",
        "GBP" => "£",
        "USD" => "$",
        _ => null,
    };

    /// <summary>The currency's decimals; 2 for every code that the standard does not single out.</summary>
    /// <param name="code">Three capital letters.</param>
    /// <exception cref="ArgumentException">The code has another form.</exception>
    internal static int Decimals(string code)
    {
        if (code.Length != 3 || !code.All(char.IsAsciiLetterUpper))
        {
            throw new ArgumentException($"'{code}' is not a currency code. Write three capital letters, such as EUR.", nameof(code));
        }

        return None.Contains(code) ? 0 : Three.Contains(code) ? 3 : 2;
    }
}
