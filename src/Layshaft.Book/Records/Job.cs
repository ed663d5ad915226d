using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using UnitsNet;

namespace Layshaft.Book.Records;

/// <summary>One visit of a unit to the bench: file <c>jobs/YEAR/NUMBER/job.yaml</c>.</summary>
public sealed record Job(
    string Number,
    string Folder,
    Origin Origin,
    string Unit,
    DateOnly Received,
    Use Use,
    string Complaint,
    string? Technician,
    DriverExperience? Driver,
    DateOnly? Stripped,
    string? WaitsFor,
    string? Verdict,
    string? Driving,
    IReadOnlyList<Named<PartInspection>> Inspection,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<Photo> Photos,
    IReadOnlyList<Offer> Offers,
    IReadOnlyList<Renewal> Renewed,
    IReadOnlyList<JobSetting> Settings,
    IReadOnlyList<Named<IReadOnlyList<IQuantity>>> Built,
    JobDifferential? Differential,
    ListTicks? StripList,
    ListTicks? BuildList,
    IReadOnlyList<EstimateLine> Final,
    IReadOnlyList<Teeth> Gears,
    Teeth? DropPair,
    Teeth? FinalDrive,
    EventPlan? LastEvent,
    EventPlan? NextEvent,
    JobTrace? Trace,
    ComeBack? ComeBack,
    DateOnly? Finished,
    DateOnly? Collected,
    string? Notes,
    string? InternalNotes) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Job> Shape { get; } = new("a job", "One visit of a unit to the workshop.", f => new Job(
        string.Empty,
        string.Empty,
        f.Origin,
        f.Required("unit", Scalars.Id.Like("t6-014"), "Unit: a file in units/, without .yaml."),
        f.Required("received", Scalars.Date, "Date received."),
        f.Required("use", Scalars.Use.Like("92.5 h"), "Total usage of the unit when received."),
        f.Required("complaint", Scalars.Text, "The complaint, in the customer's words."),
        f.Optional("technician", Scalars.Id.Like("tomas"), "Technician: an id in shop.yaml."),
        f.OptionalValue("driver", ExperienceWords, "The driver's experience with this type of gearbox."),
        f.OptionalValue("stripped", Scalars.Date, "Date stripped and inspected."),
        f.Optional("waits_for", Scalars.Text, "What an open job is waiting for, such as rings on order."),
        f.Optional("verdict", Scalars.Text, "Verdict for the customer, in one plain sentence."),
        f.Optional("driving", Scalars.Text, "The technician's driving advice to this driver (Markdown). Printed before the shop's advice."),
        f.Optional("inspection", PartInspection.Shape, "Findings in short form: each part with its readings, or with a grade if it is not measured: 'ring-2: 3.92', 'seal: renew'. [] means not inspected.") ?? [],
        f.List("findings", Finding.Shape, "Findings on parts."),
        f.List("photos", Photo.Shape, "Photos in the photos/ folder."),
        Offer.Series(
            f.Optional("estimate", Offer.EstimateShape, "Estimate sent to the customer."),
            f.Optional("go_ahead", GoAhead.Shape, "The customer's answer to the estimate."),
            f.List("supplements", Offer.SupplementShape, "Further estimates during the job, each with its answer.")),
        f.List("renewed", Renewal.Shape, "Renewed parts."),
        f.List("settings", JobSetting.Shape, "Settings, as found and as built."),
        f.Optional("built", JobSetting.BuiltShape, "Settings as built in short form: each setting with its value: 'lay-float: 0.07'. [] means not measured.") ?? [],
        f.Optional("differential", JobDifferential.Shape, "The plate differential, as found and as built."),
        f.Optional("strip_list", ListTicks.Shape, "Ticks on the gearbox's strip list."),
        f.Optional("build_list", ListTicks.Shape, "Ticks on the gearbox's build list."),
        f.List("final", EstimateLine.Shape, "Invoiced lines, if they differ from the estimate."),
        f.Optional("gears", new ListShape<Teeth>(Scalars.Teeth, atLeast: 1, atMost: 12, whole: true), "Gears in the box on return, if pairs were changed: first gear first, each driven/driver.") ?? [],
        f.OptionalValue("drop_pair", Scalars.Teeth, "Drop gears fitted on return, driven/driver."),
        f.OptionalValue("final_drive", Scalars.FinalDrive, "Final drive fitted on return, if it was changed, crown wheel/pinion."),
        f.Optional("last_event", EventPlan.Shape, "The last event before the job, with the gears fitted there."),
        f.Optional("next_event", EventPlan.Shape, "The event the gearbox is geared for."),
        f.Optional("trace", JobTrace.Shape, "What the car's data logger recorded at the last event."),
        f.Optional("come_back", ComeBack.Shape, "When the unit should be inspected again."),
        f.OptionalValue("finished", Scalars.Date, "Date finished."),
        f.OptionalValue("collected", Scalars.Date, "Date returned to the owner. A declined job stays on the page of open jobs until then."),
        f.Optional("notes", Scalars.FileName.Like("notes.md"), "Notes for the customer: a Markdown file beside this one."),
        f.Optional("internal_notes", Scalars.FileName.Like("internal.md"), "Internal notes: a Markdown file beside this one; never on a customer's page.")));

    /// <summary>How far the job has come.</summary>
    public JobStage Stage =>
        Finished is not null ? JobStage.Finished
        : Offers.Any(o => o.Waits) ? JobStage.AwaitingGoAhead
        : Offers.Count > 0 ? Approved.Any() ? JobStage.Rebuilding : JobStage.Declined
        : Stripped is not null ? JobStage.Inspected
        : JobStage.BookedIn;

    /// <summary>The lines that the customer approved, over all offers.</summary>
    public IEnumerable<EstimateLine> Approved => Offers.SelectMany(o => o.Approved);

    /// <summary>The lines that are charged: the final account, or what was approved.</summary>
    public IReadOnlyList<EstimateLine> Charged => Final.Count > 0 ? Final : [.. Approved];

    /// <summary>Day of the last answer; null without any.</summary>
    public DateOnly? LastAnswer => Offers.Max(o => o.GoAhead?.On);

    private static ChoiceShape<DriverExperience> ExperienceWords => new(
        "a level of experience",
        ("first season", DriverExperience.FirstSeason),
        ("some seasons", DriverExperience.SomeSeasons),
        ("many seasons", DriverExperience.ManySeasons));
}

