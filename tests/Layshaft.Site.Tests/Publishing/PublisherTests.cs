using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>What a publish writes, keeps and removes when all goes well.</summary>
public sealed class PublisherTests : IDisposable
{
    private readonly TempFolder _temp = new();

    public void Dispose() => _temp.Dispose();

    private string Out => _temp.At("reports");

    private PublishResult Publish(SitePlan plan, PublishOptions? options = null) => new Publisher(options ?? Sites.Options).Publish(plan, Out);

    [Fact]
    public void The_first_publish_writes_all_files_and_leaves_nothing_of_its_work_in_the_site()
    {
        var result = Publish(Sites.Plan(("index.html", "hello"), ("c/key/job.html", "job")));
        Assert.Equal(PublishOutcome.Published, result.Outcome);
        Assert.Equal(["c/key/job.html", "index.html"], result.Added);
        Assert.Empty(result.Warnings);
        Assert.Equal("c/\nc/key/\nc/key/job.html = job\nindex.html = hello\n", Sites.Show(Out));
        Assert.Equal(["cache", "changes.txt", "lock"], Directory.EnumerateFileSystemEntries(_temp.At(".layshaft-reports")).Select(Path.GetFileName).Order());
        Assert.Equal("+ c/key/job.html\n+ index.html\n", File.ReadAllText(_temp.At(".layshaft-reports/changes.txt")));
    }

    [Fact]
    public void The_list_of_files_says_what_is_there()
    {
        Publish(Sites.Plan(("index.html", "hello"), ("a.txt", "")));
        const string Expected = """
            {
            "format": 1,
            "files": [
            {"path": "a.txt", "size": 0, "sha256": "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"},
            {"path": "index.html", "size": 5, "sha256": "2cf24dba5fb0a30e26e83b2ac5b9e29e1b161e5c1fa7425e73043362938b9824"}
            ]
            }

            """;
        Assert.Equal(Expected, File.ReadAllText(_temp.At($"reports/{Sites.Manifest}")), ignoreLineEndingDifferences: true);
        Assert.Equal(2, SiteManifest.Parse(File.ReadAllBytes(_temp.At($"reports/{Sites.Manifest}")))!.Files.Count);
    }

    [Fact]
    public void Publishing_the_same_again_touches_nothing_and_makes_nothing()
    {
        var plan = Sites.Plan(("index.html", "hello"));
        Publish(plan);
        var before = Directory.GetLastWriteTimeUtc(Out);
        var changes = File.ReadAllText(_temp.At(".layshaft-reports/changes.txt"));
        var calls = 0;
        var again = Publish(SitePlan.Of([Sites.Output("index.html", [new("content", "hello")], _ => calls++)]));
        Assert.Equal((PublishOutcome.Unchanged, 0, 1, 0), (again.Outcome, again.Made, again.Kept, calls));
        Assert.Equal(before, Directory.GetLastWriteTimeUtc(Out));
        Assert.Equal(changes, File.ReadAllText(_temp.At(".layshaft-reports/changes.txt")));
    }

    [Fact]
    public void Only_what_changed_is_made_and_the_rest_keeps_its_time()
    {
        Publish(Sites.Plan(("a.html", "a"), ("b.html", "b"), ("old/c.html", "c")));
        var time = File.GetLastWriteTimeUtc(Path.Combine(Out, "a.html"));
        var result = Publish(Sites.Plan(("a.html", "a"), ("b.html", "B"), ("d/e.html", "e")));
        Assert.Equal((2, 1), (result.Made, result.Kept));
        Assert.Equal(["d/e.html"], result.Added);
        Assert.Equal(["b.html"], result.Changed);
        Assert.Equal(["old/c.html"], result.Removed);
        Assert.Equal("a.html = a\nb.html = B\nd/\nd/e.html = e\n", Sites.Show(Out));
        Assert.Equal(time, File.GetLastWriteTimeUtc(Path.Combine(Out, "a.html")));
    }

