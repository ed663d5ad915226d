using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>Whole or not at all: a publish of which any step fails, or is the last before the process dies, and the command after it.</summary>
public sealed class InterruptedPublishTests : IDisposable
{
    private static readonly SitePlan Old = Sites.Plan(("a.html", "a"), ("d/b.html", "b"), ("gone/c.html", "c"));
    private static readonly SitePlan New = Sites.Plan(("a.html", "a"), ("d/b.html", "B"), ("e/f.html", "f"), ("g.html", "g"));

    private const string ForeignFiles = ".git/\n.git/head = h\n";
    private const string OldShown = ForeignFiles + "README.md = r\na.html = a\nd/\nd/b.html = b\ngone/\ngone/c.html = c\n";
    private const string NewShown = ForeignFiles + "README.md = r\na.html = a\nd/\nd/b.html = B\ne/\ne/f.html = f\ng.html = g\n";

    private readonly TempFolder _temp = new();
    private int _number;

    public void Dispose() => _temp.Dispose();

    /// <summary>The old site with two strangers in it, in a folder of its own.</summary>
    private string Prepare()
    {
        var folder = $"{_number++}/reports";
        _temp.Write($"{folder}/README.md", "r");
        Publish(Old, folder, new FaultyFileWork());
        _temp.Write($"{folder}/.git/head", "h");
        Assert.Equal(OldShown, Sites.Show(_temp.At(folder)));
        return folder;
    }

    private PublishResult Publish(SitePlan plan, string folder, FaultyFileWork files) =>
        new Publisher(Sites.Options, files).Publish(plan, _temp.At(folder));

