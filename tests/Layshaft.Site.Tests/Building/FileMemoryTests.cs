using Layshaft.Book.Reading;
using Layshaft.Site.Building;
using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Building;

/// <summary>A file is known by size and time, as long as its time is old enough to tell.</summary>
public sealed class FileMemoryTests : IDisposable
{
    private static readonly long LongAgo = DateTime.UtcNow.AddDays(-1).Ticks;
    private static readonly BookFile Text = new("jobs/2026/1/job.yaml", 10, LongAgo);
    private static readonly BookFile Photo = new("jobs/2026/1/photos/Öl.jpg", 20, LongAgo);
    private static readonly ContentHash Hash = new(0, 1, 0, 2);

    private static readonly UsablePicture Picture = new(Photo.Path, (1600, 1200), (320, 240)) { Middle = (800, 600), Hash = new ContentHash(0, 3, 0, 4).ToString() };

    private readonly TempFolder _temp = new();

    private string Site => _temp.At("site");

    public FileMemoryTests()
    {
        new StateFolder(Site).Create();
        var memory = FileMemory.Beside(Site);
        memory.Note(Text, Hash);
        memory.Note(Photo, Picture);
        memory.Save();
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void What_was_noted_is_known_the_next_time_of_a_file_of_the_same_size_and_time()
    {
        var memory = FileMemory.Beside(Site);
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
        var memory = FileMemory.Beside(Site);
        var young = Text with { Path = "shop.yaml", Modified = DateTime.UtcNow.Ticks };
        memory.Note(young, Hash);
        memory.Note(young with { Modified = 0 }, Hash);
        Assert.Null(memory.HashOf(young));
        Assert.Null(memory.HashOf(young with { Modified = 0 }));
    }

    [Fact]
    public void A_file_that_is_not_asked_for_is_forgotten_and_a_changed_one_known_as_it_is_now()
    {
        var memory = FileMemory.Beside(Site);
        var later = Text with { Modified = LongAgo + 1 };
        memory.Note(later, new ContentHash(0, 5, 0, 6));
        Assert.Equal(new ContentHash(0, 5, 0, 6), memory.HashOf(later));
        memory.Save();
        Assert.Equal(new ContentHash(0, 5, 0, 6), FileMemory.Beside(Site).HashOf(later));
        Assert.Null(FileMemory.Beside(Site).HashOf(Text));
        Assert.Null(FileMemory.Beside(Site).Recall(Photo));
    }

    [Fact]
    public void A_file_of_a_part_that_nobody_opens_stays_known()
    {
        var memory = FileMemory.Beside(Site);
        memory.Keep(Photo);
        memory.Save();
        Assert.Equal(Picture, FileMemory.Beside(Site).Recall(Photo));
    }

    [Fact]
    public void Of_a_file_that_nobody_opens_size_and_time_are_known_and_no_more()
    {
        var stray = Photo with { Path = "jobs/2026/1/invoice.pdf" };
        var memory = FileMemory.Beside(Site);
        memory.See(stray);
        memory.See(Photo);
        memory.Save();
        var next = FileMemory.Beside(Site);
        Assert.Equal((true, false, true), (next.Keep(stray), next.Keep(stray with { Modified = LongAgo + 1 }), next.Keep(Photo)));
        Assert.Null(next.HashOf(stray));
        Assert.Null(next.Recall(stray));
        Assert.Equal(Picture, next.Recall(Photo));
        Assert.Equal([stray.Path, Photo.Path], FileMemory.Beside(Site).Unseen("jobs"));
    }
}
