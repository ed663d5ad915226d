namespace Layshaft.Site.Publishing;

/// <summary>Every file of the site to be, in order of path, checked. Immutable.</summary>
public sealed class SitePlan
{
    private SitePlan(IReadOnlyList<PlannedOutput> outputs, IReadOnlyList<PublishProblem> problems) =>
        (Outputs, Problems) = (outputs, problems);

    /// <summary>The outputs in order of path.</summary>
    public IReadOnlyList<PlannedOutput> Outputs { get; }

    /// <summary>Paths that cannot be, or not beside each other; a plan with any is not published.</summary>
    public IReadOnlyList<PublishProblem> Problems { get; }

    /// <summary>A plan of the given outputs.</summary>
    /// <param name="outputs">The outputs in any order.</param>
    public static SitePlan Of(IEnumerable<PlannedOutput> outputs)
    {
        ArgumentNullException.ThrowIfNull(outputs);
        var ordered = outputs.OrderBy(o => o.Path, StringComparer.Ordinal).ToList();
        var problems = new List<PublishProblem>();

        // Systems that do not tell case apart would put twins into one file.
        var files = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var path in ordered.Select(o => o.Path))
        {
            if (OutputPath.ProblemWith(path) is { } wrong)
            {
                problems.Add(new(path, wrong));
            }
            else if (!files.TryAdd(path, path))
            {
                problems.Add(new(path, $"Another output has this path already, as `{files[path]}`."));
            }
        }

        var folders = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var folder in files.Values.SelectMany(OutputPath.FoldersAbove))
        {
            if (files.TryGetValue(folder, out var file))
            {
                problems.Add(new(file, $"The folder `{folder}` and this file have the same path."));
            }
            else if (!folders.TryAdd(folder, folder) && folders[folder] != folder)
            {
                problems.Add(new(folder, $"Another folder differs from this one only by case: `{folders[folder]}`."));
            }
        }

        return new(ordered, [.. problems.Distinct()]);
    }
}
