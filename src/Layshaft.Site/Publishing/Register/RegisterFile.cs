using System.Buffers.Binary;
using System.Text;

namespace Layshaft.Site.Publishing.Register;

/// <summary>
/// The register as it is kept. It is of this machine and stands outside the site, which has no times in it; if it is lost, outputs are
/// made again and nothing else happens.
/// </summary>
internal static class RegisterFile
{
    private const string Mark = "layshaft register 3";
    private const int RowBytes = ContentHash.Bytes + (2 * sizeof(long)) + sizeof(int);

    /// <summary>Reads a register. One that is missing or damaged is the register of nothing.</summary>
    /// <param name="path">Where it is.</param>
    internal static SiteRegister Read(string path)
    {
        try
        {
            // A damaged path would be planned as a file of its own, so the whole must be as it was written.
            var noted = File.GetLastWriteTimeUtc(path).Ticks;
            using var reader = new BinaryReader(HashedFile.OpenWhole(path, out var whole), Encoding.UTF8);
            return reader.ReadString() == Mark ? Read(reader, noted, whole) : SiteRegister.None;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException or ArgumentException or OverflowException)
        {
            return SiteRegister.None;
        }
    }

    /// <summary>Writes a register, unless the one that is there says the same.</summary>
    /// <param name="files">Writes it.</param>
    /// <param name="path">Where to.</param>
    /// <param name="register">The register.</param>
    /// <param name="list">The hash of the site's list.</param>
    /// <param name="there">The hash of the one that is there; null to write it in any case, so that its own time is that of now.</param>
    internal static void Write(IFileWork files, string path, SiteRegister register, ContentHash list, ContentHash? there = null) =>
        HashedFile.Write(files, path, stream => Write(stream, register, list), there);

    private static SiteRegister Read(BinaryReader reader, long noted, ContentHash whole)
    {
        var list = ContentHash.Read(reader.BaseStream);
        var marks = ContentHash.ReadAll(reader);
        var paths = PathTable.Read(reader);
        var rows = new RegisterRow[paths.Count];
        Span<byte> bytes = stackalloc byte[RowBytes];
        for (var i = 0; i < rows.Length; i++)
        {
            reader.BaseStream.ReadExactly(bytes);
            rows[i] = Row(bytes, marks.Length);
        }

        return new(paths, rows, HashColumn.Read(reader, paths.Count), marks) { Noted = noted, Hash = whole, List = list };
    }

    private static void Write(Stream stream, SiteRegister register, ContentHash list)
    {
        // Not disposed: that would close the stream, which is the caller's.
        var buffer = new BufferedStream(stream, 1 << 16);
        using var writer = new BinaryWriter(buffer, Encoding.UTF8, leaveOpen: true);
        writer.Write(Mark);
        list.WriteTo(writer);
        ContentHash.WriteAll(register.Marks, writer);
        register.Paths.Write(writer);
        Span<byte> bytes = stackalloc byte[RowBytes];
        for (var i = 0; i < register.Count; i++)
        {
            Row(register[i], bytes);
            writer.Write(bytes);
        }

        register.Keys.Write(writer);
        writer.Flush();
        buffer.Flush();
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
