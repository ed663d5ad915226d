using System.Collections.Concurrent;
using System.Globalization;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment.Traces;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>
/// The gearing of a whole book. Figures are checked when it is made; each event is ranked once, and only when somebody asks.
/// Threads share it.
/// </summary>
public sealed class BookGearing
{
    private readonly ShopBook book;
    private readonly Lazy<GearingFigures> figures;
    private readonly IBookFiles? files;
    private readonly IBookFiles? sources;
    private readonly Dictionary<string, TraceReading> traces = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Venue, string Car), Course> courses = [];
    private readonly Dictionary<string, GearingCase> cases = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Lazy<EventGearing?>> events = new(StringComparer.Ordinal);

    private BookGearing(ShopBook book, GearingFigures figures, IBookFiles? sources) => (this.book, this.figures, this.sources) = (book, new(figures), sources);

    private BookGearing(ShopBook book, IBookFiles files) =>
        (this.book, this.files, sources, figures) = (book, files, files, new(() => GearingFigures.Of(book, files, new ProblemList())));

    /// <summary>The cars whose figures can be used, by id.</summary>
    public IReadOnlyDictionary<string, CarSetup> Cars => figures.Value.Cars;

    /// <summary>The ratio sets whose gears can be used, by gearbox and set.</summary>
    public IReadOnlyDictionary<(string Gearbox, string Set), GearboxStock> Boxes => figures.Value.Boxes;

    /// <summary>Takes a book over and checks every figure that gearing needs.</summary>
    /// <param name="book">The book.</param>
    /// <param name="files">Its files, for torque curves.</param>
    /// <param name="problems">Receives what is wrong, at its place.</param>
    public static BookGearing Of(ShopBook book, IBookFiles files, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(problems);
        var gearing = Standing(book, files, problems);
        gearing.TakeEvents(problems);
        return gearing;
    }

    /// <summary>Takes over cars and gearboxes alone, without the events of jobs.</summary>
    /// <param name="book">The book.</param>
    /// <param name="files">Its files, for torque curves.</param>
    /// <param name="problems">Receives what is wrong, at its place.</param>
    public static BookGearing Standing(ShopBook book, IBookFiles files, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(problems);
        return new BookGearing(book, GearingFigures.Of(book, files, problems), files);
    }

    /// <summary>The same for a book whose figures were checked before: they are taken over when somebody asks, of a part those of the part alone.</summary>
    /// <param name="book">The book.</param>
    /// <param name="files">Its files, for torque curves.</param>
    public static BookGearing OnDemand(ShopBook book, IBookFiles files)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(files);
        return new BookGearing(book, files);
    }

    /// <summary>The gearing of the events of a part of the book whose jobs were not looked at before.</summary>
    /// <param name="part">The part.</param>
    /// <param name="problems">Receives what is wrong, at its place.</param>
    public BookGearing OfEvents(ShopBook part, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(problems);
        var gearing = Within(part);
        gearing.TakeEvents(problems);
        return gearing;
    }

    /// <summary>The same for a part of the book: nothing that is not in the part can be asked for.</summary>
    /// <param name="part">The part.</param>
    public BookGearing Within(ShopBook part)
    {
        ArgumentNullException.ThrowIfNull(part);
        var within = files is null || figures.IsValueCreated ? new BookGearing(part, figures.Value.Within(part), sources) : new BookGearing(part, files);
        foreach (var at in part.Venues.Keys.SelectMany(v => part.Cars.Keys.Select(c => (v, c))))
        {
            if (courses.TryGetValue(at, out var course))
            {
                within.courses[at] = course;
            }
        }

        foreach (var job in part.Jobs)
        {
            if (cases.TryGetValue(job.Number, out var made))
            {
                within.cases[job.Number] = made;
            }

            if (traces.TryGetValue(job.Number, out var trace))
            {
                within.traces[job.Number] = trace;
            }
        }

        return within;
    }

    /// <summary>Whether a job names an event that its gearing can be worked out for; nothing is ranked yet.</summary>
    /// <param name="job">The job.</param>
    public bool HasEvent(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return cases.ContainsKey(job.Number);
    }

    /// <summary>The gearing for the event that a job's box is made ready for; null when the job names none, or it cannot be worked out.</summary>
    /// <param name="job">The job.</param>
    public EventGearing? For(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return cases.TryGetValue(job.Number, out var found)
            ? events.GetOrAdd(job.Number, _ => new Lazy<EventGearing?>(() => EventGearing.Of(found, book, job, this))).Value
            : null;
    }

    /// <summary>What the trace of a job's last event shows; null when it names none, or it cannot be read.</summary>
    /// <param name="job">The job.</param>
    public TraceReading? TraceOf(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return traces.GetValueOrDefault(job.Number);
    }

    /// <summary>A unit in its car at a venue on a day; null when it has no car, or a figure cannot be used.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="venue">The venue.</param>
    /// <param name="plan">The event; null for standard air.</param>
    /// <param name="problems">Receives what is wrong, at its place.</param>
    public GearingCase? Case(Unit unit, Venue venue, EventPlan? plan, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentNullException.ThrowIfNull(venue);
        ArgumentNullException.ThrowIfNull(problems);
        return unit.Car is { } id && Cars.TryGetValue(id, out var setup) && unit.RatioSet is { } ratios && Boxes.TryGetValue((unit.Gearbox, ratios), out var box)
            ? GearingCase.Of(unit, box, setup, venue, plan, car => CourseOf(venue, setup, plan, GearingCase.Shortest(box, car), problems), problems)
            : null;
    }

    private Course? CourseOf(Venue venue, CarSetup setup, EventPlan? plan, Eng.Car shortest, ProblemList problems) =>
        plan is null or { Corners.Count: 0 } && courses.TryGetValue((venue.Id, setup.Car.Id), out var known)
            ? known
            : Course.Of(venue, setup, plan, shortest, problems);

    private void TakeEvents(ProblemList problems)
    {
        TakeTraces(problems);
        var looked = new HashSet<(string, string)>();
        foreach (var job in book.Jobs.Where(j => j.NextEvent is not null))
        {
            var (unit, venue) = (book.Units[job.Unit], book.Venues[job.NextEvent!.Venue]);
            if (IsOthersCar(unit, job) || unit.Car is not { } car || !Cars.ContainsKey(car) || unit.RatioSet is not { } ratios || !Boxes.ContainsKey((unit.Gearbox, ratios)))
            {
                continue;
            }

            var isFirst = looked.Add((venue.Id, car));
            if (isFirst && Case(unit, venue, null, problems) is { } standard)
            {
                courses[(venue.Id, car)] = standard.Track;
            }

            if (courses.ContainsKey((venue.Id, car)) && Case(unit, venue, job.NextEvent, problems) is { } made && IsReachable(made, isFirst || job.NextEvent.Corners.Count > 0, problems))
            {
                cases[job.Number] = made with { Kit = unit.OwnerOn(job.Received).Kit };
            }
        }
    }

    private void TakeTraces(ProblemList problems)
    {
        foreach (var job in book.Jobs)
        {
            if (sources is null || job.Trace is not { } trace || IsOthersCar(book.Units[job.Unit], job))
            {
                continue;
            }

            var (unit, last, came) = (book.Units[job.Unit], job.LastEvent, FittedGears.AsItCame(book, job));
            var path = $"{job.Folder}/{trace.File}";
            using var stream = sources.Open(path);
            if (TraceReading.Of(this, unit, FittedGears.At(last, came) ?? came, last is null ? null : book.Venues[last.Venue], stream, path, problems) is { } reading)
            {
                traces[job.Number] = reading;
            }
        }
    }

    // A unit's file names the car that it is in now. Its figures are not for an owner who sold the unit before, unless the car is or was his.
    private bool IsOthersCar(Unit unit, Job job) =>
        unit.OwnerOn(job.Received) is var owner && owner != unit.Owners[^1] && unit.Car is { } id && book.Cars[id] is var car
        && car.Customer != owner.Customer && !car.EarlierCustomers.Contains(owner.Customer);

    // A corner that the car cannot come up to means that a figure of the venue or the car is wrong: no ranking is better than a false one.
    private static bool IsReachable(GearingCase made, bool tell, ProblemList problems)
    {
        var reachable = true;
        for (var i = 0; tell && i < made.Track.Corners.Count; i++)
        {
            if (made.Track.Corners[i] is { Source: CornerSource.Flat, Reached: { } reached, Steady: { } steady } flat)
            {
                problems.Note(
                    "flat-corner",
                    made.Venue.Straights[i].Origin.At("corner_radius"),
                    string.Create(CultureInfo.InvariantCulture, $"{made.Setup.Car.Name} reaches only {reached.KilometersPerHour:0} km/h at {flat.Corner}; its radius allows {steady.KilometersPerHour:0} km/h. It is taken flat out, as no corner."),
                    "Check 'corner_radius' and the car's grip if the car has to slow down there.");
            }
        }

        foreach (var (straight, fault) in made.Unreachable())
        {
            reachable = false;
            if (tell)
            {
                problems.Add(new Problem("gearing", straight.Origin.At(fault.Kind == Eng.GearingFaultKind.CornerUnreachable ? "corner_speed" : "length"), Words(made, straight, fault), "Check the corner speed, the straight's length and exit speed, and the car's values. Until then the gearing is left out.", Severity.LeftOut));
            }
        }

        return reachable;
    }

    private static string Words(GearingCase made, Straight straight, Eng.GearingFault fault) => fault.Kind == Eng.GearingFaultKind.CornerUnreachable
        ? string.Create(CultureInfo.InvariantCulture, $"The corner speed of {straight.Corner} is {made.Track.Corners[made.Venue.Straights.ToList().IndexOf(straight)].Slowest!.Value.KilometersPerHour:0} km/h, but {made.Setup.Car.Name} reaches only {fault.Figure * 3.6:0} km/h on {straight.Name} with any gearing.")
        : $"{made.Setup.Car.Name}: {fault.Message}";
}
