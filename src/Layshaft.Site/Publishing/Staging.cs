using System.Collections.Concurrent;

namespace Layshaft.Site.Publishing;

/// <summary>An output of the new site.</summary>
/// <param name="Entry">Its path, size and hash.</param>
/// <param name="Key">The key of its inputs; null when the next publish shall make it again.</param>
/// <param name="Made">Whether it was made now; otherwise the old site's file is kept.</param>
/// <param name="Staged">Whether its file was made for the stage; otherwise the old site has the same bytes.</param>
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

        foreach (var folder in open.Select(i => Path.GetDirectoryName(InMade(plan.Outputs[i].Path))!).Distinct())
        {
            files.CreateFolder(folder);
        }

        MakeAll(open, keys, outputs, cancel);
        return outputs!;
    }

    /// <summary>
    /// Brings together what was made, what the old site has and the new one keeps, strangers' files, the list of our files and the
    /// mark; in the spare that the last publish left, where there is one.
    /// </summary>
    internal void Complete(IReadOnlyList<StagedOutput> outputs, Strangers strangers, SiteManifest manifest, ICollection<PublishProblem> warnings)
    {
        var folders = Folders(outputs, strangers);
        var spare = new SpareTree(state, old, options.ManifestPath, files, options.Parallelism).BecomeStage(outputs, folders, warnings);
        if (spare is null && Directory.Exists(state.Made))
        {
            files.Move(state.Made, state.Stage);
        }
        else if (spare is null)
        {
            files.CreateFolder(state.Stage);
        }

        foreach (var folder in folders.Except(spare?.Folders ?? [], StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            files.CreateFolder(InStage(folder));
        }

        var hasSecondNames = LinkAll(spare?.Lacking ?? outputs.Where(o => !o.Staged));
        if (spare is not null && Directory.Exists(state.Made))
        {
            SideBySide.ForEach(outputs.Where(o => o.Staged), options.Parallelism, o => files.Move(InMade(o.Entry.Path), InStage(o.Entry.Path)));
            FolderSwap.RemoveFolders(SiteTree.Walk(state.Made), state.Made, files);
        }

        foreach (var entry in strangers.Entries)
        {
            CopyStranger(entry);
        }

        files.WriteThrough(InStage(options.ManifestPath), manifest.WriteTo);
        files.Create(Path.Combine(state.Stage, StateFolder.MarkName)).Dispose();
        CopyRights();
        RecordChanges(outputs, manifest.Hash(), hasSecondNames);
    }

    private void RecordChanges(IReadOnlyList<StagedOutput> outputs, ContentHash list, bool hasSecondNames)
    {
        files.DeleteFile(state.SpareChanges);
        if (Directory.Exists(state.Output))
        {
            files.WriteThrough(state.SpareChanges, SpareChanges.Write(list, hasSecondNames, outputs.Where(o => o.Staged).Select(o => o.Entry.Path)));
        }
    }

    // Every folder of the new site.
    private HashSet<string> Folders(IReadOnlyList<StagedOutput> outputs, Strangers strangers)
    {
        var folders = new HashSet<string>(StringComparer.Ordinal);
        foreach (var path in outputs.Select(o => o.Entry.Path).Concat(strangers.Entries.Select(e => e.Path)).Append(options.ManifestPath))
        {
            foreach (var folder in OutputPath.FoldersAbove(path).TakeWhile(folders.Add))
            {
            }
        }

        folders.UnionWith(strangers.Entries.Where(e => e.Kind == TreeKind.Folder).Select(e => e.Path));
        return folders;
    }

    private bool LinkAll(IEnumerable<StagedOutput> kept)
    {
        var copies = 0;
        SideBySide.ForEach(kept, options.Parallelism, o =>
        {
            if (!files.Link(InOld(o.Entry.Path), InStage(o.Entry.Path)))
            {
                Interlocked.Exchange(ref copies, 1);
            }
        });
        return copies == 0;
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
        var place = InMade(output.Path);
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
        if (entry.Kind == TreeKind.Link)
        {
            files.CopySymbolicLink(from, to);
        }
        else if (entry.Kind == TreeKind.File)
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

    private string InMade(string path) => StateFolder.Place(state.Made, path);

    private string InStage(string path) => StateFolder.Place(state.Stage, path);

    private string InOld(string path) => StateFolder.Place(state.Output, path);
}
