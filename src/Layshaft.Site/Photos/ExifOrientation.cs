using System.Buffers.Binary;

namespace Layshaft.Site.Photos;

/// <summary>Finds the orientation in Exif data that begin with a TIFF header (TIFF 6.0, section 2; tag 274).</summary>
internal static class ExifOrientation
{
    private const int EntryLength = 12;
    private const int Tag = 0x0112;

    /// <summary>The orientation, or stored upright where none is told or the data make no sense.</summary>
    public static PhotoOrientation Read(ReadOnlySpan<byte> tiff)
    {
        if (tiff.Length < 8 || !(tiff[..2].SequenceEqual("II"u8) || tiff[..2].SequenceEqual("MM"u8)))
        {
            return PhotoOrientation.TopLeft;
        }

        var little = tiff[0] == 'I';
        var at = little ? BinaryPrimitives.ReadUInt32LittleEndian(tiff[4..]) : BinaryPrimitives.ReadUInt32BigEndian(tiff[4..]);
        if (at > tiff.Length - 2)
        {
            return PhotoOrientation.TopLeft;
        }

        var directory = tiff[(int)at..];
        int count = Short(directory, little);
        for (var place = 2; count > 0 && place + EntryLength <= directory.Length; place += EntryLength, count--)
        {
            if (Short(directory[place..], little) == Tag)
            {
                int value = Short(directory[(place + 8)..], little);
                return value is >= 1 and <= 8 ? (PhotoOrientation)value : PhotoOrientation.TopLeft;
            }
        }

        return PhotoOrientation.TopLeft;
    }

    private static ushort Short(ReadOnlySpan<byte> bytes, bool little) =>
        little ? BinaryPrimitives.ReadUInt16LittleEndian(bytes) : BinaryPrimitives.ReadUInt16BigEndian(bytes);
}
