using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>The tree that a publish leaves for the next one: what it saves, and that nothing in it is believed.</summary>
public sealed class SpareTests : IDisposable
{
    private static readonly SitePlan First = Sites.Plan(("a.html", "a"), ("d/b.html", "b"), ("e/c.html", "c"));
    private static readonly SitePlan Second = Sites.Plan(("a.html", "a"), ("d/b.html", "B"), ("e/c.html", "c"));
    private static readonly SitePlan Third = Sites.Plan(("a.html", "a"), ("d/b.html", "3"), ("e/c.html", "c"), ("f.html", "f"));
    private const string ThirdShown = "a.html = a\nd/\nd/b.html = 3\ne/\ne/c.html = c\nf.html = f\n";

    private readonly TempFolder _temp = new();

    public void Dispose() => _temp.Dispose();

    private string Out => _temp.At("reports");

    private string Spare => _temp.At(".layshaft-reports/spare");

    private string Changes => _temp.At(".layshaft-reports/spare-changes");

    private PublishResult Publish(SitePlan plan, FaultyFileWork? files = null) =>
        new Publisher(Sites.Options, files ?? new()).Publish(plan, Out);

    private void PublishTwice()
    {
        Publish(First);
        Publish(Second);
        Assert.Equal("a.html = a\nd/\ne/\ne/c.html = c\n", Sites.Show(Spare));
        Sites.AssertNothingLeft(Out);
    }

    private void AssertThirdIsRight(string also = "")
    {
        Assert.Equal(ThirdShown + also, Sites.Show(Out));
        Sites.AssertNothingLeft(Out);
    }

    [Fact]
    public void The_steps_of_a_publish_follow_from_what_changed_and_not_from_the_size_of_the_site()
    {
        Assert.Equal(StepsOfAThirdPublish("small", 20), StepsOfAThirdPublish("large", 200));
    }

    private int StepsOfAThirdPublish(string name, int count)
    {
        SitePlan Plan(string changed) => Sites.Plan([.. Enumerable.Range(0, count).Select(i => ($"d/{i}.html", i == 7 ? changed : $"{i}"))]);
        var steps = 0;
        foreach (var changed in new[] { "one", "two", "three", "four" })
        {
            var files = new FaultyFileWork();
            Assert.Equal(PublishOutcome.Published, new Publisher(Sites.Options, files).Publish(Plan(changed), _temp.At(name)).Outcome);
            steps = files.Steps;
        }

        return steps;
    }

    [Fact]
    public void A_spare_is_used_once_and_left_anew_by_each_publish()
    {
        PublishTwice();
        Assert.Equal(PublishOutcome.Published, Publish(Third).Outcome);
        AssertThirdIsRight();
        Assert.Equal("a.html = a\nd/\ne/\ne/c.html = c\n", Sites.Show(Spare));
        Publish(First);
        Assert.Equal("a.html = a\nd/\nd/b.html = b\ne/\ne/c.html = c\n", Sites.Show(Out));
        Sites.AssertNothingLeft(Out);
    }

    [Fact]
    public void A_publish_that_changes_nothing_or_fails_while_it_makes_leaves_the_spare_alone()
    {
        PublishTwice();
        var before = Directory.GetLastWriteTimeUtc(Spare);
        Assert.Equal(PublishOutcome.Unchanged, Publish(Second).Outcome);
        Assert.Equal(PublishOutcome.Failed, Publish(SitePlan.Of([new PlannedOutput("a.html", [], _ => throw new IOException("full"))])).Outcome);
        Assert.Equal("a.html = a\nd/\ne/\ne/c.html = c\n", Sites.Show(Spare));
        Assert.Equal(before, Directory.GetLastWriteTimeUtc(Spare));
        Sites.AssertNothingLeft(Out);
    }

    [Fact]
    public void Where_files_have_no_second_names_nothing_is_left()
    {
        foreach (var plan in new[] { First, Second, Third, Second })
        {
            var files = new FaultyFileWork(hardLinks: false);
            Publish(plan, files);
            Assert.False(Path.Exists(Spare));
            Sites.AssertNothingLeft(Out);
        }

        Assert.Equal("a.html = a\nd/\nd/b.html = B\ne/\ne/c.html = c\n", Sites.Show(Out));
    }

