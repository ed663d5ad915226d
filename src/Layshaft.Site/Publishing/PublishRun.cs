using System.Text;
using Layshaft.Book.Reading;
using Layshaft.Site.Publishing.Links;
using Layshaft.Site.Publishing.Upload;

namespace Layshaft.Site.Publishing;

/// <summary>One publish, from looking at the site to bringing it up to date.</summary>
internal sealed class PublishRun(SitePlan plan, OpenedSite opened, PublishOptions options, IFileWork files)
{
    private readonly StateFolder _state = opened.State;
    private readonly List<PublishProblem> _warnings = opened.Warnings;
    private readonly SiteUpdate _update = new(opened.State, options.ManifestPath, files, options.Parallelism);

    internal PublishResult Run(CancellationToken cancel)
    {
        OldSite? old;
        LinkStep links;
        ForeignFiles foreign;
        int[] left;
        try
        {
            (old, var problem) = opened.Look();
            if (old is null)
            {
                return PublishResult.Refused(problem!);
            }

            links = (options.KeepsReaders ? old.Links : LinkHistory.None).Next(plan.Readers, page => old.Files.IndexOf(page) >= 0);
            left = [.. Enumerable.Range(0, old.Files.Count).Where(i => plan.Files.IndexOf(old.Files[i].Path) < 0)];
            foreign = ForeignFiles.Find(old, left, options.ManifestPath);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return PublishResult.Refused(new PublishProblem(_state.Output, $"The old site cannot be read: {e.Message}"));
        }

        var inTheWay = foreign.InTheWayOf(plan, options.ManifestPath).ToList();
        return inTheWay.Count > 0 || links.Clashes.Count > 0
            ? PublishResult.Refused(inTheWay) with { BookProblems = links.Problems() }
            : StageAndUpdate(old, left, foreign, links, cancel);
    }

    private PublishResult StageAndUpdate(OldSite old, int[] left, ForeignFiles foreign, LinkStep links, CancellationToken cancel)
    {
        var begun = false;
        try
        {
            var staged = new Staging(plan, _state, old, options, files).Make(cancel);
            var now = new SiteTraces(new(staged.Select(s => s.Trace)), links.History);
            var (result, list) = (Compare(old, left, foreign, now, staged, links), old.Traces.Manifest);
            if (result.Outcome == PublishOutcome.Published)
            {
                cancel.ThrowIfCancellationRequested();
                files.WriteThrough(_state.NextChanges, stream => WriteChanges(old, result, stream));
                list = _update.Begin(stream => SiteManifest.Write(stream, now.Files, now.Links));
                begun = true;
                _update.Finish(old.Traces, now.Files, _warnings);
            }
            else
            {
                _update.Discard();
                if (!File.Exists(_state.Changes))
                {
                    Tidy(() => files.Replace(_state.Changes, stream => WriteChanges(old, result, stream)));
                }
            }

            // None of these waits for another.
            SiteAfterPublish? site = null;
            Action[] ends = [
                Beside(() => opened.Store.Save(files, now with { Manifest = list })),
                Beside(() => site = SiteAfterPublish.Of(_state.Output, now.Files, foreign, options.ManifestPath, list!.Value, DiskClock.FreshFrom())),
                Beside(() => WriteLinks(links.History)),
                Beside(ClosePrivateFolder),
            ];

            foreach (var end in ends)
            {
                end();
            }

            return result with { Warnings = [.. _warnings], Site = site };
        }
        catch (StagingException e)
        {
            return PublishResult.Failed(e.Path, e.Message) with { Warnings = [.. _warnings] };
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            var problem = begun
                ? $"The site is not complete: a file could not be removed or replaced. Close it in other programs and publish again before you upload. {e.Message}"
                : $"The new site could not be put in place. The old site is unchanged. {e.Message}";
            return PublishResult.Failed(_state.Output, problem) with { Warnings = [.. _warnings], IsCutOff = begun };
        }
        finally
        {
            if (!begun)
            {
                Tidy(_update.Discard);
            }
        }
    }

