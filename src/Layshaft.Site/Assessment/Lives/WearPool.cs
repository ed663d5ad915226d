using System.Collections.Concurrent;
using Layshaft.Engineering.Life;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>What all units of a book tell of wear, from which each customer's pages are given what they may say of others. For many threads at once.</summary>
public sealed class WearPool
{
    // More say nothing more, and would cost time at each publish.
    private const int MostUnits = 40;

    private readonly DateOnly _before;
    private readonly Dictionary<string, WearTally> _units = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<Place>> _types = new(StringComparer.Ordinal);

    /// <summary>Puts tallies together.</summary>
    /// <param name="tallies">What the units of the book tell.</param>
    /// <param name="newest">The newest day of the book's jobs; null without any.</param>
    public WearPool(IEnumerable<WearTally> tallies, DateOnly? newest)
    {
        ArgumentNullException.ThrowIfNull(tallies);
        _before = newest is { } day ? new DateOnly(day.Year, (day.Month - 1) / 3 * 3 + 1, 1) : DateOnly.MinValue;
        var places = new Dictionary<string, Place>(StringComparer.Ordinal);
        foreach (var tally in tallies)
        {
            _units[tally.Unit] = tally;
            foreach (var measured in tally.Measures)
            {
                if (measured.Until(_before) is not { Count: > 0 } readings)
                {
                    continue;
                }

                var key = $"{TypeOf(tally)}\n{measured.Part}\n{measured.Measure}";
                if (!places.TryGetValue(key, out var place))
                {
                    places[key] = place = new Place(measured.Part, measured.Measure);
                    if (!_types.TryGetValue(TypeOf(tally), out var type))
                    {
                        _types[TypeOf(tally)] = type = [];
                    }

                    type.Add(place);
                }

                place.Add(new Source(tally, readings, measured.Uncertainty, measured.Readings.Last(r => r.Day < _before).Day));
            }
        }
    }

    /// <summary>What the pages of some units may say of others.</summary>
    /// <param name="units">The ids of the units.</param>
    public OtherUnits For(IEnumerable<string> units)
    {
        ArgumentNullException.ThrowIfNull(units);
        var wear = new List<OtherWear>();
        foreach (var unit in units)
        {
            foreach (var place in _types.GetValueOrDefault(TypeOf(_units[unit]), []))
            {
                if (place.Without(_units[unit].Owners[^1]) is { } type)
                {
                    wear.Add(new OtherWear(unit, place.Part, place.Measure, type));
                }
            }
        }

        return wear.Count == 0 ? OtherUnits.None : new OtherUnits(_before, wear);
    }

    private static string TypeOf(WearTally unit) => $"{unit.Gearbox}\n{unit.Counted}";

    private sealed record Source(WearTally Unit, IReadOnlyList<WearReading> Readings, double Uncertainty, DateOnly Last);

    /// <summary>All that was read of one measure of one part of a type.</summary>
    private sealed class Place(string part, string measure)
    {
        private readonly List<Source> _all = [];
        private readonly ConcurrentDictionary<string, TypeWear?> _known = new(StringComparer.Ordinal);
        private readonly Lock _gate = new();
        private Source[]? _latest;

        public string Part => part;

        public string Measure => measure;

        public void Add(Source source) => _all.Add(source);

        // What a customer owned once they know. Customers who owned none of these share one answer.
        public TypeWear? Without(string customer)
        {
            var latest = Latest();
            return latest.Length < TypeWear.LeastUnits
                ? null
                : _known.GetOrAdd(Array.Exists(latest, s => s.Unit.Owners.Contains(customer)) ? customer : string.Empty, own => Rate(Array.FindAll(latest, s => !s.Unit.Owners.Contains(own))));
        }

        private Source[] Latest()
        {
            lock (_gate)
            {
                return _latest ??= [.. _all.OrderByDescending(s => s.Last.DayNumber).ThenBy(s => s.Unit.Unit, StringComparer.Ordinal).Take(MostUnits)];
            }
        }

        private static TypeWear? Rate(Source[] others) =>
            others.Length >= TypeWear.LeastUnits && others.Select(s => s.Unit.Owners[^1]).Distinct(StringComparer.Ordinal).Count() >= OtherUnits.LeastCustomers
                ? TypeWear.Of([.. others.Select(s => s.Readings)], others.Max(s => s.Uncertainty))?.Rounded()
                : null;
    }
}
