using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Defaults;

/// <summary>Completes 'all' with the steps of the gearbox that were not left out.</summary>
internal static class TickDefaults
{
    public static Job Complete(Job job, Gearbox box, ProblemList problems) =>
        job.StripList?.Steps.All is null && job.BuildList?.Steps.All is null
            ? job
            : job with { StripList = Complete(job.StripList, box.Strip, "strip", problems), BuildList = Complete(job.BuildList, box.Build, "build", problems) };

    private static ListTicks? Complete(ListTicks? ticks, IReadOnlyList<Step> steps, string list, ProblemList problems)
    {
        if (ticks?.Steps.All is not { } all)
        {
            return ticks;
        }

        string[] done = [.. steps.Select(s => s.Id).Where(s => !ticks.LeftOut.Any(l => l.Step == s))];
        if (done.Length != all)
        {
            problems.Add(
                "step-count",
                ticks.Origin.At("done"),
                $"'all {all}' is not the number of completed steps: the {list} list has {steps.Count}{(done.Length < steps.Count ? $", {steps.Count - done.Length} of them left out" : "")}.",
                $"Check each step, then write all {done.Length} or list the completed steps.");
        }

        return ticks with { Steps = new DoneSteps(done, all) };
    }
}
