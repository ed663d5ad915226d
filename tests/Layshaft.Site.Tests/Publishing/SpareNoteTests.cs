using System.Globalization;
using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>What the times of folders save a publish, and that whatever somebody does to its trees shows in them all the same.</summary>
public sealed class SpareNoteTests : IDisposable
{
    // Linux keeps times in steps of 1 to 10 ms.
    private static readonly TimeSpan Step = TimeSpan.FromMilliseconds(15);

    private readonly TempFolder _temp = new();
    private readonly StateFolder _state;

    public SpareNoteTests() => _state = new(_temp.At("reports"));

    public void Dispose() => _temp.Dispose();

    private static SitePlan Plan(int changed) => Sites.Plan([("a.html", "a"), ("d/b.html", changed.ToString("x4", CultureInfo.InvariantCulture)), ("d/k.html", "k"), ("e/c.html", "c"), ("e/f/g.html", "g")]);

    private PublishResult Publish(int changed, FaultyFileWork? files = null)
    {
        Thread.Sleep(2 * Step);
        return new Publisher(Sites.Options with { FolderClock = Step }, files ?? new()).Publish(Plan(changed), _state.Output);
    }

    // The first has no spare, the second leaves one and notes how.
    private void PublishTwice()
    {
        Publish(1);
        Publish(2);
    }

    private SpareReview Review()
    {
        var site = OldSite.Look(_state.Output, Sites.Manifest, RegisterFile.Read(_state.Register), out _)!;
        var staged = new StagedFiles(Plan(2));
        foreach (var i in staged.All())
        {
            staged.Keep(i, site.Register[i]);
        }

        var list = site.Register.List!.Value;
        return SpareReview.Of(_state, site, SpareChanges.Read(_state.SpareChanges, list)!, SpareNote.Read(_state.SpareNote, list), staged, Sites.Manifest, 1);
    }

    [Fact]
    public void A_spare_that_nobody_touched_is_known_without_a_walk()
    {
        PublishTwice();
        var review = Review();
        Assert.True(review.IsByNote);
        Assert.Equal(["d", "e", "e/f", "shop"], review.Folders);
        Assert.Equal("d/b.html", Plan(2).Outputs[Assert.Single(review.Lacking)].Path);
        Assert.Equal([Sites.Manifest], review.Ours);
        Assert.Empty(review.Strange);
    }

    [Theory]
    [InlineData("x.txt")]
    [InlineData("e/x.txt")]
    [InlineData("e/f/x.txt")]
    [InlineData("new/x.txt")]
    [InlineData("e/new/x.txt")]
    public void What_came_into_a_spare_is_found(string path)
    {
        PublishTwice();
        Thread.Sleep(2 * Step);
        var place = StateFolder.Place(_state.Spare, path);
        Directory.CreateDirectory(Path.GetDirectoryName(place)!);
        File.WriteAllText(place, "mine");
        var review = Review();
        Assert.False(review.IsByNote);
        Assert.Equal([path], review.Strange);
        Publish(3);
        Assert.False(Path.Exists(StateFolder.Place(_state.Output, path)));
        Assert.Equal("mine", File.ReadAllText(StateFolder.Place(_state.Kept, path)));
    }

    [Theory]
    [InlineData("e/f/g.html")]
    [InlineData("a.html")]
    public void What_went_from_a_spare_is_found(string path)
    {
        PublishTwice();
        Thread.Sleep(2 * Step);
        File.Delete(StateFolder.Place(_state.Spare, path));
        var review = Review();
        Assert.False(review.IsByNote);
        Assert.Equal(["d/b.html", path], review.Lacking.Select(i => Plan(2).Outputs[i].Path).OrderByDescending(p => p == "d/b.html"));
        Publish(3);
        Assert.Equal("a.html = a\nd/\nd/b.html = 0003\nd/k.html = k\ne/\ne/c.html = c\ne/f/\ne/f/g.html = g\n", Sites.Show(_state.Output));
    }

    [Fact]
    public void A_name_that_came_or_went_within_the_step_of_the_clock_is_found()
    {
        PublishTwice();
        var note = SpareNote.Read(_state.SpareNote, RegisterFile.Read(_state.Register).List!.Value)!;
        Assert.Contains("d", note.Young);
        var time = Directory.GetLastWriteTimeUtc(Path.Combine(_state.Spare, "d"));
        File.WriteAllText(Path.Combine(_state.Spare, "d", "x.txt"), "mine");
        File.Delete(Path.Combine(_state.Spare, "d", "k.html"));
        Directory.SetLastWriteTimeUtc(Path.Combine(_state.Spare, "d"), time);
        var review = Review();
        Assert.True(review.IsByNote);
        Assert.Equal(["d/x.txt"], review.Strange);
        Assert.Equal(["d/b.html", "d/k.html"], review.Lacking.Select(i => Plan(2).Outputs[i].Path));
    }

    [Fact]
    public void A_file_of_ours_that_was_touched_is_looked_at_in_the_spare()
    {
        PublishTwice();
        var place = StateFolder.Place(_state.Output, "e/c.html");
        File.Copy(place, _temp.At("copy"));
        File.Move(_temp.At("copy"), place, overwrite: true);
        File.SetLastWriteTimeUtc(place, DateTime.UtcNow.AddDays(-1));
        Publish(3);
        File.WriteAllText(place, "seen in both if they were one");
        Assert.Equal("seen in both if they were one", File.ReadAllText(StateFolder.Place(_state.Spare, "e/c.html")));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("half")]
    [InlineData("bit")]
    [InlineData("other")]
    public void Without_a_note_or_with_a_damaged_one_or_one_of_another_site_the_spare_is_walked(string? damage)
    {
        PublishTwice();
        var note = File.ReadAllBytes(_state.SpareNote);
        if (damage == "other")
        {
            Publish(3);
            Publish(2);
            Publish(4);
            Publish(2);
            Thread.Sleep(2 * Step);
            new DirectoryInfo(Path.Combine(_state.Spare, "e")).LastWriteTimeUtc = DateTime.UtcNow.AddDays(-2);
        }

        note[^1] ^= damage == "bit" ? (byte)1 : (byte)0;
        File.Delete(_state.SpareNote);
        if (damage is not null)
        {
            File.WriteAllBytes(_state.SpareNote, damage.Length == 0 ? [] : damage == "half" ? note[..(note.Length / 2)] : note);
        }

        Assert.False(Review().IsByNote);
        Assert.Equal(PublishOutcome.Published, Publish(5).Outcome);
        Sites.AssertNothingLeft(_state.Output);
        Assert.Equal("a.html = a\nd/\nd/b.html = 0005\nd/k.html = k\ne/\ne/c.html = c\ne/f/\ne/f/g.html = g\n", Sites.Show(_state.Output));
    }

    [Fact]
    public void The_note_goes_before_the_spare_is_touched()
    {
        PublishTwice();
        var seen = new List<bool>();
        Publish(3, new FaultyFileWork { Before = step => seen.Add(File.Exists(_state.SpareNote) && step is "move" or "exchange") });
        Assert.DoesNotContain(true, seen);
        Assert.True(File.Exists(_state.SpareNote));
    }
}
