using SkiaSharp;

namespace Layshaft.Site.Photos;

/// <summary>Colour spaces as the decoders tell them.</summary>
internal static class ColourSpaces
{
    // Profiles store the primaries rounded to 1/65536 and adapted to D50, each maker a little differently
    private const float Tolerance = 0.002f;

    // SkiaSharp hands every thread the same object for each of these two native spaces, so one thread's Dispose takes it from
    // the others (HandleDictionary.GetOrAddObject). Dispose does nothing once the space was asked for by name: so ask first.
    static ColourSpaces()
    {
        Srgb = SKColorSpace.CreateSrgb();
        SKColorSpace.CreateSrgbLinear();
    }

    /// <summary>sRGB; disposing it does nothing.</summary>
    public static SKColorSpace Srgb { get; }

    /// <summary>The space of a picture that is about to be decoded, or null if the file names none. The only place that may ask a codec for it.</summary>
    public static SKColorSpace? Of(SKCodec codec) => codec.Info.ColorSpace;

    /// <summary>The space of a HEIC or AVIF picture, or null if sRGB is to be assumed.</summary>
    public static SKColorSpace? Of(HeifHeader header)
    {
        if (header.Icc is { } icc)
        {
            return SKColorSpace.CreateIcc(icc);
        }

        // 2 means "unspecified" in ITU-T H.273
        return header is { Primaries: 1 or 2, Transfer: 1 or 2 or 6 or 13 }
            ? null
            : SKColorSpace.CreateCicp((SKColorspacePrimariesCicp)header.Primaries, (SKColorspaceTransferFnCicp)header.Transfer);
    }

    /// <summary>Names a space by its primaries.</summary>
    public static ColourProfile Name(SKColorSpace? space)
    {
        if (space is null || space.IsSrgb)
        {
            return ColourProfile.Srgb;
        }

        var xyz = space.ToColorSpaceXyz();
        return Close(xyz, SKColorSpaceXyz.Srgb) && space.GammaIsCloseToSrgb ? ColourProfile.Srgb
            : Close(xyz, SKColorSpaceXyz.DisplayP3) ? ColourProfile.DisplayP3
            : Close(xyz, SKColorSpaceXyz.AdobeRgb) ? ColourProfile.AdobeRgb
            : Close(xyz, SKColorSpaceXyz.Rec2020) ? ColourProfile.Rec2020
            : ColourProfile.Other;
    }

    private static bool Close(SKColorSpaceXyz a, SKColorSpaceXyz b) =>
        a.Values.Zip(b.Values).All(pair => Math.Abs(pair.First - pair.Second) < Tolerance);
}
