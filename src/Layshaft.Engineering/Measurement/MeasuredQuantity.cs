using UnitsNet;

namespace Layshaft.Engineering.Measurement;

/// <summary>A measured length, torque, angle or plain number, with its uncertainty and its unit.</summary>
/// <param name="Number">Value and uncertainty as plain numbers of <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit of the first reading, a member of a units-library unit enumeration.</param>
public sealed record MeasuredQuantity(MeasuredValue Number, Enum Unit)
{
    /// <summary>The measured value: mean of the readings.</summary>
    public IQuantity Value => QuantityUnit.Of(Number.Value, Unit);

    /// <summary>Combined standard uncertainty.</summary>
    public IQuantity StandardUncertainty => QuantityUnit.Of(Number.StandardUncertainty, Unit);

    /// <summary>Expanded uncertainty at the confidence of <see cref="Number"/>, 95 % where nothing else was said.</summary>
    public IQuantity ExpandedUncertainty => QuantityUnit.Of(Number.ExpandedUncertainty, Unit);

    /// <summary>Works out a result from readings and the instrument they were taken with.</summary>
    /// <typeparam name="TQuantity">Kind of quantity, or <see cref="IQuantity"/> where it is known only at run time.</typeparam>
    /// <param name="readings">One or more readings of one kind; units may differ.</param>
    /// <param name="instrument">What is known of the instrument.</param>
    /// <param name="confidence">Confidence of the expanded uncertainty, above 0 and below 1.</param>
    /// <returns>The result, in the unit of the first reading.</returns>
    /// <exception cref="ArgumentException">There is no reading, one is not finite, or kinds of quantity are mixed.</exception>
    public static MeasuredQuantity From<TQuantity>(
        IEnumerable<TQuantity> readings, Instrument instrument, double confidence = CoverageFactor.UsualConfidence)
        where TQuantity : IQuantity
    {
        ArgumentNullException.ThrowIfNull(instrument);
        TQuantity[] all = [.. readings];
        if (all.Length == 0)
        {
            throw new ArgumentException("a measurement needs at least one reading", nameof(readings));
        }

        var unit = all[0].Unit;
        var numbers = all.Select(reading => ((IQuantity)reading).In(unit)).ToArray();
        return new MeasuredQuantity(MeasuredValue.From(numbers, instrument.In(unit), confidence), unit);
    }

    /// <summary>The same result in another unit of its kind.</summary>
    /// <param name="unit">The unit wanted.</param>
    /// <returns>The result with value, uncertainty and scatter converted.</returns>
    /// <exception cref="ArgumentException">The unit is of another kind of quantity.</exception>
    public MeasuredQuantity In(Enum unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        var factor = QuantityUnit.Of(1, Unit).In(unit);
        var converted = Number with
        {
            Value = Number.Value * factor,
            Budget = Number.Budget.Scaled(factor),
            StandardDeviation = Number.StandardDeviation * factor,
            Resolution = Number.Resolution * Math.Abs(factor),
        };
        return new MeasuredQuantity(converted, unit);
    }
}
