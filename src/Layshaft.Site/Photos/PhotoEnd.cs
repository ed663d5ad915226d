using System.Buffers.Binary;

namespace Layshaft.Site.Photos;

/// <summary>
/// Whether a picture's file looks whole, without decoding it: a cheap question, so that only a doubtful picture is decoded. A JPEG must have
/// its end marker (ITU-T T.81, B.1.1.2), the chunks of a PNG their check sums (ISO/IEC 15948, 5.5). The headers of WebP, HEIC and AVIF say how
/// long the file is, and were compared with it.
/// </summary>
internal static class PhotoEnd
{
    // Up to this length a JPEG is walked from its beginning; of a longer one the end is enough, since coded data never holds the marker.
    private const int Walked = 256 * 1024;
    private const int Tail = 4096;

    private static readonly uint[] s_remainders = Remainders();

    /// <summary>Whether nothing speaks against it.</summary>
    /// <param name="content">The file.</param>
    /// <param name="format">What it is.</param>
    public static bool LooksWhole(Stream content, PhotoFormat format) => format switch
    {
        PhotoFormat.Jpeg => content.Length <= Walked ? JpegPasses.AreComplete(Read(content, 0)) : Read(content, content.Length - Tail).AsSpan().IndexOf((ReadOnlySpan<byte>)[0xFF, 0xD9]) >= 0,
        PhotoFormat.Png => ChunksAgree(content),
        _ => true,
    };

    private static byte[] Read(Stream content, long from)
    {
        var bytes = new byte[content.Length - from];
        content.Position = from;
        content.ReadExactly(bytes);
        return bytes;
    }

    private static bool ChunksAgree(Stream content)
    {
        var buffer = new byte[64 * 1024];
        for (long at = 8; at <= content.Length - 12;)
        {
            content.Position = at;
            content.ReadExactly(buffer, 0, 8);
            var length = BinaryPrimitives.ReadUInt32BigEndian(buffer);
            var isLast = buffer.AsSpan(4, 4).SequenceEqual("IEND"u8);
            var sum = Add(uint.MaxValue, buffer.AsSpan(4, 4));
            for (long left = length; left > 0;)
            {
                var part = (int)Math.Min(left, buffer.Length);
                if (content.ReadAtLeast(buffer.AsSpan(0, part), part, throwOnEndOfStream: false) < part)
                {
                    return false;
                }

                sum = Add(sum, buffer.AsSpan(0, part));
                left -= part;
            }

            if (content.ReadAtLeast(buffer.AsSpan(0, 4), 4, throwOnEndOfStream: false) < 4 || BinaryPrimitives.ReadUInt32BigEndian(buffer) != ~sum)
            {
                return false;
            }

            if (isLast)
            {
                return true;
            }

            at += 12L + length;
        }

        return false;
    }

    private static uint Add(uint sum, ReadOnlySpan<byte> bytes)
    {
        foreach (var b in bytes)
        {
            sum = s_remainders[(sum ^ b) & 0xFF] ^ (sum >> 8);
        }

        return sum;
    }

    // ISO/IEC 15948, annex D.
    private static uint[] Remainders()
    {
        var remainders = new uint[256];
        for (var n = 0u; n < 256; n++)
        {
            var c = n;
            for (var bit = 0; bit < 8; bit++)
            {
                c = (c & 1) != 0 ? 0xEDB88320 ^ (c >> 1) : c >> 1;
            }

            remainders[n] = c;
        }

        return remainders;
    }
}
