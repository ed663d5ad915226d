using Layshaft.Site.Publishing.Upload;

namespace Layshaft.Site.Publishing;

/// <summary>
/// Publishes a plan into a folder: whole or not at all, only what changed, and never touching a file that is not ours.
/// </summary>
/// <remarks>
/// What changed is made in a hidden folder beside the site, <c>.layshaft-NAME</c>. Until all of it is there the site is untouched, whatever
/// happens. Then the site is brought up to date, see <see cref="SiteUpdate"/>; if that is cut off, the next command that opens the site
/// finishes it. Files that did not change and files of others are not touched at all.
/// </remarks>
public sealed class Publisher
{
    private readonly PublishOptions _options;
    private readonly IFileWork _files;

    /// <summary>A publisher.</summary>
    /// <param name="options">How to publish; the defaults if null.</param>
    public Publisher(PublishOptions? options = null)
        : this(options ?? new(), new DiskWork())
    {
    }

    internal Publisher(PublishOptions options, IFileWork files) => (_options, _files) = (options, files);

    /// <summary>Publishes a plan.</summary>
    /// <param name="plan">The site to be.</param>
    /// <param name="folder">The output folder; it is made if it does not exist.</param>
    /// <param name="cancel">Gives up, as long as the new site is not in place.</param>
    /// <exception cref="OperationCanceledException">It was given up; the site is as it was.</exception>
    /// <remarks>An exception from an output's own <c>Write</c> that is not one of input and output comes through as it is,
    /// after the staged files were removed; the site is as it was.</remarks>
    public PublishResult Publish(SitePlan plan, string folder, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(folder);
        if (ProblemsOf(plan) is { Count: > 0 } problems)
        {
            return PublishResult.Refused(problems);
        }

        using var opened = TryOpen(folder, out var refused);
        return opened is null ? PublishResult.Refused(refused!) : new PublishRun(plan, opened, _options, _files).Run(cancel);
    }

    /// <summary>Notes that the host has all that waited for upload, and nothing else.</summary>
    /// <param name="folder">The output folder.</param>
    /// <returns>What waited; or why that cannot be noted.</returns>
    /// <exception cref="IOException">The list cannot be written.</exception>
    public (UploadList? Done, PublishProblem? Problem) ConfirmUpload(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        var state = new StateFolder(OutputFolder.RealPath(folder));
        if (!File.Exists(StateFolder.Place(state.Output, _options.ManifestPath)))
        {
            return (null, new(folder, "There is no published site in this folder. Give the folder that 'layshaft publish' wrote to."));
        }

        var wasCutOff = IsCutOff(folder);
        using var opened = TryOpen(folder, out var refused);
        if (opened is null)
        {
            return (null, refused);
        }

        if (wasCutOff)
        {
            return (null, new(folder, $"The last publish was cut off. It is finished now, and {state.Changes} has changed. Upload what it lists, then confirm again."));
        }

        if (!File.Exists(state.Changes))
        {
            return (null, new(folder, "The list of changes is gone. Publish once more: it then lists every file."));
        }

        var done = UploadList.Of(state.Changes);
        _files.Replace(state.Changes, _ => { });
        return (done, null);
    }

    /// <summary>Whether a publish was cut off while it brought a site up to date: until the next publish some pages are old, some new or missing.</summary>
    /// <param name="folder">The output folder.</param>
    public bool IsCutOff(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return File.Exists(StateFolder.Place(OutputFolder.RealPath(folder), SiteUpdate.NextOf(_options.ManifestPath)));
    }

    /// <summary>Opens a site that stands, so that it is looked at while the plan is drawn up.</summary>
    /// <param name="folder">The output folder.</param>
    /// <returns>Null where there is no site yet, or it cannot be opened now; <see cref="Publish(SitePlan, string, CancellationToken)"/> tells why.</returns>
    internal OpenedSite? Open(string folder) => File.Exists(new StateFolder(OutputFolder.RealPath(folder)).Cache) || IsCutOff(folder) ? TryOpen(folder, out _) : null;

    /// <summary>Publishes a plan into a site that was opened.</summary>
    /// <param name="plan">The site to be.</param>
    /// <param name="opened">The site.</param>
    internal PublishResult Publish(SitePlan plan, OpenedSite opened) => ProblemsOf(plan) is { Count: > 0 } problems
        ? PublishResult.Refused(problems)
        : new PublishRun(plan, opened, _options, _files).Run(CancellationToken.None);

    private OpenedSite? TryOpen(string folder, out PublishProblem? refused)
    {
        refused = OutputFolder.ProblemWith(folder, _options.Book);
        if (refused is not null)
        {
            return null;
        }

        var state = new StateFolder(OutputFolder.RealPath(folder));
        var held = TryLock(state, folder, out refused);
        if (held is null)
        {
            return null;
        }

        var warnings = new List<PublishProblem>();
        try
        {
            new SiteUpdate(state, _options.ManifestPath, _files, _options.Parallelism).Recover(warnings);
        }
        catch (Exception e)
        {
            held.Dispose();
            if (e is not (IOException or UnauthorizedAccessException))
            {
                throw;
            }

            refused = new PublishProblem(state.Root, $"An interrupted publish cannot be finished or cleaned up: {e.Message}");
            return null;
        }

        return new OpenedSite(state, held, _options.Store ?? new TraceStore(folder), warnings, _options.ManifestPath);
    }

    // The list of files takes a place in the site like any other.
    private IReadOnlyList<PublishProblem> ProblemsOf(SitePlan plan) => plan.Problems.Count > 0 ? plan.Problems : [.. PathClashes.Between(plan.Files, _options.ManifestPath)];

    private static FileStream? TryLock(StateFolder state, string folder, out PublishProblem? problem)
    {
        problem = null;
        try
        {
            state.Create();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            problem = new(folder, $"The working folder beside this one cannot be created: {e.Message}");
            return null;
        }

        try
        {
            return new(state.Lock, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            problem = new(folder, $"Another publish into this folder is running. Wait until it has finished. ({e.Message})");
            return null;
        }
    }
}
