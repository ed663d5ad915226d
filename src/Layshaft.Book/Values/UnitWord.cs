namespace Layshaft.Book.Values;

/// <summary>A unit as people write it.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="Word">The spelling, exactly (case counts: mm is not Mm).</param>
/// <param name="Make">Makes the quantity from a number in this unit.</param>
public sealed record UnitWord<T>(string Word, Func<double, T> Make);