    [Fact]
    public void Other_inputs_that_give_the_same_bytes_change_nothing()
    {
        Publish(Sites.Plan(("a.html", "a")));
        var result = Publish(SitePlan.Of([Sites.Text("a.html", [new("content", "other")], () => "a")]));
        Assert.Equal((PublishOutcome.Unchanged, 1), (result.Outcome, result.Made));
        var next = Publish(SitePlan.Of([Sites.Text("a.html", [new("content", "other")], () => throw new InvalidOperationException("not again"))]));
        Assert.Equal(PublishOutcome.Unchanged, next.Outcome);
    }

    [Fact]
    public void The_order_of_inputs_does_not_matter_and_their_borders_do()
    {
        ContentHash Key(params PlanInput[] inputs) => PlannedOutput.KeyOf("version", inputs);
        var (one, two) = (new PlanInput("a", "1"), new PlanInput("b", "2"));
        Assert.Equal(Key(one, two), Key(two, one));
        Assert.NotEqual(Key(new PlanInput("a", "12")), Key(new PlanInput("a1", "2")));
        Assert.NotEqual(Key(one, two), Key(one));
        Assert.NotEqual(Key(one), PlannedOutput.KeyOf("another version", [one]));
    }

    [Fact]
    public void The_same_plan_gives_the_same_bytes_in_another_folder_after_another_history()
    {
        (string, string)[] files = [.. Enumerable.Range(0, 40).Select(i => ($"p{i % 7}/f{i}.html", $"content {i}"))];
        Publish(Sites.Plan(("gone.html", "x"), ("p1/f1.html", "before")));
        Publish(Sites.Plan([.. files.Reverse()]), Sites.Options with { Parallelism = 4 });
        new Publisher(Sites.Options).Publish(Sites.Plan(files), _temp.At("other"));
        Assert.Equal(Sites.Show(Out, withManifest: true), Sites.Show(_temp.At("other"), withManifest: true));
    }

    [Fact]
    public void Strangers_stay_and_are_named()
    {
        _temp.Write("reports/README.md", "by hand");
        Publish(Sites.Plan(("a.html", "a"), ("d/b.html", "b")));
        _temp.Write("reports/d/notes.txt", "mine");
        _temp.Write("reports/.git/objects/one", "1");
        _temp.Write("reports/.git/objects/two", "2");
        Directory.CreateDirectory(_temp.At("reports/empty"));
        File.CreateSymbolicLink(_temp.At("reports/link"), "README.md");
        Directory.CreateSymbolicLink(_temp.At("reports/nowhere"), "../no/such");
        var result = Publish(Sites.Plan(("a.html", "A")));
        Assert.Equal([".git/", "README.md", "d/notes.txt", "empty/", "link", "nowhere"], result.ForeignFiles);
        Assert.Equal(
            ".git/\n.git/objects/\n.git/objects/one = 1\n.git/objects/two = 2\nREADME.md = by hand\na.html = A\nd/\nd/notes.txt = mine\n"
            + "empty/\nlink -> README.md\nnowhere -> ../no/such\n",
            Sites.Show(Out));
        Assert.Equal(["d/b.html"], result.Removed);
        Assert.Empty(result.Warnings);
    }

    [Theory]
    [InlineData("a.html", "a.html")]
    [InlineData("A.html", "a.html")]
    [InlineData("d", "d/b.html")]
    [InlineData("e.html/x", "e.html")]
    public void A_stranger_in_the_way_is_named_and_nothing_is_done(string stranger, string planned)
    {
        Publish(Sites.Plan(("index.html", "i")));
        _temp.Write($"reports/{stranger}", "mine");
        var before = Sites.Show(Out, withManifest: true);
        var result = Publish(Sites.Plan((planned, "ours")));
        Assert.Equal(PublishOutcome.Refused, result.Outcome);
        Assert.Contains(result.Problems, p => p.Path == stranger.Split('/')[0]);
        Assert.Equal(before, Sites.Show(Out, withManifest: true));
    }

