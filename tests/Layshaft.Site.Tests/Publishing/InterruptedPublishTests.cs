using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>Whole or not at all: a publish of which any step fails, or is the last before the process dies.</summary>
public sealed class InterruptedPublishTests : IDisposable
{
    private static readonly SitePlan Old = Sites.Plan(("a.html", "a"), ("d/b.html", "b"), ("gone/c.html", "c"));
    private static readonly SitePlan New = Sites.Plan(("a.html", "a"), ("d/b.html", "B"), ("e/f.html", "f"), ("g.html", "g"));

    private const string Strangers = ".git/\n.git/head = h\n";
    private const string OldShown = Strangers + "README.md = r\na.html = a\nd/\nd/b.html = b\ngone/\ngone/c.html = c\n";
    private const string NewShown = Strangers + "README.md = r\na.html = a\nd/\nd/b.html = B\ne/\ne/f.html = f\ng.html = g\n";

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

    private static FaultyFileWork Work(int failAt, bool dead, bool exchange, bool links) => new(failAt, dead, exchange, links);

    [Theory]
    [InlineData(false, true, true)]
    [InlineData(true, true, true)]
    [InlineData(false, false, true)]
    [InlineData(true, false, true)]
    [InlineData(false, true, false)]
    [InlineData(true, false, false)]
    public void Whatever_step_is_the_last_the_site_is_the_old_or_the_new_and_the_next_publish_mends_the_rest(bool dead, bool exchange, bool links)
    {
        var steps = new FaultyFileWork();
        Publish(New, Prepare(), steps);
        Assert.InRange(steps.Steps, 20, 200);
        var (sawOld, sawNew, sawNone) = (0, 0, 0);
        for (var failAt = 1; failAt <= steps.Steps + 2; failAt++)
        {
            var folder = Prepare();
            var result = Publish(New, folder, Work(failAt, dead, exchange, links));
            var shown = Sites.Show(_temp.At(folder));

            // Only a death between two renames, where the system cannot exchange, leaves a moment without a site.
            Assert.Contains(shown, exchange || !dead ? [OldShown, NewShown] : new[] { OldShown, NewShown, "(none)" });
            sawOld += shown == OldShown ? 1 : 0;
            sawNew += shown == NewShown ? 1 : 0;
            sawNone += shown == "(none)" ? 1 : 0;
            Assert.Equal(shown == NewShown, result.Outcome == PublishOutcome.Published);

            // Back to the old plan: mends what was left, whichever site is there now.
            var next = Publish(Old, folder, Work(int.MaxValue, false, exchange, links));
            Assert.True(next.Outcome is PublishOutcome.Published or PublishOutcome.Unchanged, $"{failAt}: {string.Join(' ', next.Problems)}");
            Assert.Empty(next.Warnings);
            Assert.Equal(OldShown, Sites.Show(_temp.At(folder)));
            AssertNothingLeft(folder);
        }

        Assert.True(sawOld > 5 && sawNew > 5, $"old {sawOld}, new {sawNew}");
        Assert.Equal(dead && !exchange ? 1 : 0, sawNone);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_publish_that_dies_while_mending_is_mended_by_the_next(bool exchange)
    {
        for (var died = 5; died < 60; died += 6)
        {
            for (var again = 1; again < 25; again += 4)
            {
                var folder = Prepare();
                Publish(New, folder, Work(died, true, exchange, true));
                Publish(New, folder, Work(again, true, exchange, true));
                var last = Publish(New, folder, Work(int.MaxValue, false, exchange, true));
                Assert.Empty(last.Problems);
                Assert.Equal(NewShown, Sites.Show(_temp.At(folder)));
                AssertNothingLeft(folder);
                Directory.Delete(_temp.At(folder), true);
            }
        }
    }

    private void AssertNothingLeft(string folder) => Sites.AssertNothingLeft(_temp.At(folder));

    [Fact]
    public void A_writer_that_fails_halfway_leaves_the_old_site_and_is_named()
    {
        var folder = Prepare();
        var plan = SitePlan.Of(
        [
            PlannedOutput.OfText("a.html", [new("x", "1")], () => "new"),
            new("d/b.html", [], stream =>
            {
                stream.Write("half"u8);
                throw new IOException("the disk is full");
            }),
            PlannedOutput.OfText("z.html", [new("x", "1")], () => "new"),
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
        var plan = SitePlan.Of([new PlannedOutput("a.html", [], _ => throw new InvalidOperationException("a mistake"))]);
        Assert.Throws<InvalidOperationException>(() => Publish(plan, folder, new FaultyFileWork()));
        Assert.Equal(OldShown, Sites.Show(_temp.At(folder)));
        AssertNothingLeft(folder);
    }

    [Fact]
    public void A_cancelled_publish_leaves_the_old_site()
    {
        var folder = Prepare();
        using var cancel = new CancellationTokenSource();
        var plan = SitePlan.Of([new PlannedOutput("a.html", [], _ => cancel.Cancel()), PlannedOutput.OfText("b.html", [], () => "b")]);
        Assert.ThrowsAny<OperationCanceledException>(() => new Publisher(Sites.Options).Publish(plan, _temp.At(folder), cancel.Token));
        Assert.Equal(OldShown, Sites.Show(_temp.At(folder)));
        AssertNothingLeft(folder);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_a_stranger_saves_while_the_site_is_staged_is_not_lost(bool exchange)
    {
        var folder = Prepare();
        var saved = false;
        var files = new FaultyFileWork(exchange: exchange)
        {
            Before = step =>
            {
                // Just before the swap, when the stage is complete: as an editor saves, by renaming a new file over the old.
                if (step == "exchange" && !saved)
                {
                    saved = true;
                    _temp.Write($"{folder}/draft", "changed while publishing");
                    File.Move(_temp.At($"{folder}/draft"), _temp.At($"{folder}/README.md"), overwrite: true);
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
        Assert.Equal("r", File.ReadAllText(_temp.At($"{Path.GetDirectoryName(folder)}/.layshaft-reports/kept/README.md")));
        Assert.Equal("README.md", Assert.Single(result.Warnings).Path);
    }

    [Fact]
    public void A_reader_never_sees_a_mixture_where_folders_can_be_exchanged()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        var folder = Prepare();
        var seen = new System.Collections.Concurrent.ConcurrentQueue<string>();
        var files = new FaultyFileWork { Before = _ => seen.Enqueue(Sites.Show(_temp.At(folder))) };
        Publish(New, folder, files);
        Assert.Equal([OldShown, NewShown], seen.Distinct());
    }
}
