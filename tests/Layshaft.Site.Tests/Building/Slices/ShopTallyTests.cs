using System.Text.Json;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Building;
using Layshaft.Site.Pages.ShopPages.Tallies;
using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Tests.Building.Slices;

/// <summary>What the shop counts, over the whole book and part by part.</summary>
public sealed class ShopTallyTests
{
    [Fact]
    public void The_tally_of_the_demo_is_that_of_its_parts_together()
    {
        var assessment = DemoBook.Review.Assessment!;
        var parts = Parts(assessment).ToList();
        Assert.True(parts.Count > 2);
        parts.Reverse();
        var together = new ShopTally(
            ShopTally.InOrder(parts.SelectMany(p => p.Units)),
            [.. parts.SelectMany(p => p.Jobs)],
            [.. LifeTally.Together(parts.Select(p => p.Lives))],
            parts.Max(p => p.Newest));
        var whole = ShopTally.Of(assessment);
        Assert.Equal(Text(whole with { Jobs = [] }), Text(together with { Jobs = [] }));

        // The order of jobs says nothing: they are only counted.
        Assert.Equal(whole.Jobs.Select(j => JsonSerializer.Serialize(j)).Order(StringComparer.Ordinal), together.Jobs.Select(j => JsonSerializer.Serialize(j)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_tally_that_was_written_reads_the_same()
    {
        var whole = ShopTally.Of(DemoBook.Review.Assessment!);
        var job = new KnownJob("jobs/2025/1/job.yaml", new(1, 2, 3, 4), true, new JobLinks("a", ["S-1"], [], ["hill", "ring"]));
        Problem[] problems = [new("code", new Place("jobs/2025/1/job.yaml", 3, 4), "Grün ist es nicht.", "Write it.", Severity.Notice)];
        var slice = new CachedSlice(new(5, 6, 7, 8), 3, PackedTally.Pack(whole), ["a", "b"], [job], whole.Newest, problems, WearTally.Of(DemoBook.Review.Assessment!), "others");
        LinkReader[] readers = [new("customers/key", "customers/old", "a", "second", "Grün", "Blau", new Place("customers/second.yaml", 1, 2)), new("c", "", "u", "a", "A", null, Place.WholeFile("customers/a.yaml"))];
        var book = new CachedBook("standing", "site", problems, [], readers, new(1, 2, 3, 4), 5, [slice, slice with { Mark = null, Newest = null }]);
        using var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream);
        SliceCacheFormat.Write(writer, book);
        SliceCacheFormat.Write(writer, null);
        stream.Position = 0;
        using var reader = new BinaryReader(stream);
        var read = SliceCacheFormat.Read(reader)!;
        Assert.Equal(JsonSerializer.Serialize(book), JsonSerializer.Serialize(read));
        Assert.Null(SliceCacheFormat.Read(reader));
        Assert.Equal(stream.Length, stream.Position);
        var tally = read.Slices[0].Tally;
        Assert.Equal(Text(whole), Text(new ShopTally(tally.UnpackUnits(), tally.UnpackJobs(), tally.UnpackLives(), whole.Newest)));
    }

    private static string Text(ShopTally tally) => JsonSerializer.Serialize(tally);

    private static IEnumerable<ShopTally> Parts(BookAssessment whole)
    {
        var book = whole.Book;
        foreach (var ids in UnitClusters.Of(book).All)
        {
            Layshaft.Book.Records.Unit[] units = [.. ids.Select(id => book.Units[id])];
            var jobs = book.Jobs.Where(j => ids.Contains(j.Unit)).ToList();
            var part = Slice.Cut(book, units, [.. jobs.Select(j => ($"{j.Folder}/job.yaml", JobLinks.Of(j)))]).WithoutJobs with { Jobs = jobs };
            yield return ShopTally.Of(BookAssessment.OfPart(part, whole.Gearing));
        }
    }
}
