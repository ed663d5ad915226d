using Layshaft.Book.Problems;

namespace Layshaft.Book.Tests;

/// <summary>A job's trace and the layout of a car's traces.</summary>
public class TraceCheckTests
{
    [Theory]
    [InlineData("trace: { file: trace.csv }", "missing-file", "Add the file")]
    [InlineData("trace: { file: ../trace.csv }", "bad-file-name", "'..'")]
    [InlineData("trace: trace.csv", "wrong-kind", "key: value")]
    public void A_mistake_in_a_jobs_trace_is_a_problem(string line, string code, string remedy)
    {
        var found = Books.SmallWith("jobs/2026/0001/job.yaml", j => j + $"\n{line}\n").Problems;
        Assert.Contains(found, p => p.Code == code && p.Severity == Severity.Stops && p.Remedy.Contains(remedy, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("trace_columns: { speed: v, engine_speed: n }", "missing-field")]
    [InlineData("trace_columns: { time: t, speed: v, engine_speed: n, separator: dot }", "unknown-word")]
    [InlineData("trace_columns: { time: t, speed: v, engine_speed: n, trottle: x }", "unknown-key")]
    public void A_mistake_in_a_cars_trace_columns_is_a_problem(string line, string code) =>
        Assert.Contains(Books.SmallWith("cars/first-car.yaml", c => c + $"\n{line}\n").Problems, p => p.Code == code);
}
