using Layshaft.Site.Pages;

namespace Layshaft.Site.Building.Slices;

/// <summary>
/// What was read of a few slices, until their files are made: after a change of one job there is one. Where there are many nothing is held, for
/// memory must not grow with the seasons. For many threads at once.
/// </summary>
internal sealed class ReadSlices
{
    private const int Most = 4;

    private readonly Lock _gate = new();
    private readonly Dictionary<string, Composition> _held = new(StringComparer.Ordinal);
    private int _seen;

    /// <summary>Holds what was read of a slice, and lets all go once there are too many.</summary>
    /// <param name="slice">The slice's name.</param>
    /// <param name="composition">What was read.</param>
    public void Hold(string slice, Composition composition)
    {
        lock (_gate)
        {
            if (++_seen > Most)
            {
                _held.Clear();
            }
            else
            {
                _held[slice] = composition;
            }
        }
    }

    /// <summary>What was read of a slice, once; null when it has to be read again.</summary>
    /// <param name="slice">The slice's name.</param>
    public Composition? Take(string slice)
    {
        lock (_gate)
        {
            return _held.Remove(slice, out var composition) ? composition : null;
        }
    }
}