    [Theory]
    [InlineData(false, true)]
    [InlineData(true, true)]
    [InlineData(false, false)]
    [InlineData(true, false)]
    public void Whatever_step_is_the_last_the_next_command_finds_or_finishes_the_old_or_the_new_site(bool dead, bool exchange)
    {
        var steps = new FaultyFileWork();
        Publish(New, Prepare(), steps);
        Assert.InRange(steps.Steps, 15, 200);
        var (sawOld, sawNew, sawCutOff) = (0, 0, 0);
        for (var failAt = 1; failAt <= steps.Steps + 2; failAt++)
        {
            var folder = Prepare();
            var site = _temp.At(folder);
            var result = Publish(New, folder, new(failAt, dead, exchange));
            var isCutOff = new Publisher(Sites.Options).IsCutOff(site);
            Assert.Equal(isCutOff, result.IsCutOff);
            AssertNoOtherFiles(Sites.Show(site), noneMissing: false);
            if (!isCutOff)
            {
                Assert.Equal(result.Outcome == PublishOutcome.Published ? NewShown : OldShown, Sites.Show(site));
            }

            Sites.OpenAgain(site);
            var shown = Sites.Show(site);
            Assert.Equal(isCutOff || result.Outcome == PublishOutcome.Published ? NewShown : OldShown, shown);
            (sawOld, sawNew, sawCutOff) = (sawOld + (shown == OldShown ? 1 : 0), sawNew + (shown == NewShown ? 1 : 0), sawCutOff + (isCutOff ? 1 : 0));
            AssertNothingLeft(folder);

            var next = Publish(Old, folder, new(exchange: exchange));
            Assert.True(next.Outcome is PublishOutcome.Published or PublishOutcome.Unchanged, $"{failAt}: {string.Join(' ', next.Problems)}");
            Assert.Empty(next.Warnings);
            Assert.Equal(OldShown, Sites.Show(site));
            AssertNothingLeft(folder);
        }

        Assert.True(sawOld > 5 && sawNew > 5 && sawCutOff > 5, $"old {sawOld}, new {sawNew}, cut off {sawCutOff}");
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_command_that_dies_while_it_finishes_is_finished_by_the_next(bool exchange)
    {
        for (var died = 5; died < 40; died += 2)
        {
            for (var again = 1; again < 20; again += 2)
            {
                var folder = Prepare();
                Publish(New, folder, new(died, dead: true, exchange));
                Publish(New, folder, new(again, dead: true, exchange));
                var last = Publish(New, folder, new(exchange: exchange));
                Assert.Empty(last.Problems);
                Assert.Equal(NewShown, Sites.Show(_temp.At(folder)));
                AssertNothingLeft(folder);
                Directory.Delete(_temp.At(folder), true);
            }
        }
    }

    [Fact]
    public void Uploads_of_a_publish_that_was_cut_off_are_not_confirmed_by_the_command_that_finishes_it()
    {
        for (var (failAt, cutOff) = (1, false); !cutOff; failAt++)
        {
            var site = _temp.At(Prepare());
            new Publisher(Sites.Options, new FaultyFileWork()).ConfirmUpload(site);
            cutOff = new Publisher(Sites.Options, new FaultyFileWork(failAt, dead: true)).Publish(New, site).IsCutOff;
            if (cutOff)
            {
                var (done, problem) = new Publisher(Sites.Options, new FaultyFileWork()).ConfirmUpload(site);
                Assert.Null(done);
                Assert.Contains("cut off", problem!.Message, StringComparison.Ordinal);
                Assert.Equal("- gone/c.html\n* d/b.html\n+ e/f.html\n+ g.html\n", File.ReadAllText(new StateFolder(site).Changes));
            }
        }
    }

    [Fact]
    public void An_update_that_is_cut_off_is_finished_without_the_hidden_folder()
    {
        var steps = new FaultyFileWork();
        Publish(New, Prepare(), steps);
        var cutOff = 0;
        for (var failAt = 1; failAt <= steps.Steps; failAt++)
        {
            var folder = Prepare();
            var site = _temp.At(folder);
            cutOff += Publish(New, folder, new(failAt, dead: true)).IsCutOff ? 1 : 0;
            Directory.Delete(new StateFolder(site).Root, recursive: true);
            Assert.Empty(Publish(New, folder, new()).Problems);
            Assert.Equal(NewShown, Sites.Show(site));
            AssertNothingLeft(folder);
        }

        Assert.True(cutOff > 5, $"{cutOff}");
    }

    // Files of others are as they were, every file of ours is an old or a new one, and nothing new is there before all that goes has gone.
    private static void AssertNoOtherFiles(string shown, bool noneMissing)
    {
        var (old, @new, now) = (Lines(OldShown), Lines(NewShown), Lines(shown));
        Assert.Superset(Lines(ForeignFiles + "README.md = r\na.html = a\n"), now);
        Assert.Subset(old.Union(@new).ToHashSet(StringComparer.Ordinal), now);
        Assert.False(now.Overlaps(@new.Except(old)) && now.Contains("gone/c.html = c"), shown);
        Assert.True(!noneMissing || now.Contains("d/b.html = b") || now.Contains("d/b.html = B"), shown);
    }

    private static HashSet<string> Lines(string shown) => [.. shown.Split('\n', StringSplitOptions.RemoveEmptyEntries)];

    private void AssertNothingLeft(string folder) => Sites.AssertNothingLeft(_temp.At(folder));

    [Fact]
    public void A_writer_that_fails_halfway_leaves_the_old_site_and_is_named()
    {
        var folder = Prepare();
        var plan = SitePlan.Of(
        [
            Sites.Text("a.html", [new("x", "1")], () => "new"),
            Sites.Output("d/b.html", [], stream =>
            {
                stream.Write("half"u8);
                throw new IOException("the disk is full");
            }),
            Sites.Text("z.html", [new("x", "1")], () => "new"),
        ]);
        var result = Publish(plan, folder, new FaultyFileWork());
        Assert.Equal((PublishOutcome.Failed, "d/b.html"), (result.Outcome, result.Problems[0].Path));
        Assert.Contains("disk is full", result.Problems[0].Message, StringComparison.Ordinal);
        Assert.Equal(OldShown, Sites.Show(_temp.At(folder)));
        AssertNothingLeft(folder);
    }

    [Fact]
    public void A_mistake_in_a_writer_comes_through_and_leaves_the_old_site()
    {
        var folder = Prepare();
        var plan = SitePlan.Of([Sites.Output("a.html", [], _ => throw new InvalidOperationException("a mistake"))]);
        Assert.Throws<InvalidOperationException>(() => Publish(plan, folder, new FaultyFileWork()));
        Assert.Equal(OldShown, Sites.Show(_temp.At(folder)));
        AssertNothingLeft(folder);
    }

    [Fact]
    public void A_cancelled_publish_leaves_the_old_site()
    {
        var folder = Prepare();
        using var cancel = new CancellationTokenSource();
        var plan = SitePlan.Of([Sites.Output("a.html", [], _ => cancel.Cancel()), Sites.Text("b.html", [], () => "b")]);
        Assert.ThrowsAny<OperationCanceledException>(() => new Publisher(Sites.Options).Publish(plan, _temp.At(folder), cancel.Token));
        Assert.Equal(OldShown, Sites.Show(_temp.At(folder)));
        AssertNothingLeft(folder);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_somebody_saves_while_the_site_is_updated_is_not_lost(bool exchange)
    {
        var folder = Prepare();
        var saved = false;
        var files = new FaultyFileWork(exchange: exchange)
        {
            Before = step =>
            {
                // As an editor saves: by renaming a new file over the old.
                if (step == "exchange" && !saved)
                {
                    saved = true;
                    foreach (var path in new[] { "README.md", "d/b.html" })
                    {
                        _temp.Write($"{folder}/draft", "changed while publishing");
                        File.Move(_temp.At($"{folder}/draft"), _temp.At($"{folder}/{path}"), overwrite: true);
                    }

                    _temp.Write($"{folder}/late/new.txt", "came while publishing");
                    Directory.CreateSymbolicLink(_temp.At($"{folder}/late/link"), _temp.At($"{folder}/e"));
                }
            },
        };
        var result = Publish(New, folder, files);
        Assert.True(saved);
        Assert.Equal(PublishOutcome.Published, result.Outcome);
        var expected = NewShown.Replace("README.md = r", "README.md = changed while publishing", StringComparison.Ordinal);
        Assert.Equal(expected + $"late/\nlate/link -> {_temp.At($"{folder}/e")}\nlate/new.txt = came while publishing\n", Sites.Show(_temp.At(folder)));
        Assert.Equal("changed while publishing", File.ReadAllText(_temp.At($"{Path.GetDirectoryName(folder)}/.layshaft-reports/kept/d/b.html")));
        Assert.Equal("d/b.html", Assert.Single(result.Warnings).Path);
    }

    [Fact]
    public void Nothing_outside_the_site_is_removed_or_replaced_through_a_link_that_took_a_folders_place()
    {
        var folder = Prepare();
        var site = _temp.At(folder);
        foreach (var name in new[] { "gone", "d" })
        {
            Directory.CreateDirectory(_temp.At("elsewhere"));
            var files = new FaultyFileWork
            {
                Before = step =>
                {
                    // Just after the site was looked at.
                    if (step == "write through" && Directory.Exists(Path.Combine(site, name)) && new DirectoryInfo(Path.Combine(site, name)).LinkTarget is null)
                    {
                        Directory.Move(Path.Combine(site, name), _temp.At($"elsewhere/{name}"));
                        Directory.CreateSymbolicLink(Path.Combine(site, name), _temp.At($"elsewhere/{name}"));
                    }
                },
            };
            Publish(New, folder, files);
            Assert.Equal(name == "gone" ? "gone/\ngone/c.html = c\n" : "d/\nd/b.html = b\n", Sites.Show(_temp.At("elsewhere")));
            Directory.Delete(_temp.At("elsewhere"), recursive: true);
            folder = Prepare();
            site = _temp.At(folder);
        }
    }

    [Fact]
    public void Withdrawn_pages_are_gone_before_new_ones_come_and_no_page_is_missing_in_between()
    {
        if (!OperatingSystem.IsLinux())
        {
            return; // elsewhere two files cannot change places in one step
        }

        var folder = Prepare();
        var seen = new System.Collections.Concurrent.ConcurrentQueue<string>();
        Publish(New, folder, new FaultyFileWork { Before = _ => seen.Enqueue(Sites.Show(_temp.At(folder))) });
        Assert.True(seen.Distinct().Count() > 3);
        Assert.All(seen, shown => AssertNoOtherFiles(shown, noneMissing: true));
    }
}
