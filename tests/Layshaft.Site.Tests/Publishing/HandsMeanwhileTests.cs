using System.Globalization;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>
/// Somebody works in the site while a publish is at work, at any of its steps: no word of theirs is lost, whether the old tree is walked
/// when it is settled or the times of its folders tell what came.
/// </summary>
public sealed class HandsMeanwhileTests : IDisposable
{
    private static readonly TimeSpan Step = TimeSpan.FromMilliseconds(15);
    private static readonly string[] Places = ["theirs.txt", "d/theirs.txt", "e/f/new.txt", "new/deep/new.txt", "e/new/new.txt", "a.html", "d/b.html", "e/c.html", "e/f/g.html"];

    private readonly TempFolder _temp = new();
    private readonly StateFolder _state;
    private int _words;

    public HandsMeanwhileTests() => _state = new(_temp.At("reports"));

    public void Dispose() => _temp.Dispose();

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void No_word_is_lost(bool byFolderTimes)
    {
        var written = new HashSet<string>(StringComparer.Ordinal);
        for (var round = 0; round < 80; round++)
        {
            var random = new Random(round);
            Prepare(byFolderTimes);
            var (at, steps, word) = (random.Next(1, 22), 0, string.Empty);
            var files = new FaultyFileWork { Before = _ => word = Interlocked.Increment(ref steps) == at ? Write(Places[random.Next(Places.Length)], random.Next(2) == 0) : word };
            foreach (var (changed, work) in new[] { (round + 1000, files), (round + 2000, new()) })
            {
                Publish(changed, byFolderTimes, work);
                Assert.True(word.Length == 0 || IsFound(word), $"round {round}, step {at}, {changed}");
            }

            Sites.AssertNothingLeft(_state.Output);
            Assert.All(Plan(round + 2000), f => Assert.Equal(f.Content, File.ReadAllText(StateFolder.Place(_state.Output, f.Path))));
            written.Add(word);
        }

        Assert.True(written.Count > 60, $"{written.Count}");
    }

    // Strangers' files in the site, and with folder times a spare whose note holds.
    private void Prepare(bool byFolderTimes)
    {
        foreach (var folder in new[] { _state.Output, _state.Root }.Where(Directory.Exists))
        {
            Directory.Delete(folder, recursive: true);
        }

        Publish(1, byFolderTimes, new());
        Write("theirs.txt", inPlace: true);
        Write("d/theirs.txt", inPlace: true);
        Publish(2, byFolderTimes, new());
    }

    private void Publish(int changed, bool byFolderTimes, FaultyFileWork files)
    {
        if (byFolderTimes)
        {
            Thread.Sleep(2 * Step);
        }

        var options = Sites.Options with { FolderClock = byFolderTimes ? Step : DiskClock.Coarsest };
        new Publisher(options, files).Publish(Sites.Plan(Plan(changed)), _state.Output);
    }

    private static (string Path, string Content)[] Plan(int changed) =>
        [("a.html", "a"), ("d/b.html", changed.ToString("x4", CultureInfo.InvariantCulture)), ("e/c.html", "c"), ("e/f/g.html", "g")];

    private string Write(string path, bool inPlace)
    {
        var word = $"word {_words++}";
        var place = StateFolder.Place(_state.Output, path);
        Directory.CreateDirectory(Path.GetDirectoryName(place)!);
        var draft = inPlace ? place : _temp.At("draft");
        File.WriteAllText(draft, word);
        if (!inPlace)
        {
            File.Move(draft, place, overwrite: true);
        }

        return word;
    }

    // In the site or kept aside; nobody would look into the spare.
    private bool IsFound(string word) => new[] { _state.Output, _state.Kept }.Where(Directory.Exists)
        .SelectMany(f => Directory.EnumerateFiles(f, "*", SearchOption.AllDirectories)).Any(p => File.ReadAllText(p) == word);
}
