using UnitsNet;

namespace Layshaft.Engineering.Measurement;

/// <summary>One measured feature of a part against new and limit: the decision, and the share of the allowance used.</summary>
/// <param name="Measured">The measurement.</param>
/// <param name="Allowance">New and limit as plain numbers of the unit of the measurement.</param>
public sealed record PartWear(MeasuredQuantity Measured, WearAllowance Allowance)
{
    /// <summary>Decision against the limit.</summary>
    public LimitDecision Decision => Allowance.Decide(Measured.Number);

    /// <summary>Share of the allowance used, without unit, with its uncertainty; 1 at the limit.</summary>
    public MeasuredValue ShareUsed => Allowance.ShareUsed(Measured.Number);

    /// <summary>The limit in the unit of the measurement.</summary>
    public IQuantity Limit => QuantityUnit.Of(Allowance.Limit, Measured.Unit);

    /// <summary>Wear since new (the middle of its band), 0 or more for a worn part, in the unit of the measurement.</summary>
    public IQuantity Wear => QuantityUnit.Of(
        Allowance.Sense == LimitSense.Upper ? Measured.Number.Value - Allowance.New : Allowance.New - Measured.Number.Value,
        Measured.Unit);

    /// <summary>The size at a share of the wear allowance.</summary>
    /// <param name="whenNew">New size.</param>
    /// <param name="limit">Wear limit, of the same kind.</param>
    /// <param name="share">Share of the allowance: 0 is the new size, 1 the limit.</param>
    /// <returns>The size, in the unit of the new size.</returns>
    /// <exception cref="ArgumentException">Kinds of quantity are mixed.</exception>
    public static IQuantity SizeAt(IQuantity whenNew, IQuantity limit, double share)
    {
        ArgumentNullException.ThrowIfNull(whenNew);
        ArgumentNullException.ThrowIfNull(limit);
        var (from, to) = (whenNew.In(whenNew.Unit), limit.In(whenNew.Unit));
        return QuantityUnit.Of(from + (share * (to - from)), whenNew.Unit);
    }

    /// <summary>Compares a measurement with new and limit.</summary>
    /// <param name="measured">The measurement.</param>
    /// <param name="newLow">Least value of a new part.</param>
    /// <param name="newHigh">Greatest value of a new part; the same where one value is stated.</param>
    /// <param name="limit">The wear limit; above new for an upper limit, below it for a lower one.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentException">Kinds of quantity are mixed, or the limit lies in the band of new.</exception>
    public static PartWear Of(MeasuredQuantity measured, IQuantity newLow, IQuantity newHigh, IQuantity limit)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(newLow);
        ArgumentNullException.ThrowIfNull(newHigh);
        ArgumentNullException.ThrowIfNull(limit);
        var unit = measured.Unit;
        return new PartWear(measured, new WearAllowance(newLow.In(unit), newHigh.In(unit), limit.In(unit)));
    }
}
