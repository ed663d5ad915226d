using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;
using Layshaft.Site.Look;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Pages.Shared;
using UnitsNet;

namespace Layshaft.Site.Pages.ShopPages;

/// <summary>The inspection and build sheet of a job on the bench, to be printed and filled in by hand. Never for upload.</summary>
/// <param name="Head">Head of the page.</param>
/// <param name="Heading">Main heading.</param>
/// <param name="Facts">Owner, usage, complaint and the like.</param>
/// <param name="Parts">The parts of the gearbox, with what is measured on them.</param>
/// <param name="Settings">The settings.</param>
/// <param name="Strip">The strip list.</param>
/// <param name="Build">The build list.</param>
/// <param name="Foot">Foot of the page.</param>
public sealed record BenchSheet(
    PageHead Head, string Heading, IReadOnlyList<string> Facts, IReadOnlyList<BenchPart> Parts, IReadOnlyList<BenchSetting> Settings, BenchSteps? Strip, BenchSteps? Build, PageFoot Foot)
{
    /// <summary>The template.</summary>
    public const string Template = "bench-sheet.html";

    /// <summary>Composes the sheet of a job.</summary>
    /// <param name="composition">What pages are composed from; of its jobs at least those of the unit.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="job">The job.</param>
    public static BenchSheet Compose(Composition composition, Unit unit, Job job)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentNullException.ThrowIfNull(job);
        var (book, page) = (composition.Book, Addresses.BenchSheet(job));
        var box = book.GearboxOf(unit);
        Job[] earlier = [.. book.JobsOf(unit.Id).TakeWhile(j => j.Number != job.Number)];
        var last = LastSeen.Of(earlier, composition);
        var heading = composition.Say("sheet.heading", ("unit", unit.Serial), ("number", job.Number));
        return new BenchSheet(
            PageFrame.Head(
                composition,
                page,
                composition.Say("shop.title", ("page", heading), ("shop", composition.Shop.Name)),
                null,
                PageStyles.Bench,
                links: new LinkView(Addresses.Link(page, ShopContext.Bench), composition.Say("shop.bench"))),
            heading,
            [.. FactsOf(composition, unit, job, box)],
            [.. box.Parts.Select(p => PartOf(p, job, last, composition))],
            [.. box.Settings.Select(s => SettingOf(s, job, composition))],
            StepsOf("sheet.strip", box.Strip, job.StripList, composition),
            StepsOf("sheet.build", box.Build, job.BuildList, composition),
            PageFrame.PlainFoot(composition));
    }

    private static IEnumerable<string> FactsOf(Composition composition, Unit unit, Job job, Gearbox box)
    {
        string Fact(string key, string value) => composition.Say("sheet.fact", ("name", composition.Say(key)), ("value", value));
        yield return Fact("block.unit", box.Name);
        yield return Fact("block.customer", composition.Book.Customers[unit.OwnerOn(job.Received).Customer].Name);
        yield return Fact("block.received", composition.Figures.Date(job.Received));
        yield return Fact("block.use", UseWords.Of(job.Use, composition));
        if (composition.Shop.Technicians.FirstOrDefault(t => t.Id == job.Technician) is { } technician)
        {
            yield return Fact("block.technician", technician.Name);
        }

        yield return Fact("sheet.complaint", job.Complaint);
        if (box.Manual is { } manual)
        {
            yield return composition.Say("sheet.manual", ("manual", manual));
        }
    }

    private static BenchPart PartOf(Part part, Job job, LastSeen last, Composition composition)
    {
        var finding = job.Findings.FirstOrDefault(f => f.Part == part.Id);
        var grade = last.GradeOf(part.Id) is { } seen and not Grade.Reuse ? GradeViews.Of(seen, composition) : null;
        return new BenchPart(part.Name, grade, finding?.Grade is { } given ? GradeViews.Of(given, composition).Letter : null, [.. part.Measures.Select(m => MeasureOf(part, m, job, last, composition))]);
    }

    private static BenchMeasure MeasureOf(Part part, Measure measure, Job job, LastSeen last, Composition composition)
    {
        var instrument = composition.Shop.InstrumentOf(measure.Instrument);
        var read = Measured.DecimalsOf(instrument?.Resolution, measure.New, measure.Limit);
        string Size(IQuantity size) => Measured.Figure(size, read, composition.Figures).Text;
        string Read(IReadOnlyList<IQuantity> readings) => string.Join("; ", readings.Select(r => Measured.Figure(r, read, composition.Figures).Number));
        var readings = job.Findings.Where(f => f.Part == part.Id).SelectMany(f => f.Measurements).FirstOrDefault(m => m.Measure == measure.Id)?.Readings ?? [];
        return new BenchMeasure(
            measure.Name,
            instrument?.Name,
            Size(measure.New),
            Size(PartWear.SizeAt(measure.New, measure.Limit, part.Grading.WatchFrom)),
            Size(measure.Limit),
            last.SizeOf(part.Id, measure.Id) is { } before ? Read([before]) : null,
            readings.Count > 0 ? Read(readings) : null);
    }

    private static BenchSetting SettingOf(Setting setting, Job job, Composition composition)
    {
        var decimals = Measured.DecimalsOf(composition.Shop.InstrumentOf(setting.Instrument)?.Resolution, [.. new[] { setting.Target.Low, setting.Target.High }.OfType<IQuantity>()]);
        var set = job.Settings.FirstOrDefault(s => s.Setting == setting.Id);
        string? Read(IReadOnlyList<IQuantity>? values) => values is { Count: > 0 } ? string.Join("; ", values.Select(v => Measured.Figure(v, decimals, composition.Figures).Number)) : null;
        return new BenchSetting(setting.Name, SettingsSection.Target(setting, composition), setting.Condition, setting.Shims is not null, Read(set?.Found), Read(set?.Built));
    }

    private static BenchSteps? StepsOf(string key, IReadOnlyList<Step> steps, ListTicks? ticks, Composition composition) => steps.Count == 0 ? null : new BenchSteps(
        composition.Say(key),
        [.. steps.Select(s => new BenchStep(s.Do, s.Caution, ticks?.Done.Contains(s.Id) == true))],
        composition.Say("sheet.all", ("count", steps.Count)));
}

