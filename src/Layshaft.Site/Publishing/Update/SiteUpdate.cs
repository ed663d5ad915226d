using Layshaft.Book.Reading;

namespace Layshaft.Site.Publishing;

/// <summary>Brings the site up to date from the staged files, and finishes an update that was cut off.</summary>
/// <remarks>
/// <para>The journal is the next manifest: it is written whole beside the site and then renamed into it. That step decides. A publish cut off
/// before it has changed nothing; one cut off after it is finished by the next command that opens the site, because every step that
/// follows can be repeated:</para>
/// <list type="number">
/// <item>Remove each file that the next manifest does not list. Withdrawn pages are gone before new ones come.</item>
/// <item>Move in each staged file. Where the system can, it changes places with the old one in one step, so no page is ever missing.</item>
/// <item>Put the list of changes for upload in place, and rename the next manifest over the manifest.</item>
/// </list>
/// <para>Only a file that is as the manifest says is removed or replaced. Anything else is somebody's work: it stays, or is moved to
/// the folder <c>kept</c> if the site needs its path. If the staged files are lost, what is missing in the site is made again by the next publish.</para>
/// </remarks>
/// <param name="state">The folder beside the site.</param>
/// <param name="manifestPath">Where the manifest is in the site.</param>
/// <param name="files">Changes the disk.</param>
/// <param name="parallelism">The most threads at once.</param>
internal sealed class SiteUpdate(StateFolder state, string manifestPath, IFileWork files, int parallelism)
{
    private readonly string _manifest = StateFolder.Place(state.Output, manifestPath);
    private readonly string _next = StateFolder.Place(state.Output, NextOf(manifestPath));

    /// <summary>Where the next manifest is in the site while an update is not finished.</summary>
    /// <param name="manifestPath">Where the manifest is.</param>
    internal static string NextOf(string manifestPath) => $"{manifestPath}.next";

    /// <summary>Begins an update: from here on it is finished by this publish or by the next command.</summary>
    /// <param name="write">Writes the next manifest and gives its hash.</param>
    /// <returns>The hash.</returns>
    internal ContentHash Begin(Func<Stream, ContentHash> write)
    {
        var hash = default(ContentHash);
        files.WriteThrough(state.NextManifest, stream => hash = write(stream));
        files.Restrict(state.NextManifest);
        var folder = Path.GetDirectoryName(_next)!;
        files.CreateFolder(folder);
        if (folder != state.Output && !File.Exists(_manifest))
        {
            files.Restrict(folder);
        }

        files.Move(state.NextManifest, _next);
        return hash;
    }

    /// <summary>Finishes the update that was begun.</summary>
    /// <param name="before">The files of the site before it.</param>
    /// <param name="next">The paths of the files after it.</param>
    /// <param name="warnings">Receives which files of others were moved aside.</param>
    internal void Finish(SiteTraces before, PathIndex<Trace> next, ICollection<PublishProblem> warnings) =>
        Finish(new SiteMerge(state, before, files, parallelism) { IsStaged = (path, _) => next.IndexOf(path) >= 0 }, next, warnings);

    /// <summary>Finishes an update that was cut off, or removes what was staged for one that was never begun.</summary>
    /// <param name="warnings">Receives which files of others were moved aside.</param>
    internal void Recover(ICollection<PublishProblem> warnings)
    {
        if (File.Exists(_next))
        {
            var next = SiteManifest.Parse(RegularFile.ReadAll(_next)) ?? throw new IOException($"'{_next}' is damaged. Move the site's folder away and publish again.");

            // Some staged files may have changed places with the old ones already.
            var merge = new SiteMerge(state, TracesOf(_manifest), files, parallelism)
            {
                IsStaged = (path, place) => next.Files.Find(path) is { } listed && SiteTree.EntryAt(state.Made, path) is { Kind: TreeKind.File } found
                    && found.Size == listed.Size && OldSite.HashOf(place) == listed.Sha256,
            };
            Finish(merge, next.Files, warnings);
        }

        Discard();
    }

    /// <summary>Removes what was staged for an update that was never begun.</summary>
    internal void Discard()
    {
        if (Directory.Exists(state.Made))
        {
            var tree = SiteTree.Walk(state.Made);
            Workers.ForEachInShares(tree.Where(e => e.Kind != TreeKind.Folder), parallelism, e => files.DeleteFile(StateFolder.Place(state.Made, e.Path)));
            foreach (var folder in tree.Where(e => e.Kind == TreeKind.Folder).Reverse())
            {
                files.DeleteFolder(StateFolder.Place(state.Made, folder.Path));
            }

            files.DeleteFolder(state.Made);
        }

        foreach (var file in new[] { state.NextManifest, state.NextChanges }.Where(File.Exists))
        {
            files.DeleteFile(file);
        }
    }

    private void Finish(SiteMerge merge, PathIndex<Trace> next, ICollection<PublishProblem> warnings)
    {
        merge.Remove(next);
        merge.MoveIn(next);
        foreach (var warning in merge.Aside.OrderBy(w => w.Path, StringComparer.Ordinal))
        {
            warnings.Add(warning);
        }

        if (File.Exists(state.NextChanges))
        {
            files.MoveOver(state.NextChanges, state.Changes);
        }

        files.MoveOver(_next, _manifest);
    }

    private static SiteTraces TracesOf(string manifest) => File.Exists(manifest) && SiteManifest.Parse(RegularFile.ReadAll(manifest)) is { } list
        ? new(list.Files, list.Links)
        : SiteTraces.None;
}
