using System.Buffers.Binary;

namespace Layshaft.Site.Publishing;

/// <summary>A SHA-256 as a value: a site of ten seasons has two hundred thousand files, each with several.</summary>
/// <param name="High">Its first sixteen bytes.</param>
/// <param name="Low">Its last sixteen bytes.</param>
public readonly record struct ContentHash(UInt128 High, UInt128 Low)
{
    /// <summary>Its length in bytes.</summary>
    public const int Bytes = 32;

    /// <summary>The hash that 32 bytes are.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <exception cref="ArgumentOutOfRangeException">They are fewer than 32.</exception>
    public static ContentHash Of(ReadOnlySpan<byte> bytes) =>
        new(BinaryPrimitives.ReadUInt128BigEndian(bytes), BinaryPrimitives.ReadUInt128BigEndian(bytes[16..]));

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
        BinaryPrimitives.WriteUInt128BigEndian(bytes, High);
        BinaryPrimitives.WriteUInt128BigEndian(bytes[16..], Low);
    }

    /// <summary>Reads the 32 bytes of one.</summary>
    /// <param name="from">Where from.</param>
    /// <exception cref="EndOfStreamException">There are fewer.</exception>
    internal static ContentHash Read(Stream from)
    {
        Span<byte> bytes = stackalloc byte[Bytes];
        from.ReadExactly(bytes);
        return Of(bytes);
    }

    /// <summary>Writes its 32 bytes.</summary>
    /// <param name="to">Where to.</param>
    internal void WriteTo(BinaryWriter to)
    {
        Span<byte> bytes = stackalloc byte[Bytes];
        CopyTo(bytes);
        to.Write(bytes);
    }

    /// <summary>64 hexadecimal digits in lower case.</summary>
    public override string ToString() => string.Create(2 * Bytes, this, (text, hash) => hash.WriteTo(text));

    /// <summary>Writes 64 hexadecimal digits in lower case.</summary>
    /// <param name="to">Where to.</param>
    internal void WriteTo(Span<char> to)
    {
        Span<byte> bytes = stackalloc byte[Bytes];
        CopyTo(bytes);
        _ = Convert.TryToHexStringLower(bytes, to, out _);
    }
}
