using System.IO.Compression;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages.ShopPages.Tallies;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building.Slices;

/// <summary>
/// What a publish keeps of a slice of the book, so that the next need not read it: what it adds to the shop's pages, what is
/// wrong in it, and how many files it has in the site. The tally stays written, and packed, until a page asks for it.
/// </summary>
internal sealed class SliceRecord
{
    private SliceRecord(ContentHash? mark, int outputs, ReadOnlyMemory<byte> units, ReadOnlyMemory<byte> jobs, ReadOnlyMemory<byte> lives, SliceDetails rest) =>
        (Mark, Outputs, Units, Jobs, Lives, Rest) = (mark, outputs, units, jobs, lives, rest);

    /// <summary>Its mark, see <see cref="SliceFingerprint"/>; null for a slice that the next publish shall read again.</summary>
    public ContentHash? Mark { get; }

    /// <summary>How many files it has in the site.</summary>
    public int Outputs { get; }

    /// <summary>The tally of its units, as kept.</summary>
    public ReadOnlyMemory<byte> Units { get; }

    /// <summary>The tally of its jobs, as kept.</summary>
    public ReadOnlyMemory<byte> Jobs { get; }

    /// <summary>The lives of its parts, as kept.</summary>
    public ReadOnlyMemory<byte> Lives { get; }

    /// <summary>Everything else.</summary>
    public SliceDetails Rest { get; }

    /// <summary>The record of a slice that was read.</summary>
    /// <param name="mark">Its mark.</param>
    /// <param name="outputs">How many files it has in the site.</param>
    /// <param name="tally">What it adds to the shop's pages.</param>
    /// <param name="rest">Everything else.</param>
    public static SliceRecord Of(ContentHash? mark, int outputs, ShopTally tally, SliceDetails rest) => new(
        mark,
        outputs,
        Pack(tally.Units, TallyJsonWriter.Default.IReadOnlyListUnitTally),
        Pack(tally.Jobs, TallyJsonWriter.Default.IReadOnlyListJobTally),
        Pack(tally.Lives, TallyJsonWriter.Default.IReadOnlyListLifeTally),
        rest);

    /// <summary>Reads a record back.</summary>
    /// <param name="bytes">All records.</param>
    /// <param name="reader">Stands where this one begins.</param>
    /// <exception cref="IOException">It is none.</exception>
    public static SliceRecord Read(byte[] bytes, BinaryReader reader)
    {
        ContentHash? mark = reader.ReadBoolean() ? ContentHash.Read(reader.BaseStream) : null;
        return new SliceRecord(mark, reader.ReadInt32(), Text(), Text(), Text(), SliceDetails.Read(reader));

        ReadOnlyMemory<byte> Text()
        {
            var length = reader.ReadInt32();
            var text = bytes.AsMemory((int)reader.BaseStream.Position, length);
            reader.BaseStream.Position += length;
            return text;
        }
    }

    /// <summary>Writes it.</summary>
    /// <param name="writer">Where to.</param>
    public void Write(BinaryWriter writer)
    {
        writer.Write(Mark is not null);
        Mark?.WriteTo(writer);
        writer.Write(Outputs);
        foreach (var text in new[] { Units, Jobs, Lives })
        {
            writer.Write(text.Length);
            writer.Write(text.Span);
        }

        Rest.Write(writer);
    }

    /// <summary>The tally of its units.</summary>
    public IReadOnlyList<UnitTally> UnitTallies() => Unpack(Units, TallyJson.Default.IReadOnlyListUnitTally);

    /// <summary>The tally of its jobs.</summary>
    public IReadOnlyList<JobTally> JobTallies() => Unpack(Jobs, TallyJson.Default.IReadOnlyListJobTally);

    /// <summary>The lives of its parts.</summary>
    public IReadOnlyList<LifeTally> LifeTallies() => Unpack(Lives, TallyJson.Default.IReadOnlyListLifeTally);

    private static ReadOnlyMemory<byte> Pack<T>(T value, JsonTypeInfo<T> type)
    {
        using var packed = new MemoryStream();
        using (var packing = new DeflateStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            packing.Write(JsonSerializer.SerializeToUtf8Bytes(value, type));
        }

        return packed.ToArray();
    }

    private static T Unpack<T>(ReadOnlyMemory<byte> packed, JsonTypeInfo<T> type)
        where T : class
    {
        using var text = new MemoryStream();
        using var unpacking = new DeflateStream(new MemoryStream(packed.ToArray()), CompressionMode.Decompress);
        unpacking.CopyTo(text);
        return Parse(text.ToArray(), type);
    }

    private static T Parse<T>(ReadOnlyMemory<byte> text, JsonTypeInfo<T> type)
        where T : class
        => JsonSerializer.Deserialize(text.Span, type) ?? throw new FormatException();
}
