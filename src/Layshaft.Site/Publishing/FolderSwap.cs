namespace Layshaft.Site.Publishing;

/// <summary>
/// Puts a staged tree in the place of the site, and cleans up after a publish that was killed at any step.
/// </summary>
/// <remarks>
/// <para>Where the system can, the two folders are exchanged in one step, so that a reader sees the old site or the new
/// one. Elsewhere it takes two renames with a moment between them in which there is no site; a publish killed in that
/// moment is taken back by the next one.</para>
/// <para>No journal is kept: which step was the last follows from what stands where. A complete staged tree holds a mark,
/// which stays in it until the old tree is settled. So, with <c>S</c> the site, <c>stage</c> and <c>old</c> in our hidden folder:</para>
/// <list type="bullet">
/// <item>no <c>S</c> but <c>old</c>: killed between the renames; <c>old</c> goes back.</item>
/// <item>mark in <c>S</c>: the new site is in place; what <c>stage</c> or <c>old</c> holds is the old one, to be settled.</item>
/// <item>no mark in <c>S</c>: the site is the old one; what <c>stage</c> and <c>made</c> hold was never in place and is dropped.</item>
/// </list>
/// <para>To settle the old tree is to take out of it all but second names of the site's files, and to rename it <c>spare</c>; the
/// next publish renames that <c>stage</c> and brings it up to date. A kill cannot make a mixture of this:</para>
/// <list type="bullet">
/// <item>The mark goes into a stage when it is complete, and from the site before the next publish does anything. So the tree
/// that leaves the site has none, nor has the spare, and a spare that is the stage again counts for nothing until it is complete.
/// Only the mark in <c>S</c> is ever asked for.</item>
/// <item>There is a spare only while there is neither <c>stage</c> nor <c>old</c>: it becomes the one, or is dropped, before the
/// exchange. Killed after the old tree was renamed <c>spare</c>: the mark in <c>S</c> finds nothing to settle, and goes.</item>
/// <item>Killed while settling: every step may be done again. The record of what the exchange changed was written before it, and
/// names the list of files of the site that it belongs to, see <see cref="SpareChanges"/>. Without it the old tree is cleared.</item>
/// <item>Killed while a spare is dropped, or relieved of what is not ours: it is still a spare that holds less. What it holds is
/// taken to be whole only while a note of it stands, see <see cref="SpareNote"/>, which is written last and removed first; without one the
/// next publish walks it, see <see cref="SpareReview"/>. What is not ours leaves it before it is the
/// stage, since a stage is dropped whole.</item>
/// </list>
/// </remarks>
internal sealed class FolderSwap(StateFolder state, string manifestPath, IFileWork files, int parallelism)
{
    /// <summary>The step in which the disk keeps the times of folders.</summary>
    internal TimeSpan FolderClock { get; init; } = DiskClock.Coarsest;

    /// <summary>Puts the staged tree in place. If it fails, the site is as it was.</summary>
    internal void Exchange()
    {
        if (!Directory.Exists(state.Output))
        {
            files.Move(state.Stage, state.Output);
        }
        else if (!files.TryExchange(state.Stage, state.Output))
        {
            files.Move(state.Output, state.Old);
            try
            {
                files.Move(state.Stage, state.Output);
            }
            catch
            {
                files.Move(state.Old, state.Output);
                throw;
            }
        }
    }

    /// <summary>Brings in order whatever a killed publish left.</summary>
    internal void Mend(ICollection<PublishProblem> warnings)
    {
        if (!Directory.Exists(state.Output) && Directory.Exists(state.Old))
        {
            files.Move(state.Old, state.Output);
        }

        if (File.Exists(state.OutputMark))
        {
            Settle(warnings);
        }
        else if (Directory.Exists(state.Old))
        {
            new OldTree(state, state.Old, manifestPath, files, parallelism).Clear(warnings);
        }

        Discard();
    }

    /// <summary>Puts the list of changes in place after an exchange, makes a spare of the old tree, or clears it, and then takes the mark from the new one.</summary>
    /// <param name="warnings">Receives what strangers should know.</param>
    /// <param name="known">What is known of the exchange; null where a killed publish made it.</param>
    internal void Settle(ICollection<PublishProblem> warnings, SettledSite? known = null)
    {
        if (File.Exists(state.NextChanges))
        {
            files.DeleteFile(state.Changes);
            files.Move(state.NextChanges, state.Changes);
        }

        foreach (var tree in new[] { state.Stage, state.Old }.Where(Directory.Exists))
        {
            var list = known?.List ?? HashOfList();
            var changes = list is { } ofList ? SpareChanges.Read(state.SpareChanges, ofList) : null;
            var old = new OldTree(state, tree, manifestPath, files, parallelism)
            {
                Seen = known?.Before,
                Now = known?.Now,
                Changes = changes,
                HasFolderTimes = known?.HasFolderTimes == true,
                FolderClock = FolderClock,
            };
            if (changes?.HasSecondNames == true && !Path.Exists(state.Spare) && old.LeaveSecondNames(warnings))
            {
                files.Move(tree, state.Spare);
                old.Note(state.Spare, list!.Value)?.Write(files, state.SpareNote);
            }
            else
            {
                old.Clear(warnings);
            }
        }

        files.DeleteFile(state.OutputMark);
    }

    /// <summary>Drops a staged tree that was never in place, its list of changes, and what was made for it; everything in them is ours or a second name.</summary>
    internal void Discard()
    {
        foreach (var root in new[] { state.Stage, state.Made }.Where(Directory.Exists))
        {
            var tree = SiteTree.Walk(root);
            SideBySide.ForEach(tree.Entries.Where(e => e.Kind != TreeKind.Folder), parallelism, e => files.DeleteFile(StateFolder.Place(root, e.Path)));
            files.DeleteFile(Path.Combine(root, StateFolder.MarkName));
            RemoveFolders(tree, root, files);
        }

        if (File.Exists(state.NextChanges))
        {
            files.DeleteFile(state.NextChanges);
        }
    }

    internal static void RemoveFolders(SiteTree tree, string root, IFileWork files)
    {
        foreach (var folder in tree.Entries.Where(e => e.Kind == TreeKind.Folder).Reverse())
        {
            files.DeleteFolder(StateFolder.Place(root, folder.Path));
        }

        files.DeleteFolder(root);
    }

    private ContentHash? HashOfList()
    {
        var list = StateFolder.Place(state.Output, manifestPath);
        return File.Exists(list) ? OldSite.HashOf(list) : null;
    }
}
