using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Pages;

namespace Layshaft.Site.Building;

/// <summary>Reads slices of a book whole and works them out. For many threads at once.</summary>
/// <param name="standing">The book without its jobs.</param>
/// <param name="gearing">The gearing of its cars and gearboxes.</param>
/// <param name="means">What pages are made with.</param>
/// <param name="logo">The shop's logo; null without one that can be shown.</param>
/// <param name="pictures">What is known of pictures.</param>
internal sealed class SliceReader(StandingBook standing, BookGearing gearing, SiteMeans means, UsablePicture? logo, FileCache pictures)
{
    /// <summary>Reads a slice.</summary>
    /// <param name="slice">Which.</param>
    /// <param name="problems">Receives what is wrong in it.</param>
    /// <returns>What its pages are composed from; null when something stops it.</returns>
    public Composition? Read(Slice slice, ProblemList problems)
    {
        if (standing.ReadAndCheck(slice.JobFiles, problems) is not { } jobs)
        {
            return null;
        }

        var assessment = BookAssessment.OfPart(slice.WithoutJobs with { Jobs = jobs }, gearing);
        foreach (var problem in assessment.Problems)
        {
            problems.Add(problem);
        }

        var usable = PictureInspection.OfJobs(jobs, standing.Files, pictures, problems);
        if (logo is not null)
        {
            usable[logo.Path] = logo;
        }

        var composition = means.Compose(assessment, new PictureIndex(usable), WrittenTexts.OfJobs(jobs, standing.Files, problems));
        return problems.HasStops ? null : composition;
    }

    /// <summary>Reads a slice again that was whole before.</summary>
    /// <param name="slice">Which.</param>
    /// <exception cref="BookChangedException">It is so no longer.</exception>
    public Composition ReadAgain(Slice slice) =>
        Read(slice, new ProblemList()) ?? throw new BookChangedException();
}
