using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Publishing;

/// <summary>One publish, from looking at the old site to clearing it away.</summary>
internal sealed class PublishRun(
    SitePlan plan, StateFolder state, PublishOptions options, IFileWork files, List<PublishProblem> warnings)
{
    private readonly FolderSwap _swap = new(state, options.ManifestPath, files, options.Parallelism) { FolderClock = options.FolderClock };

    internal PublishResult Run(CancellationToken cancel)
    {
        OldSite? old;
        Strangers strangers;
        try
        {
            old = OldSite.Look(state.Output, options.ManifestPath, options.Known ?? RegisterFile.Read(state.Register), out var problem);
            if (old is null)
            {
                return PublishResult.Refused(problem!);
            }

            strangers = Strangers.Find(old, plan.Paths, options.ManifestPath);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return PublishResult.Refused(new PublishProblem(state.Output, $"The old site cannot be read: {e.Message}"));
        }

        var inTheWay = strangers.InTheWayOf(plan.Paths, options.ManifestPath).ToList();
        return inTheWay.Count > 0 ? PublishResult.Refused(inTheWay) : StageAndSwap(old, strangers, cancel);
    }

    private PublishResult StageAndSwap(OldSite old, Strangers strangers, CancellationToken cancel)
    {
        var stage = new Staging(plan, state, old, options, files);
        var swapped = false;
        try
        {
            var staged = stage.Make(cancel);
            var register = staged.Register();
            var (result, list) = (Compare(old, strangers, register, staged), old.Register.List);
            if (result.Outcome == PublishOutcome.Published)
            {
                list = stage.Complete(staged, register, strangers, warnings);
                cancel.ThrowIfCancellationRequested();
                _swap.Exchange();
                swapped = true;
                AfterSwap(result, old, register, stage.HasFolderTimes);
            }
            else
            {
                _swap.Discard();
            }

            Tidy(() => RegisterFile.Write(files, state.Register, register, list!.Value, old.HasFreshTimes ? null : old.Register.Hash));
            return result with { Warnings = [.. warnings], Site = SiteAsLeft.Of(state.Output, register, strangers, options.ManifestPath, list!.Value, DiskClock.FreshFrom()) };
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

    private PublishResult Compare(OldSite old, Strangers strangers, SiteRegister now, StagedFiles staged)
    {
        var before = old.Register;
        int[] was = [.. staged.All().Select(i => now.Paths.PlaceIn(before.Paths, i))];
        bool IsTheSame(int i) => was[i] >= 0 && before[was[i]].Sha256 == now[i].Sha256;

        var added = now.Paths.Texts(staged.Where(i => was[i] < 0));
        var changed = now.Paths.Texts(staged.Where(i => was[i] >= 0 && !IsTheSame(i)));
        var restored = now.Paths.Texts(staged.Where(i => IsTheSame(i) && !old.IsIntact(was[i])));
        int[] left = [.. Enumerable.Range(0, before.Count).Where(i => before.Paths.PlaceIn(now.Paths, i) < 0)];
        var same = added.Count + changed.Count + restored.Count + left.Length == 0 && SiteManifest.HashOf(now.Files()) == before.List;
        warnings.AddRange(strangers.Edited.Select(path => new PublishProblem(
            path, "This file of ours has left the site, but was changed by hand; it was left alone and is no longer ours.")));
        return new(same ? PublishOutcome.Unchanged : PublishOutcome.Published, [])
        {
            Added = added,
            Changed = changed,
            Removed = [.. before.Paths.Texts(left).Where(p => !strangers.Edited.Contains(p))],
            Restored = restored,
            Strangers = strangers.Names,
            Made = staged.Where(staged.IsMade).Count(),
            Kept = staged.Where(i => !staged.IsMade(i)).Count(),
        };
    }

    /// <summary>The new site is in place: from here on nothing fails, it is only told.</summary>
    private void AfterSwap(PublishResult result, OldSite old, SiteRegister now, bool hasFolderTimes)
    {
        Tidy(() => _swap.Settle(warnings, old, now, hasFolderTimes));
        Tidy(() => files.Replace(state.Changes, stream => WriteChanges(result, stream)));
    }

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
