using System.IO.Compression;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages.ShopPages.Tallies;

namespace Layshaft.Site.Building;

/// <summary>What a slice adds to the shop's pages: written, and compressed, until a page asks for it.</summary>
/// <param name="Units">The tally of its units.</param>
/// <param name="Jobs">The tally of its jobs.</param>
/// <param name="Lives">The lives of its parts.</param>
internal sealed record PackedTally(ReadOnlyMemory<byte> Units, ReadOnlyMemory<byte> Jobs, ReadOnlyMemory<byte> Lives)
{
    /// <summary>Packs a tally.</summary>
    /// <param name="tally">The tally.</param>
    public static PackedTally Pack(ShopTally tally) => new(
        Pack(tally.Units, TallyWriter.Default.IReadOnlyListUnitTally),
        Pack(tally.Jobs, TallyWriter.Default.IReadOnlyListJobTally),
        Pack(tally.Lives, TallyWriter.Default.IReadOnlyListLifeTally));

    /// <summary>The tally of its units.</summary>
    public IReadOnlyList<UnitTally> UnpackUnits() => Unpack(Units, TallyReader.Default.IReadOnlyListUnitTally);

    /// <summary>The tally of its jobs.</summary>
    public IReadOnlyList<JobTally> UnpackJobs() => Unpack(Jobs, TallyReader.Default.IReadOnlyListJobTally);

    /// <summary>The lives of its parts.</summary>
    public IReadOnlyList<LifeTally> UnpackLives() => Unpack(Lives, TallyReader.Default.IReadOnlyListLifeTally);

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
        return JsonSerializer.Deserialize(text.ToArray(), type) ?? throw new FormatException();
    }
}

/// <summary>How a tally is read.</summary>
[JsonSourceGenerationOptions(IgnoreReadOnlyProperties = true, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(IReadOnlyList<UnitTally>))]
[JsonSerializable(typeof(IReadOnlyList<JobTally>))]
[JsonSerializable(typeof(IReadOnlyList<LifeTally>))]
internal sealed partial class TallyReader : JsonSerializerContext;

/// <summary>
/// How a tally is written. It only writes: what reading takes would be compiled at each publish in which anything changed.
/// </summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Serialization, IgnoreReadOnlyProperties = true, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(IReadOnlyList<UnitTally>))]
[JsonSerializable(typeof(IReadOnlyList<JobTally>))]
[JsonSerializable(typeof(IReadOnlyList<LifeTally>))]
internal sealed partial class TallyWriter : JsonSerializerContext;
