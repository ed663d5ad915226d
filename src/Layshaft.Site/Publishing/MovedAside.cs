namespace Layshaft.Site.Publishing;

/// <summary>The folder for what is not ours and could not stay where it was.</summary>
internal sealed class MovedAside(StateFolder state, IFileWork files)
{
    /// <summary>Moves something there.</summary>
    /// <param name="from">What.</param>
    /// <param name="path">Its path in the site, which it keeps, with a number behind what is taken already.</param>
    /// <returns>Where it is now.</returns>
    internal string Take(string from, string path)
    {
        var parts = path.Split('/');
        var folder = state.Kept;
        foreach (var part in parts[..^1])
        {
            folder = FirstFree(Path.Combine(folder, part), p => Path.Exists(p) && !Directory.Exists(p));
        }

        var name = FirstFree(Path.Combine(folder, parts[^1]), Path.Exists);
        files.CreateFolder(folder);
        files.Move(from, name);
        return name;
    }

    private static string FirstFree(string place, Func<string, bool> isTaken)
    {
        var name = place;
        for (var i = 2; isTaken(name); i++)
        {
            name = $"{place}.{i}";
        }

        return name;
    }
}
