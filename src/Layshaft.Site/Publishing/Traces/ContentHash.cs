using System.Buffers.Binary;

namespace Layshaft.Site.Publishing;

/// <summary>
/// A SHA-256 as a value: a site of ten seasons has two hundred thousand files, each with several. Of plain numbers: a method that takes
/// or gives a wider one (<see cref="UInt128"/>) cannot be compiled ahead.
/// </summary>
/// <param name="First">Its first eight bytes, the highest first.</param>
/// <param name="Second">The next eight.</param>
/// <param name="Third">The next eight.</param>
/// <param name="Fourth">The last eight.</param>
public readonly record struct ContentHash(ulong First, ulong Second, ulong Third, ulong Fourth)
{
    /// <summary>Its length in bytes.</summary>
    public const int Bytes = 32;

    /// <summary>The hash that 32 bytes are.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <exception cref="ArgumentOutOfRangeException">They are fewer than 32.</exception>
    public static ContentHash Of(ReadOnlySpan<byte> bytes) =>
        new(
            BinaryPrimitives.ReadUInt64BigEndian(bytes),
            BinaryPrimitives.ReadUInt64BigEndian(bytes[8..]),
            BinaryPrimitives.ReadUInt64BigEndian(bytes[16..]),
            BinaryPrimitives.ReadUInt64BigEndian(bytes[24..]));

    /// <summary>The hash as it is written, or null for anything else.</summary>
    /// <param name="text">64 hexadecimal digits.</param>
    public static ContentHash? Parse(string? text)
    {
        Span<byte> bytes = stackalloc byte[Bytes];
        return text?.Length == 2 * Bytes && Convert.FromHexString(text, bytes, out _, out _) == System.Buffers.OperationStatus.Done ? Of(bytes) : null;
    }

    /// <summary>Writes its 32 bytes.</summary>
    /// <param name="bytes">Where to.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is too little room.</exception>
    public void CopyTo(Span<byte> bytes)
    {
        BinaryPrimitives.WriteUInt64BigEndian(bytes, First);
        BinaryPrimitives.WriteUInt64BigEndian(bytes[8..], Second);
        BinaryPrimitives.WriteUInt64BigEndian(bytes[16..], Third);
        BinaryPrimitives.WriteUInt64BigEndian(bytes[24..], Fourth);
    }

    /// <summary>Whether another is the same.</summary>
    /// <param name="other">The other.</param>
    public bool Equals(ContentHash other) => First == other.First && Second == other.Second && Third == other.Third && Fourth == other.Fourth;

    /// <summary>Any of its bits are as good as others.</summary>
    public override int GetHashCode() => unchecked((int)First);

    /// <summary>Writes 64 hexadecimal digits in lower case as ASCII.</summary>
    /// <param name="to">Where to.</param>
    internal void WriteTo(Span<byte> to)
    {
        Span<byte> bytes = stackalloc byte[Bytes];
        CopyTo(bytes);
        _ = Convert.TryToHexStringLower(bytes, to, out _);
    }

    /// <summary>64 hexadecimal digits in lower case.</summary>
    public override string ToString() => string.Create(2 * Bytes, this, (text, hash) =>
    {
        Span<byte> bytes = stackalloc byte[Bytes];
        hash.CopyTo(bytes);
        _ = Convert.TryToHexStringLower(bytes, text, out _);
    });
}