    [Fact]
    public void A_file_of_ours_that_someone_changed_is_restored_and_the_changed_one_is_kept_aside()
    {
        var plan = Sites.Plan(("a.html", "a"), ("b.html", "b"));
        Publish(plan);
        _temp.Write("reports/a.html", "X");
        File.Delete(_temp.At("reports/b.html"));
        var result = Publish(plan);
        Assert.Equal(PublishOutcome.Published, result.Outcome);
        Assert.Equal(["a.html", "b.html"], result.Restored);
        Assert.Equal("a.html = a\nb.html = b\n", Sites.Show(Out));
        Assert.Equal("X", File.ReadAllText(_temp.At(".layshaft-reports/kept/a.html")));
        Assert.Equal("a.html", Assert.Single(result.Warnings).Path);
    }

    [Fact]
    public void A_change_by_hand_that_keeps_size_and_time_is_found_if_it_came_right_after_the_publish()
    {
        var plan = Sites.Plan(("a.html", "a"));
        Publish(plan);
        var time = File.GetLastWriteTimeUtc(_temp.At("reports/a.html"));
        _temp.Write("reports/a.html", "X");
        File.SetLastWriteTimeUtc(_temp.At("reports/a.html"), time);
        Assert.Equal(["a.html"], Publish(plan).Restored);
    }

