namespace Layshaft.Site.Photos;

/// <summary>The picture formats that a photo in the book may have, told by its content, never by its name.</summary>
public enum PhotoFormat
{
    /// <summary>JPEG (ITU-T T.81), what most cameras write.</summary>
    Jpeg,

    /// <summary>PNG (ISO/IEC 15948), what screenshots and scanners write.</summary>
    Png,

    /// <summary>WebP (RFC 9649), still pictures only.</summary>
    WebP,

    /// <summary>HEIC: HEVC pictures in the image file format of ISO/IEC 23008-12, what many phones write.</summary>
    Heic,

    /// <summary>AVIF: AV1 pictures in the image file format of ISO/IEC 23008-12.</summary>
    Avif,
}
