using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Report;

namespace Layshaft.Site.Tests.Seasons;

/// <summary>What a report tells the driver, and what it does not.</summary>
public sealed class DrivingAdviceTests
{
    [Fact]
    public void Engagement_at_rest_comes_first_and_apart_from_the_gears_shifted_on_the_move()
    {
        var signs = Signs();

        Assert.Equal(["Engaged at rest: reverse", "Engaged on the move: second gear, third gear, fourth gear"], signs.Select(s => s.Heading));
        Assert.Contains("reverse 106", Plain(signs[0].Evidence[0]), StringComparison.Ordinal);
        Assert.Contains("ease the clutch until they fall in", Html(signs[0]), StringComparison.Ordinal);
        Assert.Contains("dragging clutch", signs[0].Causes, StringComparison.Ordinal);
    }

    [Fact]
    public void Higher_gears_that_are_good_are_explained_by_their_steps_and_sound_wheels_named()
    {
        var evidence = Signs()[1].Evidence;

        Assert.Contains("Less worn: fifth gear, sixth gear. Their ratio steps are smaller, so their dogs meet at a smaller speed difference.", evidence);
        Assert.Contains("The gears themselves are sound; the wear is on the rings.", evidence);
    }

    [Theory]
    [InlineData(null, "No side was recorded", "Shifting up")]
    [InlineData("drive", "on an upshift", "For each upshift")]
    [InlineData("coast", "on a downshift", "before you shift down")]
    public void The_recorded_side_tells_upshifts_from_downshifts(string? side, string evidence, string words)
    {
        var sign = Signs(side)[1];

        Assert.Contains(sign.Evidence, e => e.Contains(evidence, StringComparison.Ordinal));
        Assert.Contains(words, Html(sign), StringComparison.Ordinal);
        Assert.Contains("Other possible causes", sign.Causes, StringComparison.Ordinal);
    }

    [Fact]
    public void A_worn_fork_of_one_of_the_gears_is_named_as_a_possible_cause()
    {
        Assert.Contains("Also worn, and a possible cause: Second and third fork.", Signs(more: "- { part: fork, grade: watch }")[1].Evidence);
        Assert.DoesNotContain(Signs(more: "- { part: fork, grade: reuse }")[1].Evidence, e => e.StartsWith("Also worn", StringComparison.Ordinal));
    }

    [Fact]
    public void A_worn_back_cut_is_told_with_its_sign()
    {
        var files = DrivingBook.Files();
        files[^1].Text = files[^1].Text.Replace("0.94 mm, 0.94 mm] }\n", "0.94 mm, 0.94 mm] }\n      - { measure: hook, readings: [-0.5°] }\n", StringComparison.Ordinal);
        var sign = Signs(files)[^1];

        Assert.Equal("Back-cut worn: third gear", sign.Heading);
        Assert.Contains("-0.5", sign.Evidence[0].Replace('\u2212', '-'), StringComparison.Ordinal);
        Assert.Contains("a negative one pushes them apart", Html(sign), StringComparison.Ordinal);
    }

    [Fact]
    public void Wear_within_the_uncertainty_of_the_watch_level_blames_nobody()
    {
        // 0.84 mm is the watch level of 60 %; the microscope is good to 0.02 mm.
        var files = DrivingBook.Files();
        foreach (var size in new[] { "1.25 mm, 1.26 mm", "0.95 mm, 0.94 mm", "0.94 mm, 0.94 mm", "0.95 mm, 0.96 mm" })
        {
            files[^1].Text = files[^1].Text.Replace(size, "0.85 mm, 0.85 mm", StringComparison.Ordinal);
        }

        Assert.Null(Section(files));
    }

    private static IReadOnlyList<DrivingSignView> Signs(string? side = null, string? more = null) => Signs(DrivingBook.Files(side, more));

    private static IReadOnlyList<DrivingSignView> Signs((string, string)[] files) => Section(files)!.Signs;

    private static DrivingSection? Section((string, string)[] files)
    {
        var review = SmallBook.Review(files);
        Assert.True(review.Assessment is not null, string.Join("\n", review.Problems));
        var composition = SmallBook.Compose(review);
        var view = OwnerView.Of(composition.Book, composition.Book.Units["c"]).Single();
        return (DrivingSection?)DrivingSection.Compose(new ReportContext(composition, view, composition.Assessment.Jobs["0009"]))?.Model;
    }

    private static string Html(DrivingSignView sign) => string.Join(" ", sign.Words).Replace("\n", " ", StringComparison.Ordinal);

    private static string Plain(string text) => text.Replace('\u202F', ' ').Replace('\u00A0', ' ');
}
