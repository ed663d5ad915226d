using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Layshaft.Site.Publishing;

/// <summary>
/// The names of the folders that customers' pages hang under. Each is 128 bits that only the shop's secret gives: a key
/// can neither be guessed nor worked out from another's.
/// </summary>
/// <remarks>
/// HMAC-SHA256 (RFC 2104, FIPS 198-1) under the secret, the first 128 bits. The message names the unit, the customer, which
/// of this customer's own times with the unit it is, and the renewals. Other owners are not in it: whoever is inserted,
/// removed or edited beside this customer, the link keeps its reader. The same secret gives the same keys on any machine.
/// </remarks>
/// <param name="secret">The shop's secret.</param>
public sealed class CustomerKeys(ShopSecret secret)
{
    /// <summary>How many characters a key has.</summary>
    public const int Length = 26;

    private readonly ShopSecret _secret = secret ?? throw new ArgumentNullException(nameof(secret));

    /// <summary>Changes with the secret, and so with every key.</summary>
    public string Fingerprint => Hash("layshaft fingerprint of keys");

    /// <summary>The key of the pages of one customer's time with a unit: 26 small letters and digits.</summary>
    /// <param name="unit">The unit's id in the book; its Unicode form does not matter, its case does.</param>
    /// <param name="customer">The customer's id in the book; likewise.</param>
    /// <param name="time">Which of this customer's own times with this unit, from 1: a unit that was sold and bought back has two.</param>
    /// <param name="renewals">How often the unit's link was renewed, from 0.</param>
    /// <exception cref="ArgumentException">An id is blank or not valid text.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="time"/> is below 1, or <paramref name="renewals"/> below 0.</exception>
    public string For(string unit, string customer, int time = 1, int renewals = 0)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(unit);
        ArgumentException.ThrowIfNullOrWhiteSpace(customer);
        ArgumentOutOfRangeException.ThrowIfLessThan(time, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(renewals);
        return Hash(string.Create(CultureInfo.InvariantCulture, $"layshaft customer pages 2\n{Measured(unit)}\n{Measured(customer)}\n{time}\n{renewals}"));
    }

    /// <summary>
    /// The key that an owner's pages had while keys hung on the place in the list of owners. No page is written under it; a site
    /// that still has one is recognised by it.
    /// </summary>
    /// <param name="unit">The unit's id.</param>
    /// <param name="place">The owner's place in the list, from 0.</param>
    /// <param name="renewals">How often the unit's link was renewed, from 0.</param>
    public string OfPlace(string unit, int place, int renewals)
    {
        var name = FormattableString.Invariant($"{unit}/{place}");
        return Hash(string.Create(CultureInfo.InvariantCulture, $"layshaft customer pages 1\n{Measured(name)}\n{renewals}"));
    }

    // The length comes before the text, so that no two lists of parts make the same message.
    private static string Measured(string text)
    {
        var name = text.Normalize(NormalizationForm.FormC);
        return FormattableString.Invariant($"{name.Length}:{name}");
    }

    private string Hash(string message) => Base32.Encode(HMACSHA256.HashData(_secret.Bytes, Encoding.UTF8.GetBytes(message)).AsSpan(0, 16));
}

/// <summary>Base 32 (RFC 4648, clause 6) in lower case and without padding: safe in addresses and in file names of any case.</summary>
internal static class Base32
{
    private const string Alphabet = "abcdefghijklmnopqrstuvwxyz234567";

    internal static string Encode(ReadOnlySpan<byte> bytes)
    {
        var text = new char[((bytes.Length * 8) + 4) / 5];
        var (bits, held, at) = (0u, 0, 0);
        foreach (var b in bytes)
        {
            bits = ((bits << 8) | b) & 0xFFFF;
            held += 8;
            while (held >= 5)
            {
                held -= 5;
                text[at++] = Alphabet[(int)(bits >> held) & 31];
            }
        }

        if (held > 0)
        {
            text[at] = Alphabet[(int)(bits << (5 - held)) & 31];
        }

        return new(text);
    }
}
