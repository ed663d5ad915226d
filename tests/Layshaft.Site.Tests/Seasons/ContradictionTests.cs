using Layshaft.Book.Problems;

namespace Layshaft.Site.Tests.Seasons;

/// <summary>What does not fit together in the history of parts is a problem of the book, at its line.</summary>
public sealed class ContradictionTests
{
    private const string Third = "jobs/2025/0003/job.yaml";

    private static IReadOnlyList<Problem> Found(params (string Path, string Text)[] changes) =>
        [.. SmallBook.Review(changes).Problems.Where(p => p.Code == "part-history")];

    [Fact]
    public void The_usual_book_has_none() => Assert.Empty(Found());

    [Fact]
    public void A_serial_in_two_units_at_once_is_told_where_the_second_unit_names_it()
    {
        var problem = Assert.Single(Found(("units/b.yaml", SmallBook.UnitB.Replace("final_drive", "fitted:\n  - { part: ring-34, serial: R-34 }\nfinal_drive", StringComparison.Ordinal))));
        Assert.Equal(("units/b.yaml", 9), (problem.Place.File, problem.Place.Line));
        Assert.Equal(Severity.LeftOut, problem.Severity);
        Assert.Contains("while it is still in unit a", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_part_with_the_serial_of_an_old_one_is_told_at_the_serial()
    {
        var text = SmallBook.Job("a", "2025-11-01", "60 h", "complaint: x\nrenewed:\n  - part: ring-12\n    serial: R-12-new\n    old_serial: R-OTHER\n");
        var found = Found((Third, text));
        Assert.Contains(found, p => p.Place.Line == 8 && p.Message.Contains("R-OTHER", StringComparison.Ordinal));
        Assert.Contains(found, p => p.Place.Line == 7 && p.Message.Contains("an earlier entry has it", StringComparison.Ordinal));
    }

    [Fact]
    public void A_part_taken_from_a_unit_that_gave_it_away_before_is_told_at_the_donor()
    {
        var found = Found(
            ("jobs/2024/0002/job.yaml", SmallBook.Job("a", "2024-11-01", "40 h", "complaint: x\nrenewed:\n  - part: front\n    from: b\n")),
            (Third, SmallBook.Job("a", "2025-11-01", "60 h", "complaint: x\nrenewed:\n  - part: front\n    from: b\n")));
        Assert.Contains(found, p => p.Place.File == Third && p.Place.Line == 7 && p.Message.Contains("no entry fitted it", StringComparison.Ordinal));
    }

    [Fact]
    public void Hours_that_do_not_add_up_to_what_a_moved_part_is_said_to_bring_are_told()
    {
        var found = Found((Third, SmallBook.Job("b", "2025-11-01", "25 h", "complaint: x\nrenewed:\n  - { part: ring-34, serial: R-34, from: a, use: 12 h }\n")), ("jobs/2025/0004/job.yaml", SmallBook.Job("b", "2025-12-01", "30 h", "complaint: y\n")));
        Assert.Contains(found, p => p.Place.File == Third && p.Place.Line == 6 && p.Message.Contains("has a written usage of 12 h, but the entries add up to 40 h", StringComparison.Ordinal));
    }

    [Fact]
    public void Use_that_goes_back_is_told_at_the_job()
    {
        var problems = SmallBook.Review((Third, SmallBook.Job("a", "2025-11-01", "30 h", "complaint: x\n"))).Problems;
        Assert.Contains(problems, p => p.Place is { File: Third, Line: 3 } && p.Code == "use-goes-back");
    }
}
