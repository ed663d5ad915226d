using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Layshaft.Site.Photos;

/// <summary>The loops of <see cref="RowBlend"/> for processors with AVX2: neighbours are multiplied and added in one step.</summary>
/// <remarks>
/// Compiled fully at once: a publish is over before the runtime would have found them worth it. The first lines of each
/// check that no place lies outside, so that the loops need not.
/// </remarks>
internal static class RowBlendAvx2
{
    private const int Half = 1 << (LanczosWeights.Bits - 1);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Across(ReadOnlySpan<byte> row, Span<byte> narrow, LanczosWeights weights)
    {
        var taps = weights.Taps;
        var starts = weights.Starts;
        ArgumentOutOfRangeException.ThrowIfGreaterThan((starts[^1] + taps) * Picture.PixelBytes, row.Length);
        ArgumentOutOfRangeException.ThrowIfNotEqual(narrow.Length, starts.Length * Picture.PixelBytes);

        // r0 r1 g0 g1 b0 b1 a0 a1 | r2 r3 …, and their weights in the same order
        var pairPixels = Vector128.Create((byte)0, 4, 1, 5, 2, 6, 3, 7, 8, 12, 9, 13, 10, 14, 11, 15);
        var pairWeights = Vector256.Create(
            (byte)0, 1, 2, 3, 0, 1, 2, 3, 0, 1, 2, 3, 0, 1, 2, 3, 4, 5, 6, 7, 4, 5, 6, 7, 4, 5, 6, 7, 4, 5, 6, 7);
        var half = Vector128.Create(Half);
        ref var pixels = ref MemoryMarshal.GetReference(row);
        ref var weight = ref Unsafe.As<short, byte>(ref MemoryMarshal.GetReference(weights.All));
        ref var result = ref MemoryMarshal.GetReference(narrow);
        unchecked
        {
            for (var x = 0; x < starts.Length; x++)
            {
                ref var pixel = ref Unsafe.Add(ref pixels, starts[x] * Picture.PixelBytes);
                var sum = Vector256<int>.Zero;
                for (var t = 0; t < taps; t += 4)
                {
                    var four = Ssse3.Shuffle(Vector128.LoadUnsafe(ref pixel), pairPixels);
                    var two = Vector256.Create(Unsafe.ReadUnaligned<long>(ref weight)).AsByte();
                    sum += Avx2.MultiplyAddAdjacent(Avx2.ConvertToVector256Int16(four), Avx2.Shuffle(two, pairWeights).AsInt16());
                    pixel = ref Unsafe.Add(ref pixel, 4 * Picture.PixelBytes);
                    weight = ref Unsafe.Add(ref weight, 4 * sizeof(short));
                }

                var whole = Vector128.ShiftRightArithmetic(sum.GetLower() + sum.GetUpper() + half, LanczosWeights.Bits);
                var narrowed = Sse2.PackSignedSaturate(whole, whole);
                Unsafe.WriteUnaligned(ref result, Sse2.PackUnsignedSaturate(narrowed, narrowed).AsUInt32().ToScalar());
                result = ref Unsafe.Add(ref result, Picture.PixelBytes);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Down(ReadOnlySpan<byte> rows, ReadOnlySpan<int> places, ReadOnlySpan<short> weights, Span<byte> blended)
    {
        foreach (var place in places)
        {
            ArgumentOutOfRangeException.ThrowIfGreaterThan(place + blended.Length, rows.Length);
        }

        ArgumentOutOfRangeException.ThrowIfNotEqual(weights.Length, places.Length);
        ArgumentOutOfRangeException.ThrowIfNotEqual(blended.Length % 16, 0);
        var pairs = MemoryMarshal.Cast<short, int>(weights);
        ref var first = ref MemoryMarshal.GetReference(rows);
        unchecked
        {
            for (var x = 0; x < blended.Length; x += 16)
            {
                var low = Vector256.Create(Half);
                var high = low;
                for (var t = 0; t < pairs.Length; t++)
                {
                    var upper = Vector128.LoadUnsafe(ref first, (nuint)(places[2 * t] + x));
                    var lower = Vector128.LoadUnsafe(ref first, (nuint)(places[(2 * t) + 1] + x));
                    var pair = Vector256.Create(pairs[t]).AsInt16();
                    low += Avx2.MultiplyAddAdjacent(Avx2.ConvertToVector256Int16(Sse2.UnpackLow(upper, lower)), pair);
                    high += Avx2.MultiplyAddAdjacent(Avx2.ConvertToVector256Int16(Sse2.UnpackHigh(upper, lower)), pair);
                }

                low = Vector256.ShiftRightArithmetic(low, LanczosWeights.Bits);
                high = Vector256.ShiftRightArithmetic(high, LanczosWeights.Bits);
                var inOrder = Avx2.Permute4x64(Avx2.PackSignedSaturate(low, high).AsInt64(), 0b11_01_10_00).AsInt16();
                Sse2.PackUnsignedSaturate(inOrder.GetLower(), inOrder.GetUpper()).CopyTo(blended[x..]);
            }
        }
    }
}
