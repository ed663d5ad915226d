using System.Buffers.Binary;

namespace Layshaft.Site.Photos;

/// <summary>What the chunks of a PNG say, and whether they are all there (ISO/IEC 15948, 5.3 and 11.2.2).</summary>
/// <param name="Outcome">Whether all chunks are there; the rest means nothing if not.</param>
/// <param name="Width">Columns.</param>
/// <param name="Height">Rows.</param>
/// <param name="IsInterlaced">Whether its rows come in several passes over the whole picture.</param>
/// <param name="Orientation">By the Exif chunk, which the decoder does not look at.</param>
internal readonly record struct PngHeader(HeaderOutcome Outcome, int Width, int Height, bool IsInterlaced, PhotoOrientation Orientation)
{
    private const int LargestExif = 1 << 16;

    /// <summary>Goes from chunk to chunk up to the last, skipping over the pixels.</summary>
    public static PngHeader Read(Stream content)
    {
        var (width, height, interlaced, orientation) = (0, 0, false, PhotoOrientation.TopLeft);
        Span<byte> bytes = stackalloc byte[21];
        for (long at = 8; ; at += 12L + BinaryPrimitives.ReadUInt32BigEndian(bytes))
        {
            if (at > content.Length - 12)
            {
                return new(HeaderOutcome.CutShort, 0, 0, false, orientation);
            }

            content.Position = at;
            var got = content.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            var name = bytes[4..8];
            if (at == 8)
            {
                width = got == bytes.Length ? BinaryPrimitives.ReadInt32BigEndian(bytes[8..]) : 0;
                height = got == bytes.Length ? BinaryPrimitives.ReadInt32BigEndian(bytes[12..]) : 0;
                interlaced = bytes[20] != 0;
                if (!name.SequenceEqual("IHDR"u8) || width <= 0 || height <= 0)
                {
                    return new(HeaderOutcome.Damaged, 0, 0, false, orientation);
                }
            }
            else if (name.SequenceEqual("eXIf"u8))
            {
                var exif = new byte[Math.Min(LargestExif, BinaryPrimitives.ReadUInt32BigEndian(bytes))];
                content.Position = at + 8;
                var length = content.ReadAtLeast(exif, exif.Length, throwOnEndOfStream: false);
                orientation = ExifOrientation.Read(exif.AsSpan(0, length));
            }
            else if (name.SequenceEqual("IEND"u8))
            {
                return new(HeaderOutcome.Read, width, height, interlaced, orientation);
            }
        }
    }
}