    [Fact]
    public void Files_whose_time_is_settled_are_not_read_again()
    {
        var plan = Sites.Plan(("a.html", "a"));
        Publish(plan);
        Publish(plan);

        AsIfAnHourAgo("X", isNoted: true);
        Assert.Equal(PublishOutcome.Unchanged, Publish(plan).Outcome);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_file_that_is_made_anew_goes_unread_if_its_time_is_settled_and_is_kept_aside_if_somebody_changed_it(bool isNoted)
    {
        Publish(Sites.Plan(("a.html", "a")));
        AsIfAnHourAgo("X", isNoted);
        var result = Publish(Sites.Plan(("a.html", "b")));
        Assert.Equal("a.html = b\n", Sites.Show(Out));
        Assert.Equal(isNoted ? [] : ["a.html"], result.Warnings.Select(w => w.Path));
        Assert.Equal(!isNoted, File.Exists(_temp.At(".layshaft-reports/kept/a.html")));
        Sites.AssertNothingLeft(Out);
    }

    // Only then is a time that stayed the same taken as proof.
    private void AsIfAnHourAgo(string content, bool isNoted)
    {
        var early = DateTime.UtcNow.AddHours(-1);
        var store = new TraceStore(Out);
        var before = store.Traces;
        _temp.Write("reports/a.html", content);
        File.SetLastWriteTimeUtc(_temp.At("reports/a.html"), early);
        store.Save(new DiskWork(), before with { Files = new(before.Files.Select(f => f with { Modified = isNoted ? early.Ticks : early.Ticks - 1 })) });
    }

    [Fact]
    public void A_file_that_left_the_plan_but_was_changed_by_hand_is_left_as_a_stranger()
    {
        Publish(Sites.Plan(("a.html", "a"), ("b.html", "b")));
        _temp.Write("reports/b.html", "my own words");
        var result = Publish(Sites.Plan(("a.html", "a")));
        Assert.Equal("a.html = a\nb.html = my own words\n", Sites.Show(Out));
        Assert.Equal(["b.html"], result.ForeignFiles);
        Assert.Empty(result.Removed);
        Assert.Equal("b.html", Assert.Single(result.Warnings).Path);
        Assert.Equal(PublishOutcome.Unchanged, Publish(Sites.Plan(("a.html", "a"))).Outcome);
    }

    [Fact]
    public void A_lost_or_damaged_memory_only_costs_making_again()
    {
        var plan = Sites.Plan(("a.html", "a"));
        Publish(plan);
        var record = File.ReadAllBytes(_temp.At(".layshaft-reports/cache"));
        foreach (var damaged in new[] { [], "[{\"Path\":null}, 1"u8.ToArray(), record[..^1], record[1..] })
        {
            File.WriteAllBytes(_temp.At(".layshaft-reports/cache"), damaged);
            Assert.Equal((PublishOutcome.Unchanged, 1), (Publish(plan) is var r ? (r.Outcome, r.Made) : default));
            Assert.Equal(0, Publish(plan).Made);
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("{\"format\": 2, \"files\": []}")]
    [InlineData("{\"format\": 1, \"files\": [{\"path\": \"../../precious\", \"size\": 1, \"sha256\": \"e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855\"}]}")]
    public void A_damaged_list_of_files_stops_the_publish(string json)
    {
        Publish(Sites.Plan(("a.html", "a")));
        _temp.Write($"reports/{Sites.Manifest}", json);
        Assert.Equal((PublishOutcome.Refused, Sites.Manifest), (Publish(Sites.Plan(("a.html", "b"))) is var r ? (r.Outcome, r.Problems[0].Path) : default));
        Assert.Equal("a.html = a\n", Sites.Show(Out));
    }

    [Fact]
    public void A_folder_that_holds_other_work_is_not_made_a_site()
    {
        _temp.Write("reports/photos/one.jpg", "mine");
        Assert.Equal(PublishOutcome.Refused, Publish(Sites.Plan(("a.html", "a"))).Outcome);
        Assert.Equal("photos/\nphotos/one.jpg = mine\n", Sites.Show(Out));
    }

    [Fact]
    public void A_plan_that_wants_the_place_of_the_list_of_files_is_refused() =>
        Assert.Equal(PublishOutcome.Refused, Publish(Sites.Plan((Sites.Manifest, "x"))).Outcome);

    [Fact]
    public void A_site_may_stand_behind_a_link()
    {
        Directory.CreateDirectory(_temp.At("disk/site"));
        Directory.CreateSymbolicLink(Out, _temp.At("disk/site"));
        Publish(Sites.Plan(("a.html", "a")));
        Publish(Sites.Plan(("a.html", "b")));
        Assert.Equal("a.html = b\n", Sites.Show(_temp.At("disk/site")));
        Assert.NotNull(new DirectoryInfo(Out).LinkTarget);
    }

    [Fact]
    public void Rights_of_folders_stay()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        Publish(Sites.Plan(("d/a.html", "a")));
        const UnixFileMode Rights = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute | UnixFileMode.GroupRead;
        File.SetUnixFileMode(Out, Rights);
        File.SetUnixFileMode(_temp.At("reports/d"), Rights);
        Publish(Sites.Plan(("d/a.html", "b")));
        Assert.Equal((Rights, Rights), (File.GetUnixFileMode(Out), File.GetUnixFileMode(_temp.At("reports/d"))));
    }

    [Fact]
    public void The_second_of_two_at_once_says_so()
    {
        PublishResult? second = null;
        var plan = SitePlan.Of([Sites.Text("a.html", [], () =>
        {
            second = Publish(Sites.Plan(("b.html", "b")));
            return "a";
        })]);
        Assert.Equal(PublishOutcome.Published, Publish(plan).Outcome);
        Assert.Equal(PublishOutcome.Refused, second!.Outcome);
        Assert.Contains("Another publish", second.Problems[0].Message, StringComparison.Ordinal);
        Assert.Equal("a.html = a\n", Sites.Show(Out));
    }

    [Fact]
    public void Progress_counts_what_is_made()
    {
        var seen = new List<PublishProgress>();
        Publish(Sites.Plan(("a.html", "a"), ("b.html", "b")));
        Publish(Sites.Plan(("a.html", "a"), ("b.html", "B"), ("c.html", "c")), Sites.Options with { Progress = new Collect(seen) });
        Assert.Equal([new(1, 2, "b.html"), new(2, 2, "c.html")], seen.OrderBy(p => p.Done));
    }

    private sealed class Collect(List<PublishProgress> to) : IProgress<PublishProgress>
    {
        public void Report(PublishProgress value) => to.Add(value);
    }
}
