namespace Layshaft.Engineering.Measurement;

/// <summary>The grade of a part: the one worked out, and beside it the one a technician put in its place, if any.</summary>
/// <param name="Calculated">The grade that the policy gives.</param>
/// <param name="Reason">Why.</param>
public sealed record PartGrade(Grade Calculated, GradeReason Reason)
{
    /// <summary>Whether the policy asks for another measurement before the part is condemned.</summary>
    public bool MeasureAgain { get; init; }

    /// <summary>The grade that replaces the calculated one, with its reason; <see langword="null"/> where none does.</summary>
    public GradeOverruling? Overruling { get; private init; }

    /// <summary>The grade that counts.</summary>
    public Grade Standing => Overruling?.Grade ?? Calculated;

    /// <summary>Puts another grade in place of the calculated one; both are kept.</summary>
    /// <param name="grade">The technician's grade; it may confirm the calculated one.</param>
    /// <param name="reason">Why, in words that a customer can read.</param>
    /// <returns>The part grade with both.</returns>
    /// <exception cref="ArgumentException">No reason is given.</exception>
    public PartGrade Overruled(Grade grade, string reason)
    {
        if (string.IsNullOrWhiteSpace(reason))
        {
            throw new ArgumentException("overruling a grade needs a reason", nameof(reason));
        }

        return this with { Overruling = new GradeOverruling(grade, reason.Trim()) };
    }

    /// <summary>The worst of a part's features decides about the part.</summary>
    /// <param name="features">One or more grades of the same part.</param>
    /// <returns>The first of those with the worst standing grade.</returns>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static PartGrade Worst(IEnumerable<PartGrade> features) =>
        features.MaxBy(feature => feature.Standing) ?? throw new ArgumentException("there is no grade to choose from", nameof(features));
}
