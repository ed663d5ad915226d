using Layshaft.Book.Problems;
using Layshaft.Book.Records;

namespace Layshaft.Book.Tests;

/// <summary>Why a part was renewed, and when a unit was collected.</summary>
public class RenewalCheckTests
{
    [Theory]
    [InlineData("worn", RenewalCause.Worn)]
    [InlineData("service life", RenewalCause.ServiceLife)]
    [InlineData("with another part", RenewalCause.WithAnotherPart)]
    [InlineData("on request", RenewalCause.OnRequest)]
    public void The_reason_is_one_of_the_words_of_the_trade(string word, RenewalCause cause)
    {
        var read = Read($"renewed:\n  - {{ part: {Part}, reason: {word} }}\n");
        Assert.DoesNotContain(read.Problems, p => p.Severity == Severity.Stops);
        Assert.Equal(cause, read.Book!.Jobs.Single(j => j.Number == "9999").Renewed.Single().Reason);
    }

    [Fact]
    public void Another_word_is_refused_at_its_place()
    {
        var problem = Assert.Single(Read($"renewed:\n  - {{ part: {Part}, reason: tired }}\n").Problems, p => p.Code == "unknown-word");
        Assert.Equal(6, problem.Place.Line);
        Assert.Contains("broken", problem.Message + problem.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_that_was_graded_renew_and_is_said_to_have_been_good_is_worth_a_remark()
    {
        var problem = Assert.Single(
            Read($"findings:\n  - {{ part: {Part}, grade: renew }}\nrenewed:\n  - {{ part: {Part}, reason: precaution }}\n").Problems,
            p => p.Code == "reason-against-grade");
        Assert.Equal(Severity.Notice, problem.Severity);
    }

    [Fact]
    public void A_unit_cannot_be_collected_while_its_job_is_open() =>
        Assert.Contains(Read("collected: 2026-03-20\n").Problems, p => p.Code == "collected-while-open" && p.Place.Line == 5);

    [Fact]
    public void A_unit_cannot_be_collected_before_the_customer_said_no() =>
        Assert.Contains(
            Read("estimate: { sent: 2026-03-10, lines: [{ work: x, price: 10 }] }\ngo_ahead: { answer: no, on: 2026-03-12 }\ncollected: 2026-03-11\n").Problems,
            p => p.Message.Contains("collected before", StringComparison.Ordinal));

    private static string Part => Books.Small().Book!.Gearboxes.Values.First().Parts[0].Id;

    private static Reading.BookRead Read(string rest)
    {
        var small = Books.Small().Book!;
        var unit = small.Units.Values.First();
        var use = small.JobsOf(unit.Id).Last().Use;
        var files = Books.SmallFiles();
        files["jobs/2026/9999/job.yaml"] = System.Text.Encoding.UTF8.GetBytes(
            FormattableString.Invariant($"unit: \"{unit.Id}\"\nreceived: 2026-03-09\nuse: {use.Amount + 5} {Word(use.Unit)}\ncomplaint: x\n{rest}"));
        return Layshaft.Book.Reading.BookReader.Read(new Layshaft.Book.Reading.MemoryBookFiles(files));
    }

    private static string Word(Values.UseUnit unit) => unit == Values.UseUnit.Hours ? "h" : unit == Values.UseUnit.Kilometres ? "km" : "events";
}
