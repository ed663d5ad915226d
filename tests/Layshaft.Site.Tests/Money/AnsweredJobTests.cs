using Layshaft.Book.Problems;
using Layshaft.Site.Tests.Seasons;

namespace Layshaft.Site.Tests.Money;

/// <summary>
/// Nothing about money, authority or a safety step passes in silence: each contradiction of a finished job is reported, and
/// its written reason, or the missing answer, takes it away.
/// </summary>
public sealed class AnsweredJobTests
{
    private const string Path = "jobs/2026/0010/job.yaml";

    private const string Sound = """
        unit: b
        received: 2026-02-01
        use: 35 h
        complaint: Slow into second.
        verdict: Sound.
        findings:
          - { part: ring-12, grade: renew }
        estimate:
          sent: 2026-02-02
          lines:
            - { id: rebuild, work: Strip and rebuild, hours: 10 }
            - { part: ring-12, if_left: It rounds further. }
            - { part: ring-34, price: 120, need: should, if_left: It wears on. }
            - { part: seal, price: 5, need: can wait, if_left: It weeps. }
        go_ahead: { answer: must only, on: 2026-02-03 }
        renewed:
          - { part: ring-12 }
        build_list: { done: [wash, close], signed_by: amy }
        finished: 2026-02-10

        """;

    private const string Final = """
        final:
          - { work: Strip and rebuild, hours: 10 }
          - { part: ring-12 }

        """;

    private const string Supplement = """
        supplements:
          - sent: 2026-02-05
            reason: The fork is bent.
            lines: [{ part: front, price: 40, if_left: It gets loud. }]

        """;

    private static readonly string Gearbox = SmallBook.Gearbox + "\nbuild:\n  - { id: wash, do: Wash it. }\n  - { id: close, do: Close it. }\n";

    private static readonly string Before = SmallBook.Job("b", "2025-12-01", "30 h", "complaint: Nothing.\nverdict: Sound.\nbuild_list: { done: [wash, close], signed_by: amy }\nfinished: 2025-12-10\n");

    private static readonly string UnitB = SmallBook.UnitB.Replace("gearbox: four", "gearbox: built", StringComparison.Ordinal);

    [Fact]
    public void A_job_whose_work_was_approved_done_and_charged_has_nothing_to_answer()
    {
        Assert.Empty(Problems(Sound));
        Assert.Empty(Problems(Sound + Final));
    }

    [Theory]
    [InlineData("renewed-though-declined", "  - { part: ring-12 }", "  - { part: ring-12 }\n  - { part: ring-34 }", "ring-34 }\nbuild", "ring-34, unapproved: It broke on the press. }\nbuild")]
    [InlineData("renewed-though-declined", "must only", "no", "- { part: ring-12 }", "- { part: ring-12, unapproved: Agreed by telephone. }")]
    [InlineData("renewed-though-declined", "must only, on", "must and should, on", "", "", "  - { part: ring-12 }", "  - { part: ring-12 }\n  - { part: ring-34 }\n  - { part: seal }")]
    [InlineData("renew-not-answered", "  - { part: ring-12, grade: renew }", "  - { part: ring-12, grade: renew }\n  - { part: front, grade: renew }", "front, grade: renew }", "front, grade: renew, left_in: The maker has none before May. }")]
    [InlineData("step-not-done", "[wash, close]", "[wash]", "signed_by", "left_out: [{ step: close, reason: The owner closes it. }], signed_by")]
    [InlineData("step-not-done", "build_list: { done: [wash, close], signed_by: amy }\n", "", "finished:", "build_list: { done: [wash, close], signed_by: amy }\nfinished:")]
    [InlineData("list-not-signed", ", signed_by: amy", "", "close]", "close], signed_by: amy")]
    [InlineData("charged-not-fitted", "  - { part: ring-12 }\nbuild", "  - { part: seal, unapproved: Old one torn. }\nbuild", "- { part: seal, un", "- { part: ring-12 }\n  - { part: seal, un")]
    public void What_was_renewed_signed_or_graded_must_fit_the_answer(string code, string before, string after, string unanswered, string answered, string then = "", string thenAfter = "")
    {
        var text = Changed(Sound, before, after);
        text = then.Length > 0 ? Changed(text, then, thenAfter) : text;
        Assert.Contains(Problems(text), p => p.Code == code && p.Severity == Severity.Stops);
        if (unanswered.Length > 0)
        {
            Assert.DoesNotContain(Problems(Changed(text, unanswered, answered)), p => p.Code == code);
        }
    }

