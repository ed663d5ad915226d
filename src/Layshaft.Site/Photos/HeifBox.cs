using System.Buffers.Binary;
using System.Text;

namespace Layshaft.Site.Photos;

/// <summary>One box of the ISO base media file format (ISO/IEC 14496-12, 4.2) inside a block of bytes.</summary>
/// <param name="Type">Its four letters.</param>
/// <param name="Start">Where its content begins.</param>
/// <param name="End">Where it ends.</param>
internal readonly record struct HeifBox(string Type, int Start, int End)
{
    /// <summary>The boxes between two places; stops at the first that does not fit.</summary>
    public static IEnumerable<HeifBox> Within(byte[] bytes, int start, int end)
    {
        while (end - start >= 8)
        {
            long size = BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(start));
            var header = 8;
            if (size == 1 && end - start >= 16)
            {
                size = BinaryPrimitives.ReadInt64BigEndian(bytes.AsSpan(start + 8));
                header = 16;
            }

            size = size == 0 ? end - start : size;
            if (size < header || size > end - start)
            {
                yield break;
            }

            yield return new(Encoding.Latin1.GetString(bytes, start + 4, 4), start + header, start + (int)size);
            start += (int)size;
        }
    }

    /// <summary>The bytes of its content.</summary>
    public ReadOnlySpan<byte> Content(byte[] bytes) => bytes.AsSpan(Start, End - Start);
}
