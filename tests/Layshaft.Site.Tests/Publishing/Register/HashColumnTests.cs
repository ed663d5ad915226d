using System.Text;
using CsCheck;
using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Tests.Publishing.Register;

/// <summary>A column tells of each what it was made of, holds what neighbours share once, and comes back as it was written.</summary>
public class HashColumnTests
{
    [Fact]
    public void It_tells_of_each_what_it_was_made_of() => Gen.Int[0, 3].Array[0, 40].Sample(kinds =>
    {
        ContentHash? Of(int i) => kinds[i] == 0 ? null : new ContentHash(0, 0, 0, (ulong)kinds[i]);
        var column = HashColumn.Of(kinds.Length, Of);
        Assert.Equal(Enumerable.Range(0, kinds.Length).Select(Of), All(column));
        int[] some = [.. kinds.Where(k => k > 0)];
        Assert.Equal(some.Where((k, i) => i == 0 || some[i - 1] != k).Count(), column.Hashes.Count);
        Assert.All(Enumerable.Range(0, kinds.Length), i => Assert.Equal(column[i], column.NumberOf(i) == 0 ? null : column.Hashes[column.NumberOf(i) - 1]));

        using var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream, Encoding.UTF8);
        column.Write(writer);
        stream.Position = 0;
        using var reader = new BinaryReader(stream);
        Assert.Equal(All(column), All(HashColumn.Read(reader, kinds.Length)));
        Assert.Equal(stream.Length, stream.Position);
    });

    private static IEnumerable<ContentHash?> All(HashColumn column) => Enumerable.Range(0, column.Count).Select(i => column[i]);
}
