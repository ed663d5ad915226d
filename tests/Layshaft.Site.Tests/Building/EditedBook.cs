using System.Globalization;
using Layshaft.Book.Problems;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;
using Layshaft.Site.Publishing;
using Layshaft.Site.Tests.Photos;
using Layshaft.Site.Tests.Seasons;

namespace Layshaft.Site.Tests.Building;

/// <summary>
/// A small book on disk that is changed bit by bit: three units, of which the first two share a customer and the third can
/// give parts to the first.
/// </summary>
internal sealed class EditedBook : IDisposable
{
    /// <summary>The highest number of a kind of change.</summary>
    public const int Kinds = 21;

    private const string Listing = "photos:\n  - { file: ring.jpg, caption: The ring. }\n";

    private const string Secret = "a secret for tests, long enough-0123456789";

    private static readonly byte[][] Pictures = [SyntheticPhoto.Jpeg(64, 48, 1), SyntheticPhoto.Jpeg(48, 64, 2), SyntheticPhoto.Jpeg(64, 48, 3)];

    private readonly TempFolder _folder = new();
    private readonly Dictionary<string, byte[]> _files = new(StringComparer.Ordinal);
    private int _made;
    private int _hour;

    public EditedBook()
    {
        foreach (var (path, text) in SmallBook.Files(("units/c.yaml", SmallBook.UnitB.Replace("B-2", "C-3", StringComparison.Ordinal))))
        {
            Write(path, text);
        }

        Write(".layshaft-secret", Secret.Replace(" ", "-", StringComparison.Ordinal));
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(_folder.At("book/.layshaft-secret"), UnixFileMode.UserRead | UnixFileMode.UserWrite);
        }