    [Theory]
    [InlineData("charged-not-approved", "- { part: ring-12 }\n  - { part: ring-34, price: 120 }", "price: 120, reason: Agreed by telephone. }")]
    [InlineData("charged-not-fitted", "- { part: ring-12 }\n  - { part: front, price: 40 }", "price: 40, reason: A spare to take along. }")]
    [InlineData("charged-twice", "- { part: ring-12 }\n  - { part: ring-12 }", "ring-12 }\n  - { part: ring-12, reason: One as a spare. }")]
    [InlineData("charged-not-approved", "- { part: ring-12, quantity: 2 }", "quantity: 2, reason: One as a spare. }")]
    [InlineData("charged-more-than-approved", "- { part: ring-12, price: 130 }", "price: 130, reason: The maker raised the price. }")]
    [InlineData("charged-more-than-approved", "- { part: ring-12 }\n  - { work: Dress the dogs, hours: 1.5 }", "hours: 1.5, reason: Agreed by telephone. }")]
    public void What_is_charged_must_be_approved_and_fitted(string code, string charged, string answered)
    {
        var text = Changed(Sound + Final, "  - { part: ring-12 }\n", $"  {charged}\n", last: true);
        Assert.Contains(Problems(text), p => p.Code == code && p.Severity == Severity.Stops);
        var end = answered[..(answered.IndexOf(", reason", StringComparison.Ordinal))] + " }";
        Assert.DoesNotContain(Problems(Changed(text, end, answered, last: true)), p => p.Severity == Severity.Stops);
    }

    [Fact]
    public void An_answer_to_lines_that_follow_from_the_grades_is_held_by_its_total()
    {
        var start = Sound.IndexOf("  lines:", StringComparison.Ordinal);
        var derived = Sound.Remove(start, Sound.IndexOf("go_ahead:", StringComparison.Ordinal) - start).Replace("renewed:\n  - { part: ring-12 }\n", "", StringComparison.Ordinal);
        var missing = Assert.Single(Problems(derived));
        Assert.Equal(("total-not-written", Severity.Stops, 9), (missing.Code, missing.Severity, missing.Place.Line));
        Assert.Contains("total: 100.00", missing.Remedy, StringComparison.Ordinal);
        Assert.Equal(Severity.Notice, Problems(derived.Replace("go_ahead: { answer: must only, on: 2026-02-03 }\n", "", StringComparison.Ordinal).Replace("finished: 2026-02-10\n", "", StringComparison.Ordinal)).Single(p => p.Code == "total-not-written").Severity);

        var sent = Changed(derived, "sent: 2026-02-02\n", "sent: 2026-02-02\n  total: 100.00\n");
        Assert.Empty(Problems(sent));
        var later = Changed(sent, "grade: renew }", "grade: renew }\n  - { part: seal, grade: renew, left_in: x }");
        Assert.Contains(Problems(later), p => p.Code == "total-changed" || p.Code == "no-price");
        Assert.Contains(Problems(Changed(sent, "100.00", "99.00")), p => p.Code == "total-changed" && p.Severity == Severity.Stops);
    }

    [Fact]
    public void A_reason_on_one_line_does_not_cover_what_another_costs_more()
    {
        var text = Changed(Sound + Final, "hours: 10 }\n  - { part: ring-12 }\n", "hours: 11 }\n  - { part: ring-12, price: 130, reason: The maker raised the price. }\n");
        Assert.Contains(Problems(text), p => p.Code == "charged-more-than-approved");
    }

    [Fact]
    public void A_part_that_was_never_offered_nor_charged_is_worth_a_note()
    {
        var text = Changed(Sound, "  - { part: ring-12 }\nbuild", "  - { part: ring-12 }\n  - { part: front }\nbuild");
        var note = Assert.Single(Problems(text));
        Assert.Equal(("renewed-not-offered", Severity.Notice, 18), (note.Code, note.Severity, note.Place.Line));
        Assert.Empty(Problems(Changed(text, "{ part: front }", "{ part: front, unapproved: A gift of the maker. }")));
    }

