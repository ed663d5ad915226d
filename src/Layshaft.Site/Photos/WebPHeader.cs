using System.Buffers.Binary;

namespace Layshaft.Site.Photos;

/// <summary>The size of a WebP picture and whether all of it is there (RFC 9649).</summary>
/// <param name="Outcome">Whether the header was read and the file is as long as it says.</param>
/// <param name="Width">Columns.</param>
/// <param name="Height">Rows.</param>
internal readonly record struct WebPHeader(HeaderOutcome Outcome, int Width, int Height)
{
    /// <summary>Reads the first chunk.</summary>
    public static WebPHeader Read(Stream content)
    {
        Span<byte> head = stackalloc byte[30];
        content.Position = 0;
        if (content.ReadAtLeast(head, 30, throwOnEndOfStream: false) < 30)
        {
            return new(HeaderOutcome.CutShort, 0, 0);
        }

        var declared = BinaryPrimitives.ReadUInt32LittleEndian(head[4..]) + 8L;
        var (width, height) = Size(head[12..16], head[20..]);
        return width <= 0 || height <= 0
            ? new(HeaderOutcome.Damaged, 0, 0)
            : new(declared > content.Length ? HeaderOutcome.CutShort : HeaderOutcome.Read, width, height);
    }

    private static (int Width, int Height) Size(ReadOnlySpan<byte> chunk, ReadOnlySpan<byte> data)
    {
        if (chunk.SequenceEqual("VP8X"u8))
        {
            return (ThreeBytes(data[4..]) + 1, ThreeBytes(data[7..]) + 1);
        }

        if (chunk.SequenceEqual("VP8L"u8) && data[0] == 0x2F)
        {
            var bits = BinaryPrimitives.ReadUInt32LittleEndian(data[1..]);
            return ((int)(bits & 0x3FFF) + 1, (int)((bits >> 14) & 0x3FFF) + 1);
        }

        var lossy = chunk.SequenceEqual("VP8 "u8) && data[3..6].SequenceEqual((ReadOnlySpan<byte>)[0x9D, 0x01, 0x2A]);
        return lossy
            ? (BinaryPrimitives.ReadUInt16LittleEndian(data[6..]) & 0x3FFF, BinaryPrimitives.ReadUInt16LittleEndian(data[8..]) & 0x3FFF)
            : (0, 0);
    }

    private static int ThreeBytes(ReadOnlySpan<byte> at) => at[0] | (at[1] << 8) | (at[2] << 16);
}
