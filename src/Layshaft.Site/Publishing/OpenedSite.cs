namespace Layshaft.Site.Publishing;

/// <summary>
/// A site's folder that nobody else can publish into: what a killed publish left is mended, and a look at it goes on in the background
/// while the plan is drawn up.
/// </summary>
internal sealed class OpenedSite : IDisposable
{
    private readonly FileStream _lock;
    private readonly Task<(OldSite? Old, PublishProblem? Problem)> _look;

    /// <summary>An opened site.</summary>
    /// <param name="state">The folder beside it.</param>
    /// <param name="held">What keeps others out.</param>
    /// <param name="store">What is known from the publish before.</param>
    /// <param name="warnings">What was worth a word so far.</param>
    /// <param name="manifestPath">Where the site's manifest is.</param>
    internal OpenedSite(StateFolder state, FileStream held, TraceStore store, List<PublishProblem> warnings, string manifestPath)
    {
        (State, _lock, Store, Warnings) = (state, held, store, warnings);
        _look = Task.Run(() => (OldSite.Look(state.Output, manifestPath, store.Traces, out var problem), problem));
    }

    /// <summary>The folder beside it.</summary>
    internal StateFolder State { get; }

    /// <summary>What is known from the publish before.</summary>
    internal TraceStore Store { get; }

    /// <summary>What was worth a word so far.</summary>
    internal List<PublishProblem> Warnings { get; }

    /// <summary>The site as it stands, or why it cannot be published into.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    internal (OldSite? Old, PublishProblem? Problem) Look() => _look.GetAwaiter().GetResult();

    /// <summary>Lets others in, once the look has ended.</summary>
    public void Dispose()
    {
        ((IAsyncResult)_look).AsyncWaitHandle.WaitOne();
        _lock.Dispose();
    }
}
