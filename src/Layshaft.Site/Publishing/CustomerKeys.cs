using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Layshaft.Site.Publishing;

/// <summary>
/// The names of the folders that customers' pages hang under. Each holds 128 bits that only the shop's secret gives: a key
/// can neither be guessed nor worked out from another's.
/// </summary>
/// <remarks>
/// HMAC-SHA256 (RFC 2104, FIPS 198-1) of the unit's number and its renewals under the secret, the first 128 bits. The same
/// secret gives the same keys on any machine, so links that customers have stay good; a renewal withdraws one unit's link
/// and leaves all others.
/// </remarks>
/// <param name="secret">The shop's secret.</param>
public sealed class CustomerKeys(ShopSecret secret)
{
    /// <summary>How many characters a key has.</summary>
    public const int Length = 26;

    private readonly ShopSecret _secret = secret ?? throw new ArgumentNullException(nameof(secret));

    /// <summary>The key of a unit's pages: 26 small letters and digits.</summary>
    /// <param name="unit">The unit's number as the book has it; its Unicode form does not matter, its case does.</param>
    /// <param name="renewals">How often the unit's link was renewed, from 0.</param>
    /// <exception cref="ArgumentException">The unit's number is blank or not valid text.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="renewals"/> is negative.</exception>
    public string For(string unit, int renewals = 0)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(unit);
        ArgumentOutOfRangeException.ThrowIfNegative(renewals);

        // The length stands before the number, so that no two pairs of number and renewals make the same message.
        var name = unit.Normalize(NormalizationForm.FormC);
        var message = string.Create(CultureInfo.InvariantCulture, $"layshaft customer pages 1\n{name.Length}:{name}\n{renewals}");
        return Base32.Encode(HMACSHA256.HashData(_secret.Bytes, Encoding.UTF8.GetBytes(message)).AsSpan(0, 16));
    }
}
