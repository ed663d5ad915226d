using System.Collections.Concurrent;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;

namespace Layshaft.Book.Tests;

/// <summary>A book without its jobs, read at once and on demand.</summary>
public sealed class StandingBookTests
{
    [Fact]
    public void What_is_read_on_demand_is_what_is_read_at_once()
    {
        var files = new MemoryBookFiles(Books.SmallFiles());
        var (whole, onDemand) = (StandingBook.Read(files, new ProblemList(), new ProblemList())!, StandingBook.Recall(files, new ProblemList())!);
        Assert.Equal(whole.JobFiles, onDemand.JobFiles);
        Same(whole.Book.Customers, onDemand.Book.Customers);
        Same(whole.Book.Gearboxes, onDemand.Book.Gearboxes);
        Same(whole.Book.Cars, onDemand.Book.Cars);
        Same(whole.Book.Venues, onDemand.Book.Venues);
        Same(whole.Book.Units, onDemand.Book.Units);
        Assert.Equal(whole.Book.Shop.Name, onDemand.Book.Shop.Name);
    }

    [Fact]
    public void A_record_is_read_once_and_when_it_is_asked_for()
    {
        var files = new WatchedFiles(new MemoryBookFiles(Books.SmallFiles()));
        var cars = StandingBook.Recall(files, new ProblemList())!.Book.Cars;
        var ids = cars.Keys.ToList();
        Assert.Equal((ids.Count, true, false), (cars.Count, cars.ContainsKey(ids[0]), cars.ContainsKey("nothing")));
        Assert.Equal(["shop.yaml"], files.Opened);
        Assert.Same(cars[ids[0]], cars[ids[0]]);
        Assert.Equal(["shop.yaml", $"cars/{ids[0]}.yaml"], files.Opened);
        Assert.False(cars.TryGetValue("nothing", out _));
        Assert.Throws<KeyNotFoundException>(() => cars["nothing"]);
        Assert.Equal(ids, cars.Values.Select(c => c.Id));
        Assert.Equal(ids, cars.Select(c => c.Value.Id));
        Assert.Equal(ids.Select(id => $"cars/{id}.yaml").Prepend("shop.yaml").Order(StringComparer.Ordinal), files.Opened.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_record_that_became_unreadable_is_reported_as_a_change_of_the_book()
    {
        var files = Books.SmallFiles();
        files["units/a.yaml"] = "[\n"u8.ToArray();
        var book = StandingBook.Recall(new MemoryBookFiles(files), new ProblemList())!;
        Assert.Contains("Publish again", Assert.Throws<BookChangedException>(() => book.Book.Units["a"]).Message, StringComparison.Ordinal);
    }

    // Notes each file that is opened.
    private sealed class WatchedFiles(IBookFiles files) : IBookFiles
    {
        public ConcurrentQueue<string> Opened { get; } = new();

        public IReadOnlyList<BookFile> All => files.All;

        public bool Has(string path) => files.Has(path);

        public long LengthOf(string path) => files.LengthOf(path);

        public byte[] Read(string path)
        {
            Opened.Enqueue(path);
            return files.Read(path);
        }

        public Stream Open(string path)
        {
            Opened.Enqueue(path);
            return files.Open(path);
        }
    }

    private static void Same<T>(IReadOnlyDictionary<string, T> expected, IReadOnlyDictionary<string, T> actual)
    {
        Assert.NotEmpty(expected);
        Assert.Equal(expected.Keys, actual.Keys);
        Assert.Equal(expected.Values.Select(v => $"{v}"), actual.Values.Select(v => $"{v}"));
    }
}
