using Layshaft.Book.Checks;
using Layshaft.Book.Defaults;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Book.Shapes;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Reading;

/// <summary>Reads a whole book: every file by its shape, then everything that must hold between files.</summary>
public static class BookReader
{
    /// <summary>Reads the book in a folder.</summary>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static BookRead ReadFolder(string folder)
    {
        var problems = new ProblemList();
        return Read(FolderBookFiles.Look(folder, problems), problems);
    }

    /// <summary>Reads a book from its files.</summary>
    public static BookRead Read(IBookFiles files) => Read(files, new ProblemList());

    /// <summary>Reads a book from its files, adding to problems that were already found.</summary>
    /// <param name="files">The files.</param>
    /// <param name="problems">What was already found; receives what is wrong.</param>
    public static BookRead Read(IBookFiles files, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(problems);
        BookLayout.Check(files, problems);
        var (standing, isComplete) = ReadStanding(files, problems);
        var draft = standing with { Jobs = ReadJobs(standing, [.. BookLayout.JobFiles(files)], problems) };
        BookChecks.Run(draft, problems);
        KnownNames.Suggest(draft, problems);
        var inOrder = problems.InOrder();
        return problems.HasStops || draft.Shop is not { } shop || !isComplete
            ? new BookRead(null, inOrder)
            : new BookRead(draft.ToBook(shop), inOrder);
    }

    /// <summary>Reads all but the jobs.</summary>
    /// <returns>What could be read, and whether the shop's own file is whole.</returns>
    internal static (Draft Draft, bool IsComplete) ReadStanding(IBookFiles files, ProblemList problems)
    {
        var (shop, isComplete) = ReadShop(files, problems);
        return (Standing(files, shop, problems, onDemand: false), isComplete);
    }

    /// <summary>All but the jobs, where nothing is wrong in it: the shop is read, of the rest each record when it is asked for.</summary>
    internal static Draft RecallStanding(IBookFiles files)
    {
        var problems = new ProblemList();
        return Standing(files, ReadShop(files, problems).Shop, problems, onDemand: true);
    }

    /// <summary>Reads jobs, side by side, and completes them with what the rest of the book knows.</summary>
    /// <returns>Those that could be read, by day of receipt, then number.</returns>
    internal static IReadOnlyList<Job> ReadJobs(Draft standing, IReadOnlyList<string> paths, ProblemList problems)
    {
        var jobs = ReadAll(paths, (path, own) => ReadJob(standing.Files, path, own) is { } job ? JobDefaults.Complete(job, standing, problems.HasLost, own) : null, problems).OfType<Job>();
        return [.. jobs.OrderBy(j => j.Received).ThenBy(j => j.Number, StringComparer.Ordinal)];
    }

    // Files side by side, each with its own list of problems, which then come in the order of the files.
    private static IEnumerable<T?> ReadAll<T>(IReadOnlyList<string> paths, Func<string, ProblemList, T?> readOne, ProblemList problems)
        where T : class
    {
        var read = new (T? Record, ProblemList Problems)[paths.Count];
        Parallel.For(0, read.Length, i =>
        {
            var own = new ProblemList();
            read[i] = (readOne(paths[i], own), own);
        });
        foreach (var (_, own) in read)
        {
            problems.Add(own);
        }

        return read.Select(r => r.Record);
    }

    private static Job? ReadJob(IBookFiles files, string path, ProblemList problems)
    {
        var folder = path[..path.LastIndexOf('/')];
        return ReadFile(files, path, Job.Shape, problems) is { } job
            ? job with { Folder = folder, Number = folder[(folder.LastIndexOf('/') + 1)..] }
            : null;
    }

    private static (Shop? Shop, bool IsComplete) ReadShop(IBookFiles files, ProblemList problems) =>
        files.Has(BookLayout.ShopFile) && Root(files, BookLayout.ShopFile, problems) is { } root
            ? Shop.Shape.ReadWhatIsThere(root, new Shapes.Reading(BookLayout.ShopFile, problems))
            : (null, false);

    private static Draft Standing(IBookFiles files, Shop? shop, ProblemList problems, bool onDemand)
    {
        return new Draft(
            files,
            shop,
            Shelf("customers", Customer.Shape, (r, id) => r with { Id = id }),
            Shelf("gearboxes", Gearbox.Shape, (r, id) => r with { Id = id }),
            Shelf("cars", Car.Shape, (r, id) => r with { Id = id }),
            Shelf("venues", Venue.Shape, (r, id) => r with { Id = id }),
            Shelf("units", Unit.Shape, (r, id) => r with { Id = id }),
            []);

        Shelf<T> Shelf<T>(string folder, RecordShape<T> shape, Func<T, string, T> name)
            where T : class
            => onDemand ? RecallShelf(files, folder, shape, name) : ReadShelf(files, folder, shape, name, problems);
    }

    private static Shelf<T> ReadShelf<T>(IBookFiles files, string folder, RecordShape<T> shape, Func<T, string, T> name, ProblemList problems)
        where T : class
    {
        string[] paths = [.. BookLayout.FilesIn(files, folder)];
        string[] names = [.. paths.Select(p => Path.GetFileNameWithoutExtension(p))];
        var records = new SortedDictionary<string, T>(StringComparer.Ordinal);
        foreach (var (id, record) in names.Zip(ReadAll(paths, (path, own) => ReadFile(files, path, shape, own), problems)))
        {
            if (record is not null)
            {
                records[id] = name(record, id);
            }
        }

        return new Shelf<T>(folder, names, records);
    }

    private static Shelf<T> RecallShelf<T>(IBookFiles files, string folder, RecordShape<T> shape, Func<T, string, T> name)
        where T : class
    {
        string[] names = [.. BookLayout.FilesIn(files, folder).Select(p => Path.GetFileNameWithoutExtension(p)).Order(StringComparer.Ordinal)];
        return new Shelf<T>(folder, names, new RecordsOnDemand<T>(names, id => ReadFile(files, $"{folder}/{id}.yaml", shape, new ProblemList()) is { } record
            ? name(record, id)
            : throw new BookChangedException()));
    }

    private static T? ReadFile<T>(IBookFiles files, string path, RecordShape<T> shape, ProblemList problems)
        where T : class
        => Root(files, path, problems) is { } root && shape.TryRead(root, new Shapes.Reading(path, problems), out var record) ? record : null;

    private static Node? Root(IBookFiles files, string path, ProblemList problems)
    {
        try
        {
            var bytes = files.ReadLimited(path);
            return YamlText.Decode(bytes, path, problems) is { } text ? NodeReader.Read(path, text, problems) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            problems.Add("unreadable", Place.WholeFile(path), "This file cannot be opened.", "Close it in other programs and check its permissions.");
            return null;
        }
    }
}
