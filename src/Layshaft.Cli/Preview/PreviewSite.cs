using System.Globalization;
using Layshaft.Book.Problems;
using Layshaft.Site.Building;
using Layshaft.Site.Publishing;

namespace Layshaft.Cli.Preview;

/// <summary>Publishes a book into a folder again and again, and keeps what came of the last time.</summary>
/// <param name="book">The book's folder.</param>
/// <param name="site">The folder for the site, outside the book.</param>
/// <param name="keepsReaders">Whether links to this site are sent, see <see cref="PublishOptions.KeepsReaders"/>.</param>
internal sealed class PreviewSite(string book, string site, bool keepsReaders = true)
{
    private readonly string session = Guid.NewGuid().ToString("n")[..8];
    private int count;

    /// <summary>Told after every publish; from the thread that published.</summary>
    public event Action<PreviewState>? Changed;

    /// <summary>The folder that holds the last good site.</summary>
    public string Folder => site;

    /// <summary>The book's folder.</summary>
    public string Book => book;

    /// <summary>What came of the last publish; without a version before the first.</summary>
    public PreviewState State { get; private set; } = new(string.Empty, [], [], true);

    /// <summary>Reads the book and publishes it. Whatever is wrong becomes the state; nothing is thrown.</summary>
    public void Publish()
    {
        var (problems, failures, stopped) = Try();
        count++;
        State = new PreviewState(string.Create(CultureInfo.InvariantCulture, $"{session}-{count}"), problems, failures, stopped);
        Changed?.Invoke(State);
    }

    /// <summary>Publishes now and after every change, until it is told to end.</summary>
    public async Task KeepUp(BookWatch watch, CancellationToken cancellation)
    {
        try
        {
            while (true)
            {
                await Task.Run(Publish, cancellation).ConfigureAwait(false);
                await watch.Wait(cancellation).ConfigureAwait(false);
            }
        }
        catch (OperationCanceledException)
        {
            // That is the end.
        }
    }

    private (IReadOnlyList<Problem> Problems, IReadOnlyList<string> Failures, bool Stopped) Try()
    {
        IReadOnlyList<Problem> problems = [];
        try
        {
            var publish = SitePublish.Run(book, site, new PublishOptions { Book = book, KeepsReaders = keepsReaders });
            problems = publish.Problems;
            return publish.Result is { } result
                ? (problems, [.. result.Problems.Concat(result.Warnings).Select(p => p.ToString())], result.Outcome is PublishOutcome.Refused or PublishOutcome.Failed)
                : (problems, [], true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A file that is being saved at this moment, or a folder that is being renamed: the next save comes.
            return (problems, [e.Message], true);
        }
    }
}
