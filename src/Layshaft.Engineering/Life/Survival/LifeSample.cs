namespace Layshaft.Engineering.Life;

/// <summary>Lives of one kind of part over the shop, all counted in one measure.</summary>
public sealed record LifeSample
{
    private LifeSample(UseMeasure measure, IReadOnlyList<ObservedLife> lives)
    {
        Measure = measure;
        Lives = lives;
        Failures = lives.Count(life => life.Failed);
        SeenTo = lives.Select(life => life.SeenTo).DefaultIfEmpty(0).Max();
    }

    /// <summary>What the lives are counted in.</summary>
    public UseMeasure Measure { get; }

    /// <summary>The lives, shortest first.</summary>
    public IReadOnlyList<ObservedLife> Lives { get; }

    /// <summary>Number of lives that ended in failure.</summary>
    public int Failures { get; }

    /// <summary>The greatest usage at which anything is known of any part; 0 for an empty sample.</summary>
    public double SeenTo { get; }

    /// <summary>Puts lives into a sample.</summary>
    /// <param name="measure">What they are counted in.</param>
    /// <param name="lives">The lives, in any order.</param>
    /// <returns>The sample.</returns>
    /// <exception cref="ArgumentException">
    /// A life that is not finite, is below 0, was found worn before it was last good, or was not watched at all.
    /// </exception>
    public static LifeSample Of(UseMeasure measure, IEnumerable<ObservedLife> lives)
    {
        ArgumentNullException.ThrowIfNull(lives);
        ObservedLife[] sorted =
        [
            .. lives.OrderBy(life => life.SeenTo).ThenBy(life => !life.Failed).ThenBy(life => life.LastGood).ThenBy(life => life.Entry),
        ];
        if (sorted.Any(life => !life.IsValid))
        {
            throw new ArgumentException("A life runs from its entry over the usage at which it was last good to the one at which it was found worn, all finite.", nameof(lives));
        }

        return new LifeSample(measure, sorted);
    }
}
