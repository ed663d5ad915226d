using Layshaft.Book.Reading;

namespace Layshaft.Site.Publishing;

/// <summary>The tree that the last exchange left behind, which saves giving every file a second name anew.</summary>
internal sealed class SpareTree(StateFolder state, OldSite site, string manifestPath, IFileWork files, int parallelism)
{
    private readonly KeptAside _aside = new(state, files);

    /// <summary>
    /// Makes it the stage, without what the site to be does not keep of it; drops it where nothing is known of it.
    /// </summary>
    /// <param name="staged">The files of the site to be.</param>
    /// <param name="folders">All its folders.</param>
    /// <param name="warnings">Receives what strangers should know.</param>
    /// <returns>What it had; null if there is no stage.</returns>
    internal SpareReview? BecomeStage(StagedFiles staged, IReadOnlySet<string> folders, ICollection<PublishProblem> warnings)
    {
        if (!Directory.Exists(state.Spare))
        {
            return null;
        }

        // From here on it may be another than the note says.
        var (note, changes) = site.Register.List is { } list ? (SpareNote.Read(state.SpareNote, list), SpareChanges.Read(state.SpareChanges, list)) : default;
        files.DeleteFile(state.SpareNote);
        var isLink = new DirectoryInfo(state.Spare).LinkTarget is not null;
        if (isLink || changes is not { HasSecondNames: true } || IsMostlyNew(staged))
        {
            Drop(isLink, warnings);
            return null;
        }

        var review = SpareReview.Of(state, site, changes, note, staged, manifestPath, parallelism);
        foreach (var path in review.Strange)
        {
            KeepAside(StateFolder.Place(state.Spare, path), path, warnings);
        }

        files.DeleteFile(Path.Combine(state.Spare, StateFolder.MarkName));
        files.Move(state.Spare, state.Stage);
        SideBySide.ForEach(review.Ours, parallelism, path => files.DeleteFile(StateFolder.Place(state.Stage, path)));

        // Before any folder is made: one that differs only by case may take its place.
        foreach (var folder in review.Folders.Where(f => !folders.Contains(f)).Reverse())
        {
            files.DeleteFolder(StateFolder.Place(state.Stage, folder));
        }

        return review;
    }

    // Its own list of files says what of it is ours; where that is damaged nobody knows, and nothing is removed.
    private void Drop(bool isLink, ICollection<PublishProblem> warnings)
    {
        var list = StateFolder.Place(state.Spare, manifestPath);
        var isOfSite = !isLink && File.Exists(list) && OldSite.HashOf(list) == site.Register.List;
        if (isLink || !(isOfSite || HasFoldersOnly() || HasListOfOurs(list)))
        {
            KeepAside(state.Spare, Path.GetFileName(state.Spare), warnings);
        }
        else
        {
            new OldTree(state, state.Spare, manifestPath, files, parallelism) { IntoSite = false, Listed = isOfSite ? site.Register : null }.Clear(warnings);
        }
    }

    // It would have to be gone through path by path, to keep few.
    private static bool IsMostlyNew(StagedFiles staged) => staged.Where(staged.IsStaged).Skip(staged.Paths.Count / 2).Any();

    private bool HasFoldersOnly()
    {
        var hasFile = false;
        var others = SiteTree.Walk(state.Spare, (_, _, _) =>
        {
            hasFile = true;
            return false;
        });
        return !hasFile && others.Entries.All(e => e.Kind == TreeKind.Folder);
    }

    private static bool HasListOfOurs(string list) => File.Exists(list) && SiteManifest.Parse(RegularFile.ReadAll(list)) is not null;

    private void KeepAside(string from, string path, ICollection<PublishProblem> warnings)
    {
        var name = _aside.Take(from, path);
        warnings.Add(new(from, $"Layshaft did not create this file in its working folder. It is kept as {name}."));
    }
}
