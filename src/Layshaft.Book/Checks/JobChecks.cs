using Layshaft.Book.Places;
using Layshaft.Book.Records;

namespace Layshaft.Book.Checks;

internal static class JobChecks
{
    public static void Run(Checker check, Job job)
    {
        check.Refers(job.Unit, check.Draft.Units, job.Origin.At("unit"), "unit");
        Technician(check, job.Technician, job.Origin.At("technician"));
        Dates(check, job);
        Stages(check, job);
        Collected(check, job);
        File(check, job, job.Notes, job.Origin.At("notes"));
        File(check, job, job.InternalNotes, job.Origin.At("internal_notes"));
        Trace(check, job);
        JobPhotoChecks.Run(check, job);
        var unit = check.Draft.Units.Get(job.Unit);
        if (unit is not null)
        {
            check.InOrder(unit.InService, job.Received, job.Origin.At("received"), "The unit was received before it entered service");
            UnitChecks.CountsAlike(check, unit, job.Use, job.Origin.At("use"));
        }

        DateChecks.Run(check, job, unit);

        if (check.Draft.Gearboxes.Get(unit?.Gearbox) is { } box)
        {
            UnitKindChecks.Run(check, job, box);
            FindingChecks.Run(check, job, box);
            JobSettingChecks.Run(check, job, box);
            DifferentialChecks.Run(check, job, box);
            EstimateChecks.Run(check, job, box);
            OfferChecks.Run(check, job);
            ApprovalChecks.Run(check, job);
            Gearing(check, job, unit!, box);
            foreach (var renewal in job.Renewed)
            {
                check.Names(renewal.Part, box.Parts.Select(p => p.Id), renewal.Origin.At("part"), "part", box.Name, box.Origin.Place.File);
                check.Refers(renewal.From, check.Draft.Units, renewal.Origin.At("from"), "unit");
                Reason(check, job, renewal);
            }
        }
    }

    /// <summary>A technician whom the shop has.</summary>
    public static void Technician(Checker check, string? id, Place place)
    {
        if (check.Draft.Shop is { } shop)
        {
            check.Names(id, shop.Technicians.Select(t => t.Id), place, "technician", "shop.yaml");
        }
    }

    private static void Dates(Checker check, Job job)
    {
        check.InOrder(job.Received, job.Stripped, job.Origin.At("stripped"), "The unit was stripped before it was received");
        check.InOrder(job.Received, job.Finished, job.Origin.At("finished"), "The job was finished before the unit was received");
        check.InOrder(job.Stripped, job.Finished, job.Origin.At("finished"), "The job was finished before the unit was stripped");
        DateOnly? before = null;
        foreach (var offer in job.Offers)
        {
            var name = OfferChecks.NameOf(offer);
            check.InOrder(job.Received, offer.Sent, offer.Origin.At("sent"), $"The {name} was sent before the unit was received");
            check.InOrder(before, offer.Sent, offer.Origin.At("sent"), $"The {name} was sent before the previous one");
            check.InOrder(offer.Sent, offer.ValidUntil, offer.Origin.At("valid_until"), $"The {name} expires before it was sent");
            check.InOrder(offer.Sent, offer.GoAhead?.On, offer.GoAhead?.Origin.At("on") ?? job.Origin.Place, $"The customer answered before the {name} was sent");
            before = offer.Sent;
        }

        check.InOrder(job.LastAnswer, job.Finished, job.Origin.At("finished"), "The job was finished before the go-ahead");
        check.InOrder(job.Finished, job.ComeBack?.By, job.ComeBack?.Origin.At("by") ?? job.Origin.Place, "The unit is due back before the job was finished");
    }

