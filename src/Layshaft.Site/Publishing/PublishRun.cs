namespace Layshaft.Site.Publishing;

/// <summary>One publish, from looking at the old site to clearing it away.</summary>
internal sealed class PublishRun(
    SitePlan plan, StateFolder state, PublishOptions options, IFileWork files, List<PublishProblem> warnings)
{
    private readonly FolderSwap _swap = new(state, options.ManifestPath, files, options.Parallelism);

    internal PublishResult Run(CancellationToken cancel)
    {
        OldSite? old;
        Strangers strangers;
        try
        {
            old = OldSite.Look(state.Output, options.ManifestPath, options.Known ?? ReuseRecord.Read(state.Reuse), out var problem);
            if (old is null)
            {
                return PublishResult.Refused(problem!);
            }

            strangers = Strangers.Find(old, plan.Outputs.Select(o => o.Path).ToHashSet(StringComparer.Ordinal), options.ManifestPath);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return PublishResult.Refused(new PublishProblem(state.Output, $"The old site cannot be read: {e.Message}"));
        }

        var inTheWay = strangers.InTheWayOf(plan.Outputs.Select(o => o.Path).Append(options.ManifestPath)).ToList();
        return inTheWay.Count > 0 ? PublishResult.Refused(inTheWay) : StageAndSwap(old, strangers, cancel);
    }

    private PublishResult StageAndSwap(OldSite old, Strangers strangers, CancellationToken cancel)
    {
        var stage = new Staging(plan, state, old, options, files);
        var swapped = false;
        try
        {
            var outputs = stage.Make(cancel);
            var manifest = new SiteManifest(outputs.Select(o => o.Entry));
            var result = Compare(old, strangers, manifest, outputs);
            if (result.Outcome == PublishOutcome.Published)
            {
                stage.Complete(outputs, strangers, manifest, warnings);
                cancel.ThrowIfCancellationRequested();
                _swap.Exchange();
                swapped = true;
                AfterSwap(result, old.Manifest, manifest);
            }
            else
            {
                _swap.Discard();
            }

            Remember(outputs, old.HasFreshTimes ? null : old.RecordHash);
            return result with { Warnings = [.. warnings] };
        }
        catch (StagingException e)
        {
            return PublishResult.Failed(e.Path, e.Message) with { Warnings = [.. warnings] };
        }
        catch (Exception e) when (!swapped && e is IOException or UnauthorizedAccessException)
        {
            var problem = $"The new site could not be put in place; the old one is as it was. {e.Message}";
            return PublishResult.Failed(state.Output, problem) with { Warnings = [.. warnings] };
        }
        finally
        {
            if (!swapped)
            {
                Tidy(_swap.Discard);
            }
        }
    }

    private PublishResult Compare(OldSite old, Strangers strangers, SiteManifest manifest, IReadOnlyList<StagedOutput> outputs)
    {
        var before = old.Manifest;
        var restored = manifest.Entries.Where(e => before.Find(e.Path) is { } was && was.Sha256 == e.Sha256 && !old.IsIntact(was)).ToList();
        var same = restored.Count == 0 && manifest.Entries.SequenceEqual(before.Entries) && manifest.Hash() == old.ManifestHash;
        warnings.AddRange(strangers.Edited.Select(path => new PublishProblem(
            path, "This file of ours has left the site, but was changed by hand; it was left alone and is no longer ours.")));
        return new(same ? PublishOutcome.Unchanged : PublishOutcome.Published, [])
        {
            Added = [.. manifest.Entries.Where(e => before.Find(e.Path) is null).Select(e => e.Path)],
            Changed = [.. manifest.Entries.Where(e => before.Find(e.Path) is { } was && was.Sha256 != e.Sha256).Select(e => e.Path)],
            Removed = [.. before.Entries.Select(e => e.Path).Where(p => manifest.Find(p) is null && !strangers.Edited.Contains(p))],
            Restored = [.. restored.Select(e => e.Path)],
            Strangers = strangers.Names,
            Made = outputs.Count(o => o.Made),
            Kept = outputs.Count(o => !o.Made),
        };
    }

    /// <summary>The new site is in place: from here on nothing fails, it is only told.</summary>
    private void AfterSwap(PublishResult result, SiteManifest before, SiteManifest now)
    {
        Tidy(() => _swap.Settle(warnings, before, now));
        Tidy(() => files.Replace(state.Changes, stream => WriteChanges(result, stream)));
    }

    private void Remember(IReadOnlyList<StagedOutput> outputs, ContentHash? there) => Tidy(() => ReuseRecord.Write(
        files,
        state.Reuse,
        outputs.Zip(plan.Outputs).Where(o => o.First.Key is not null).Select(o => new ReuseEntry(o.First.Entry.Path, o.First.Key!.Value, o.First.Entry.Sha256, o.First.Modified, o.Second.Group?.Mark)),
        there));

    private void Tidy(Action step)
    {
        try
        {
            step();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            warnings.Add(new(state.Root, $"Something could not be cleared away; the next publish tries again. {e.Message}"));
        }
    }

    private static void WriteChanges(PublishResult result, Stream stream)
    {
        using var text = new StreamWriter(stream, leaveOpen: true) { NewLine = "\n" };
        foreach (var (sign, paths) in new[] { ('+', result.Added), ('*', result.Changed), ('-', result.Removed), ('=', result.Restored) })
        {
            foreach (var path in paths)
            {
                text.WriteLine($"{sign} {path}");
            }
        }
    }
}
