using System.Buffers.Binary;

namespace Layshaft.Site.Photos;

/// <summary>The primary picture of a HEIC or AVIF file as its item properties describe it (ISO/IEC 23008-12, 6.5).</summary>
/// <param name="Outcome">Whether the properties were found; the rest means nothing if not.</param>
/// <param name="Width">Columns as stored.</param>
/// <param name="Height">Rows as stored.</param>
/// <param name="Orientation">What the rotation and mirror properties amount to. Exif in such a file only informs.</param>
/// <param name="Icc">The ICC profile, or null.</param>
/// <param name="Primaries">Colour primaries by ITU-T H.273 where there is no ICC profile; 1 (BT.709, sRGB) if not told.</param>
/// <param name="Transfer">Transfer characteristics by ITU-T H.273; 13 (sRGB) if not told.</param>
internal sealed record HeifHeader(
    HeaderOutcome Outcome,
    int Width = 0,
    int Height = 0,
    PhotoOrientation Orientation = PhotoOrientation.TopLeft,
    byte[]? Icc = null,
    int Primaries = 1,
    int Transfer = 13)
{
    private const int LargestMeta = 4 << 20;

    /// <summary>Reads the box of metadata; the pictures' own data stay on disk.</summary>
    public static HeifHeader Read(Stream content)
    {
        Span<byte> head = stackalloc byte[16];
        byte[]? meta = null;
        for (long at = 0; at < content.Length;)
        {
            content.Position = at;
            var got = content.ReadAtLeast(head, 16, throwOnEndOfStream: false);
            if (got < 8)
            {
                return new(HeaderOutcome.CutShort);
            }

            long size = BinaryPrimitives.ReadUInt32BigEndian(head);
            size = size == 1 && got == 16 ? BinaryPrimitives.ReadInt64BigEndian(head[8..]) : size;
            size = size == 0 ? content.Length - at : size;
            if (size < 8)
            {
                return new(HeaderOutcome.Damaged);
            }

            if (size > content.Length - at)
            {
                return new(HeaderOutcome.CutShort);
            }

            if (head[4..8].SequenceEqual("meta"u8) && meta is null)
            {
                if (size > LargestMeta)
                {
                    return new(HeaderOutcome.Damaged);
                }

                meta = new byte[size];
                content.Position = at;
                content.ReadExactly(meta);
            }

            at += size;
        }

        return meta is null ? new(HeaderOutcome.Damaged) : Describe(meta);
    }

    private static HeifHeader Describe(byte[] meta)
    {
        try
        {
            return HeifProperties.OfPrimary(meta);
        }
        catch (Exception e) when (e is ArgumentOutOfRangeException or IndexOutOfRangeException or OverflowException)
        {
            return new(HeaderOutcome.Damaged); // A length or an index that points outside its box
        }
    }
}
