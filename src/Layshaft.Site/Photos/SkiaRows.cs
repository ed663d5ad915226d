using System.Runtime.InteropServices;
using SkiaSharp;

namespace Layshaft.Site.Photos;

/// <summary>
/// Rows of a JPEG, PNG or WebP. A JPEG is decoded at the smallest eighth that still has the size wanted, a band of rows
/// at a time; the others are decoded as a whole. A PNG too large for that is decoded some rows at a time, and from its start each time.
/// </summary>
internal sealed class SkiaRows : DecodedRows
{
    /// <summary>The most pixels of a PNG that are decoded at once, 64 MB of them.</summary>
    public const int WindowPixels = 16 << 20;

    private const int Band = 16;

    // The decoder's own shrink blurs and folds detail near its limit: leave the better filter a sixth to take away
    private const double Margin = 5.0 / 6;
    private readonly SKCodec _codec;
    private readonly SKImageInfo _info;
    private readonly SKBitmap? _window;
    private readonly byte[] _band;
    private readonly GCHandle _pin;
    private int _inBand;
    private int _nextInBand;

    private SkiaRows(SKCodec codec, SKImageInfo info, PhotoOrientation orientation, int windowRows)
    {
        (_codec, _info, Orientation) = (codec, info, orientation);
        if (codec.EncodedFormat == SKEncodedImageFormat.Jpeg && codec.StartScanlineDecode(info) == SKCodecResult.Success)
        {
            _band = new byte[Band * info.RowBytes];
            _pin = GCHandle.Alloc(_band, GCHandleType.Pinned);
            return;
        }

        _band = [];
        _window = new SKBitmap();
        IsDamaged = !_window.TryAllocPixels(info.WithSize(info.Width, windowRows));
    }

    public override int Width => _info.Width;

    public override int Height => _info.Height;

    public override int FullWidth => _codec.Info.Width;

    public override int FullHeight => _codec.Info.Height;

    public override PhotoOrientation Orientation { get; }

    /// <summary>Starts decoding; null if the content is not what the facts say.</summary>
    /// <param name="data">The whole file.</param>
    /// <param name="facts">What its header said.</param>
    /// <param name="width">Least width wanted, before turning.</param>
    /// <param name="height">Least height wanted, before turning.</param>
    public static SkiaRows? Open(SKData data, PhotoFacts facts, int width, int height)
    {
        var codec = SKCodec.Create(data);
        if (codec is null)
        {
            return null;
        }

        if (codec.Info.Width != facts.StoredWidth || codec.Info.Height != facts.StoredHeight)
        {
            codec.Dispose();
            return null;
        }

        var alpha = codec.Info.AlphaType == SKAlphaType.Opaque ? SKAlphaType.Opaque : SKAlphaType.Premul;
        var size = DecodedSize(codec, width, height);
        return new(codec, new(size.Width, size.Height, SKColorType.Rgba8888, alpha, ColourSpaces.Srgb), facts.Orientation, size.Height);
    }

    /// <summary>Starts decoding a PNG some rows at a time; null if the content is not what the facts say.</summary>
    /// <param name="content">The file, which stays open.</param>
    /// <param name="facts">What its header said.</param>
    /// <param name="windowPixels">The most pixels at once; a row at least.</param>
    public static SkiaRows? Open(Stream content, PhotoFacts facts, int windowPixels = WindowPixels)
    {
        content.Position = 0;
        var codec = SKCodec.Create(new SKManagedStream(content, disposeManagedStream: false));
        if (codec is null || codec.Info.Width != facts.StoredWidth || codec.Info.Height != facts.StoredHeight)
        {
            codec?.Dispose();
            return null;
        }

        var alpha = codec.Info.AlphaType == SKAlphaType.Opaque ? SKAlphaType.Opaque : SKAlphaType.Premul;
        var info = new SKImageInfo(facts.StoredWidth, facts.StoredHeight, SKColorType.Rgba8888, alpha, ColourSpaces.Srgb);
        return new(codec, info, facts.Orientation, Math.Clamp(windowPixels / info.Width, 1, info.Height));
    }

    public override bool Next(Span<byte> row)
    {
        if (_nextInBand == _inBand && !Refill())
        {
            return false;
        }

        var rows = _window is null ? _band : _window.GetPixelSpan();
        rows.Slice(_nextInBand++ * _info.RowBytes, _info.RowBytes).CopyTo(row);
        RowsRead++;
        if (_info.AlphaType != SKAlphaType.Opaque)
        {
            FlattenPremultiplied(row);
        }

        return true;
    }

    public override void Dispose()
    {
        _window?.Dispose();
        _codec.Dispose();
        if (_pin.IsAllocated)
        {
            _pin.Free();
        }
    }

    private static SKSizeI DecodedSize(SKCodec codec, int width, int height)
    {
        for (var eighths = 1; eighths < 8 && codec.EncodedFormat == SKEncodedImageFormat.Jpeg; eighths++)
        {
            var size = codec.GetScaledDimensions(eighths / 8f);
            if (size.Width * Margin >= width && size.Height * Margin >= height)
            {
                return size;
            }
        }

        return codec.Info.Size;
    }

    private bool Refill()
    {
        var wanted = Math.Min(_window?.Height ?? Band, Height - RowsRead);
        _nextInBand = 0;
        _inBand = wanted == 0 || IsDamaged ? 0 : _window is not null ? Decode(_window, wanted) : _codec.GetScanlines(_pin.AddrOfPinnedObject(), wanted, _info.RowBytes);
        return _inBand > 0;
    }

    private int Decode(SKBitmap window, int rows)
    {
        var result = window.Height == Height ? _codec.GetPixels(_info, window.GetPixels()) : Decode(window.GetPixels(), RowsRead, rows);
        IsDamaged = result is not (SKCodecResult.Success or SKCodecResult.IncompleteInput);
        return result == SKCodecResult.Success ? rows : 0;
    }

    private SKCodecResult Decode(IntPtr pixels, int top, int rows)
    {
        var part = new SKCodecOptions(new SKRectI(0, top, Width, top + rows));
        var begun = _codec.StartIncrementalDecode(_info, pixels, _info.RowBytes, part);
        return begun == SKCodecResult.Success ? _codec.IncrementalDecode(out _) : begun;
    }
}
