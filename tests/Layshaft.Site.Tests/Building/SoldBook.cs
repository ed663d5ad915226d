using System.Text.RegularExpressions;
using Layshaft.Site.Building;
using Layshaft.Site.Publishing;
using Layshaft.Site.Tests.Seasons;

namespace Layshaft.Site.Tests.Building;

/// <summary>A small book on disk whose units change hands. It is published as the program does it, again and again into one folder.</summary>
internal sealed partial class SoldBook : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Dictionary<string, string> _everSeen = new(StringComparer.Ordinal);

    public SoldBook()
    {
        foreach (var (path, text) in SmallBook.Files(
            ("customers/first.yaml", "name: Reader-One\n"),
            ("customers/second.yaml", "name: Reader-Two\n"),
            ("customers/third.yaml", "name: Reader-Three\n"),
            ("customers/fourth.yaml", "name: Reader-Four\n"),
            ("units/b.yaml", SmallBook.UnitB.Replace("second", "fourth", StringComparison.Ordinal))))
        {
            Write(path, text);
        }

        Write(".layshaft-secret", "a-secret-for-tests-long-enough-0123456789\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(_folder.At("book/.layshaft-secret"), UnixFileMode.UserRead | UnixFileMode.UserWrite);
        }
    }

    /// <summary>The book's folder.</summary>
    public string Path => _folder.At("book");

    /// <summary>The site's folder.</summary>
    public string Site => _folder.At("site");

    /// <summary>What the last publish had to say.</summary>
    public SitePublish Last { get; private set; } = null!;

    /// <summary>The reader of each key, by what its pages say.</summary>
    public IReadOnlyDictionary<string, string> Readers { get; private set; } = new Dictionary<string, string>();

    public void Dispose() => _folder.Dispose();

    public void Write(string path, string text) => _folder.Write($"book/{path}", text);

    public void Delete(string path) => File.Delete(_folder.At($"book/{path}"));

    public string Text(string path) => File.ReadAllText(_folder.At($"book/{path}"));

    public string Beside(string name) => _folder.At($".layshaft-site/{name}");

    public void Replace(string path, string from, string to)
    {
        Assert.Contains(from, Text(path), StringComparison.Ordinal);
        Write(path, Text(path).Replace(from, to, StringComparison.Ordinal));
    }

    /// <summary>Gives a unit other owners, such as <c>first 2023-01-01</c>, in place of those in its file.</summary>
    public void Owners(string unit, params string[] owners)
    {
        var lines = string.Concat(owners.Select(o => $"  - {{ customer: {o.Split(' ')[0]}, from: {o.Split(' ')[1]} }}\n"));
        Write($"units/{unit}.yaml", OwnerList().Replace(Text($"units/{unit}.yaml"), $"owners:\n{lines}"));
    }

    /// <summary>Publishes, and holds that no key ever met another reader, in this publish or any before.</summary>
    public SoldBook Publish()
    {
        Run("site");
        Readers = ReadersOf("site");
        foreach (var (key, reader) in Readers)
        {
            Assert.Equal(_everSeen.TryAdd(key, reader) ? reader : _everSeen[key], reader);
        }

        return this;
    }

    /// <summary>Publishes what must go through, and holds that a publish of all of it from nothing has the same keys for the same readers.</summary>
    public SoldBook PublishWell()
    {
        Publish();
        Assert.True(Last.Result is { Outcome: PublishOutcome.Published or PublishOutcome.Unchanged }, string.Join('\n', Last.Problems));
        var before = Last;
        Run("whole");
        Assert.Equal(ReadersOf("whole"), Readers);
        Directory.Delete(_folder.At("whole"), recursive: true);
        Directory.Delete(_folder.At(".layshaft-whole"), recursive: true);
        Last = before;
        return this;
    }

    /// <summary>From now on a reader has another name.</summary>
    public void Correct(string name, string to)
    {
        foreach (var key in _everSeen.Where(k => k.Value == name).Select(k => k.Key).ToArray())
        {
            _everSeen[key] = to;
        }
    }

    /// <summary>The key that opens for a reader; fails where there is not just one.</summary>
    public string KeyOf(string reader) => Readers.Single(r => r.Value == reader).Key;

    private void Run(string name) => Last = SitePublish.Run(Path, _folder.At(name), new PublishOptions { Book = Path, Parallelism = 2 });

    private SortedDictionary<string, string> ReadersOf(string site)
    {
        var readers = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var folder in Directory.EnumerateDirectories(_folder.At($"{site}/customers")).Where(f => File.Exists(System.IO.Path.Combine(f, "index.html")) && System.IO.Path.GetFileName(f) != "look"))
        {
            var pages = string.Concat(Directory.EnumerateFiles(folder, "*.html", SearchOption.AllDirectories).Select(File.ReadAllText));
            var names = Names().Matches(pages).Select(m => m.Value.ToUpperInvariant().Replace(' ', '-')).Distinct().Order(StringComparer.Ordinal);
            readers.Add(System.IO.Path.GetFileName(folder), string.Join(" and ", names));
        }

        return readers;
    }

    [GeneratedRegex("Reader[- ][A-Z][a-z]+", RegexOptions.IgnoreCase)]
    private static partial Regex Names();

    [GeneratedRegex("owners:\n(?:  - .*\n)+")]
    private static partial Regex OwnerList();
}
