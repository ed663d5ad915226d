using System.Diagnostics.CodeAnalysis;

namespace Layshaft.Engineering.Gearing;

/// <summary>A value, or the faults for which there is none. Exactly one of the two is there. Immutable.</summary>
/// <typeparam name="T">What was asked for.</typeparam>
public sealed class Outcome<T>
    where T : class
{
    internal Outcome(T? value, IReadOnlyList<GearingFault> faults)
    {
        Value = faults.Count == 0 ? value : null;
        Faults = faults;
    }

    /// <summary>The value; null when there are faults.</summary>
    public T? Value { get; }

    /// <summary>The faults, in the order in which they were met; empty when there is a value.</summary>
    public IReadOnlyList<GearingFault> Faults { get; }

    /// <summary>Gives the value when there is one.</summary>
    /// <param name="value">The value; null when there are faults.</param>
    /// <returns>Whether there is a value.</returns>
    public bool TryGet([NotNullWhen(true)] out T? value)
    {
        value = Value;
        return value is not null;
    }

    /// <summary>The value, for a caller who knows that the figures are good.</summary>
    /// <exception cref="InvalidOperationException">There are faults; the message lists them.</exception>
    public T Require() =>
        Value ?? throw new InvalidOperationException(string.Join(" ", Faults.Select(fault => fault.Message)));
}