    [Fact]
    public void A_spare_of_a_disk_that_lost_its_second_names_is_used_up()
    {
        PublishTwice();
        File.Delete(Path.Combine(Spare, "a.html"));
        Publish(Third, new FaultyFileWork(hardLinks: false));
        AssertThirdIsRight();
        Assert.False(Path.Exists(Spare));
    }

    [Fact]
    public void Without_its_record_a_spare_is_dropped_and_nobody_need_know()
    {
        PublishTwice();
        var record = File.ReadAllBytes(Changes);
        foreach (var damaged in new byte[]?[] { null, [], record[..^1], record[1..], [.. record[..^1], (byte)'x'], [.. record[..30], (byte)'x', .. record[31..]] })
        {
            Publish(First);
            Publish(Second);
            Assert.True(Directory.Exists(Spare));
            File.Delete(Changes);
            if (damaged is not null)
            {
                File.WriteAllBytes(Changes, damaged);
            }

            var links = 0;
            var result = Publish(Third, new FaultyFileWork { Before = step => links += step == "link" ? 1 : 0 });
            Assert.Empty(result.Warnings);
            Assert.Equal(3, links); // both kept files, and the list of the next spare
            AssertThirdIsRight();
        }
    }

    [Fact]
    public void A_spare_of_which_the_site_keeps_little_is_dropped_and_not_gone_through()
    {
        PublishTwice();
        _temp.Write(".layshaft-reports/spare/e/new.txt", "foreign");
        var moved = 0;
        var result = Publish(Sites.Plan(("a.html", "a"), ("d/b.html", "3"), ("e/c.html", "3"), ("f.html", "3")), new FaultyFileWork { Before = step => moved += step == "move" ? 1 : 0 });
        Assert.Equal(4, moved); // the foreign file, what was made as a whole, the old tree to be the next spare, and the list of changes
        Assert.Equal("foreign", File.ReadAllText(_temp.At(".layshaft-reports/kept/e/new.txt")));
        Assert.Single(result.Warnings);
        Assert.Equal("a.html = a\nd/\nd/b.html = 3\ne/\ne/c.html = 3\nf.html = 3\n", Sites.Show(Out));
        Sites.AssertNothingLeft(Out);
        Assert.Equal("a.html = a\nd/\ne/\n", Sites.Show(Spare));
    }

    [Fact]
    public void A_record_of_another_site_counts_for_nothing()
    {
        Publish(First);
        Publish(Second);
        var record = File.ReadAllBytes(Changes);
        Publish(Third);
        File.WriteAllBytes(Changes, record);
        var links = 0;
        Publish(Second, new FaultyFileWork { Before = step => links += step == "link" ? 1 : 0 });
        Assert.Equal(3, links);
        Assert.Equal("a.html = a\nd/\nd/b.html = B\ne/\ne/c.html = c\n", Sites.Show(Out));
        Sites.AssertNothingLeft(Out);
    }

    [Fact]
    public void A_site_or_a_hidden_folder_that_was_deleted_is_made_again_without_a_word()
    {
        PublishTwice();
        Directory.Delete(Out, recursive: true);
        Assert.Empty(Publish(Third).Warnings);
        AssertThirdIsRight();
        Publish(Second);
        Directory.Delete(_temp.At(".layshaft-reports"), recursive: true);
        Assert.Empty(Publish(Third).Warnings);
        AssertThirdIsRight();
        Assert.False(Directory.Exists(_temp.At(".layshaft-reports/kept")));
    }

    [Theory]
    [InlineData("new.txt")]
    [InlineData("d/new.txt")]
    [InlineData("a.html")]
    [InlineData("d/b.html")]
    [InlineData("x/y/z")]
    [InlineData("f.html")]
    [InlineData("f.html/deep")]
    public void What_a_stranger_puts_into_a_spare_is_kept_aside_and_named_and_never_in_the_site(string path)
    {
        PublishTwice();
        if (File.Exists(Path.Combine(Spare, path)))
        {
            File.Delete(Path.Combine(Spare, path));
        }

        _temp.Write($".layshaft-reports/spare/{path}", "foreign");
        var warning = Assert.Single(Publish(Third).Warnings);
        Assert.Contains($"{Path.DirectorySeparatorChar}kept{Path.DirectorySeparatorChar}", warning.Message, StringComparison.Ordinal);
        AssertThirdIsRight();
        Assert.Equal("foreign", File.ReadAllText(_temp.At($".layshaft-reports/kept/{path}")));
    }

