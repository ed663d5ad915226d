using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Layshaft.Site.Photos;

/// <summary>The two inner loops of shrinking, over RGBA bytes. Whole-number sums: the same bytes on every processor.</summary>
internal static class RowBlend
{
    private const int Half = 1 << (LanczosWeights.Bits - 1);

    // r0 r1 g0 g1 b0 b1 a0 a1 | r2 r3 …, so that neighbours are multiplied and added in one step
    private static readonly Vector128<byte> PairPixels = Vector128.Create((byte)0, 4, 1, 5, 2, 6, 3, 7, 8, 12, 9, 13, 10, 14, 11, 15);

    private static readonly Vector256<byte> PairWeights = Vector256.Create(
        (byte)0, 1, 2, 3, 0, 1, 2, 3, 0, 1, 2, 3, 0, 1, 2, 3, 4, 5, 6, 7, 4, 5, 6, 7, 4, 5, 6, 7, 4, 5, 6, 7);

    /// <summary>One row made narrower. <paramref name="row"/> must be padded to at least as many pixels as there are taps.</summary>
    public static void Across(ReadOnlySpan<byte> row, Span<byte> narrow, LanczosWeights weights, int width, bool portable = false)
    {
        var byPairs = Avx2.IsSupported && !portable;
        for (var x = 0; x < width; x++)
        {
            var pixels = row.Slice(weights.Start(x) * Picture.PixelBytes, weights.Taps * Picture.PixelBytes);
            var sum = byPairs ? SumByPairs(pixels, weights.Of(x)) : Sum(pixels, weights.Of(x));
            var rounded = Vector128.ShiftRightArithmetic(sum + Vector128.Create(Half), LanczosWeights.Bits);
            var clamped = Vector128.Min(Vector128.Max(rounded, Vector128<int>.Zero), Vector128.Create(255));
            var bytes = Vector128.Narrow(Vector128.Narrow(clamped, clamped), Vector128<short>.Zero).AsUInt32();
            Unsafe.WriteUnaligned(ref narrow[x * Picture.PixelBytes], bytes.ToScalar());
        }
    }

    /// <summary>One row made of several. Each has the stride of <paramref name="blended"/>, a multiple of 16.</summary>
    public static void Down(ReadOnlySpan<byte> rows, ReadOnlySpan<int> places, ReadOnlySpan<short> weights, Span<byte> blended, bool portable = false)
    {
        if (Avx2.IsSupported && !portable)
        {
            for (var x = 0; x < blended.Length; x += Vector128<byte>.Count)
            {
                DownByPairs(rows, places, weights, x).CopyTo(blended[x..]);
            }

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

    private static Vector128<int> Sum(ReadOnlySpan<byte> pixels, ReadOnlySpan<short> weights)
    {
        var sum = Vector128<int>.Zero;
        var each = MemoryMarshal.Cast<byte, uint>(pixels);
        for (var t = 0; t < weights.Length; t++)
        {
            var wide = Vector128.WidenLower(Vector128.WidenLower(Vector128.CreateScalar(each[t]).AsByte())).AsInt32();
            sum += wide * (int)weights[t];
        }

        return sum;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector128<int> SumByPairs(ReadOnlySpan<byte> pixels, ReadOnlySpan<short> weights)
    {
        var sum = Vector256<int>.Zero;
        ref var pixel = ref MemoryMarshal.GetReference(pixels);
        ref var weight = ref Unsafe.As<short, byte>(ref MemoryMarshal.GetReference(weights));
        for (var t = 0; t < weights.Length; t += 4)
        {
            var four = Ssse3.Shuffle(Vector128.LoadUnsafe(ref pixel, (nuint)(t * 4)), PairPixels);
            var two = Vector256.Create(Unsafe.ReadUnaligned<long>(ref Unsafe.Add(ref weight, t * 2))).AsByte();
            sum += Avx2.MultiplyAddAdjacent(Avx2.ConvertToVector256Int16(four), Avx2.Shuffle(two, PairWeights).AsInt16());
        }

        return sum.GetLower() + sum.GetUpper();
    }

    private static Vector128<byte> DownByPairs(ReadOnlySpan<byte> rows, ReadOnlySpan<int> places, ReadOnlySpan<short> weights, int x)
    {
        var low = Vector256.Create(Half);
        var high = low;
        for (var t = 0; t < places.Length; t += 2)
        {
            var upper = Vector128.Create(rows.Slice(places[t] + x, 16));
            var lower = Vector128.Create(rows.Slice(places[t + 1] + x, 16));
            var pair = Vector256.Create(unchecked((weights[t + 1] << 16) | (ushort)weights[t])).AsInt16();
            low += Avx2.MultiplyAddAdjacent(Avx2.ConvertToVector256Int16(Sse2.UnpackLow(upper, lower)), pair);
            high += Avx2.MultiplyAddAdjacent(Avx2.ConvertToVector256Int16(Sse2.UnpackHigh(upper, lower)), pair);
        }

        low = Vector256.ShiftRightArithmetic(low, LanczosWeights.Bits);
        high = Vector256.ShiftRightArithmetic(high, LanczosWeights.Bits);
        var inOrder = Avx2.Permute4x64(Avx2.PackSignedSaturate(low, high).AsInt64(), 0b11_01_10_00).AsInt16();
        return Sse2.PackUnsignedSaturate(inOrder.GetLower(), inOrder.GetUpper());
    }
}
