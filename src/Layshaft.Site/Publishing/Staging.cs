using System.Collections.Concurrent;

namespace Layshaft.Site.Publishing;

/// <summary>An output of the new site.</summary>
/// <param name="Entry">Its path, size and hash.</param>
/// <param name="Key">The key of its inputs; null when the next publish shall make it again.</param>
/// <param name="Made">Whether it was made now; otherwise the old site's file is kept.</param>
/// <param name="Staged">Whether its file stands in the stage; otherwise the old site has the same bytes.</param>
/// <param name="Modified">Its file's time, in ticks.</param>
internal sealed record StagedOutput(ManifestEntry Entry, ContentHash? Key, bool Made, bool Staged, long Modified);

/// <summary>An output of a known path could not be made.</summary>
internal sealed class StagingException(string path, Exception inner)
    : Exception($"This file could not be made; the old site is as it was. {inner.Message}", inner)
{
    internal string Path { get; } = path;
}

/// <summary>Builds the tree that is to become the site.</summary>
internal sealed class Staging(SitePlan plan, StateFolder state, OldSite old, PublishOptions options, IFileWork files)
{
    /// <summary>Makes every output that is not known to be the same as before.</summary>
    internal IReadOnlyList<StagedOutput> Make(CancellationToken cancel)
    {
        var outputs = new StagedOutput?[plan.Outputs.Count];
        var keys = plan.Outputs.Select(o => o.Key(options.Generator)).ToArray();
        var open = new List<int>();
        for (var i = 0; i < outputs.Length; i++)
        {
            outputs[i] = KeptFromOld(plan.Outputs[i].Path, keys[i]);
            if (outputs[i] is null)
            {
                open.Add(i);
            }
        }

        foreach (var folder in open.Select(i => Path.GetDirectoryName(InStage(plan.Outputs[i].Path))!).Distinct())
        {
            files.CreateFolder(folder);
        }

        MakeAll(open, keys, outputs, cancel);
        return outputs!;
    }

    /// <summary>Adds what the old site has and the new one keeps, strangers' files, the list of our files and the mark.</summary>
    internal void Complete(IReadOnlyList<StagedOutput> outputs, Strangers strangers, SiteManifest manifest)
    {
        foreach (var folder in outputs.Select(o => o.Entry.Path).Append(options.ManifestPath)
            .Select(p => Path.GetDirectoryName(InStage(p))!).Distinct())
        {
            files.CreateFolder(folder);
        }

        SideBySide.ForEach(outputs.Where(o => !o.Staged), options.Parallelism, o => files.Link(InOld(o.Entry.Path), InStage(o.Entry.Path)));

        foreach (var entry in strangers.Entries)
        {
            CopyStranger(entry);
        }

        files.WriteThrough(InStage(options.ManifestPath), manifest.ToJson().Span);
        files.Create(Path.Combine(state.Stage, StateFolder.MarkName)).Dispose();
        CopyRights();
    }

    private void MakeAll(List<int> open, ContentHash[] keys, StagedOutput?[] outputs, CancellationToken cancel)
    {
        var done = 0;
        var parallel = new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, options.Parallelism), CancellationToken = cancel };
        var groups = open.GroupBy(i => plan.Outputs[i].Group?.Name ?? plan.Outputs[i].Path, StringComparer.Ordinal);
        try
        {
            // One group after the other is handed out: they take very different times.
            Parallel.ForEach(Partitioner.Create(groups, EnumerablePartitionerOptions.NoBuffering), parallel, group =>
            {
                foreach (var i in group.OrderBy(i => plan.Outputs[i].Turn))
                {
                    cancel.ThrowIfCancellationRequested();
                    outputs[i] = MakeOne(plan.Outputs[i], keys[i]);
                    options.Progress?.Report(new(Interlocked.Increment(ref done), open.Count, plan.Outputs[i].Path));
                }

                plan.Outputs[group.First()].Group?.Finished();
            });
        }
        catch (AggregateException e)
        {
            // Of several that failed at once, always tell of the same one.
            var failed = e.InnerExceptions.OfType<StagingException>().MinBy(f => f.Path, StringComparer.Ordinal) ?? e.InnerExceptions[0];
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(failed);
        }
    }

    private StagedOutput MakeOne(PlannedOutput output, ContentHash? key)
    {
        var place = InStage(output.Path);
        ManifestEntry entry;
        try
        {
            using var stream = new HashingStream(files.Create(place));
            key = output.Make(stream) ? null : key;
            entry = stream.Entry(output.Path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StagingException(output.Path, e);
        }

        // The same bytes as before: the old file stays, and with it its time, which web servers and uploads go by.
        if (old.Manifest.Find(output.Path) is { } before && before == entry && IsIntact(before))
        {
            files.DeleteFile(place);
            return new(entry, key, Made: true, Staged: false, old.Tree.Find(output.Path)!.Modified);
        }

        return new(entry, key, Made: true, Staged: true, File.GetLastWriteTimeUtc(place).Ticks);
    }

    private StagedOutput? KeptFromOld(string path, ContentHash key) =>
        old.Manifest.Find(path) is { } before && old.KeyOf(before) == key && old.IsIntact(before)
            ? new(before, key, Made: false, Staged: false, old.Tree.Find(path)!.Modified)
            : null;

    private bool IsIntact(ManifestEntry entry)
    {
        lock (old)
        {
            return old.IsIntact(entry);
        }
    }

    private void CopyStranger(TreeEntry entry)
    {
        var (from, to) = (InOld(entry.Path), InStage(entry.Path));
        if (entry.Kind == TreeKind.Folder)
        {
            files.CreateFolder(to);
            return;
        }

        files.CreateFolder(Path.GetDirectoryName(to)!);
        if (entry.Kind == TreeKind.Link)
        {
            files.CopySymbolicLink(from, to);
        }
        else
        {
            files.Link(from, to);
        }
    }

    private void CopyRights()
    {
        foreach (var folder in old.Tree.Entries.Where(e => e.Kind == TreeKind.Folder).Select(e => e.Path).Append(string.Empty).Reverse())
        {
            if (Directory.Exists(InOld(folder)) && Directory.Exists(InStage(folder)))
            {
                files.CopyRights(InOld(folder), InStage(folder));
            }
        }
    }

    private string InStage(string path) => StateFolder.Place(state.Stage, path);

    private string InOld(string path) => StateFolder.Place(state.Output, path);
}