    [Fact]
    public void Charging_without_any_estimate_is_worth_a_note()
    {
        var start = Sound.IndexOf("estimate:", StringComparison.Ordinal);
        var text = Sound.Remove(start, Sound.IndexOf("renewed:", StringComparison.Ordinal) - start) + Final;
        Assert.Equal(["charged-without-estimate"], Problems(text).Select(p => p.Code));
        Assert.Empty(Problems(text.Replace("hours: 10 }", "hours: 10, reason: Ordered by post. }", StringComparison.Ordinal).Replace("  - { part: ring-12 }\n", "  - { part: ring-12, reason: Ordered by post. }\n", StringComparison.Ordinal).Replace("renewed:\n  - { part: ring-12, reason: Ordered by post. }", "renewed:\n  - { part: ring-12 }", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_part_measured_past_its_limit_must_be_answered_too()
    {
        var text = Changed(Sound, "{ part: ring-12, grade: renew }", "{ part: ring-34, measurements: [{ measure: radius-3, instrument: scope, readings: [1.50 mm] }] }");
        Assert.Empty(Problems(text)); // declined: the report lists it
        Assert.Contains(Problems(Changed(text, "ring-34, price: 120", "front, price: 120")), p => p.Code == "renew-not-answered");
    }

    [Fact]
    public void A_declined_line_without_its_consequence_is_worth_a_note() =>
        Assert.Equal(["no-if-left"], Problems(Changed(Sound, ", if_left: It weeps.", string.Empty)).Select(p => p.Code));

    [Fact]
    public void A_finished_job_has_an_answer_to_its_estimate_and_to_each_supplement()
    {
        var unanswered = Changed(Sound, "go_ahead: { answer: must only, on: 2026-02-03 }\n", string.Empty);
        Assert.Contains(Problems(unanswered), p => p.Code == "finished-without-answer");
        var supplement = Sound + Supplement;
        Assert.Contains(Problems(supplement), p => p.Code == "finished-without-answer" && p.Message.Contains("supplement 1", StringComparison.Ordinal));
        Assert.Empty(Problems(supplement + "    go_ahead: { answer: no, on: 2026-02-06 }\n"));
    }

    [Fact]
    public void A_part_of_a_supplement_is_not_renewed_before_its_answer()
    {
        var open = Changed(Changed(Sound, "finished: 2026-02-10\n", string.Empty), "  - { part: ring-12 }\nbuild", "  - { part: ring-12 }\n  - { part: front }\nbuild") + Supplement;
        Assert.Contains(Problems(open), p => p.Code == "renewed-before-answer" && p.Severity == Severity.Stops);
        Assert.Empty(Problems(open + "    go_ahead: { answer: yes, on: 2026-02-06 }\n"));
    }

    [Fact]
    public void A_refusal_costs_no_more_than_the_estimate_said()
    {
        var refused = Changed(Changed(Changed(Sound, "finished: 2026-02-10\n", string.Empty), "must only", "no"), "renewed:\n  - { part: ring-12 }\n", string.Empty);
        Assert.Empty(Problems(refused));
        var charged = refused + "final: [{ work: Inspection, price: 90 }]\n";
        Assert.Contains(Problems(charged), p => p.Code == "charged-after-refusal" && p.Severity == Severity.Stops);
        Assert.Empty(Problems(Changed(charged, "  sent: 2026-02-02\n", "  sent: 2026-02-02\n  if_refused: 90\n")));
        Assert.Contains(Problems(charged.Replace("work: Inspection", "part: seal", StringComparison.Ordinal)), p => p.Code == "charged-after-refusal");
    }

    [Theory]
    [InlineData("{ answer: by line, on: 2026-02-03 }", "nothing-approved")]
    [InlineData("{ answer: by line, approved: [ring-21], on: 2026-02-03 }", "missing-reference")]
    [InlineData("{ answer: yes, approved: [ring-12], on: 2026-02-03 }", "approved-without-by-line")]
    public void An_answer_by_line_names_lines_of_the_estimate(string answer, string code) =>
        Assert.Contains(Problems(Changed(Sound, "{ answer: must only, on: 2026-02-03 }", answer)), p => p.Code == code && p.Severity == Severity.Stops);

    [Fact]
    public void An_answer_by_line_approves_the_named_lines_only()
    {
        var text = Changed(Sound, "{ answer: must only, on: 2026-02-03 }", "{ answer: by line, approved: [ring-12, rebuild], on: 2026-02-03 }");
        Assert.Empty(Problems(text));
        var job = SmallBook.Review(("gearboxes/built.yaml", Gearbox), ("units/b.yaml", UnitB), ("jobs/2025/0004/job.yaml", Before), (Path, text)).Assessment!.Jobs["0010"].Job;
        Assert.Equal(["Strip and rebuild", "ring-12"], job.Approved.Select(l => l.What));
        Assert.Equal(["ring-34", "seal"], job.Offers.Single().Declined.Select(l => l.What));
    }

    private static Problem[] Problems(string text)
    {
        var all = SmallBook.Review(("gearboxes/built.yaml", Gearbox), ("units/b.yaml", UnitB), ("jobs/2025/0004/job.yaml", Before), (Path, text)).Problems;
        Assert.DoesNotContain(all, p => p.Place.File != Path && p.Severity == Severity.Stops);
        return [.. all.Where(p => p.Place.File == Path)];
    }

    private static string Changed(string text, string before, string after, bool last = false)
    {
        var at = last ? text.LastIndexOf(before, StringComparison.Ordinal) : text.IndexOf(before, StringComparison.Ordinal);
        Assert.True(at >= 0, $"There is no '{before}' in:\n{text}");
        return text[..at] + after + text[(at + before.Length)..];
    }
}
