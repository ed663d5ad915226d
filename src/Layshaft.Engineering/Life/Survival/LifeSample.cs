namespace Layshaft.Engineering.Life;

/// <summary>Lives of one kind of part over the shop, all counted in one measure.</summary>
public sealed record LifeSample
{
    private LifeSample(UseMeasure measure, IReadOnlyList<ObservedLife> lives)
    {
        Measure = measure;
        Lives = lives;
    }

    /// <summary>What the lives are counted in.</summary>
    public UseMeasure Measure { get; }

    /// <summary>The lives, shortest first; at equal use failures come before units still good, which were at risk there too.</summary>
    public IReadOnlyList<ObservedLife> Lives { get; }

    /// <summary>Number of lives that ended in failure.</summary>
    public int Failures => Lives.Count(life => life.Failed);

    /// <summary>Puts lives into a sample.</summary>
    /// <param name="measure">What they are counted in.</param>
    /// <param name="lives">The lives, in any order.</param>
    /// <returns>The sample.</returns>
    /// <exception cref="ArgumentException">A life is not a finite number greater than 0.</exception>
    public static LifeSample Of(UseMeasure measure, IEnumerable<ObservedLife> lives)
    {
        ArgumentNullException.ThrowIfNull(lives);
        ObservedLife[] sorted = [.. lives.OrderBy(life => life.Amount).ThenByDescending(life => life.Failed)];
        if (sorted.Any(life => !(life.Amount > 0 && double.IsFinite(life.Amount))))
        {
            throw new ArgumentException("Every life must be a finite amount greater than 0.", nameof(lives));
        }

        return new LifeSample(measure, sorted);
    }
}
