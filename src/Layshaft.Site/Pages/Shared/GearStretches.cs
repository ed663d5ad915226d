namespace Layshaft.Site.Pages.Shared;

/// <summary>Cuts the points of a run where the gear changes.</summary>
internal static class GearStretches
{
    /// <summary>The stretches in one gear, in driving order; none out of gear and none of a single point.</summary>
    /// <param name="points">The points, in driving order.</param>
    /// <param name="gearOf">Gear of a point, from 1; 0 out of gear.</param>
    public static IEnumerable<IReadOnlyList<T>> Cut<T>(IEnumerable<T> points, Func<T, int> gearOf)
    {
        var stretch = new List<T>();
        foreach (var point in points)
        {
            if (stretch.Count > 0 && gearOf(stretch[^1]) != gearOf(point))
            {
                if (IsDrawn(stretch))
                {
                    yield return stretch;
                }

                stretch = [];
            }

            stretch.Add(point);
        }

        if (IsDrawn(stretch))
        {
            yield return stretch;
        }

        bool IsDrawn(List<T> some) => some.Count > 1 && gearOf(some[0]) > 0;
    }
}
