namespace Layshaft.Site.Publishing;

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
