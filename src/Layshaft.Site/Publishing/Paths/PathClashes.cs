namespace Layshaft.Site.Publishing;

/// <summary>Finds paths that cannot be beside each other: systems that ignore case would put twins into one file.</summary>
internal static class PathClashes
{
    /// <summary>What is wrong with paths, each by itself and beside the others.</summary>
    /// <param name="files">The files.</param>
    internal static IEnumerable<PublishProblem> In<T>(PathIndex<T> files)
        where T : class, IPathed
    {
        var byName = new Dictionary<string, string>(files.Count, StringComparer.OrdinalIgnoreCase);
        foreach (var path in files.Select(f => f.Path))
        {
            if (OutputPath.ProblemWith(path) is { } wrong)
            {
                yield return new(path, wrong);
            }
            else if (!byName.TryAdd(path, path))
            {
                yield return new(path, $"Another output file already has this path, as '{byName[path]}'.");
            }
        }

        var folders = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var folder in files.Folders)
        {
            if (byName.TryGetValue(folder, out var file))
            {
                yield return new(file, $"The folder '{folder}' and this file have the same path.");
            }
            else if (!folders.TryAdd(folder, folder))
            {
                yield return new(folder, $"Another folder differs from this one only in case: '{folders[folder]}'.");
            }
        }
    }

    /// <summary>What is wrong with one more path beside those of a site.</summary>
    /// <param name="files">The site's files, in which nothing is wrong.</param>
    /// <param name="path">The path.</param>
    internal static IEnumerable<PublishProblem> Between<T>(PathIndex<T> files, string path)
        where T : class, IPathed
    {
        if (OutputPath.ProblemWith(path) is { } wrong)
        {
            return [new(path, wrong)];
        }

        // A file and its folders want as many places as there are; any two of one name are a clash.
        return Met(files, [path, .. OutputPath.FoldersAbove(path)]).SelectMany(m => Clash(path, m.Place, m.Planned, m.IsFolder)).Distinct();
    }

    /// <summary>The files and folders of a site that want one of some places, on a system that ignores case.</summary>
    /// <param name="files">The site's files.</param>
    /// <param name="places">The places.</param>
    internal static IEnumerable<(string Place, string Planned, bool IsFolder)> Met<T>(PathIndex<T> files, IEnumerable<string> places)
        where T : class, IPathed
    {
        var byName = places.ToLookup(p => p, StringComparer.OrdinalIgnoreCase);
        return byName.Count == 0 ? [] : files.Select(f => (f.Path, IsFolder: false)).Concat(files.Folders.Select(f => (Path: f, IsFolder: true)))
            .SelectMany(f => byName[f.Path].Select(p => (p, f.Path, f.IsFolder)));
    }

    private static IEnumerable<PublishProblem> Clash(string path, string place, string planned, bool isFolder)
    {
        if (place == path)
        {
            yield return new(path, isFolder ? $"The folder '{planned}' and this file have the same path." : $"Another output file already has this path, as '{planned}'.");
        }
        else if (!isFolder)
        {
            yield return new(planned, $"The folder '{place}' and this file have the same path.");
        }
        else if (place != planned)
        {
            yield return new(place, $"Another folder differs from this one only in case: '{planned}'.");
        }
    }
}
