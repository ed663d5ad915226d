using System.Buffers.Binary;
using Layshaft.Site.Look;

namespace Layshaft.Site.Cards;

/// <summary>
/// Makes a PNG with a palette of one in greys: the drawing library writes no palettes, and a dot of one byte takes it a quarter of the time of
/// one of three.
/// </summary>
internal static class PalettePng
{
    /// <summary>The most colours.</summary>
    public const int MostColours = 256;

    private const int Signature = 8;
    private const int Header = Signature + 4; // the header chunk's name, behind its length
    private const int HeaderEnd = Header + 4 + 13 + 4; // name, content, checksum
    private const int Depth = Header + 4 + 8;
    private const int ColourType = Depth + 1;
    private const byte Greys = 0;
    private const byte Palette = 3;

    /// <summary>The same picture, each grey taken as the number of a colour.</summary>
    /// <param name="grey">A PNG of eight bits grey.</param>
    /// <param name="colours">The colours, at most <see cref="MostColours"/>.</param>
    /// <exception cref="ArgumentException">It is not such a PNG.</exception>
    public static byte[] Of(ReadOnlySpan<byte> grey, IReadOnlyList<Rgb> colours)
    {
        if (grey.Length < HeaderEnd || !grey.Slice(Header, 4).SequenceEqual("IHDR"u8) || grey[Depth] != 8 || grey[ColourType] != Greys)
        {
            throw new ArgumentException("This is not a PNG of eight bits grey.", nameof(grey));
        }

        // What lies between header and picture speaks of greys, and is left out. ISO/IEC 15948, 11.2.2 (IHDR) and 11.2.3 (PLTE)
        var picture = grey[PictureStart(grey)..];
        var png = new byte[HeaderEnd + 12 + (3 * colours.Count) + picture.Length];
        grey[..HeaderEnd].CopyTo(png);
        png[ColourType] = Palette;
        Seal(png.AsSpan(Header, HeaderEnd - Header));
        var palette = png.AsSpan(HeaderEnd, 12 + (3 * colours.Count));
        BinaryPrimitives.WriteInt32BigEndian(palette, 3 * colours.Count);
        "PLTE"u8.CopyTo(palette[4..]);
        for (var i = 0; i < colours.Count; i++)
        {
            (palette[8 + (3 * i)], palette[9 + (3 * i)], palette[10 + (3 * i)]) = ((byte)colours[i].Red, (byte)colours[i].Green, (byte)colours[i].Blue);
        }

        Seal(palette[4..]);
        picture.CopyTo(png.AsSpan(HeaderEnd + palette.Length));
        return png;
    }

    private static int PictureStart(ReadOnlySpan<byte> png)
    {
        var at = HeaderEnd;
        while (!png.Slice(at + 4, 4).SequenceEqual("IDAT"u8))
        {
            at += 12 + BinaryPrimitives.ReadInt32BigEndian(png[at..]);
        }

        return at;
    }

    // A chunk's name and content with room for their checksum: ISO/IEC 15948, Annex D.
    private static void Seal(Span<byte> chunk)
    {
        var crc = 0xFFFFFFFFu;
        foreach (var value in chunk[..^4])
        {
            crc ^= value;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) == 1 ? 0xEDB88320u ^ (crc >> 1) : crc >> 1;
            }
        }

        BinaryPrimitives.WriteUInt32BigEndian(chunk[^4..], ~crc);
    }
}
