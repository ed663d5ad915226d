using Layshaft.Book.Records;
using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Lives;
using EngineUse = Layshaft.Engineering.Life.Use;

namespace Layshaft.Site.Pages.ShopPages.Tallies;

/// <summary>What a unit ran in one season.</summary>
/// <param name="Season">The season.</param>
/// <param name="Amount">How much, in the measure of the unit.</param>
public sealed record SeasonRun(Season Season, double Amount);

/// <summary>What the shop's pages say of one unit.</summary>
/// <param name="Unit">Its id.</param>
/// <param name="Use">What it had run at the last day that the book knows of it.</param>
/// <param name="Terms">What is set for it.</param>
/// <param name="Look">The part that its wear says to look at first; null where no wear says it.</param>
/// <param name="Seasons">What it ran, season by season.</param>
/// <param name="LastPages">For each owner in turn the number of his last own job that has a page; null where none has.</param>
public sealed record UnitTally(
    string Unit,
    EngineUse Use,
    IReadOnlyList<ServiceTerm> Terms,
    LookTally? Look,
    IReadOnlyList<SeasonRun> Seasons,
    IReadOnlyList<string?> LastPages)
{
    /// <summary>What the shop's pages say of a unit.</summary>
    /// <param name="assessment">The book, or a part of it that holds all that may touch the unit.</param>
    /// <param name="unit">The unit.</param>
    public static UnitTally Of(BookAssessment assessment, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        ArgumentNullException.ThrowIfNull(unit);
        var (book, lives) = (assessment.Book, assessment.Lives);
        return new UnitTally(
            unit.Id,
            lives.LastUse(unit).Use,
            ServiceAssessment.Terms(unit, lives),
            LookTally.Of(assessment, unit),
            [.. lives.UseOf(unit).Seasons.Select(s => new SeasonRun(s.Season, s.Amount))],
            [.. OwnerView.Of(book, unit).Select(v => v.Jobs.LastOrDefault(j => v.IsOwn(j) && JobPages.Exists(v, j))?.Number)]);
    }
}
