namespace Layshaft.Engineering.Gearing;

/// <summary>The pair of gears in each position of a gearbox whose pairs can be changed one by one, first gear first. Immutable; equal if every pair is.</summary>
public sealed class GearPairs : IEquatable<GearPairs>
{
    /// <summary>Takes the pairs over.</summary>
    /// <param name="pairs">One for each gear, first gear first, ratios falling.</param>
    /// <exception cref="ArgumentException">There is no pair, or a gear is not longer than the one before.</exception>
    public GearPairs(params IReadOnlyList<ToothPair> pairs)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        if (pairs.Count == 0 || Enumerable.Range(1, pairs.Count - 1).Any(i => pairs[i].Ratio >= pairs[i - 1].Ratio))
        {
            throw new ArgumentException("The ratios must fall from gear to gear.", nameof(pairs));
        }

        Pairs = [.. pairs];
    }

    /// <summary>One pair for each gear, first gear first.</summary>
    public IReadOnlyList<ToothPair> Pairs { get; }

    /// <inheritdoc/>
    public bool Equals(GearPairs? other) => other is not null && Pairs.SequenceEqual(other.Pairs);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as GearPairs);

    /// <inheritdoc/>
    public override int GetHashCode() => Pairs.Aggregate(Pairs.Count, HashCode.Combine);

    /// <summary>The pairs as driven/driver.</summary>
    public override string ToString() => string.Join(", ", Pairs);
}
