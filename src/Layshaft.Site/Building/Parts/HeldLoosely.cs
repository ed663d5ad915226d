namespace Layshaft.Site.Building.Parts;

/// <summary>Something large that can be made again: let go when the collector comes by and nobody uses it.</summary>
/// <param name="make">Makes it, the same one each time.</param>
internal sealed class HeldLoosely<T>(Func<T> make)
    where T : class
{
    private readonly Lock _gate = new();
    private readonly WeakReference<T?> _value = new(null);

    /// <summary>It.</summary>
    internal T Value
    {
        get
        {
            lock (_gate)
            {
                if (!_value.TryGetTarget(out var value))
                {
                    _value.SetTarget(value = make());
                }

                return value;
            }
        }
    }
}
