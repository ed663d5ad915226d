namespace Layshaft.Engineering.Life;

/// <summary>Why a part's life is not in a sample.</summary>
public enum LeftOutReason
{
    /// <summary>Its use before it was first seen is unknown.</summary>
    StartUnknown,

    /// <summary>It ran in more than one measure, so no single figure is its life.</summary>
    MixedMeasures,

    /// <summary>It ran in another measure than the one asked for.</summary>
    OtherMeasure,

    /// <summary>It has not run yet.</summary>
    NotRunYet,

    /// <summary>It has run, but nobody has looked at it since it was fitted.</summary>
    NotInspected,

    /// <summary>A contradiction touches it.</summary>
    Doubtful,
}

/// <summary>A life that is not in a sample.</summary>
/// <param name="Life">The life.</param>
/// <param name="Reason">Why it was left out.</param>
public sealed record LeftOutLife(LifeTotal Life, LeftOutReason Reason);

/// <summary>Part lives gathered for statistics, with those left out and why.</summary>
/// <param name="Sample">The lives that count.</param>
/// <param name="LeftOut">The lives that do not.</param>
public sealed record LifeSampling(LifeSample Sample, IReadOnlyList<LeftOutLife> LeftOut)
{
    /// <summary>Gathers the lives of one kind of part.</summary>
    /// <param name="lives">The lives, of one kind of part.</param>
    /// <param name="measure">The measure that counts.</param>
    /// <returns>The sample and what was left out.</returns>
    public static LifeSampling Of(IEnumerable<LifeTotal> lives, UseMeasure measure)
    {
        ArgumentNullException.ThrowIfNull(lives);
        var counted = new List<ObservedLife>();
        var leftOut = new List<LeftOutLife>();
        foreach (var life in lives)
        {
            if (ReasonAgainst(life, measure) is { } reason)
            {
                leftOut.Add(new LeftOutLife(life, reason));
            }
            else
            {
                counted.Add(life.Seen!.Value);
            }
        }

        return new LifeSampling(LifeSample.Of(measure, counted), leftOut);
    }

    private static LeftOutReason? ReasonAgainst(LifeTotal life, UseMeasure measure)
    {
        if (life.IsDoubtful)
        {
            return LeftOutReason.Doubtful;
        }

        if (!life.IsWhole)
        {
            return LeftOutReason.StartUnknown;
        }

        var total = life.Total;
        if (Enum.GetValues<UseMeasure>().Count(candidate => total.In(candidate) > 0) > 1)
        {
            return LeftOutReason.MixedMeasures;
        }

        return total.In(measure) switch
        {
            > 0 => life.Seen is null ? LeftOutReason.NotInspected : null,
            null => total.Measures.Count == 0 ? LeftOutReason.NotRunYet : LeftOutReason.OtherMeasure,
            _ => LeftOutReason.NotRunYet,
        };
    }
}
