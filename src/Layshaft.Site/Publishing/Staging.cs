using Layshaft.Site.Publishing.Links;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Publishing;

/// <summary>An output of a known path could not be made.</summary>
internal sealed class StagingException(string path, Exception inner)
    : Exception($"This file could not be generated. The old site is unchanged. {inner.Message}", inner)
{
    internal string Path { get; } = path;
}

/// <summary>Builds the tree that is to become the site.</summary>
internal sealed class Staging(SitePlan plan, StateFolder state, OldSite old, PublishOptions options, IFileWork files)
{
    private const int ManyMade = 10_000;

    /// <summary>Whether the disk is known to set a folder's time when a name comes into it or leaves it: the spare's note was right.</summary>
    internal bool HasFolderTimes { get; private set; }

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

    /// <summary>
    /// Brings together what was made, what the old site has and the new one keeps, strangers' files, the list of our files and the
    /// mark; in the spare that the last publish left, where there is one.
    /// </summary>
    /// <returns>The hash of the list of our files.</returns>
    internal ContentHash Complete(StagedFiles staged, SiteRegister register, Strangers strangers, LinkHistory links, ICollection<PublishProblem> warnings)
    {
        var folders = strangers.FoldersWith(plan.Paths, options.ManifestPath);
        var list = default(ContentHash);
        files.CreateFolder(Path.GetDirectoryName(InMade(options.ManifestPath))!);
        var listed = SideBySide.Begin(
            () => files.WriteThrough(InMade(options.ManifestPath), stream => list = SiteManifest.Write(stream, register, links)), options.Parallelism);
        SpareReview? spare;
        try
        {
            spare = new SpareTree(state, old, options.ManifestPath, files, options.Parallelism).BecomeStage(staged, folders, warnings);
        }
        finally
        {
            listed();
        }

        files.Restrict(InMade(options.ManifestPath));

        HasFolderTimes = spare?.IsByNote == true;
        if (spare is null)
        {
            files.Move(state.Made, state.Stage);
        }

        foreach (var folder in folders.Except(spare?.Folders ?? [], StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            files.CreateFolder(InStage(folder));
        }

        var hasSecondNames = LinkAll(spare?.Lacking ?? staged.Where(i => !staged.IsStaged(i)));
        if (spare is not null)
        {
            SideBySide.ForEach(
                staged.Where(staged.IsStaged).Select(plan.Paths.TextOf).Append(options.ManifestPath), options.Parallelism, path => files.Move(InMade(path), InStage(path)));
            FolderSwap.RemoveFolders(SiteTree.Walk(state.Made), state.Made, files);
        }

        foreach (var entry in strangers.Entries)
        {
            CopyStranger(entry);
        }

        files.Create(Path.Combine(state.Stage, StateFolder.MarkName)).Dispose();
        if (options.PrivateFolder is { } closed)
        {
            files.Restrict(InStage(closed));
        }

        CopyRights();
        RecordChanges(staged, list, hasSecondNames);
        return list;
    }

    private void RecordChanges(StagedFiles staged, ContentHash list, bool hasSecondNames)
    {
        files.DeleteFile(state.SpareChanges);
        if (Directory.Exists(state.Output))
        {
            files.WriteThrough(state.SpareChanges, stream => SpareChanges.Write(stream, list, hasSecondNames, staged.Where(staged.IsStaged).Select(plan.Paths.TextOf)));
        }
    }

    private bool LinkAll(IEnumerable<int> kept)
    {
        var copies = 0;
        SideBySide.ForEach(kept, options.Parallelism, i =>
        {
            var path = plan.Paths.TextOf(i);
            if (!files.Link(InOld(path), InStage(path)))
            {
                Interlocked.Exchange(ref copies, 1);
            }
        });
        return copies == 0;
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
        // Nearly all have the same ones, and there may be very many. Inner ones first: what they lie in may be closed by its rights.
        var folders = old.Others.Entries.Where(e => e.Kind == TreeKind.Folder).Select(e => e.Path).Append(string.Empty).ToArray();
        var others = new bool[folders.Length];
        SideBySide.ForEach(Enumerable.Range(0, folders.Length), options.Parallelism, i => others[i] = HasOtherRights(folders[i]));
        foreach (var folder in folders.Where((_, i) => others[i]).OrderByDescending(f => f, StringComparer.Ordinal))
        {
            files.CopyRights(InOld(folder), InStage(folder));
        }
    }

    // Rights that the owner gave a group stay; ours was open to everybody once.
    private bool HasOtherRights(string folder) => !OperatingSystem.IsWindows()
        && new DirectoryInfo(InOld(folder)).UnixFileMode is var was && new DirectoryInfo(InStage(folder)).UnixFileMode is var now && was != now && !IsNone(was) && !IsNone(now)
        && !(folder == options.PrivateFolder && IsOpen(was));

    /// <summary>Whether everybody may do something with a folder.</summary>
    /// <param name="mode">Its rights.</param>
    internal static bool IsOpen(UnixFileMode mode) => !IsNone(mode) && (mode & (UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute)) != 0;

    private static bool IsNone(UnixFileMode mode) => (int)mode == -1;

    private string InMade(string path) => StateFolder.Place(state.Made, path);

    private string InStage(string path) => StateFolder.Place(state.Stage, path);

    private string InOld(string path) => StateFolder.Place(state.Output, path);
}
