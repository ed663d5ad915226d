using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Publishing;

/// <summary>An output of a known path could not be made.</summary>
internal sealed class StagingException(string path, Exception inner)
    : Exception($"This file could not be generated. The old site is unchanged. {inner.Message}", inner)
{
    internal string Path { get; } = path;
}

/// <summary>Makes the files of the site that are not known to be as before.</summary>
internal sealed class Staging(SitePlan plan, StateFolder state, OldSite old, PublishOptions options, IFileWork files)
{
    private const int ManyMade = 10_000;

    /// <summary>Makes every output that is not known to be the same as before.</summary>
    internal StagedFiles Make(CancellationToken cancel)
    {
        var staged = new StagedFiles(plan);
        foreach (var i in staged.All())
        {
            if (KeptFromOld(i) is { } kept)
            {
                staged.Keep(i, kept);
            }
        }

        int[] open = [.. staged.Where(i => !staged.IsKnown(i))];
        foreach (var folder in open.Select(i => Path.GetDirectoryName(InMade(plan.Paths.TextOf(i)))!).Distinct())
        {
            files.CreateFolder(folder);
        }

        MakeAll(open, staged, cancel);
        return staged;
    }

    private void MakeAll(int[] open, StagedFiles staged, CancellationToken cancel)
    {
        var done = 0;
        LetGo(open);
        try
        {
            Workers.ForEach(Batch.Of(plan, open, options.Parallelism), options.Parallelism, batch =>
            {
                OutputGroup? last = null;
                foreach (var i in batch.Outputs)
                {
                    var output = plan.Outputs[i];
                    cancel.ThrowIfCancellationRequested();
                    if (last?.Name != output.Group?.Name)
                    {
                        batch.Finish(last);
                        if (output.Group?.Queue is not null)
                        {
                            LetGo(open);
                        }
                    }

                    last = output.Group;
                    MakeOne(i, output, staged);
                    var soFar = Interlocked.Increment(ref done);
                    options.Progress?.Report(new(soFar, open.Length, output.Path));
                    if (soFar % ManyMade == 0)
                    {
                        LetGo(open);
                    }
                }

                batch.Finish(last);
                FreedMemory.GiveBack();
            }, cancel);
            LetGo(open);
        }
        catch (AggregateException e)
        {
            // Of several that failed at once, always tell of the same one.
            var failed = e.InnerExceptions.OfType<StagingException>().MinBy(f => f.Path, StringComparer.Ordinal) ?? e.InnerExceptions[0];
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(failed);
        }
    }

    // What planning or making so many left behind would stay beside what is still to come, some of which takes much memory itself:
    // the collector lets it grow with all that is held, which is in proportion to the site.
    private static void LetGo(int[] open)
    {
        if (open.Length > ManyMade)
        {
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
        }
    }

    private void MakeOne(int index, PlannedOutput output, StagedFiles staged)
    {
        var place = InMade(output.Path);
        RegisterRow row;
        bool again;
        try
        {
            using var stream = new HashingStream(files.Create(place));
            again = output.Make(stream);
            row = new() { Sha256 = stream.Hash(), Size = stream.Length };
            if (options.IsPrivate(output.Path))
            {
                files.Restrict(place);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StagingException(output.Path, e);
        }

        // The same bytes as before: the old file stays, and with it its time, which web servers and uploads go by.
        if (plan.Paths.PlaceIn(old.Register.Paths, index) is >= 0 and var was && old.Register[was].Sha256 == row.Sha256 && old.Register[was].Size == row.Size && old.IsIntact(was))
        {
            files.DeleteFile(place);
            staged.Make(index, row with { Modified = old.Find(output.Path)!.Modified }, isStaged: false, again);
            return;
        }

        staged.Make(index, row with { Modified = File.GetLastWriteTimeUtc(place).Ticks }, isStaged: true, again);
    }

    private RegisterRow? KeptFromOld(int index) =>
        plan.Paths.PlaceIn(old.Register.Paths, index) is >= 0 and var was && old.Register.Keys[was] is { } key && key == plan.KeyOf(index, options.Generator) && old.IsIntact(was)
            ? old.Register[was] with { Modified = old.IsAsNoted(was) ? old.Register[was].Modified : old.Find(plan.Paths.TextOf(index))!.Modified }
            : null;

    private string InMade(string path) => StateFolder.Place(state.Made, path);
}
