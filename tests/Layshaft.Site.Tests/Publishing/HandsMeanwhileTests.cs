using System.Globalization;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>
/// Somebody works in the site while a publish is at work, at any of its steps: no word of theirs is lost.
/// </summary>
public sealed class HandsMeanwhileTests : IDisposable
{
    private static readonly string[] Places = ["theirs.txt", "d/theirs.txt", "e/f/new.txt", "new/deep/new.txt", "e/new/new.txt", "a.html", "d/b.html", "e/c.html", "e/f/g.html"];

    private readonly TempFolder _temp = new();
    private readonly StateFolder _state;
    private int _words;

    public HandsMeanwhileTests() => _state = new(_temp.At("reports"));

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void No_word_is_lost()
    {
        var written = new HashSet<string>(StringComparer.Ordinal);
        for (var round = 0; round < 160; round++)
        {
            var random = new Random(round);
            Prepare();
            var (at, steps, word) = (random.Next(1, 16), 0, string.Empty);
            var files = new FaultyFileWork { Before = _ => word = Interlocked.Increment(ref steps) == at ? Write(Places[random.Next(Places.Length)], random.Next(2) == 0) : word };
            foreach (var (changed, work) in new[] { (round + 1000, files), (round + 2000, new()) })
            {
                Publish(changed, work);
                Assert.True(word.Length == 0 || IsFound(word), $"round {round}, step {at}, {changed}");
            }

            Sites.AssertNothingLeft(_state.Output);
            Assert.All(Plan(round + 2000), f => Assert.Equal(f.Content, File.ReadAllText(StateFolder.Place(_state.Output, f.Path))));
            written.Add(word);
        }

        Assert.True(written.Count > 120, $"{written.Count}");
    }

    // A site with files of others in it.
    private void Prepare()
    {
        foreach (var folder in new[] { _state.Output, _state.Root }.Where(Directory.Exists))
        {
            Directory.Delete(folder, recursive: true);
        }

        Publish(1, new());
        Write("theirs.txt", inPlace: true);
        Write("d/theirs.txt", inPlace: true);
        Publish(2, new());
    }

    private void Publish(int changed, FaultyFileWork files) => new Publisher(Sites.Options, files).Publish(Sites.Plan(Plan(changed)), _state.Output);

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

    // In the site or kept aside.
    private bool IsFound(string word) => new[] { _state.Output, _state.Kept }.Where(Directory.Exists)
        .SelectMany(f => Directory.EnumerateFiles(f, "*", SearchOption.AllDirectories)).Any(p => File.ReadAllText(p) == word);
}
