using System.Runtime.CompilerServices;

namespace Layshaft.Book.Records;

/// <summary>Everything that a shop's book says.</summary>
/// <param name="Shop">The shop.</param>
/// <param name="Customers">By id.</param>
/// <param name="Gearboxes">By id.</param>
/// <param name="Cars">By id.</param>
/// <param name="Venues">By id.</param>
/// <param name="Units">By id.</param>
/// <param name="Jobs">By day of receipt, then number.</param>
public sealed record ShopBook(
    Shop Shop,
    IReadOnlyDictionary<string, Customer> Customers,
    IReadOnlyDictionary<string, Gearbox> Gearboxes,
    IReadOnlyDictionary<string, Car> Cars,
    IReadOnlyDictionary<string, Venue> Venues,
    IReadOnlyDictionary<string, Unit> Units,
    IReadOnlyList<Job> Jobs)
{
    // Beside the records, so that it is no part of what makes two books equal.
    private static readonly ConditionalWeakTable<IReadOnlyList<Job>, ILookup<string, Job>> ByUnit = [];

    /// <summary>The jobs of a unit, earliest first.</summary>
    public IEnumerable<Job> JobsOf(string unit) => ByUnit.GetValue(Jobs, jobs => jobs.ToLookup(j => j.Unit, StringComparer.Ordinal))[unit];

    /// <summary>The type of a unit's gearbox.</summary>
    public Gearbox GearboxOf(Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return Gearboxes[unit.Gearbox];
    }
}
