using System.Buffers.Binary;
using System.Text;

namespace Layshaft.Site.Photos;

/// <summary>Tells HEIC and AVIF apart from each other and from videos by the brands in the first box (ISO/IEC 14496-12, 4.3).</summary>
internal static class HeifBrands
{
    /// <summary>The still-picture format that the file type box names, or null.</summary>
    public static PhotoFormat? Tell(ReadOnlySpan<byte> head)
    {
        if (head.Length < 16 || !head[4..8].SequenceEqual("ftyp"u8))
        {
            return null;
        }

        var end = (int)Math.Min(BinaryPrimitives.ReadUInt32BigEndian(head), (uint)head.Length);
        var fromMajor = Still(head[8..12]);
        for (var at = 16; fromMajor is null && at + 4 <= end; at += 4)
        {
            fromMajor = Still(head.Slice(at, 4));
        }

        return fromMajor;
    }

    private static PhotoFormat? Still(ReadOnlySpan<byte> brand) => Encoding.Latin1.GetString(brand) switch
    {
        "heic" or "heix" or "heim" or "heis" => PhotoFormat.Heic,
        "avif" => PhotoFormat.Avif,
        _ => null,
    };
}
