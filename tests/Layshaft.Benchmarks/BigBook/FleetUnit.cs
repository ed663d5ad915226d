using System.Globalization;
using Layshaft.Book.Records;
using Layshaft.Book.Values;

namespace Layshaft.Benchmarks.BigBook;

/// <summary>One unit on its way through the seasons: what it has run, and how far each of its parts is worn.</summary>
/// <param name="id">Its file's name.</param>
/// <param name="kind">The unit that it is like.</param>
/// <param name="box">Its type.</param>
/// <param name="shop">The shop.</param>
/// <param name="inService">Its first day.</param>
/// <param name="venues">Where its car runs.</param>
/// <param name="seed">Of its own chance.</param>
internal sealed class FleetUnit(string id, Unit kind, Gearbox box, Shop shop, DateOnly inService, IReadOnlyList<Venue> venues, int seed)
{
    private readonly Random _random = new(seed);
    private readonly Dictionary<string, double> _wear = [];
    private DateOnly _lastVisit = inService;
    private DateOnly _lastNumbered = inService;
    private decimal _use;

    public string Id => id;

    public DateOnly InService { get; } = inService;

    /// <summary>The day itself, or when it comes too soon after the visit before, one that leaves time for a race between.</summary>
    public DateOnly Next(DateOnly wished, DateOnly last)
    {
        var next = wished < _lastNumbered.AddDays(30) ? _lastNumbered.AddDays(30) : wished;
        _lastNumbered = next;
        return next > last ? last : next;
    }

    public string Yaml(string owner, string? later, string car)
    {
        var sold = InService.AddDays(400 + _random.Next(900));
        return FormattableString.Invariant($"gearbox: {kind.Gearbox}\nserial: {id.ToUpperInvariant()}\nratio_set: {kind.RatioSet}\nowners:\n  - {{ customer: {owner}, from: {InService:yyyy-MM-dd} }}\n")
            + (later is null || later == owner ? "" : FormattableString.Invariant($"  - {{ customer: {later}, from: {sold:yyyy-MM-dd} }}\n"))
            + FormattableString.Invariant($"car: {car}\nin_service: {InService:yyyy-MM-dd}\nuse_at_start: 0 {Word}\n")
            + (kind.UseCountedIn is UseUnit.Events ? "use_counted_in: events\n" : "")
            + FormattableString.Invariant($"drop_pair: {kind.DropPair}\nfinal_drive: {kind.FinalDrive}\n");
    }

    /// <summary>The next visit to the bench.</summary>
    /// <param name="received">Its day.</param>
    /// <param name="last">The book's last day: what came in shortly before it is not finished yet.</param>
    /// <param name="photos">How many photos it has.</param>
    public (string Yaml, string? Notes) Visit(DateOnly received, DateOnly last, int photos)
    {
        var ran = decimal.Round((decimal)Math.Max(1, (received.DayNumber - _lastVisit.DayNumber) / 365.0 * (IsEvents ? 12 : 30) * (0.7 + (0.6 * _random.NextDouble()))), IsEvents ? 0 : 1);
        _use += ran;
        _lastVisit = received;
        foreach (var part in box.Parts.Where(p => p.Measures.Count > 0))
        {
            var life = (double)(part.ServiceLife?.Amount ?? 100);
            _wear[part.Id] = _wear.GetValueOrDefault(part.Id) + ((double)ran / life * (0.7 + (0.6 * _random.NextDouble())));
        }

        var job = new BigJob(id, box, shop, venues, _wear, _random, received, last, string.Create(CultureInfo.InvariantCulture, $"{_use} {Word}"), kind);
        return (job.Yaml(photos), job.Notes());
    }

    private bool IsEvents => kind.UseCountedIn is UseUnit.Events;

    private string Word => IsEvents ? "events" : "h";
}
