using System.Buffers.Binary;

namespace Layshaft.Site.Photos;

/// <summary>The size in a PNG's first chunk (ISO/IEC 15948, 11.2.2), and whether its last chunk is there.</summary>
/// <param name="Outcome">Whether the chunk was read and the file ends as a PNG should.</param>
/// <param name="Width">Columns.</param>
/// <param name="Height">Rows.</param>
internal readonly record struct PngHeader(HeaderOutcome Outcome, int Width, int Height)
{
    private const int TailSearched = 4096;

    /// <summary>Reads the first chunk, then looks for the end mark near the end of the file.</summary>
    public static PngHeader Read(Stream content)
    {
        Span<byte> bytes = stackalloc byte[16];
        content.Position = 8;
        if (content.ReadAtLeast(bytes, 16, throwOnEndOfStream: false) < 16)
        {
            return new(HeaderOutcome.CutShort, 0, 0);
        }

        var width = BinaryPrimitives.ReadInt32BigEndian(bytes[8..]);
        var height = BinaryPrimitives.ReadInt32BigEndian(bytes[12..]);
        if (!bytes[4..8].SequenceEqual("IHDR"u8) || width <= 0 || height <= 0)
        {
            return new(HeaderOutcome.Damaged, 0, 0);
        }

        return new(Ends(content) ? HeaderOutcome.Read : HeaderOutcome.CutShort, width, height);
    }

    private static bool Ends(Stream content)
    {
        var tail = new byte[(int)Math.Min(TailSearched, content.Length)];
        content.Position = content.Length - tail.Length;
        content.ReadExactly(tail);
        return tail.AsSpan().LastIndexOf("IEND"u8) >= 0;
    }
}