    [Fact]
    public void A_mark_in_a_spare_says_nothing()
    {
        PublishTwice();
        _temp.Write($".layshaft-reports/spare/{StateFolder.MarkName}", "");
        Assert.Empty(Publish(Third).Warnings);
        AssertThirdIsRight();
    }

    [Fact]
    public void A_link_in_a_spare_is_kept_aside_and_never_followed()
    {
        PublishTwice();
        _temp.Write("elsewhere/c.html", "theirs");
        Directory.Delete(Path.Combine(Spare, "e"), recursive: true);
        Directory.CreateSymbolicLink(Path.Combine(Spare, "e"), _temp.At("elsewhere"));
        Assert.Single(Publish(Third).Warnings);
        AssertThirdIsRight();
        Assert.Equal(_temp.At("elsewhere"), new DirectoryInfo(_temp.At(".layshaft-reports/kept/e")).LinkTarget);
        Assert.Equal("theirs", File.ReadAllText(_temp.At("elsewhere/c.html")));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_spare_that_is_a_link_or_says_no_more_what_is_ours_is_moved_aside_whole(bool link)
    {
        PublishTwice();
        if (link)
        {
            Directory.Move(Spare, _temp.At("elsewhere"));
            Directory.CreateSymbolicLink(Spare, _temp.At("elsewhere"));
        }
        else
        {
            File.Delete(Changes);
            File.Delete(Path.Combine(Spare, Sites.Manifest));
        }

        Assert.Single(Publish(Third).Warnings);
        AssertThirdIsRight();
        Assert.Equal("a", File.ReadAllText(_temp.At(".layshaft-reports/kept/spare/a.html")));
    }

    [Fact]
    public void A_publish_that_fails_names_what_it_moved_aside()
    {
        PublishTwice();
        _temp.Write(".layshaft-reports/spare/new.txt", "foreign");
        var result = Publish(Third, new FaultyFileWork { Before = step => _ = step == "exchange" ? throw new IOException("broken") : 0 });
        Assert.Equal(PublishOutcome.Failed, result.Outcome);
        Assert.Contains("kept", Assert.Single(result.Warnings).Message, StringComparison.Ordinal);
        Assert.Equal("foreign", File.ReadAllText(_temp.At(".layshaft-reports/kept/new.txt")));
        Sites.AssertNothingLeft(Out);
    }

    [Fact]
    public void A_file_that_was_changed_in_place_shows_in_the_spare_too_and_is_kept_once()
    {
        PublishTwice();
        _temp.Write("reports/a.html", "by hand");
        Assert.Equal("by hand", File.ReadAllText(Path.Combine(Spare, "a.html")));
        var result = Publish(Second);
        Assert.Equal(["a.html"], result.Restored);
        Assert.Equal("a.html", Assert.Single(result.Warnings).Path);
        Assert.Equal("kept/a.html", Kept());
        Publish(Third);
        AssertThirdIsRight();
        Assert.Equal("kept/a.html", Kept());
    }

    [Fact]
    public void A_file_that_was_changed_in_place_and_whose_spare_was_dated_anew_is_kept_once()
    {
        PublishTwice();
        _temp.Write("reports/a.html", "by hand");
        File.Copy(Path.Combine(Spare, "a.html"), Path.Combine(Spare, "copy"));
        File.Move(Path.Combine(Spare, "copy"), Path.Combine(Spare, "a.html"), overwrite: true);
        File.SetLastWriteTimeUtc(Path.Combine(Spare, "a.html"), DateTime.UtcNow.AddDays(-3));
        Publish(Second);
        Assert.Equal("kept/a.html", Kept());
    }

    [Fact]
    public void What_is_kept_aside_finds_a_place_beside_whatever_is_kept_already()
    {
        foreach (var plan in new[] { First, Second, Third })
        {
            Publish(Sites.Plan(("d", "a file"), ("x.html", plan == First ? "1" : "2")));
            _temp.Write("reports/d", "by hand");
            Publish(Sites.Plan(("d", "a file"), ("y.html", "y")));
            Publish(plan);
            _temp.Write("reports/d/b.html", "by hand too");
            Assert.Single(Publish(plan).Warnings);
        }

        Assert.Equal("kept/d kept/d.2/b.html kept/d.2/b.html.2 kept/d.2/b.html.3 kept/d.3 kept/d.4", Kept());
    }

    [Fact]
    public void A_file_of_another_time_is_taken_from_the_site()
    {
        PublishTwice();
        var time = File.GetLastWriteTimeUtc(_temp.At("reports/a.html"));
        File.Delete(Path.Combine(Spare, "a.html"));
        _temp.Write(".layshaft-reports/spare/a.html", "a");
        File.SetLastWriteTimeUtc(Path.Combine(Spare, "a.html"), time.AddHours(-1));
        Assert.Empty(Publish(Third).Warnings);
        Assert.Equal(time, File.GetLastWriteTimeUtc(_temp.At("reports/a.html")));
        AssertThirdIsRight();
    }

    [Fact]
    public void A_clock_that_stands_still_hides_no_change()
    {
        // The same size and the same time for everything: only the record tells the versions apart.
        var clock = DateTime.UtcNow.AddHours(1);
        SitePlan Plan(char a, char b) => Sites.Plan(("a.html", $"{a}"), ("b.html", $"{b}"), ("c.html", "c"));
        foreach (var (a, b, byHand) in new[] { ('1', '1', ""), ('2', '1', ""), ('2', '2', ""), ('2', '1', "a"), ('2', '1', "b"), ('1', '2', "c"), ('2', '1', "a"), ('1', '1', "") })
        {
            if (byHand.Length > 0)
            {
                // As an editor saves, so that the spare's file is another one.
                _temp.Write("draft", "X");
                File.SetLastWriteTimeUtc(_temp.At("draft"), clock);
                File.Move(_temp.At("draft"), _temp.At($"reports/{byHand}.html"), overwrite: true);
            }

            Publish(Plan(a, b), new FaultyFileWork { Clock = () => clock });
            Assert.Equal($"a.html = {a}\nb.html = {b}\nc.html = c\n", Sites.Show(Out));
            Sites.AssertNothingLeft(Out);
        }
    }

    [Fact]
    public void A_strangers_file_is_never_taken_from_the_spare_and_never_left_in_it()
    {
        var clock = DateTime.UtcNow.AddDays(-1);
        foreach (var (plan, words) in new[] { (First, "one"), (Second, "two"), (Third, "thr") })
        {
            // Another file of the same size and time, as an unpacked archive has it.
            Publish(Sites.Plan(("x.html", words)));
            File.Delete(_temp.At("reports/notes.txt"));
            _temp.Write("reports/notes.txt", words);
            File.SetLastWriteTimeUtc(_temp.At("reports/notes.txt"), clock);
            Publish(plan);
            Assert.Equal(words, File.ReadAllText(_temp.At("reports/notes.txt")));
            Sites.AssertNothingLeft(Out);
        }

        File.Delete(_temp.At("reports/notes.txt"));
        Assert.Empty(Publish(Second).Warnings);
        Assert.False(Directory.Exists(_temp.At(".layshaft-reports/kept")));
    }

    [Fact]
    public void Folders_that_nothing_needs_leave_and_rights_of_the_others_are_those_of_the_site()
    {
        Publish(Sites.Plan(("a.html", "a"), ("d/b.html", "1"), ("gone/deep/c.html", "c"), ("turn/x.html", "x")));
        Publish(Sites.Plan(("a.html", "a"), ("d/b.html", "2"), ("turn", "a file now")));
        Directory.CreateDirectory(Path.Combine(Spare, "empty/deep"));
        const UnixFileMode Rights = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute | UnixFileMode.GroupRead;
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(_temp.At("reports/d"), Rights);
        }

        Publish(Sites.Plan(("a.html", "a"), ("d/b.html", "3"), ("turn/again.html", "x")));
        Assert.Equal("a.html = a\nd/\nd/b.html = 3\nturn/\nturn/again.html = x\n", Sites.Show(Out));
        Assert.True(OperatingSystem.IsWindows() || File.GetUnixFileMode(_temp.At("reports/d")) == Rights);
        Sites.AssertNothingLeft(Out);
    }

    private string Kept() => string.Join(' ', Directory.EnumerateFiles(_temp.At(".layshaft-reports/kept"), "*", SearchOption.AllDirectories)
        .Select(p => Path.GetRelativePath(_temp.At(".layshaft-reports"), p).Replace('\\', '/')).Order(StringComparer.Ordinal));
}
