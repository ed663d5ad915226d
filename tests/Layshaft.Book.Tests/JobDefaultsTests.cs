using System.Text;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using UnitsNet;

namespace Layshaft.Book.Tests;

/// <summary>What a job need not say because the rest of the book knows it, and that a written value is never replaced.</summary>
public class JobDefaultsTests
{
    // A freshen-up of the demo's largest gearbox, as a technician writes it: twelve measured parts, one of them renewed.
    private const string FreshenUp = """
        unit: t6-099
        received: 2026-03-02
        use: 18.5 h
        complaint: Second gear baulks if I rush the change.
        technician: bel
        stripped: 2026-03-04
        verdict: The gearbox is sound except for one dog ring, which is new.
        inspection:
          ring-12: {radius-1: [0.91, 0.94], radius-2: [1.17, 1.19]}
          ring-34: {radius-3: 0.62, radius-4: 0.58}
          ring-56: {radius-5: 0.41, radius-6: 0.40}
          hub-12: 0.052
          hub-34: 0.049
          fork-12: 7.81
          fork-34: 7.83
          main-2: {span: 41.905, dog-radius: 0.55}
          lay-front: 0.031
          lay-rear: 0.029
          main-front: 0.033
          main-rear: 0.030
          input-seal: renew
        estimate: {sent: 2026-03-05, total: TOTAL}
        go_ahead: {answer: yes, on: 2026-03-06}
        built: {lay-float: 0.07, main-float: 0.06, lay-nut: 175, pinion-nut: 220}
        build_list: {done: all 11, signed_by: bel, on: 2026-03-13}
        finished: 2026-03-14

        """;

    [Fact]
    public void A_freshen_up_of_twelve_measured_parts_takes_twenty_five_lines_and_seven_hundred_characters()
    {
        var job = Read(FreshenUp);
        string[] lines = [.. FreshenUp.Trim().Split('\n').Where(l => !l.StartsWith("complaint:", StringComparison.Ordinal) && !l.StartsWith("verdict:", StringComparison.Ordinal))];

        Assert.Equal(12, job.Findings.Count(f => f.Measurements.Count > 0));
        Assert.InRange(lines.Length, 13, 25);
        Assert.InRange(lines.Sum(l => l.Length + 1), 400, 700);
    }

    [Fact]
    public void A_reading_without_a_unit_has_the_unit_and_the_instrument_of_its_measure()
    {
        var job = Read(FreshenUp);
        var measurement = job.Findings.Single(f => f.Part == "ring-12").Measurements[1];

        Assert.Equal("radius-2", measurement.Measure);
        Assert.Equal([Length.FromMillimeters(1.17), Length.FromMillimeters(1.19)], measurement.Readings);
        Assert.Equal("microscope", measurement.Instrument);
        Assert.Equal(Torque.FromNewtonMeters(220), Assert.Single(job.Settings.Single(s => s.Setting == "pinion-nut").Built));
        Assert.Equal("wrench-250", job.Settings.Single(s => s.Setting == "pinion-nut").Instrument);
    }

    [Fact]
    public void An_instrument_that_is_declared_later_says_nothing_of_readings_with_a_unit()
    {
        var job = Read(Head + "findings: [{part: hub-12, measurements: [{measure: spline-play, readings: 0.05 mm}]}]\n");

        Assert.Null(job.Findings.Single().Measurements.Single().Instrument);
    }

    [Fact]
    public void A_written_instrument_and_a_written_unit_win()
    {
        var measurement = Read(Head + "findings: [{part: hub-12, measurements: [{measure: spline-play, instrument: bore-gauge, readings: [0.05]}]}]\ninspection: {hub-34: 2 thou}\n").Findings;

        Assert.Equal("bore-gauge", measurement[0].Measurements.Single().Instrument);
        Assert.Equal(Length.FromMils(2), measurement[1].Measurements.Single().Readings.Single());
        Assert.Null(measurement[1].Measurements.Single().Instrument);
    }

    [Fact]
    public void The_estimate_has_the_usual_work_and_each_part_graded_renew()
    {
        var job = Read(FreshenUp);
        var lines = job.Offers.Single().Lines;

        Assert.True(job.Offers.Single().IsFromGrades);
        Assert.Equal(["Strip, clean, measure, rebuild and rig run", "ring-12", "input-seal"], lines.Select(l => l.What));
        Assert.Equal(["ring-12", "input-seal"], job.Renewed.Select(r => r.Part));
    }

    [Fact]
    public void Written_lines_are_the_estimate_whatever_the_grades_are()
    {
        var job = Read(FreshenUp.Replace("total: TOTAL", "lines: [{part: ring-12}]", StringComparison.Ordinal));

        Assert.False(job.Offers.Single().IsFromGrades);
        Assert.Equal(["ring-12"], job.Offers.Single().Lines.Select(l => l.What));
        Assert.Equal(["ring-12"], job.Renewed.Select(r => r.Part));
    }

    [Fact]
    public void An_open_job_renews_nothing_by_itself() => Assert.Empty(Read(FreshenUp.Replace("finished: 2026-03-14\n", "", StringComparison.Ordinal)).Renewed);

    [Fact]
    public void A_refitted_part_is_not_taken_for_renewed_so_that_its_invoiced_line_is_reported() =>
        Assert.Contains(Problems(FreshenUp + "findings: [{part: ring-12, action: corners dressed, left_in: No ring was in stock.}]\n"), p => p.Code == "charged-not-fitted");

    [Fact]
    public void All_steps_are_ticked_with_their_number() => Assert.Equal(11, Read(FreshenUp).BuildList!.Done.Count);

