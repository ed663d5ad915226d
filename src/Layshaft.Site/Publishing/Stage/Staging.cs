using System.Security.Cryptography;

namespace Layshaft.Site.Publishing;

/// <summary>An output of a known path could not be made.</summary>
internal sealed class StagingException(string path, Exception inner)
    : Exception($"This file could not be generated. The old site is unchanged. {inner.Message}", inner)
{
    internal string Path { get; } = path;
}

/// <summary>A file of the new site.</summary>
/// <param name="Trace">What is known of it.</param>
/// <param name="Was">Its place among the files of the old site; negative when that has none.</param>
/// <param name="IsMade">Whether it was made now; otherwise the old site's file is kept.</param>
internal readonly record struct StagedFile(Trace Trace, int Was, bool IsMade);

/// <summary>Makes the files of the site that are not known to be as before.</summary>
internal sealed class Staging(SitePlan plan, StateFolder state, OldSite old, PublishOptions options, IFileWork files)
{
    private const int ManyMade = 10_000;

    /// <summary>Makes every output that is not known to be the same as before.</summary>
    /// <returns>The files of the new site, by their place in the plan.</returns>
    internal StagedFile[] Make(CancellationToken cancel)
    {
        var staged = new StagedFile[plan.Outputs.Count];
        var open = new List<int>();
        for (var i = 0; i < staged.Length; i++)
        {
            var output = plan.Outputs[i];
            var was = old.Files.IndexOf(output.Path);
            if (was >= 0 && old.Files[was].Key == output.Key && output.Key != default && old.IsIntact(was))
            {
                staged[i] = new(old.AsItIs(was), was, IsMade: false);
            }
            else
            {
                staged[i] = new(null!, was, IsMade: true);
                open.Add(i);
            }
        }

        foreach (var folder in open.Select(i => Path.GetDirectoryName(InMade(plan.Outputs[i].Path))!).Distinct())
        {
            files.CreateFolder(folder);
        }

        MakeAll(open, staged, cancel);
        return staged;
    }

    private void MakeAll(List<int> open, StagedFile[] staged, CancellationToken cancel)
    {
        var done = 0;
        ReleaseMemory(open);
        try
        {
            Workers.ForEach(Batch.ShareOut(plan, open, options.Parallelism), options.Parallelism, batch =>
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
                            ReleaseMemory(open);
                        }
                    }

                    last = output.Group;
                    staged[i] = staged[i] with { Trace = MakeOne(output, staged[i].Was) };
                    var soFar = Interlocked.Increment(ref done);
                    options.Progress?.Report(new(soFar, open.Count, output.Path));
                    if (soFar % ManyMade == 0)
                    {
                        ReleaseMemory(open);
                    }
                }

                batch.Finish(last);
                FreedMemory.GiveBack();
            }, cancel);
            ReleaseMemory(open);
        }
        catch (AggregateException e)
        {
            // Of several that failed at once, always report the same one.
            var failed = e.InnerExceptions.OfType<StagingException>().MinBy(f => f.Path, StringComparer.Ordinal) ?? e.InnerExceptions[0];
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(failed);
        }
    }

    // What planning or making so many left behind would stay beside what is still to come, some of which takes much memory itself:
    // the garbage collector lets it grow with all that is in use, which is in proportion to the site.
    private static void ReleaseMemory(List<int> open)
    {
        if (open.Count > ManyMade)
        {
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
        }
    }

    private Trace MakeOne(PlannedOutput output, int was)
    {
        var place = InMade(output.Path);
        Trace made;
        try
        {
            made = Write(output, place);
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
        if (was >= 0 && old.Files[was].Sha256 == made.Sha256 && old.Files[was].Size == made.Size && old.IsIntact(was))
        {
            files.DeleteFile(place);
            return made with { Modified = old.AsItIs(was).Modified };
        }

        return made with { Modified = File.GetLastWriteTimeUtc(place).Ticks };
    }

    private Trace Write(PlannedOutput output, string place)
    {
        using var sha256 = SHA256.Create();
        using var file = files.Create(place);
        using var hashed = new CryptoStream(file, sha256, CryptoStreamMode.Write);
        var again = output.Make(hashed);
        hashed.FlushFinalBlock();
        return new(output.Path, file.Position, ContentHash.Of(sha256.Hash!)) { Key = again ? default : output.Key, Group = output.Group?.Name };
    }

    private string InMade(string path) => StateFolder.Place(state.Made, path);
}
