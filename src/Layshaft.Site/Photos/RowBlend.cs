using System.Runtime.Intrinsics.X86;

namespace Layshaft.Site.Photos;

/// <summary>The two inner loops of shrinking, over RGBA bytes. Whole-number sums: the same bytes on every processor.</summary>
internal static class RowBlend
{
    private const int Half = 1 << (LanczosWeights.Bits - 1);

    /// <summary>One row made narrower. <paramref name="row"/> must be padded to at least as many pixels as there are taps.</summary>
    public static void Across(ReadOnlySpan<byte> row, Span<byte> narrow, LanczosWeights weights, int width, bool portable = false)
    {
        if (Avx2.IsSupported && !portable)
        {
            RowBlendAvx2.Across(row, narrow[..(width * Picture.PixelBytes)], weights);
            return;
        }

        for (var x = 0; x < width; x++)
        {
            var pixels = row.Slice(weights.Start(x) * Picture.PixelBytes, weights.Taps * Picture.PixelBytes);
            for (var c = 0; c < Picture.PixelBytes; c++)
            {
                var sum = Half;
                for (var t = 0; t < weights.Taps; t++)
                {
                    sum += pixels[(t * Picture.PixelBytes) + c] * weights.Of(x)[t];
                }

                narrow[(x * Picture.PixelBytes) + c] = (byte)Math.Clamp(sum >> LanczosWeights.Bits, 0, 255);
            }
        }
    }

    /// <summary>One row made of several. Each has the stride of <paramref name="blended"/>, a multiple of 16.</summary>
    public static void Down(ReadOnlySpan<byte> rows, ReadOnlySpan<int> places, ReadOnlySpan<short> weights, Span<byte> blended, bool portable = false)
    {
        if (Avx2.IsSupported && !portable)
        {
            RowBlendAvx2.Down(rows, places, weights, blended);
            return;
        }

        for (var x = 0; x < blended.Length; x++)
        {
            var sum = Half;
            for (var t = 0; t < places.Length; t++)
            {
                sum += rows[places[t] + x] * weights[t];
            }

            blended[x] = (byte)Math.Clamp(sum >> LanczosWeights.Bits, 0, 255);
        }
    }
}
