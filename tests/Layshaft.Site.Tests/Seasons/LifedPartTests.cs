using Layshaft.Site.Assessment.Lives;

namespace Layshaft.Site.Tests.Seasons;

/// <summary>Parts with a service life on reports, histories and estimates, and the decision that refitting one past it needs.</summary>
public sealed class LifedPartTests
{
    // Unit A's third and fourth ring is fitted from new and lasts 58 h; job 0003 is at 60 h.
    private static readonly string s_jobAt60 = SmallBook.Files()["jobs/2025/0003/job.yaml"];

    [Fact]
    public void A_part_past_its_service_life_that_is_refitted_without_a_decision_is_noted()
    {
        var noted = Notes(Stripped());

        var problem = Assert.Single(noted);
        Assert.Equal("jobs/2025/0003/job.yaml", problem.Place.File);
        Assert.Contains("'Dog ring 3 and 4' had run 60 of its service life of 58 h", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_written_decision_a_renewal_or_an_unopened_box_answers_it()
    {
        Assert.Empty(Notes(Stripped().Replace("  - part: ring-34\n", "  - part: ring-34\n    left_in: Crack tested and good for one more race.\n", StringComparison.Ordinal)));
        Assert.Empty(Notes(Stripped() + "renewed: [{ part: ring-34, serial: N }]\n"));
        Assert.Empty(Notes(s_jobAt60));
        Assert.Empty(Notes(Stripped().Replace("use: 60 h", "use: 57 h", StringComparison.Ordinal)));
    }

    [Fact]
    public void Hours_count_from_the_renewal()
    {
        var assessment = SmallBook.Assess(("jobs/2025/0003/job.yaml", Stripped() + "renewed: [{ part: ring-34, serial: N, use: 12 h }]\n"));
        var job = assessment.Book.Jobs.Single(j => j.Number == "0003");

        Assert.Equal([60.0], LifedPart.AsFound(job, assessment.Lives).Select(p => p.Ran.Amount));
        Assert.Equal([12.0], LifedPart.AsLeft(job, assessment.Lives).Select(p => p.Ran.Amount));
    }

    [Fact]
    public void The_report_the_history_and_the_estimate_state_it()
    {
        var site = SmallBook.Publish(
            ("jobs/2025/0003/job.yaml", Stripped()),
            ("jobs/2026/0005/job.yaml", SmallBook.Job("a", "2026-03-01", "70 h", "complaint: x\nstripped: 2026-03-02\nestimate: { sent: 2026-03-03, lines: [{ part: ring-34, price: 10 }] }\n" + SmallBook.Rings(0.4, 0.4, 0.9, 0.9))));

        Assert.Contains("Past its service life, refitted: Dog ring 3 and 4 (60 h of 58 h).", Text(site["customers/key-a-1/0003/index.html"]), StringComparison.Ordinal);
        Assert.Contains("Past its service life: Dog ring 3 and 4 (70 h of 58 h).", Text(site["customers/key-a-1/0005/index.html"]), StringComparison.Ordinal);
        Assert.Contains("Service life", Text(site["customers/key-a-1/index.html"]), StringComparison.Ordinal);
        Assert.Contains("Service life ends next after a further 18 h (58 h in total): Dog ring 3 and 4.", Text(site["customers/key-a-1/0002/index.html"]), StringComparison.Ordinal);
    }

    private static string Stripped() => s_jobAt60.Replace("finished: 2025-11-10\n", "stripped: 2025-11-02\nfinished: 2025-11-10\n", StringComparison.Ordinal);

    private static Book.Problems.Problem[] Notes(string job) =>
        [.. SmallBook.Review(("jobs/2025/0003/job.yaml", job)).Problems.Where(p => p.Code == "past-service-life")];

    private static string Text(string html) => html.Replace('\u202F', ' ').Replace('\u00A0', ' ').Replace("\n", " ", StringComparison.Ordinal);
}
