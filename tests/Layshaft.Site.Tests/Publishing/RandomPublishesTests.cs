using System.Globalization;
using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>
/// Long series of publishes at random: plans, files of others, changes by hand, steps that fail, processes that die, also while they finish
/// the work of another, disks that cannot exchange, a clock that stands still, and one so far back that every time counts as settled. After
/// the next command the site is the old or the new one, and no word that somebody wrote is lost.
/// </summary>
public sealed class RandomPublishesTests : IDisposable
{
    private static readonly string[] Ours = ["a.html", "b.html", "d/c.html", "d/e.html", "d/f/g.html", "h/i.html", "h", "k.html"];
    private static readonly string[] Theirs = ["README.md", "d/notes.txt", "own/x.txt", "own/deep/y.txt", "link", "own/link"];

    private readonly TempFolder _temp = new();
    private readonly Dictionary<string, string> _plan = new(StringComparer.Ordinal);
    private readonly HashSet<string> _written = new(StringComparer.Ordinal);
    private readonly DateTime _began = DateTime.UtcNow;
    private Random _random = new(0);
    private TestClock _clock;
    private int _ticks;
    private int _words;

    public void Dispose() => _temp.Dispose();

    public enum TestClock
    {
        OfTheDisk,
        StandsStill,
        LongAgo,
    }

    private StateFolder State => new(_temp.At("reports"));

    [Theory]
    [InlineData(1, TestClock.OfTheDisk)]
    [InlineData(2, TestClock.OfTheDisk)]
    [InlineData(3, TestClock.OfTheDisk)]
    [InlineData(4, TestClock.StandsStill)]
    [InlineData(5, TestClock.StandsStill)]
    [InlineData(6, TestClock.StandsStill)]
    [InlineData(7, TestClock.LongAgo)]
    [InlineData(8, TestClock.LongAgo)]
    [InlineData(9, TestClock.LongAgo)]
    public void Every_publish_leaves_a_whole_site_and_no_word_of_others_is_lost(int seed, TestClock clock)
    {
        (_random, _clock) = (new(seed), clock);
        var (old, @new, cutOff) = (0, 0, 0);
        for (var round = 0; round < 120; round++)
        {
            ChangePlan();
            WorkByHand();
            ClearTheWay();
            var before = Sites.Show(State.Output);
            var expected = Expected();
            var exchange = _random.Next(4) > 0;
            var plan = Sites.Plan([.. _plan.Select(f => (f.Key, f.Value))]);
            if (_random.Next(3) > 0)
            {
                var result = Publish(plan, new FaultyFileWork(_random.Next(1, 40), _random.Next(2) == 0, exchange) { Clock = Clock });
                if (_random.Next(3) == 0)
                {
                    // The next command dies too.
                    Sites.OpenAgain(State.Output, new(_random.Next(1, 20), dead: true, exchange));
                }

                Sites.OpenAgain(State.Output, new(exchange: exchange));
                var shown = Sites.Show(State.Output);
                Assert.Equal(result.IsCutOff || result.Outcome is PublishOutcome.Published or PublishOutcome.Unchanged ? expected : before, shown);
                (old, @new, cutOff) = (old + (shown == before ? 1 : 0), @new + (shown == expected ? 1 : 0), cutOff + (result.IsCutOff ? 1 : 0));
            }

            if (_random.Next(2) == 0 || !Directory.Exists(State.Output))
            {
                var result = Publish(plan, new FaultyFileWork(exchange: exchange) { Clock = Clock });
                Assert.True(result.Outcome is PublishOutcome.Published or PublishOutcome.Unchanged, string.Join(' ', result.Problems));
                Assert.Equal(expected, Sites.Show(State.Output));
                Sites.AssertNothingLeft(State.Output);
            }

            AssertNothingIsLost();
        }

        Assert.True(old > 10 && @new > 10 && cutOff > 10, $"old {old}, new {@new}, cut off {cutOff}");
    }

    private Func<DateTime>? Clock => _clock == TestClock.OfTheDisk ? null : Now;

    // No two files of long ago have the same time, since size and time are all that they are told by.
    private DateTime Now() => _clock == TestClock.StandsStill ? _began.AddHours(1) : _began.AddHours(-1).AddMilliseconds(Interlocked.Increment(ref _ticks));

    private PublishResult Publish(SitePlan plan, FaultyFileWork files) => new Publisher(Sites.Options with { Parallelism = 2 }, files).Publish(plan, State.Output);

    // Words of one length, so that only time and record tell files apart.
    private string Words() => (_words++).ToString("x4", CultureInfo.InvariantCulture);

    private void ChangePlan()
    {
        for (var changes = _random.Next(3); changes >= 0; changes--)
        {
            var path = Ours[_random.Next(Ours.Length)];
            if (_random.Next(3) == 0)
            {
                _plan.Remove(path);
            }
            else if (!_plan.Keys.Any(p => p.StartsWith(path + "/", StringComparison.Ordinal) || path.StartsWith(p + "/", StringComparison.Ordinal)))
            {
                // Sometimes what it was before.
                _plan[path] = _random.Next(3) == 0 ? "same" : Words();
            }
        }
    }

