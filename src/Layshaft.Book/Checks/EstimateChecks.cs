using Layshaft.Book.Records;

namespace Layshaft.Book.Checks;

internal static class EstimateChecks
{
    public static void Run(Checker check, Job job, Gearbox box)
    {
        if (job.Offers is [{ Number: 0, Lines.Count: 0 } estimate, ..])
        {
            check.Problems.Add("no-lines", estimate.Origin.Place, "This estimate has no lines: nothing is graded renew, and the gearbox has no usual_work.", "Add 'lines: …'.");
        }

        foreach (var line in job.Offers.SelectMany(o => o.Lines).Concat(job.Final))
        {
            if ((line.Part is null) == (line.Work is null))
            {
                check.Problems.Add("part-or-work", line.Origin.Place, "A line must have either 'part' or 'work'.", "Write one of them.");
                continue;
            }

            if (line.Part is not null)
            {
                if (check.Names(line.Part, box.Parts.Select(p => p.Id), line.Origin.At("part"), "part", box.Name, box.Origin.Place.File)
                    && line.Price is null && box.PartOf(line.Part)!.Price is null)
                {
                    check.Problems.Add("no-price", line.Origin.At("part"), $"'{line.Part}' has no price here or in the gearbox file.", "Add 'price: …'.");
                }
            }
            else if (line.Hours is null && line.Price is null)
            {
                check.Problems.Add("no-price", line.Origin.At("work"), "This work has neither hours nor a price.", "Add 'hours: …' or 'price: …'.");
            }
        }
    }
}