/// <summary>A part on the sheet.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Last">Its last grade, if it needs attention; null otherwise.</param>
/// <param name="Grade">The letter of the technician's grade in this job; null for none yet.</param>
/// <param name="Measures">What is measured on it.</param>
public sealed record BenchPart(string Name, GradeView? Last, string? Grade, IReadOnlyList<BenchMeasure> Measures);

/// <summary>A measure on the sheet.</summary>
/// <param name="Name">What to measure.</param>
/// <param name="Instrument">With what; null if the gearbox file does not name it.</param>
/// <param name="New">New size.</param>
/// <param name="Watch">Size from which it is graded Monitor.</param>
/// <param name="Limit">Wear limit.</param>
/// <param name="Last">Last mean; null for none.</param>
/// <param name="Readings">Readings of this job; null for an empty box.</param>
public sealed record BenchMeasure(string Name, string? Instrument, string New, string Watch, string Limit, string? Last, string? Readings);

/// <summary>A setting on the sheet.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Target">Its target.</param>
/// <param name="Condition">What the target applies to; null for nothing special.</param>
/// <param name="HasShims">Whether it is set with shims.</param>
/// <param name="Found">As found; null for an empty box.</param>
/// <param name="Built">As built; null for an empty box.</param>
public sealed record BenchSetting(string Name, string Target, string? Condition, bool HasShims, string? Found, string? Built);

/// <summary>A list of steps on the sheet.</summary>
/// <param name="Heading">Its heading.</param>
/// <param name="Steps">The steps.</param>
/// <param name="All">How to write that all are done.</param>
public sealed record BenchSteps(string Heading, IReadOnlyList<BenchStep> Steps, string All);

/// <summary>A step on the sheet.</summary>
/// <param name="Words">What to do.</param>
/// <param name="Caution">Hazard, consequence and action; null for none.</param>
/// <param name="Done">Whether it is ticked.</param>
public sealed record BenchStep(string Words, string? Caution, bool Done);
