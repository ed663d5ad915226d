using System.Buffers.Binary;
using System.Text;

namespace Layshaft.Site.Tests.Photos;

/// <summary>Writes PNG by hand, to declare sizes that no encoder would.</summary>
internal static class PngChunks
{
    /// <summary>A PNG whose header is sound, with hardly any data behind it.</summary>
    public static byte[] Declaring(int width, int height)
    {
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), height);
        (header[8], header[9]) = (8, 2); // 8 bits, RGB
        return [0x89, .. "PNG\r\n\u001a\n"u8, .. Chunk("IHDR", header), .. Chunk("IDAT", [0x78, 0x9C, 3, 0, 0, 0, 0, 1]), .. Chunk("IEND", [])];
    }

    public static byte[] Chunk(string name, byte[] content)
    {
        byte[] named = [.. Encoding.ASCII.GetBytes(name), .. content];
        var chunk = new byte[content.Length + 12];
        BinaryPrimitives.WriteInt32BigEndian(chunk, content.Length);
        named.CopyTo(chunk, 4);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(chunk.Length - 4), Crc(named));
        return chunk;
    }

    // ISO/IEC 15948, Annex D
    private static uint Crc(byte[] bytes)
    {
        var crc = 0xFFFFFFFFu;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) == 1 ? 0xEDB88320u ^ (crc >> 1) : crc >> 1;
            }
        }

        return ~crc;
    }
}