    private static void Stages(Checker check, Job job)
    {
        if (job.Origin.Has("go_ahead") && !job.Origin.Has("estimate"))
        {
            check.Problems.Add("answer-without-estimate", job.Origin.At("go_ahead"), "There is a go-ahead, but no estimate.", "Add the estimate, or remove 'go_ahead'.");
        }

        if (job.Finished is not null && job.Verdict is null)
        {
            check.Problems.Add("no-verdict", job.Origin.At("finished"), "A finished job needs a verdict for the customer.", "Add 'verdict: …' in one plain sentence.");
        }

        if (job.Origin.Has("supplements") && !job.Origin.Has("estimate"))
        {
            check.Problems.Add("supplement-without-estimate", job.Origin.At("supplements"), "There is a supplement, but no estimate.", "Write the supplement as 'estimate'.");
        }

        if (job.Finished is not null && job.Offers.Count > 0 && job.Offers.All(o => o.GoAhead is { Answer: Answer.No }))
        {
            check.Problems.Add("finished-though-declined", job.Origin.At("finished"), "The customer declined, but the job is finished.", "Correct the answer, or remove 'finished'.");
        }
    }

    // Both may be right (a part graded renew is not always the worst one), but one of them may distort the part's life.
    private static void Reason(Checker check, Job job, Renewal renewal)
    {
        if (renewal.Reason is >= RenewalCause.Precaution && job.Findings.Any(f => f.Part == renewal.Part && f.Grade == Layshaft.Engineering.Measurement.Grade.Renew))
        {
            check.Problems.Note("reason-against-grade", renewal.Origin.At("reason"), $"'{renewal.Part}' is graded 'renew', but this reason means that it was still good. Its life will not count as a failure.", "Write 'worn', 'damaged' or 'broken', or correct the grade.");
        }
    }

    private static void Collected(Checker check, Job job)
    {
        check.InOrder(job.LastAnswer ?? job.Finished ?? job.Received, job.Collected, job.Origin.At("collected"), "The unit was collected before the last step of the job");
        if (job is { Collected: not null, Finished: null } && job.Stage != JobStage.Declined)
        {
            check.Problems.Add("collected-while-open", job.Origin.At("collected"), "The unit was collected, but the job is neither finished nor declined.", "Add 'finished: …', or the customer's answer under 'go_ahead'.");
        }
    }

    private static void File(Checker check, Job job, string? file, Place place)
    {
        if (file is not null && !check.Draft.Files.Has($"{job.Folder}/{file}"))
        {
            check.Problems.Add("missing-file", place, $"There is no file '{file}' in {job.Folder}/.", "Add the file, or remove this line.");
        }
    }

    private static void Trace(Checker check, Job job)
    {
        if (job.Trace is not { } trace)
        {
            return;
        }

        File(check, job, trace.File, trace.Origin.At("file"));
        if (check.Draft.Units.Get(job.Unit)?.Car is { } id && check.Draft.Cars.Get(id) is { TraceColumns: null } car)
        {
            check.Problems.Add("trace-columns", job.Origin.At("trace"), $"The layout of the traces of {car.Name} is missing.", $"Add 'trace_columns: …' to cars/{id}.yaml.");
        }
    }

    private static void Gearing(Checker check, Job job, Unit unit, Gearbox box)
    {
        GearChoiceChecks.Fitted(check, job, unit, box);
        UnitChecks.DropPair(check, box, unit, job.DropPair, job.Origin.At("drop_pair"));
        UnitChecks.FinalDrive(check, box, unit, job.FinalDrive, job.Origin.At("final_drive"));
        foreach (var plan in (EventPlan?[])[job.LastEvent, job.NextEvent])
        {
            if (plan is not null)
            {
                check.Refers(plan.Venue, check.Draft.Venues, plan.Origin.At("venue"), "venue");
                UnitChecks.DropPair(check, box, unit, plan.DropPair, plan.Origin.At("drop_pair"));
                UnitChecks.FinalDrive(check, box, unit, plan.FinalDrive, plan.Origin.At("final_drive"));
                if (check.Draft.Venues.Get(plan.Venue) is { } venue)
                {
                    CornerChecks.Run(check, plan.Corners, venue);
                    CornerChecks.Wind(check, plan, venue);
                }
            }
        }
    }
}
