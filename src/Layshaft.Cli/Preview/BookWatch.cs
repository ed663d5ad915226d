using Layshaft.Book.Problems;
using Layshaft.Book.Reading;

namespace Layshaft.Cli.Preview;

/// <summary>
/// Waits for changes in a book's folder. The system's notices only wake it; what counts is whether the files differ from
/// those of the last look (path, size, time), so that a notice without a change costs nothing and a lost one is made up
/// for by the next. Without notices (some network folders have none) it looks in intervals.
/// </summary>
internal sealed class BookWatch : IDisposable
{
    // Editors save in steps: a new file beside the old one, then a rename. Quiet for this long means done.
    private static readonly TimeSpan Quiet = TimeSpan.FromMilliseconds(150);
    private static readonly TimeSpan Interval = TimeSpan.FromSeconds(1);

    private readonly string book;
    private readonly FileSystemWatcher? watcher;
    private readonly SemaphoreSlim woken = new(0);
    private string seen;

    public BookWatch(string book, bool poll)
    {
        this.book = book;
        seen = Look();
        watcher = poll ? null : Watch();
    }

    /// <summary>Whether it looks in intervals.</summary>
    public bool IsPolling => watcher is null;

    /// <summary>Returns when the book's files are others than at the last return, and quiet.</summary>
    public async Task Wait(CancellationToken cancellation)
    {
        while (true)
        {
            await woken.WaitAsync(IsPolling ? Interval : Timeout.InfiniteTimeSpan, cancellation).ConfigureAwait(false);
            while (await woken.WaitAsync(Quiet, cancellation).ConfigureAwait(false))
            {
            }

            var now = Look();
            if (now != seen)
            {
                seen = now;
                return;
            }
        }
    }

    public void Dispose()
    {
        watcher?.Dispose();
        woken.Dispose();
    }

    private FileSystemWatcher? Watch()
    {
        FileSystemWatcher? made = null;
        try
        {
            made = new FileSystemWatcher(book) { IncludeSubdirectories = true, NotifyFilter = NotifyFilters.FileName | NotifyFilters.DirectoryName | NotifyFilters.LastWrite | NotifyFilters.Size };
            made.Changed += (_, _) => Wake();
            made.Created += (_, _) => Wake();
            made.Deleted += (_, _) => Wake();
            made.Renamed += (_, _) => Wake();
            made.Error += (_, _) => Wake();
            made.EnableRaisingEvents = true;
            return made;
        }
        catch (Exception e) when (e is IOException or PlatformNotSupportedException)
        {
            // The system has no more notices to give; looking in intervals does the same, a little later.
            made?.Dispose();
            return null;
        }
    }

    private void Wake()
    {
        try
        {
            woken.Release();
        }
        catch (ObjectDisposedException)
        {
            // The last notice came while it was being put away.
        }
    }

    private string Look()
    {
        try
        {
            return string.Join('\n', FolderBookFiles.Look(book, new ProblemList()).All.Select(f => FormattableString.Invariant($"{f.Path} {f.Length} {f.Modified}")));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return e.Message; // a folder that is being renamed; it looks different again afterwards
        }
    }
}