        AddPicture("jobs/2023/0001", 0);
    }

    public void Dispose() => _folder.Dispose();

    /// <summary>Does the change of a number; what it cannot do now is left undone.</summary>
    /// <param name="kind">Which kind of change.</param>
    /// <param name="value">What it changes to.</param>
    public void Change(int kind, int value)
    {
        switch (kind)
        {
            case 0: Replace("jobs/2024/0002/job.yaml", "readings: [1.21 mm]", $"readings: [1.{10 + value} mm]"); break;
            case 1: Replace("jobs/2025/0003/job.yaml", "Second says hello.", $"Second says {value}."); break;
            case 2: Replace("customers/second.yaml", "Second Owner", $"Second Owner{new string('.', value)}"); break;
            case 3: Replace("shop.yaml", "name: Test Bench", $"name: Test Bench {value}"); break;
            case 4: Replace("gearboxes/four.yaml", "price: 100", $"price: {100 + value}"); break;
            case 5: AddJob(value); break;
            case 6: Remove("jobs/2025/0004/"); break;
            case 7: AddPicture("jobs/2023/0001", value); break;
            case 8: Remove("jobs/2026/"); break;
            case 9: Write("templates/partials-of-the-shop.html", $"<p>{value}</p>"); break;
            case 10: Add("units/a.yaml", "link_renewed", $"link_renewed: {value}\n"); break;
            case 11: Rename("jobs/2025/0003/", "jobs/2025/0013/"); break;
            case 12: Replace("jobs/2024/0002/job.yaml", "{ part: seal }", "{ part: front, from: c }"); break;
            case 13: Replace("jobs/2025/0004/internal.md", "PLANTED-BENCH-NOTE", $"Note {value}"); break;
            case 14: Add("units/c.yaml", "fitted", $"fitted:\n  - {{ part: ring-34, serial: R-34, use: {value} h }}\n"); break;
            case 15: Replace("jobs/2025/0004/job.yaml", "Looks worn.", $"Looks worn {value}."); break;
            case 16: Write("jobs/2023/0001/invoice.pdf", $"{value}"); break;
            case 17: Remove("jobs/2023/0001/invoice.pdf"); break;
            case 18: RemovePicture("jobs/2023/0001"); break;
            case 19: Write(".layshaft-secret", $"another-secret-for-tests-long-enough-{value}-9876543210"); break;
            case 20: Touch("jobs/2024/0002/job.yaml"); break;
            default: Replace("venues/hill.yaml", "PLANTED-VENUE", $"Venue {value}"); break;
        }
    }

    /// <summary>How many parts of the book the last publish part by part had to read.</summary>
    public int SlicesRead { get; private set; }

    /// <summary>What the last publish part by part had to say.</summary>
    public IReadOnlyList<Problem> Problems { get; private set; } = [];

    /// <summary>What a publish of the whole book has to say.</summary>
    public IReadOnlyList<Problem> ProblemsOfTheWhole() => SitePreparation.Of(BookReview.OfFolder(_folder.At("book")), _folder.At("book")).Problems;

    /// <summary>Whether the book can be published part by part.</summary>
    public bool CanBeSliced() => SlicedSite.Of(_folder.At("book"), new SiteCache(_folder.At("site"))) is not null;

    /// <summary>Where a file of the site is.</summary>
    public string InSite(string path) => _folder.At($"site/{path}");

    /// <summary>A file that is kept beside the site.</summary>
    public string Kept(string name) => _folder.At($".layshaft-site/{name}");

    /// <summary>Publishes into the folder that was published into before.</summary>
    public PublishResult Again() => Publish("site", isSliced: true);

    /// <summary>Publishes into a new folder.</summary>
    public string Clean()
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"clean-{_made++}");
        Publish(name);
        return name;
    }

    /// <summary>Every file below a folder with its content, as text that can be compared.</summary>
    public SortedDictionary<string, string> Tree(string name)
    {
        var root = _folder.At(name);
        var tree = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var file in Directory.EnumerateFiles(root, "*", SearchOption.AllDirectories))
        {
            // What the site remembers of withdrawn links comes from publishes before; the list of files is the same.
            var bytes = file.EndsWith("layshaft-manifest.json", StringComparison.Ordinal)
                ? System.Text.Encoding.UTF8.GetBytes(string.Join('\n', SiteManifest.Parse(File.ReadAllBytes(file))!.Files))
                : File.ReadAllBytes(file);
            tree[Path.GetRelativePath(root, file)] = Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(bytes));
        }

        return tree;
    }

    // The first folder is published into part by part, with what is known from the time before; the others from the whole book.
    private PublishResult Publish(string name, bool isSliced = false)
    {
        var book = _folder.At("book");
        var memory = new SiteCache(_folder.At(name));
        SitePlan plan;
        if (isSliced)
        {
            var site = SlicedSite.Of(book, memory);
            Assert.NotNull(site);
            (SlicesRead, Problems) = (site.SlicesRead, site.Problems);
            plan = site.Plan;
        }
        else
        {
            var site = SitePreparation.Of(BookReview.OfFolder(book), book);
            Assert.True(site.Builder is not null, string.Join('\n', site.Problems.Where(p => p.Severity != Severity.Notice)));
            plan = site.Builder.Plan();
        }

        var result = new Publisher(new PublishOptions { Book = book, Parallelism = 2, Store = memory }, new DiskWork(waitForDisk: false)).Publish(plan, _folder.At(name));
        return result;
    }

    private void AddJob(int value)
    {
        var unit = "abc"[value % 3].ToString();
        var number = string.Create(CultureInfo.InvariantCulture, $"jobs/2026/{100 + (_made++)}");
        Write($"{number}/job.yaml", SmallBook.Job(unit, "2026-02-01", $"{70 + _made} h", "complaint: New.\nverdict: Fine.\nfinished: 2026-02-10\n" + SmallBook.Rings(0.60, 0.70, 0.80, 0.65)));
    }

    private void RemovePicture(string job)
    {
        if (_files.ContainsKey($"{job}/photos/ring.jpg"))
        {
            Remove($"{job}/photos/");
            Replace($"{job}/job.yaml", Listing, string.Empty);
        }
    }

    private void AddPicture(string job, int value)
    {
        var path = $"{job}/photos/ring.jpg";
        if (!_files.ContainsKey(path))
        {
            Write($"{job}/job.yaml", Text($"{job}/job.yaml") + Listing);
        }

        WriteBytes(path, Pictures[value % Pictures.Length]);
    }

    /// <summary>The text of a file of the book.</summary>
    public string Text(string path) => System.Text.Encoding.UTF8.GetString(_files[path]);

    /// <summary>A file of the book.</summary>
    public byte[] Bytes(string path) => _files[path];

    private void Replace(string path, string from, string to)
    {
        if (_files.ContainsKey(path))
        {
            Write(path, Text(path).Replace(from, to, StringComparison.Ordinal));
        }
    }

    private void Add(string path, string field, string text)
    {
        if (!Text(path).Contains(field, StringComparison.Ordinal))
        {
            Write(path, Text(path).TrimEnd('\n') + "\n" + text);
        }
    }

    /// <summary>Removes files whose path begins with a text.</summary>
    public void Remove(string start)
    {
        foreach (var path in _files.Keys.Where(p => p.StartsWith(start, StringComparison.Ordinal)).ToList())
        {
            _files.Remove(path);
            File.Delete(_folder.At($"book/{path}"));
        }
    }

    private void Rename(string from, string to)
    {
        foreach (var path in _files.Keys.Where(p => p.StartsWith(from, StringComparison.Ordinal)).ToList())
        {
            var bytes = _files[path];
            Remove(path);
            WriteBytes(to + path[from.Length..], bytes);
        }
    }

    /// <summary>Writes a file of the book.</summary>
    public void Write(string path, string text) => WriteBytes(path, System.Text.Encoding.UTF8.GetBytes(text));

    // The same text at another time.
    private void Touch(string path) => Write(path, Text(path));

    /// <summary>Gives a file a time.</summary>
    public void Touch(string path, DateTime time) => File.SetLastWriteTimeUtc(_folder.At($"book/{path}"), time);

    /// <summary>Changes a file and leaves it its size and time.</summary>
    public void WriteUnnoticed(string path, string from, string to)
    {
        var file = _folder.At($"book/{path}");
        var time = File.GetLastWriteTimeUtc(file);
        Assert.Contains(from, Text(path), StringComparison.Ordinal);
        Assert.Equal(from.Length, to.Length);
        File.WriteAllText(file, Text(path).Replace(from, to, StringComparison.Ordinal));
        File.SetLastWriteTimeUtc(file, time);
    }

    // As if each change lay an hour after the one before: what was seen then is trusted now.
    private void WriteBytes(string path, byte[] bytes)
    {
        _files[path] = bytes;
        _folder.WriteBytes($"book/{path}", bytes);
        File.SetLastWriteTimeUtc(_folder.At($"book/{path}"), new DateTime(2026, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddHours(_hour++));
    }
}
