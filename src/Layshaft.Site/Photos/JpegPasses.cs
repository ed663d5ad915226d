namespace Layshaft.Site.Photos;

/// <summary>
/// Whether a JPEG stored in passes is all there. Its decoder gives every row after the first pass, blurred, so that rows
/// are missing cannot tell; the end of image marker must be found instead (ITU-T T.81, B.1.1).
/// </summary>
internal static class JpegPasses
{
    /// <summary>Walks from segment to segment and over the coded data to the end of the first picture.</summary>
    public static bool AreComplete(ReadOnlySpan<byte> jpeg)
    {
        var at = 2;
        while (true)
        {
            var next = jpeg[Math.Min(at, jpeg.Length)..].IndexOf((byte)0xFF);
            if (next < 0 || (at += next) + 1 >= jpeg.Length)
            {
                return false;
            }

            switch (jpeg[at + 1])
            {
                case 0xD9:
                    return true;
                case 0xFF:
                    at++; // Fill byte
                    break;
                case 0x00 or 0x01 or (>= 0xD0 and <= 0xD7):
                    at += 2; // A data byte of FF, or a restart marker: no segment follows
                    break;
                default:
                    if (at + 4 > jpeg.Length)
                    {
                        return false;
                    }

                    at += 2 + (jpeg[at + 2] << 8) + jpeg[at + 3];
                    break;
            }
        }
    }
}
