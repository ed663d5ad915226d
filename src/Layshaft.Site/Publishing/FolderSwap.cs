namespace Layshaft.Site.Publishing;

/// <summary>
/// Puts a staged tree in the place of the site, and cleans up after a publish that was killed at any step.
/// </summary>
/// <remarks>
/// <para>Where the system can, the two folders are exchanged in one step, so that a reader sees the old site or the new
/// one. Elsewhere it takes two renames with a moment between them in which there is no site; a publish killed in that
/// moment is taken back by the next one.</para>
/// <para>No journal is kept: which step was the last follows from what stands where. A complete staged tree holds a mark,
/// which stays in it until the old tree is gone. So, with <c>S</c> the site, <c>stage</c> and <c>old</c> in our hidden folder:</para>
/// <list type="bullet">
/// <item>no <c>S</c> but <c>old</c>: killed between the renames; <c>old</c> goes back.</item>
/// <item>mark in <c>S</c>: the new site is in place; what <c>stage</c> or <c>old</c> holds is the old one, to be cleared.</item>
/// <item>no mark in <c>S</c>: the site is the old one; what <c>stage</c> holds was never in place and is dropped.</item>
/// </list>
/// </remarks>
internal sealed class FolderSwap(StateFolder state, string manifestPath, IFileWork files, int parallelism)
{
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
        else
        {
            if (Directory.Exists(state.Old))
            {
                new OldTree(state, state.Old, manifestPath, files, parallelism).Clear(warnings);
            }

            Discard();
        }
    }

    /// <summary>Clears the old tree after an exchange, and then takes the mark from the new one.</summary>
    internal void Settle(ICollection<PublishProblem> warnings)
    {
        foreach (var tree in new[] { state.Stage, state.Old }.Where(Directory.Exists))
        {
            new OldTree(state, tree, manifestPath, files, parallelism).Clear(warnings);
        }

        files.DeleteFile(state.OutputMark);
    }

    /// <summary>Drops a staged tree that was never in place; everything in it is ours or a second name.</summary>
    internal void Discard()
    {
        if (!Directory.Exists(state.Stage))
        {
            return;
        }

        var tree = SiteTree.Walk(state.Stage);
        SideBySide.ForEach(tree.Entries.Where(e => e.Kind != TreeKind.Folder), parallelism, e => files.DeleteFile(StateFolder.Place(state.Stage, e.Path)));
        files.DeleteFile(Path.Combine(state.Stage, StateFolder.MarkName));
        RemoveFolders(tree, state.Stage, files);
    }

    internal static void RemoveFolders(SiteTree tree, string root, IFileWork files)
    {
        foreach (var folder in tree.Entries.Where(e => e.Kind == TreeKind.Folder).Reverse())
        {
            files.DeleteFolder(StateFolder.Place(root, folder.Path));
        }

        files.DeleteFolder(root);
    }
}
