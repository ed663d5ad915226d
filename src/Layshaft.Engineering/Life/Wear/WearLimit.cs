namespace Layshaft.Engineering.Life;

/// <summary>Where wear starts and where it must end, in the unit of the readings.</summary>
public sealed record WearLimit
{
    private WearLimit(double? newValue, double limit, bool grows)
    {
        NewValue = newValue;
        Limit = limit;
        Grows = grows;
    }

    /// <summary>Wear as a share of the allowance: 0 new, 1 at the limit.</summary>
    public static WearLimit Share { get; } = Between(0, 1);

    /// <summary>The value when new, if known.</summary>
    public double? NewValue { get; }

    /// <summary>The value at which the part is to be renewed.</summary>
    public double Limit { get; }

    /// <summary>Whether wear makes the value larger (a play) or smaller (a thickness).</summary>
    public bool Grows { get; }

    /// <summary>New value and limit both known: wear runs from one to the other.</summary>
    /// <param name="newValue">Value when new.</param>
    /// <param name="limit">Value at the limit, another one.</param>
    /// <returns>The limit.</returns>
    /// <exception cref="ArgumentException">The values are not finite or are equal.</exception>
    public static WearLimit Between(double newValue, double limit)
    {
        if (!double.IsFinite(newValue) || !double.IsFinite(limit) || newValue == limit)
        {
            throw new ArgumentException("New value and limit must be two different finite numbers.", nameof(limit));
        }

        return new WearLimit(newValue, limit, limit > newValue);
    }

    /// <summary>Only the limit known.</summary>
    /// <param name="limit">Value at the limit.</param>
    /// <param name="grows">Whether wear makes the value larger.</param>
    /// <returns>The limit.</returns>
    /// <exception cref="ArgumentException">The limit is not finite.</exception>
    public static WearLimit Only(double limit, bool grows) => double.IsFinite(limit)
        ? new WearLimit(null, limit, grows)
        : throw new ArgumentException("The limit must be a finite number.", nameof(limit));

    /// <summary>A value turned so that wear is a growing number, from 0 when the new value is known.</summary>
    internal double ToWear(double value) => (value - (NewValue ?? 0)) * Sign;

    /// <summary>The value that a wear belongs to.</summary>
    internal double ToValue(double wear) => (NewValue ?? 0) + wear * Sign;

    private int Sign => Grows ? 1 : -1;
}
