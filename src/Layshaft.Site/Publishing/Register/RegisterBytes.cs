using System.Buffers.Binary;

namespace Layshaft.Site.Publishing.Register;

/// <summary>How the files of a site are written into the cache.</summary>
internal static class RegisterBytes
{
    private const int RowBytes = ContentHash.Bytes + (2 * sizeof(long)) + sizeof(int);

    /// <summary>Reads them back.</summary>
    /// <param name="reader">Where from.</param>
    /// <param name="noted">When they were written, in ticks.</param>
    /// <param name="whole">The hash of the cache.</param>
    /// <param name="manifest">The hash of the manifest that they belong to.</param>
    /// <exception cref="FormatException">They are something else.</exception>
    /// <exception cref="IOException">There are fewer.</exception>
    internal static SiteRegister Read(BinaryReader reader, long noted, ContentHash whole, ContentHash manifest)
    {
        var marks = ContentHash.ReadAll(reader);
        var paths = PathTable.Read(reader);
        var rows = new RegisterRow[paths.Count];
        Span<byte> bytes = stackalloc byte[RowBytes];
        for (var i = 0; i < rows.Length; i++)
        {
            reader.BaseStream.ReadExactly(bytes);
            rows[i] = Row(bytes, marks.Length);
        }

        return new(paths, rows, HashColumn.Read(reader, paths.Count), marks) { Noted = noted, Hash = whole, List = manifest };
    }

    /// <summary>Writes them.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="register">The files.</param>
    internal static void Write(BinaryWriter writer, SiteRegister register)
    {
        ContentHash.WriteAll(register.Marks, writer);
        register.Paths.Write(writer);
        Span<byte> bytes = stackalloc byte[RowBytes];
        for (var i = 0; i < register.Count; i++)
        {
            Row(register[i], bytes);
            writer.Write(bytes);
        }

        register.Keys.Write(writer);
    }

    private static RegisterRow Row(ReadOnlySpan<byte> bytes, int groups)
    {
        var numbers = bytes[ContentHash.Bytes..];
        var group = BinaryPrimitives.ReadInt32LittleEndian(numbers[(2 * sizeof(long))..]);
        return new()
        {
            Sha256 = ContentHash.Of(bytes),
            Size = BinaryPrimitives.ReadInt64LittleEndian(numbers),
            Modified = BinaryPrimitives.ReadInt64LittleEndian(numbers[sizeof(long)..]),
            Group = group >= 0 && group <= groups ? group : throw new FormatException(),
        };
    }

    private static void Row(RegisterRow row, Span<byte> bytes)
    {
        row.Sha256.CopyTo(bytes);
        var numbers = bytes[ContentHash.Bytes..];
        BinaryPrimitives.WriteInt64LittleEndian(numbers, row.Size);
        BinaryPrimitives.WriteInt64LittleEndian(numbers[sizeof(long)..], row.Modified);
        BinaryPrimitives.WriteInt32LittleEndian(numbers[(2 * sizeof(long))..], row.Group);
    }
}