/// <summary>How far a job has come.</summary>
public enum JobStage
{
    /// <summary>It is in, not yet stripped.</summary>
    BookedIn,

    /// <summary>Stripped and inspected.</summary>
    Inspected,

    /// <summary>The estimate or a supplement is out, not yet answered.</summary>
    AwaitingGoAhead,

    /// <summary>The customer approved all or part.</summary>
    Rebuilding,

    /// <summary>The customer approved nothing.</summary>
    Declined,

    /// <summary>Done.</summary>
    Finished,
}

/// <summary>How long a driver has driven this type of box.</summary>
public enum DriverExperience
{
    /// <summary>In the first season.</summary>
    FirstSeason,

    /// <summary>Two or three seasons.</summary>
    SomeSeasons,

    /// <summary>More.</summary>
    ManySeasons,
}

/// <summary>Ticks on a strip or build list.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Steps">The completed steps, as written.</param>
/// <param name="SignedBy">Who signs for them.</param>
/// <param name="On">When.</param>
/// <param name="LeftOut">Steps that were left out, each with its reason.</param>
public sealed record ListTicks(Origin Origin, DoneSteps Steps, string? SignedBy, DateOnly? On, IReadOnlyList<LeftOutStep> LeftOut) : IPlaced
{
    /// <summary>Ids of the completed steps.</summary>
    public IReadOnlyList<string> Done => Steps.Ids;

    /// <summary>How it is written.</summary>
    public static RecordShape<ListTicks> Shape { get; } = new("list ticks", "Completed steps of a strip or build list.", f => new ListTicks(
        f.Origin,
        f.Or("done", DoneSteps.Shape, DoneSteps.None, "Ids of the completed steps. 'all 12' ticks every step that is not in 'left_out'; the number must be right."),
        f.Optional("signed_by", Scalars.Id.Like("tomas"), "Technician who signs for them: an id in shop.yaml."),
        f.OptionalValue("on", Scalars.Date, "Date signed."),
        f.List("left_out", LeftOutStep.Shape, "Steps left out, each with its reason. Printed on the report.")));
}

/// <summary>A step that was left out.</summary>
/// <param name="Origin">Where it is written.</param>
/// <param name="Step">Id of the step.</param>
/// <param name="Reason">Why.</param>
public sealed record LeftOutStep(Origin Origin, string Step, string Reason) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<LeftOutStep> Shape { get; } = new("a step left out", "A step that was left out on purpose.", f => new LeftOutStep(
        f.Origin,
        f.Required("step", Scalars.Id.Like("drain"), "Id of the step."),
        f.Required("reason", Scalars.Text, "Why it was left out, for the customer.")));
}

/// <summary>When a unit should be looked at again.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="After">After this much more use.</param>
/// <param name="By">By this day at the latest.</param>
/// <param name="Reason">Why.</param>
public sealed record ComeBack(Origin Origin, Use? After, DateOnly? By, string? Reason) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<ComeBack> Shape { get; } = new("a return date", "When a unit should be inspected again.", f => new ComeBack(
        f.Origin,
        f.OptionalValue("after", Scalars.Use.Like("20 h"), "After this much further usage."),
        f.OptionalValue("by", Scalars.Date, "By this date at the latest."),
        f.Optional("reason", Scalars.Text, "Reason for the customer.")));
}