    private PublishResult Compare(OldSite old, int[] left, ForeignFiles foreign, SiteTraces now, StagedFile[] staged, LinkStep links)
    {
        bool IsTheSame(StagedFile file) => file.Was >= 0 && old.Files[file.Was].Sha256 == file.Trace.Sha256;

        string[] added = [.. staged.Where(f => f.Was < 0).Select(f => f.Trace.Path)];
        string[] changed = [.. staged.Where(f => f.Was >= 0 && !IsTheSame(f)).Select(f => f.Trace.Path)];
        string[] restored = [.. staged.Where(f => IsTheSame(f) && !old.IsIntact(f.Was)).Select(f => f.Trace.Path)];
        string[] gone = [.. left.Select(i => old.Files[i].Path)];
        var same = added.Length + changed.Length + restored.Length + gone.Length == 0 && SiteManifest.Write(Stream.Null, now.Files, now.Links) == old.Traces.Manifest;
        _warnings.AddRange(foreign.Edited.Select(path => new PublishProblem(
            path, "This file is no longer part of the site, but was edited by hand, so it was kept.")));
        return new(same ? PublishOutcome.Unchanged : PublishOutcome.Published, [])
        {
            Added = added,
            Changed = changed,
            Removed = [.. gone.Where(p => !foreign.Edited.Contains(p))],
            Left = gone,
            Restored = restored,
            ForeignFiles = foreign.Names,
            Withdrawn = links.Withdrawn,
            MovesLinks = links.IsMove,
            LinkList = links.History.Links.Count > 0 ? _state.Links : null,
            Made = staged.Count(f => f.IsMade),
            Kept = staged.Count(f => !f.IsMade),
        };
    }

    // What fails beside is told, like the rest.
    private Action Beside(Action step)
    {
        var end = Workers.Begin(step, options.Parallelism);
        return () => Tidy(end);
    }

    private void Tidy(Action step)
    {
        try
        {
            step();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            _warnings.Add(new(_state.Root, $"Temporary files could not be removed. The next publish will try again. {e.Message}"));
        }
    }

    // One that was written before, or that somebody opened.
    private void ClosePrivateFolder()
    {
        if (options.PrivateFolder is { } folder && StateFolder.Place(_state.Output, folder) is var place
            && !OperatingSystem.IsWindows() && new DirectoryInfo(place) is { Exists: true, LinkTarget: null } found && IsOpen(found.UnixFileMode))
        {
            files.Restrict(place);
        }
    }

    private static bool IsOpen(UnixFileMode mode) => (int)mode != -1 && (mode & (UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute)) != 0;

    private void WriteLinks(LinkHistory history)
    {
        var list = LinkList.Of(history);
        if (list.Length > 0 && (!File.Exists(_state.Links) || Encoding.UTF8.GetString(RegularFile.ReadAll(_state.Links)) != list))
        {
            files.Replace(_state.Links, stream => stream.Write(Encoding.UTF8.GetBytes(list)));
        }
    }

    // Without a list nobody knows what the host has: then all files wait.
    private void WriteChanges(OldSite old, PublishResult result, Stream stream)
    {
        var all = File.Exists(_state.Changes) ? [] : old.Files.Select(f => f.Path);
        (char Sign, IEnumerable<string> Paths)[] now =
        [
            (UploadChange.Changed, all), (UploadChange.Added, result.Added), (UploadChange.Changed, result.Changed), (UploadChange.Removed, result.Left), (UploadChange.Restored, result.Restored),
        ];
        UploadLines.Write(stream, _state.Changes, [.. now.Select(n => n.Paths.Where(IsForUpload).Select(p => new UploadChange(n.Sign, p)))]);
    }

    // The folder of the list of our files is never uploaded.
    private bool IsForUpload(string path) => options.ManifestPath.IndexOf('/', StringComparison.Ordinal) is var slash && (slash < 0 || !path.StartsWith(options.ManifestPath[..(slash + 1)], StringComparison.Ordinal));
}
