using ImageMagick;

namespace Layshaft.Site.Photos;

/// <summary>Whether this system has the native part of the library for HEIC, AVIF and progressive JPEG: there is none for Intel Macs.</summary>
internal static class MagickLibrary
{
    private static readonly Lazy<bool> Probe = new(Probed);

    /// <summary>Whether it can be used.</summary>
    public static bool IsHere => Probe.Value;

    private static bool Probed()
    {
        try
        {
            using var image = new MagickImage();
            return true;
        }
        catch (Exception e) when (e is TypeInitializationException or DllNotFoundException or BadImageFormatException)
        {
            return false;
        }
    }
}
