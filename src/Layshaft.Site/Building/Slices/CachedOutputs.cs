using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Building.Slices;

/// <summary>How many files each slice has in the site that stands, by the slice's mark.</summary>
internal sealed class CachedOutputs
{
    private readonly Dictionary<ContentHash, int> _numbers = [];
    private readonly int[] _counts;

    /// <summary>The files of a site.</summary>
    /// <param name="register">What the last publish recorded.</param>
    public CachedOutputs(SiteRegister register)
    {
        for (var number = 1; number <= register.Marks.Count; number++)
        {
            _numbers[register.Marks[number - 1]] = number;
        }

        _counts = new int[register.Marks.Count + 1];
        for (var i = 0; i < register.Count; i++)
        {
            if (register.Keys.NumberOf(i) > 0)
            {
                _counts[register[i].Group]++;
            }
        }
    }

    /// <summary>How many files a slice has that are not to be made in any case; 0 when none are known.</summary>
    /// <param name="mark">The mark of the slice.</param>
    public int CountOf(ContentHash mark) => _numbers.TryGetValue(mark, out var number) ? _counts[number] : 0;
}
