using System.Buffers.Binary;
using System.Text;

namespace Layshaft.Site.Tests.Photos;

/// <summary>Puts Exif with a place, XMP, IPTC and a comment into encoded pictures, each with the same tell-tale word.</summary>
internal static class PlantedMetadata
{
    public const string Word = "TELLTALEWORD";

    /// <summary>A JPEG with segments spliced in behind its first marker.</summary>
    public static byte[] InJpeg(byte[] jpeg, int orientation = 1, string word = Word)
    {
        byte[] exif = [.. "Exif\0\0"u8, .. Tiff(orientation, word)];
        var xmp = Encoding.ASCII.GetBytes("http://ns.adobe.com/xap/1.0/\0" + Xmp.Replace(Word, word, StringComparison.Ordinal));
        byte[] iptc = [.. "Photoshop 3.0\0"u8, .. "8BIM\u0004\u0004\0\0"u8, 0, 0, 0, (byte)(5 + word.Length), 0x1C, 2, 120, 0, (byte)word.Length, .. Encoding.ASCII.GetBytes(word), 0];
        return [.. jpeg.AsSpan(0, 2), .. Segment(0xE1, exif), .. Segment(0xE1, xmp), .. Segment(0xED, iptc), .. Segment(0xFE, Encoding.ASCII.GetBytes(word)), .. jpeg.AsSpan(2)];
    }

    /// <summary>A PNG with a text chunk and an Exif chunk behind its header.</summary>
    public static byte[] InPng(byte[] png, int orientation = 1)
    {
        var text = Encoding.ASCII.GetBytes("Comment\0" + Word);
        return [.. png.AsSpan(0, 33), .. PngChunks.Chunk("tEXt", text), .. PngChunks.Chunk("eXIf", Tiff(orientation)), .. png.AsSpan(33)];
    }

    /// <summary>A lossy WebP put into the extended layout with Exif and XMP behind the picture.</summary>
    public static byte[] InWebP(byte[] webp, int width, int height, int orientation = 1)
    {
        byte[] extended = [0b0000_1100, 0, 0, 0, .. ThreeBytes(width - 1), .. ThreeBytes(height - 1)];
        byte[] chunks = [.. Riff("VP8X", extended), .. webp.AsSpan(12), .. Riff("EXIF", Tiff(orientation)), .. Riff("XMP ", Encoding.ASCII.GetBytes(Xmp))];
        var size = new byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(size, chunks.Length + 4);
        return [.. "RIFF"u8, .. size, .. "WEBP"u8, .. chunks];
    }

    private const string Xmp = $"<x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><d>{Word}</d></x:xmpmeta>";

    private static byte[] Segment(byte marker, byte[] content) =>
        [0xFF, marker, (byte)((content.Length + 2) >> 8), (byte)((content.Length + 2) & 0xFF), .. content];

    private static byte[] Riff(string name, byte[] content)
    {
        var size = new byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(size, content.Length);
        return [.. Encoding.ASCII.GetBytes(name), .. size, .. content, .. new byte[content.Length & 1]];
    }

    private static byte[] ThreeBytes(int value) => [(byte)(value & 0xFF), (byte)((value >> 8) & 0xFF), (byte)(value >> 16)];

    // Description, the device, orientation, and a pointer to a place in the southern hemisphere
    private static byte[] Tiff(int orientation, string planted = Word)
    {
        var word = Encoding.ASCII.GetBytes(planted + "\0");
        var gpsAt = 8 + 2 + (4 * 12) + 4;
        var wordAt = gpsAt + 2 + (2 * 12) + 4;
        var latitudeAt = wordAt + word.Length + (word.Length & 1);
        return
        [
            .. "II*\0"u8, .. Long(8),
            .. Short(4), .. Entry(0x010E, 2, word.Length, wordAt), .. Entry(0x010F, 2, word.Length, wordAt), .. Entry(0x0112, 3, 1, orientation), .. Entry(0x8825, 4, 1, gpsAt), .. Long(0),
            .. Short(2), .. Entry(1, 2, 2, 'S'), .. Entry(2, 5, 3, latitudeAt), .. Long(0),
            .. word, .. new byte[word.Length & 1],
            .. Long(33), .. Long(1), .. Long(51), .. Long(1), .. Long(3599), .. Long(100),
        ];
    }

    private static byte[] Entry(int tag, int type, int count, int value) => [.. Short(tag), .. Short(type), .. Long(count), .. Long(value)];

    private static byte[] Short(int value) => [(byte)(value & 0xFF), (byte)(value >> 8)];

    private static byte[] Long(int value) => [.. Short(value & 0xFFFF), .. Short(value >> 16)];
}
