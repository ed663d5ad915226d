using System.Buffers.Binary;
using System.Numerics;
using System.Runtime.InteropServices;

namespace Layshaft.Site.Publishing;

/// <summary>
/// A number of 128 bits that stands for what a look at files saw: equal by chance only once in 2^128, though not safe from forgery.
/// In two halves, since code compiled ahead cannot hold wider numbers, and no cryptographic library has to be loaded for it.
/// </summary>
/// <param name="High">One half.</param>
/// <param name="Low">The other half.</param>
internal readonly record struct QuickHash(ulong High, ulong Low)
{
    // Odd numbers without a pattern: the fractions of the square roots of 2 and 3.
    private const ulong First = 0x6A09E667F3BCC909;
    private const ulong Second = 0xBB67AE8584CAA73B;

    /// <summary>Both halves, each wrapping around.</summary>
    public static QuickHash operator +(QuickHash one, QuickHash other) => unchecked(new(one.High + other.High, one.Low + other.Low));

    /// <summary>The number of a text and two numbers that go with it.</summary>
    /// <param name="text">The text.</param>
    /// <param name="size">A number, such as a file's size.</param>
    /// <param name="time">A number, such as a file's time.</param>
    public static QuickHash Of(ReadOnlySpan<char> text, long size = 0, long time = 0)
    {
        var bytes = MemoryMarshal.AsBytes(text);
        var (high, low) = (Fold(unchecked((ulong)size) ^ Second, First), Fold(unchecked((ulong)time) ^ First, Second));
        Span<byte> last = stackalloc byte[sizeof(ulong)];
        while (bytes.Length > 0)
        {
            ulong word;
            if (bytes.Length >= sizeof(ulong))
            {
                word = BinaryPrimitives.ReadUInt64LittleEndian(bytes);
                bytes = bytes[sizeof(ulong)..];
            }
            else
            {
                last.Clear();
                bytes.CopyTo(last);
                word = BinaryPrimitives.ReadUInt64LittleEndian(last);
                bytes = default;
            }

            (high, low) = (Fold(high ^ word, First) ^ low, Fold(BitOperations.RotateLeft(low, 23) ^ word, Second));
        }

        var length = (ulong)text.Length;
        return new(Fold(high ^ length, Second), Fold(low ^ high ^ length, First));
    }

    private static ulong Fold(ulong number, ulong factor)
    {
        var high = Math.BigMul(number, factor, out var low);
        return high ^ low;
    }
}
