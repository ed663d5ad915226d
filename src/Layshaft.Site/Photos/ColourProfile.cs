namespace Layshaft.Site.Photos;

/// <summary>The colour space that a photo's numbers are meant in.</summary>
public enum ColourProfile
{
    /// <summary>sRGB (IEC 61966-2-1), or no profile at all, which browsers read as sRGB.</summary>
    Srgb,

    /// <summary>The primaries of Display P3, which many phones write.</summary>
    DisplayP3,

    /// <summary>The primaries of Adobe RGB (1998).</summary>
    AdobeRgb,

    /// <summary>The primaries of ITU-R BT.2020.</summary>
    Rec2020,

    /// <summary>Another profile; it is converted to sRGB all the same.</summary>
    Other,
}