    [Theory]
    [InlineData("done: all 11", "done: all 10", "step-count")]
    [InlineData("done: all 11,", "done: all 11, left_out: [{step: rig, reason: The rig is away.}],", "step-count")]
    [InlineData("done: all 11", "done: all", "wrong-kind")]
    [InlineData("hub-12: 0.052", "hub-12: [0.052, 0.05 mm]", "no-unit")]
    [InlineData("hub-12: 0.052", "hub-12: [0,052]", "comma-in-list")]
    [InlineData("hub-12: 0.052", "hub-12: reuze", "unknown-word")]
    [InlineData("hub-12: 0.052", "hub-21: 0.052", "missing-reference")]
    [InlineData("ring-34: {radius-3: 0.62, radius-4: 0.58}", "ring-34: 0.62", "measure-not-named")]
    [InlineData("input-seal: renew", "input-seal: 3", "measure-not-named")]
    [InlineData("{lay-float: 0.07,", "{lay-flaot: 0.07,", "missing-reference")]
    [InlineData("finished:", "renewed: [{part: input-seal}]\nfindings: [{part: ring-12, action: renewed}]\nfinished:", "action-not-renewed")]
    [InlineData("finished:", "findings: [{part: hub-12, measurements: [{measure: spline-play, readings: 0.05 mm}]}]\nfinished:", "written-twice")]
    [InlineData("finished:", "findings: [{part: input-seal, grade: reuse}]\nfinished:", "grade-contradicts")]
    [InlineData("finished:", "settings: [{setting: lay-nut, built: 174}]\nfinished:", "written-twice")]
    public void A_contradiction_is_a_problem_at_its_line(string written, string instead, string code)
    {
        var text = FreshenUp.Replace(written, instead, StringComparison.Ordinal);
        var problem = Assert.Single(Problems(text), p => p.Code == code);

        Assert.Equal(Severity.Stops, problem.Severity);
        Assert.Equal("jobs/2026/0999/job.yaml", problem.Place.File);
        Assert.True(problem.Place.Line > 7);
    }

    [Fact]
    public void Empty_brackets_are_a_measure_that_is_not_taken_yet() =>
        Assert.Equal(["hub-34"], Read(Head + "inspection: {hub-12: [], ring-12: {radius-1: [], radius-2: }, hub-34: 0.05, input-seal: []}\nbuilt: {lay-nut: []}\n").Findings.Select(f => f.Part));

    [Fact]
    public void Photos_named_after_a_part_are_in_the_report_and_others_only_if_they_are_listed()
    {
        var files = Files(FreshenUp);
        foreach (var name in new[] { "ring-12-before.jpg", "ring-12-after.jpg", "ring-123.jpg", "bench.jpg", "lay-rear-2.jpg" })
        {
            files[$"jobs/2026/0999/photos/{name}"] = [1];
        }

        var read = BookReader.Read(new MemoryBookFiles(files));
        var job = read.Book!.Jobs.Single(j => j.Number == "0999");

        Assert.Equal([("lay-rear-2.jpg", null), ("ring-12-after.jpg", PhotoMoment.After), ("ring-12-before.jpg", PhotoMoment.Before)], job.Photos.Select(p => (p.File, p.Moment)).Order());
        Assert.Equal("ring-12-before.jpg", job.Photos.Single(p => p.Moment == PhotoMoment.After).PairedWith);
        Assert.Equal(2, job.Findings.Single(f => f.Part == "ring-12").Photos.Count);
        Assert.Equal("Dog ring, 1st and 2nd", job.Photos.First(p => p.File.StartsWith("ring", StringComparison.Ordinal)).Caption);
        Assert.Equal(["bench.jpg", "ring-123.jpg"], read.Problems.Where(p => p.Code == "photo-not-listed").Select(p => p.Place.File.Split('/')[^1]).Order());
    }

    private const string Head = "unit: t6-099\nreceived: 2026-03-02\nuse: 18.5 h\ncomplaint: x\n";

    private static Job Read(string job)
    {
        var read = BookReader.Read(new MemoryBookFiles(Files(job)));
        Assert.True(read.Book is not null, string.Join('\n', read.Problems.Where(p => p.Severity == Severity.Stops)));
        return read.Book.Jobs.Single(j => j.Number == "0999");
    }

    private static IEnumerable<Problem> Problems(string job) => BookReader.Read(new MemoryBookFiles(Files(job))).Problems.Where(p => p.Place.File.Contains("0999", StringComparison.Ordinal));

    private static Dictionary<string, byte[]> Files(string job)
    {
        var files = OwnBooks.Texts("demo-data").Where(f => !f.Key.StartsWith("jobs/", StringComparison.Ordinal)).ToDictionary(f => f.Key, f => Encoding.UTF8.GetBytes(f.Value), StringComparer.Ordinal);
        foreach (var beside in Directory.EnumerateFiles(Path.Combine(OwnBooks.Folder("demo-data"), "cars"), "*.csv").Append(Path.Combine(OwnBooks.Folder("demo-data"), "logo.png")).Where(File.Exists))
        {
            files[Path.GetRelativePath(OwnBooks.Folder("demo-data"), beside).Replace('\\', '/')] = File.ReadAllBytes(beside);
        }

        files["units/t6-099.yaml"] = Encoding.UTF8.GetBytes("gearbox: ostrel-t6\nserial: T6-099\nratio_set: standard\nowners: [{customer: harrow-lane, from: 2023-09-04}]\nin_service: 2023-09-16\nuse_at_start: 0 h\nfinal_drive: 35/11\n");
        files["jobs/2026/0999/job.yaml"] = Encoding.UTF8.GetBytes(job.Replace("TOTAL", "1000.00", StringComparison.Ordinal));
        return files;
    }
}
