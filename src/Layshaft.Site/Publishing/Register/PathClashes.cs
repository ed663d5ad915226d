using System.Text;

namespace Layshaft.Site.Publishing.Register;

/// <summary>Finds paths that cannot be beside each other: systems that do not tell case apart would put twins into one file.</summary>
internal static class PathClashes
{
    /// <summary>What is wrong with the paths of a table, each by itself and beside the others.</summary>
    /// <param name="paths">The paths.</param>
    internal static IEnumerable<PublishProblem> In(PathTable paths)
    {
        var files = new Dictionary<Beginning, int>(paths.Count, new CaseBlind(paths));
        for (var i = 0; i < paths.Count; i++)
        {
            if (OutputPath.ProblemWith(paths.TextOf(i)) is { } wrong)
            {
                yield return new(paths.TextOf(i), wrong);
            }
            else if (!files.TryAdd(new(i, paths[i].Length), i))
            {
                yield return new(paths.TextOf(i), $"Another output file already has this path, as '{paths.TextOf(files[new(i, paths[i].Length)])}'.");
            }
        }

        var folders = new Dictionary<Beginning, Beginning>(new CaseBlind(paths));
        for (var i = 0; i < paths.Count; i++)
        {
            foreach (var length in paths.NewFolders(i))
            {
                var folder = new Beginning(i, length);
                if (files.TryGetValue(folder, out var file))
                {
                    yield return new(paths.TextOf(file), $"The folder '{folder.TextIn(paths)}' and this file have the same path.");
                }
                else if (!folders.TryAdd(folder, folder) && folders[folder].TextIn(paths) is var other && other != folder.TextIn(paths))
                {
                    yield return new(folder.TextIn(paths), $"Another folder differs from this one only in case: '{other}'.");
                }
            }
        }
    }

    /// <summary>What is wrong with one more path beside those of a table.</summary>
    /// <param name="paths">The table, in which nothing is wrong.</param>
    /// <param name="path">The path.</param>
    internal static IEnumerable<PublishProblem> Between(PathTable paths, string path)
    {
        var around = new TakenPaths([path, .. OutputPath.FoldersAbove(path)]);
        return OutputPath.ProblemWith(path) is { } wrong
            ? [new(path, wrong)]
            : around.Met(paths).SelectMany(m => Clash(path, m.Place, m.Planned, m.IsFolder));
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

    // The first bytes of a path: all of it, or one of its folders.
    private readonly record struct Beginning(int Path, int Length)
    {
        internal ReadOnlySpan<byte> In(PathTable paths) => paths[Path][..Length];

        internal string TextIn(PathTable paths) => Encoding.UTF8.GetString(In(paths));
    }

    private sealed class CaseBlind(PathTable paths) : IEqualityComparer<Beginning>
    {
        public bool Equals(Beginning one, Beginning other) => Ascii.EqualsIgnoreCase(one.In(paths), other.In(paths));

        public int GetHashCode(Beginning one)
        {
            Span<byte> small = stackalloc byte[OutputPath.Longest];
            var hash = default(HashCode);
            hash.AddBytes(small[..(Ascii.ToLower(one.In(paths), small, out var length) == System.Buffers.OperationStatus.Done ? length : 0)]);
            return hash.ToHashCode();
        }
    }
}