    private void WorkByHand()
    {
        var isSettled = Directory.Exists(State.Output);
        if (isSettled && _random.Next(2) == 0)
        {
            WriteAsStranger(Theirs[_random.Next(Theirs.Length)]);
        }

        if (isSettled && _random.Next(3) == 0)
        {
            EditOurs();
        }

        if (isSettled && _random.Next(12) == 0)
        {
            File.Delete(State.Cache);
        }
    }

    private void WriteAsStranger(string path)
    {
        var place = StateFolder.Place(State.Output, path);
        if (Path.Exists(place))
        {
            if (_random.Next(3) == 0)
            {
                Forget(place);
                File.Delete(place);
                return;
            }
        }

        Directory.CreateDirectory(Path.GetDirectoryName(place)!);
        if (path.EndsWith("link", StringComparison.Ordinal))
        {
            File.Delete(place);
            File.CreateSymbolicLink(place, Words());
        }
        else
        {
            Forget(place);
            var words = Words();
            Write(place, words, _random.Next(2) == 0);
            _written.Add(words);
        }
    }

    private void EditOurs()
    {
        var path = _plan.Keys.Where(p => File.Exists(StateFolder.Place(State.Output, p))).ElementAtOrDefault(_random.Next(4));
        if (path is null)
        {
            return;
        }

        var place = StateFolder.Place(State.Output, path);
        Forget(place);
        if (_random.Next(3) == 0)
        {
            File.Delete(place);
            return;
        }

        var words = Words();
        Write(place, words, _random.Next(2) == 0);
        _written.Add(words);
    }

    // What others left where the plan wants a file would stop the publish.
    private void ClearTheWay()
    {
        var named = Named();
        foreach (var entry in SiteTree.Walk(State.Output).Reverse())
        {
            var place = StateFolder.Place(State.Output, entry.Path);
            var isWanted = _plan.ContainsKey(entry.Path) || _plan.Keys.Any(p => p.StartsWith(entry.Path + "/", StringComparison.Ordinal));
            if (entry.Kind == TreeKind.Folder)
            {
                if (_plan.ContainsKey(entry.Path) && !Directory.EnumerateFileSystemEntries(place).Any())
                {
                    Directory.Delete(place);
                }
            }
            else if ((isWanted || OutputPath.FoldersAbove(entry.Path).Any(_plan.ContainsKey))
                && (named.Files.Find(entry.Path) is not { } listed || (!_plan.ContainsKey(entry.Path) && OldSite.HashOf(place) != listed.Sha256)))
            {
                Forget(place);
                File.Delete(place);
            }
        }
    }

    private SiteManifest Named()
    {
        var list = StateFolder.Place(State.Output, Sites.Manifest);
        return File.Exists(list) ? SiteManifest.Parse(File.ReadAllBytes(list))! : new(new([]), LinkHistory.None);
    }

    private void Forget(string place)
    {
        if (File.Exists(place) && new FileInfo(place).LinkTarget is null)
        {
            _written.Remove(File.ReadAllText(place));
        }
    }

    private void Write(string place, string words, bool inPlace)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(place)!);
        var draft = inPlace ? place : _temp.At("draft");
        File.WriteAllText(draft, words);
        if (Clock is { } clock)
        {
            File.SetLastWriteTimeUtc(draft, clock());
        }

        if (!inPlace)
        {
            File.Move(draft, place, overwrite: true);
        }
    }

    // The plan, and whatever stands in the site that is not ours.
    private string Expected()
    {
        var named = Named();
        var after = _temp.At("expected");
        foreach (var entry in SiteTree.Walk(State.Output))
        {
            var (from, to) = (StateFolder.Place(State.Output, entry.Path), StateFolder.Place(after, entry.Path));
            var listed = named.Files.Find(entry.Path);
            var isOurs = entry.Path == Sites.Manifest
                || (listed is not null && (_plan.ContainsKey(entry.Path) || OldSite.HashOf(from) == listed.Sha256));
            var isOurFolder = entry.Kind == TreeKind.Folder
                && (entry.Path == "shop" || named.Files.Any(e => e.Path.StartsWith(entry.Path + "/", StringComparison.Ordinal)));
            if (entry.Kind == TreeKind.Folder && !isOurFolder)
            {
                Directory.CreateDirectory(to);
            }
            else if (entry.Kind != TreeKind.Folder && !isOurs)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(to)!);
                new DiskWork().Move(Copy(from), to);
            }
        }

        foreach (var (path, words) in _plan)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(StateFolder.Place(after, path))!);
            File.WriteAllText(StateFolder.Place(after, path), words);
        }

        Directory.CreateDirectory(after);
        var shown = Sites.Show(after);
        Directory.Delete(after, recursive: true);
        return shown;
    }

    private string Copy(string from)
    {
        var draft = _temp.At("draft");
        if (new FileInfo(from).LinkTarget is { } target)
        {
            File.CreateSymbolicLink(draft, target);
        }
        else
        {
            File.Copy(from, draft);
        }

        return draft;
    }

    private void AssertNothingIsLost()
    {
        var found = Directory.EnumerateFiles(_temp.Path, "*", SearchOption.AllDirectories)
            .Where(p => new FileInfo(p) is { LinkTarget: null, Length: 4 }).Select(File.ReadAllText).ToHashSet(StringComparer.Ordinal);
        Assert.Empty(_written.Except(found));
    }
}
