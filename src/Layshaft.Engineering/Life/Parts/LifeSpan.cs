namespace Layshaft.Engineering.Life;

/// <summary>One stay of a part in one unit.</summary>
/// <param name="Unit">Serial number of the unit.</param>
/// <param name="From">Date of the job that fitted it.</param>
/// <param name="To">Date of the job that took it out, or of the last one that knows the unit's use.</param>
/// <param name="UseAtStart">The unit's use when it was fitted.</param>
/// <param name="UseAtEnd">The unit's use at the end of the stay; the same measure, not less.</param>
public sealed record LifeSpan(string Unit, DateOnly From, DateOnly To, Use UseAtStart, Use UseAtEnd)
{
    /// <summary>What the part ran in this stay.</summary>
    public Use Ran => UseAtEnd with { Amount = UseAtEnd.Amount - UseAtStart.Amount };
}
