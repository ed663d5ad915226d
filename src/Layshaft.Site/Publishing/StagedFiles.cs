using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Publishing;

/// <summary>The files of the new site, by their place in the plan. Each is set once, from any thread.</summary>
/// <param name="plan">The plan.</param>
internal sealed class StagedFiles(SitePlan plan)
{
    private readonly RegisterRow[] _rows = new RegisterRow[plan.Paths.Count];
    private readonly Origin[] _origins = new Origin[plan.Paths.Count];
    private readonly bool[] _again = new bool[plan.Paths.Count];

    // Where a file of the new site comes from.
    private enum Origin : byte
    {
        Unknown,
        Kept,
        MadeTheSame,
        MadeAnew,
    }

    /// <summary>Their paths.</summary>
    internal PathTable Paths => plan.Paths;

    /// <summary>What is known of a file.</summary>
    /// <param name="index">Which.</param>
    internal RegisterRow this[int index] => _rows[index];

    /// <summary>Notes a file that the old site has and that need not be made.</summary>
    internal void Keep(int index, RegisterRow row) => (_rows[index], _origins[index]) = (row, Origin.Kept);

    /// <summary>Notes a file that was made.</summary>
    /// <param name="index">Which.</param>
    /// <param name="row">What is known of it.</param>
    /// <param name="isStaged">Whether its file is in the stage; otherwise the site has the same bytes already.</param>
    /// <param name="again">Whether the next publish shall make it again in any case.</param>
    internal void Make(int index, RegisterRow row, bool isStaged, bool again) =>
        (_rows[index], _origins[index], _again[index]) = (row, isStaged ? Origin.MadeAnew : Origin.MadeTheSame, again);

    /// <summary>Whether it is known yet what becomes of a file.</summary>
    internal bool IsKnown(int index) => _origins[index] != Origin.Unknown;

    /// <summary>Whether a file was made now; otherwise the old site's file is kept.</summary>
    internal bool IsMade(int index) => _origins[index] is Origin.MadeTheSame or Origin.MadeAnew;

    /// <summary>Whether a file was made for the stage; otherwise the old site has the same bytes.</summary>
    internal bool IsStaged(int index) => _origins[index] == Origin.MadeAnew;

    /// <summary>All of them, by their place.</summary>
    internal IEnumerable<int> All() => Enumerable.Range(0, _rows.Length);

    /// <summary>The files of which something is so.</summary>
    internal IEnumerable<int> Where(Func<int, bool> isSo) => All().Where(isSo);

    /// <summary>The register of the new site.</summary>
    /// <param name="generator">The program's mark.</param>
    internal SiteRegister Register(string generator)
    {
        var (marks, numbers) = (new List<ContentHash>(), new Dictionary<ContentHash, int>());
        for (var i = 0; i < _rows.Length; i++)
        {
            var group = 0;
            if (plan.GroupOf(i)?.Mark is { } mark && !numbers.TryGetValue(mark, out group))
            {
                marks.Add(mark);
                numbers[mark] = group = marks.Count;
            }

            _rows[i] = _rows[i] with { Group = group };
        }

        return new(plan.Paths, _rows, HashColumn.Of(_rows.Length, i => _again[i] ? null : plan.KeyOf(i, generator)), marks);
    }
}
