using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Lives;
using EngineUse = Layshaft.Engineering.Life.Use;

namespace Layshaft.Site.Pages.ShopPages.Tallies;

/// <summary>The part of a unit that may reach its limit soonest by its wear.</summary>
/// <param name="Part">The part.</param>
/// <param name="Measure">The size that wears.</param>
/// <param name="Within">Use of the unit within which to look again.</param>
/// <param name="Limit">Use of the unit after which the trend reaches the limit.</param>
/// <param name="By">The day by which to look; null where the unit's use over time is not known.</param>
public sealed record LookTally(string Part, string Measure, EngineUse Within, EngineUse Limit, DateOnly? By)
{
    /// <summary>The first part to look at; null where no wear says it.</summary>
    /// <param name="assessment">The book, or a part of it that holds all that may touch the unit.</param>
    /// <param name="unit">The unit.</param>
    public static LookTally? Of(BookAssessment assessment, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return UnitTrends.Of(unit, assessment.Lives, assessment.Jobs).Where(t => t.Line is not null).OrderBy(t => t.Line!.LookAgainWithin).FirstOrDefault() is { } first
            ? new LookTally(
                first.Part.Id,
                first.Measure.Id,
                first.UseNow with { Amount = first.Line!.LookAgainWithin },
                first.UseNow with { Amount = first.Line.Remaining },
                first.LookAgain!.EarliestBy ?? first.LookAgain.By)
            : null;
    }
}
