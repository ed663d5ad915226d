using Layshaft.Book.Reading;
using Layshaft.Site.Building;
using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Building;

/// <summary>A file is known by size and time, as long as its time is old enough to tell.</summary>
public sealed class FileCacheTests
{
    private static readonly long LongAgo = DateTime.UtcNow.AddDays(-1).Ticks;
    private static readonly BookFile Text = new("jobs/2026/1/job.yaml", 10, LongAgo);
    private static readonly BookFile Photo = new("jobs/2026/1/photos/Öl.jpg", 20, LongAgo);
    private static readonly ContentHash Hash = new(0, 1, 0, 2);

    private static readonly UsablePicture Picture = new(Photo.Path, (1600, 1200), (320, 240)) { Middle = (800, 600), Hash = new ContentHash(0, 3, 0, 4).ToString() };

    private byte[]? _kept;

    public FileCacheTests()
    {
        var memory = Kept();
        memory.Note(Text, Hash);
        memory.Note(Photo, Picture);
        Keep(memory);
    }

    [Fact]
    public void What_was_noted_is_known_the_next_time_of_a_file_of_the_same_size_and_time()
    {
        var memory = Kept();
        Assert.Equal(Hash, memory.HashOf(Text));
        Assert.Equal(Picture, memory.Recall(Photo));
        Assert.Equal(new ContentHash(0, 3, 0, 4), memory.HashOf(Photo));
        Assert.Null(memory.HashOf(Text with { Length = 11 }));
        Assert.Null(memory.HashOf(Text with { Modified = LongAgo + 1 }));
        Assert.Null(memory.HashOf(Text with { Path = "jobs/2026/2/job.yaml" }));
        Assert.Null(memory.Recall(Text));
    }

    [Fact]
    public void A_file_so_young_that_a_change_would_not_show_in_its_time_is_not_noted()
    {
        var memory = Kept();
        var young = Text with { Path = "shop.yaml", Modified = DateTime.UtcNow.Ticks };
        memory.Note(young, Hash);
        memory.Note(young with { Modified = 0 }, Hash);
        Assert.Null(memory.HashOf(young));
        Assert.Null(memory.HashOf(young with { Modified = 0 }));
    }

    [Fact]
    public void A_file_that_is_not_asked_for_is_forgotten_and_a_changed_one_known_as_it_is_now()
    {
        var memory = Kept();
        var later = Text with { Modified = LongAgo + 1 };
        memory.Note(later, new ContentHash(0, 5, 0, 6));
        Assert.Equal(new ContentHash(0, 5, 0, 6), memory.HashOf(later));
        Keep(memory);
        Assert.Equal(new ContentHash(0, 5, 0, 6), Kept().HashOf(later));
        Assert.Null(Kept().HashOf(Text));
        Assert.Null(Kept().Recall(Photo));
    }

    [Fact]
    public void A_file_of_a_part_that_nobody_opens_stays_known()
    {
        var memory = Kept();
        memory.Keep(Photo);
        Keep(memory);
        Assert.Equal(Picture, Kept().Recall(Photo));
    }

    [Fact]
    public void Of_a_file_that_nobody_opens_size_and_time_are_known_and_no_more()
    {
        var stray = Photo with { Path = "jobs/2026/1/invoice.pdf" };
        var memory = Kept();
        memory.See(stray);
        memory.See(Photo);
        Keep(memory);
        var next = Kept();
        Assert.Equal((true, false, true), (next.Keep(stray), next.Keep(stray with { Modified = LongAgo + 1 }), next.Keep(Photo)));
        Assert.Null(next.HashOf(stray));
        Assert.Null(next.Recall(stray));
        Assert.Equal(Picture, next.Recall(Photo));
        Assert.Equal([stray.Path, Photo.Path], Kept().Unseen("jobs"));
    }

    private FileCache Kept()
    {
        using var reader = _kept is null ? null : new BinaryReader(new MemoryStream(_kept));
        return reader is null ? new() : FileCache.Read(reader);
    }

    private void Keep(FileCache memory)
    {
        using var stream = new MemoryStream();
        using (var writer = new BinaryWriter(stream, System.Text.Encoding.UTF8, leaveOpen: true))
        {
            memory.Write(writer);
        }

        _kept = stream.ToArray();
    }
}
