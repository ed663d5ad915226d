using System.Buffers;
using System.Runtime.InteropServices;

namespace Layshaft.Site.Photos;

/// <summary>A small picture in memory: opaque RGBA, 8 bits each, row after row without gaps. Pooled, so dispose it.</summary>
internal sealed class Picture : IDisposable
{
    /// <summary>Bytes in a pixel.</summary>
    public const int PixelBytes = 4;

    private byte[]? _bytes;

    public Picture(int width, int height)
    {
        Width = width;
        Height = height;
        _bytes = ArrayPool<byte>.Shared.Rent(Length);
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>All bytes.</summary>
    public Span<byte> Bytes => Array.AsSpan(0, Length);

    /// <summary>All pixels.</summary>
    public Span<uint> Pixels => MemoryMarshal.Cast<byte, uint>(Bytes);

    private int Length => Width * Height * PixelBytes;

    private byte[] Array => _bytes ?? throw new ObjectDisposedException(nameof(Picture));

    /// <summary>The bytes of one row.</summary>
    public Span<byte> Row(int y) => Array.AsSpan(y * Width * PixelBytes, Width * PixelBytes);

    /// <summary>Holds the bytes in place while native code works on them.</summary>
    public T Pinned<T>(Func<IntPtr, T> use)
    {
        var handle = GCHandle.Alloc(Array, GCHandleType.Pinned);
        try
        {
            return use(handle.AddrOfPinnedObject());
        }
        finally
        {
            handle.Free();
        }
    }

    public void Dispose()
    {
        if (_bytes is { } bytes)
        {
            _bytes = null;
            ArrayPool<byte>.Shared.Return(bytes);
        }
    }
}
